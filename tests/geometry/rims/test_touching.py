"""Which solids come near one another, and where."""

import pytest

from enclosure_app.geometry.rims.solids import area_solid, line_solid
from enclosure_app.geometry.rims.touching import touching_pairs

PIPE = area_solid(((40, 0), (60, 0), (60, 100), (40, 100)))
NEAR = line_solid([(0, 50), (38, 50)])
FAR = line_solid([(0, 20), (30, 20)])


def test_only_what_is_in_reach_is_told_with_the_place_between() -> None:
    ((a, b, place),) = touching_pairs([PIPE], [FAR, NEAR], 2.0)
    assert (a, b) == (0, 1)
    assert place == pytest.approx((39, 50))


def test_pairs_come_in_the_order_of_both_lists() -> None:
    others = [line_solid([(50, y), (90, y)]) for y in (80, 20, 50)]
    found = touching_pairs([PIPE, others[0]], others, 0.0)
    assert [(a, b) for a, b, _ in found] == [(0, 0), (0, 1), (0, 2), (1, 0)]


def test_nothing_near_nothing() -> None:
    assert touching_pairs([], [PIPE], 5) == []
    assert touching_pairs([PIPE], [], 5) == []
