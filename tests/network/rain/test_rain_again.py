"""It rains again as it does where all of it is asked anew."""

import numpy as np
from hypothesis import assume, given

from enclosure_app.model.product import Control
from enclosure_app.network.network import hides, over_whom
from enclosure_app.network.rain.ground_again import Sides
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
    sides = Sides(water.is_outside, EVERYWHERE, over_whom(water))
    again = rain_again(made.last.rain.work, Pieces(made.shapes, walls), sides)
    if again is None:
        faces = [each.rain.work.water.ground.start for each in (made.last, made.whole)]
        assert len(faces[0]) != len(faces[1])
        return
    assert again == made.whole.rain
    assert np.array_equal(again.work.outside, made.whole.rain.work.outside)
