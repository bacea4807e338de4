"""The ground after a move is the one that is made anew."""

import numpy as np
from hypothesis import assume, given

from enclosure_app.network.rain.ground_again import merged
from tests.network.moving import CASES, Case, grounds
from tests.network.random_layers import profile


def beside(table: dict[int, list[object]]) -> dict[int, list[object]]:
    return {key: found for key, found in table.items() if found}


@profile(12)
@given(CASES)
def test_it_is_the_same_as_made_anew(made: Case) -> None:
    again, fresh = grounds(made)
    for name in (
        "start",
        "end",
        "heading",
        "follower",
        "cut",
        "goes_on",
        "wets",
        "feet",
        "sheltered",
    ):
        assert np.array_equal(getattr(again.ground, name), getattr(fresh, name)), name
    assert again.ground.normals == fresh.normals
    assert beside(again.ground.flanks) == beside(fresh.flanks)
    assert beside(again.ground.bars) == beside(fresh.bars)


@profile(8)
@given(CASES)
def test_what_lies_beside_other_edges_stays_the_same_object(made: Case) -> None:
    assume(made.shapes)
    again, _ = grounds(made, unsure=np.zeros((0, 2, 2)))
    last = made.last.rain.work[0].water.ground
    assume(last.over == again.ground.over)
    near = set(again.edges.tolist())
    for edge, flanks in last.flanks.items():
        assert (again.ground.flanks.get(edge) is flanks) or edge in near
    assert set(np.flatnonzero((last.start != again.ground.start).any(axis=1)) // 2) <= near


def test_boxes_that_lie_close_together_are_taken_for_one() -> None:
    boxes = np.array([[(0, 0), (10, 100)], [(5, 50), (30, 180)]], dtype=float)
    assert merged(boxes).tolist() == [[[0, 0], [30, 180]]]
    apart = np.array([[(0, 0), (10, 10)], [(500, 0), (510, 10)]], dtype=float)
    assert merged(apart) is apart
