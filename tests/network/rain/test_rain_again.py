"""It rains again as it does where all of it is asked anew."""

import numpy as np
from hypothesis import assume, given

from enclosure_app.model.product import Control
from enclosure_app.network.network import hides, over_whom
from enclosure_app.network.rain.ground_again import Sides
from enclosure_app.network.rain.rain import together
from enclosure_app.network.rain.rain_again import Pieces, rain_again
from tests.network.moving import CASES, EVERYWHERE, Case
from tests.network.random_layers import profile


@profile(12)
@given(CASES)
def test_routes_ponds_drips_and_entries_are_the_same(made: Case) -> None:
    assume(made.last.rain and made.last.rain.work and made.whole.rain)
    water = made.whole.layers[Control.WATER]
    section = made.section
    walls = {
        name: section.by_name[name].shape for name in made.names
        if hides(section, section.by_name[name])
    }  # fmt: skip
    works = made.last.rain.work, made.whole.rain.work
    assume(len(works[0]) == len(works[1]))
    told = []
    for last, whole, air in zip(*works, water.airs, strict=True):
        lands = air.is_first_to_hold if air.before else None
        sides = Sides(air.holds, EVERYWHERE, over_whom(water), lands)
        again = rain_again(last, Pieces(made.shapes, walls), sides)
        if again is None:
            assert len(last.water.ground.start) != len(whole.water.ground.start)
            return
        told.append(again)
        assert np.array_equal(again.work[0].outside, whole.outside)
    assert together(told) == made.whole.rain
