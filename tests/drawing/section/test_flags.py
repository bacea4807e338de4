"""Flags in the lanes: in the nearest lane, clear of each other, on leaders that never cross."""

from itertools import combinations, pairwise, permutations
from math import dist

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from enclosure_app.drawing.marks import Flag
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.section.flags import (
    FLAG_HEIGHT,
    FLAG_WIDTH,
    LANE,
    Site,
    capacity,
    place_flags,
    spaced,
)
from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.finding import Severity
from enclosure_app.model.place import Point

AREA = Box(30, 60, 230, 240)
SHOWN = (Severity.FAULT, Severity.DOUBT, Severity.REMARK)
inside = st.tuples(st.integers(31 * 4, 229 * 4), st.integers(61 * 4, 239 * 4)).map(
    lambda p: (p[0] / 4, p[1] / 4)
)
anywhere = st.tuples(st.floats(30.1, 229.9), st.floats(60.1, 239.9))
crowd = st.lists(inside | anywhere, min_size=1, max_size=44, unique=True)


def flags_for(places: list[Point], ring: float = 0.0) -> tuple[Flag, ...]:
    sites = [Site(i + 1, p, SHOWN[i % 3], ring) for i, p in enumerate(places)]
    return place_flags(sites, AREA, load_theme())


def turn(a: Point, b: Point, c: Point) -> float:
    """Twice the signed area of a triangle, over its longest side: a distance in mm."""
    area = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
    return area / max(dist(a, b), dist(b, c), dist(a, c), 1e-12)


def cross(a: Point, b: Point, c: Point, d: Point) -> bool:
    """Whether two segments cross each other's inner parts by more than a thousandth of a mm."""
    near = 1e-3
    left, right = turn(a, b, c), turn(a, b, d)
    over, under = turn(c, d, a), turn(c, d, b)
    apart = min(abs(left), abs(right), abs(over), abs(under)) > near
    return apart and left * right < 0 and over * under < 0


def legs(flag: Flag) -> list[tuple[Point, Point]]:
    assert flag.leader is not None
    return list(pairwise(flag.leader.points))


@settings(max_examples=80, deadline=None)
@given(crowd, st.sampled_from([0.0, 3.0]))
def test_no_two_leaders_cross(places: list[Point], ring: float) -> None:
    for one, other in combinations(flags_for(places, ring), 2):
        for a, b in legs(one):
            for c, d in legs(other):
                assert not cross(a, b, c, d)


@settings(max_examples=80, deadline=None)
@given(crowd)
def test_flags_do_not_overlap_and_stand_in_the_lanes(places: list[Point]) -> None:
    flags = flags_for(places)
    lanes = AREA.inset(-LANE)
    for flag in flags:
        x, y = flag.at
        assert all(lanes.holds(corner) for corner in flag.shape)
        inner = AREA.inset(-FLAG_WIDTH / 2 + 0.01, -FLAG_HEIGHT / 2 + 0.01)
        assert not (inner.left < x < inner.right and inner.bottom < y < inner.top)
    for one, other in combinations(flags, 2):
        dx, dy = abs(one.at[0] - other.at[0]), abs(one.at[1] - other.at[1])
        assert dx >= FLAG_WIDTH - 1e-6 or dy >= FLAG_HEIGHT - 1e-6


@settings(max_examples=50, deadline=None)
@given(crowd)
def test_no_leader_runs_through_a_flag_of_another(places: list[Point]) -> None:
    flags = flags_for(places)
    for one, other in permutations(flags, 2):
        x, y = other.at
        for a, b in legs(one):
            for k in range(11):
                px, py = a[0] + (b[0] - a[0]) * k / 10, a[1] + (b[1] - a[1]) * k / 10
                outside = max(abs(px - x) / FLAG_WIDTH, abs(py - y) / FLAG_HEIGHT)
                assert outside >= 0.5 - 1e-6


@settings(max_examples=50, deadline=None)
@given(crowd, st.sampled_from([0.0, 3.0]))
def test_a_leader_starts_at_its_own_place_and_ends_at_its_own_flag(
    places: list[Point], ring: float
) -> None:
    for place, flag in zip(places, flags_for(places, ring), strict=True):
        assert flag.leader is not None
        assert dist(flag.leader.points[0], place) <= ring + 1e-6
        assert dist(flag.leader.points[-1], flag.at) <= FLAG_WIDTH / 2 + 1e-6


@pytest.mark.parametrize(
    ("place", "flag"),
    [((40, 150), "left"), ((220, 150), "right"), ((130, 230), "top"), ((130, 65), "bottom")],
)
def test_a_flag_stands_in_the_lane_nearest_to_its_place(place: Point, flag: str) -> None:
    (x, y) = flags_for([place])[0].at
    where = {
        "left": x < AREA.left,
        "right": x > AREA.right,
        "top": y > AREA.top,
        "bottom": y < AREA.bottom,
    }
    assert [name for name, there in where.items() if there] == [flag]


def test_a_lone_flag_stands_level_with_its_place() -> None:
    assert flags_for([(40.0, 150.0)])[0].at[1] == pytest.approx(150.0)


def test_more_flags_than_one_lane_takes_go_to_both_sides() -> None:
    places = [(35.0, 70.0 + 3 * k) for k in range(50)]
    xs = [flag.at[0] for flag in flags_for(places)]
    assert any(x < AREA.left for x in xs)
    assert any(x > AREA.right for x in xs)


def test_more_flags_than_there_is_room_for_are_refused() -> None:
    count = capacity(AREA) + 1
    with pytest.raises(ValueError, match=f"{count} flags do not fit"):
        flags_for([(100.0, 61 + k * 0.5) for k in range(count)])


@given(st.lists(st.floats(-50, 250), min_size=1, max_size=20))
def test_spaced_places_keep_their_order_and_distance(wanted: list[float]) -> None:
    wanted.sort()
    places = spaced(wanted, 7.0, (0.0, 200.0))
    assert all(b - a >= 7.0 - 1e-6 for a, b in pairwise(places))
    assert places[0] >= -1e-6
    assert places[-1] <= 200 + 1e-6


def test_places_with_room_stay_where_they_are_wanted() -> None:
    assert spaced([10.0, 30.0, 100.0], 7.0, (0.0, 200.0)) == [10.0, 30.0, 100.0]


def test_neighbours_that_are_too_close_move_apart_evenly() -> None:
    assert spaced([50.0, 52.0], 7.0, (0.0, 200.0)) == pytest.approx([47.5, 54.5])
