"""A section and the same one with pieces moved, both settled and questioned: `last` and `whole`."""

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
from hypothesis import assume
from hypothesis import strategies as st

from enclosure_app.model.limits import Tolerances
from enclosure_app.model.place import Shape
from enclosure_app.model.pose import settle
from enclosure_app.model.product import Control
from enclosure_app.model.section import Section
from enclosure_app.network.again import moved_between
from enclosure_app.network.layer import Layer
from enclosure_app.network.network import Network, over_whom, question
from enclosure_app.network.rain.ground_again import GroundAgain, Sides, ground_again
from enclosure_app.network.rain.runs import Ground
from tests.random_edits import EDITS, Edit, and_a_porch, edited

PLAIN = Tolerances()


@dataclass(frozen=True)
class Case:
    """The network before, the section after with its own network, and what moved."""

    last: Network
    section: Section
    whole: Network
    names: frozenset[str]

    @property
    def shapes(self) -> Mapping[str, Shape]:
        """The pieces of the water layer that moved, as they are now."""
        own = self.last.layers[Control.WATER].fabric.names
        return {n: self.section.by_name[n].shape for n in sorted(self.names) if n in own}

    def water(self) -> tuple[Layer, Layer]:
        """Return the water layer before and after."""
        return self.last.layers[Control.WATER], self.whole.layers[Control.WATER]


def case(number: int, edits: list[Edit]) -> Case:
    """Return what comes of edits that only move pieces; none that leave everything in its place."""
    before = settle(and_a_porch()[number % len(and_a_porch())])[0]
    after = before
    for edit in edits:
        after = edited(after, (edit[0] % 15, *edit[1:]))
    names = moved_between(before, after)
    assume(names)
    assert names
    return Case(question(before, PLAIN), after, question(after, PLAIN), names)


CASES = st.builds(case, st.integers(0, 40), st.lists(EDITS, min_size=1, max_size=3))


EVERYWHERE = np.array([[(-1e9, -1e9), (1e9, 1e9)]])


def grounds(made: Case, unsure: np.ndarray = EVERYWHERE) -> tuple[GroundAgain, Ground]:
    """Return the ground made again and the one made anew; by default any side may have changed."""
    assume(made.last.rain and made.last.rain.work and made.whole.rain and made.whole.rain.work)
    last, fresh = (each.rain.work[0].water.ground for each in (made.last, made.whole))
    water = made.whole.layers[Control.WATER]
    sides = Sides(water.airs[0].holds, unsure, over_whom(water))
    again = ground_again(last, made.shapes, sides)
    assume(again is not None)
    return again, fresh
