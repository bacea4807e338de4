"""Edits of lines: split and join, trim and extend, offset."""

from collections.abc import Callable
from math import cos, dist, radians, sin

import pytest
import shapely
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from enclosure_app.errors import EnclosureError
from enclosure_app.model import edits
from enclosure_app.model.edits import Beside, End
from enclosure_app.model.place import Area, Line, Points
from enclosure_app.model.project import Project

House = Callable[..., Project]

ANGLE = Line(((0.0, 0.0), (50.0, 0.0), (50.0, 50.0)), 1.5)
RING = Line(((0.0, 0.0), (50.0, 0.0), (50.0, 50.0), (0.0, 50.0)), closed=True)


@st.composite
def bends(draw: st.DrawFn) -> Points:
    """Return a run that goes on forward in steps of 20 mm or more, never sharper than 120°."""
    x, y, heading = draw(st.floats(-1e3, 1e3)), draw(st.floats(-1e3, 1e3)), 0.0
    points = [(x, y)]
    for _ in range(draw(st.integers(1, 6))):
        heading = draw(st.floats(-60, 60))
        length = draw(st.floats(20, 300))
        x, y = x + length * cos(radians(heading)), y + length * sin(radians(heading))
        points.append((x, y))
    return tuple(points)


def _line(project: Project, name: str) -> Line:
    shape = edits.piece_of(project, "Eave", name).shape
    assert isinstance(shape, Line)
    return shape


def _names(project: Project) -> list[str]:
    return [piece.name for piece in project.sections[0].pieces]


@given(bends(), st.floats(0.01, 0.99))
@settings(max_examples=100)
def test_a_line_split_and_joined_is_the_same_line(
    house: House, points: Points, share: float
) -> None:
    drawn = shapely.LineString(points)
    at = drawn.interpolate(share, normalized=True)
    before = house(a=Line(points, 1.5), b=ANGLE)
    apart = edits.split(before, "Eave", "a", (at.x, at.y))
    assert _names(apart) == ["a", "drawn-1", "b"]
    assert dist(_line(apart, "a").points[-1], (at.x, at.y)) < 1e-6
    assert _line(apart, "drawn-1").points[0] == _line(apart, "a").points[-1]
    for one, other in (("a", "drawn-1"), ("drawn-1", "a")):
        again = edits.join(apart, "Eave", one, other)
        joined = _line(again, one)
        assert _names(again) == [one, "b"]
        assert shapely.hausdorff_distance(shapely.LineString(joined.points), drawn) < 1e-6
        assert dist(joined.points[0], points[0]) == dist(joined.points[-1], points[-1]) == 0
        assert joined.width == 1.5
        assert again.sections[0].by_name["b"] is before.sections[0].by_name["b"]
        assert again.sections[1] is before.sections[1]


@given(bends(), st.floats(0.5, 5.0), st.sampled_from([1, -1]))
@settings(max_examples=150)
def test_an_offset_line_is_that_far_away_all_along_and_on_its_side(
    house: House, points: Points, distance: float, side: int
) -> None:
    """A run that never turns by more than 60 degrees has room for 5 mm beside 20 mm steps."""
    (ax, ay), (bx, by) = points[:2]
    along = dist(points[0], points[1])
    near = ((ax + bx) / 2 - side * (by - ay) / along, (ay + by) / 2 + side * (bx - ax) / along)
    after = edits.offset(house(a=Line(points)), 0, "a", Beside(distance, near, "osb"))
    beside = shapely.LineString(_line(after, "drawn-1").points)
    source = shapely.LineString(points)
    middles = shapely.points([_middle(a, b) for a, b in _steps(beside)])
    for place in [*middles, *map(shapely.Point, (beside.coords[0], beside.coords[-1]))]:
        assert source.distance(place) == pytest.approx(distance, abs=1e-6)
    assert source.distance(beside) == pytest.approx(distance, abs=1e-6)
    assert len(beside.coords) == len(points)
    start = (beside.coords[0][0] - ax, beside.coords[0][1] - ay)
    assert ((bx - ax) * start[1] - (by - ay) * start[0]) * side > 0


def _steps(line: shapely.LineString) -> list[tuple[tuple[float, ...], tuple[float, ...]]]:
    return list(zip(line.coords[:-1], line.coords[1:], strict=True))


def _middle(a: tuple[float, ...], b: tuple[float, ...]) -> tuple[float, float]:
    return ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2)


def test_an_offset_corner_is_mitred_on_both_sides(house: House) -> None:
    project = house(a=ANGLE)
    inner = edits.offset(project, 0, "a", Beside(3.0, (20.0, 20.0), "osb"))
    assert _line(inner, "drawn-1") == Line(((0.0, 3.0), (47.0, 3.0), (47.0, 50.0)))
    outer = edits.offset(project, 0, "a", Beside(3.0, (90.0, -20.0), "osb"))
    assert _line(outer, "drawn-1") == Line(((0.0, -3.0), (53.0, -3.0), (53.0, 50.0)))
    assert inner.sections[0].pieces[-1].product == "osb"
    assert inner.sections[0].pieces[0] is project.sections[0].pieces[0]


def test_an_area_or_a_closed_line_is_gone_round_on_either_side(house: House) -> None:
    board = Area(RING.points)
    for shape in (RING, board, Line(RING.points[::-1], closed=True), Area(RING.points[::-1])):
        project = house(a=shape)
        for side, low, high in (((25.0, 10.0), 3.0, 47.0), ((-9.0, 10.0), -3.0, 53.0)):
            ring = _line(edits.offset(project, 0, "a", Beside(3.0, side, "osb")), "drawn-1")
            assert ring.closed
            corners = {(low, low), (low, high), (high, low), (high, high)}
            assert {(round(x, 9), round(y, 9)) for x, y in ring.points} == corners


def test_one_edge_of_a_board_can_be_offset_by_its_points(house: House) -> None:
    edge = ((50.0, 0.0), (50.0, 50.0))
    after = edits.offset(house(a=Area(RING.points)), 0, edge, Beside(3.0, (60.0, 0.0), "osb"))
    assert _line(after, "drawn-1") == Line(((53.0, 0.0), (53.0, 50.0)))


@pytest.mark.parametrize("distance", [0.0, -1.0, float("nan"), float("inf")])
def test_an_offset_needs_a_distance(house: House, distance: float) -> None:
    with pytest.raises(EnclosureError, match="mm beside another: give more than 0"):
        edits.offset(house(a=ANGLE), 0, "a", Beside(distance, (0.0, 9.0), "osb"))


def test_an_offset_without_room_is_refused(house: House) -> None:
    with pytest.raises(EnclosureError, match="There is no room for one line 30 mm beside that"):
        edits.offset(house(a=RING), 0, "a", Beside(30.0, (25.0, 25.0), "osb"))


def test_a_split_keeps_the_name_at_the_start_and_what_was_said_of_joints(house: House) -> None:
    project = edits.declare_sealed(house(a=ANGLE, b=RING), 0, "a", "b")
    after = edits.split(project, 0, "a", (30.0, 4.0))
    assert _line(after, "a") == Line(((0.0, 0.0), (30.0, 0.0)), 1.5)
    assert _line(after, "drawn-1") == Line(((30.0, 0.0), (50.0, 0.0), (50.0, 50.0)), 1.5)
    assert after.sections[0].by_name["drawn-1"].layer == "A-WALL"
    assert after.sections[0].sealed == {("a", "b"), ("b", "drawn-1")}
    assert edits.join(after, 0, "a", "drawn-1").sections[0].sealed == {("a", "b")}


@pytest.mark.parametrize("at", [(0.0, 0.0), (-5.0, 2.0), (50.0, 70.0)])
def test_a_line_is_not_split_at_its_end(house: House, at: tuple[float, float]) -> None:
    with pytest.raises(EnclosureError, match='"a" ends there: click where it is to be cut'):
        edits.split(house(a=ANGLE), 0, "a", at)


def test_a_closed_line_is_opened_where_it_is_split(house: House) -> None:
    points = _line(edits.split(house(a=RING), 0, "a", (25.0, -1.0)), "a")
    corners = RING.points
    assert points == Line(((25.0, 0.0), *corners[1:], corners[0], (25.0, 0.0)))
    at_seam = _line(edits.split(house(a=RING), 0, "a", (0.0, 0.0)), "a")
    assert at_seam == Line((*corners, corners[0]))


def test_an_area_is_no_line(house: House) -> None:
    with pytest.raises(EnclosureError, match='"a" is an area; only a line can be changed'):
        edits.split(house(a=Area(RING.points)), 0, "a", (1.0, 0.0))


def test_the_part_that_was_clicked_is_trimmed_away(house: House) -> None:
    """Posts stand at 10, and at 30 where one only touches."""
    posts = {"p": Line(((10.0, -9.0), (10.0, 9.0))), "q": Line(((30.0, 0.0), (30.0, 9.0)))}
    project = house(a=ANGLE, **posts)
    start = edits.trim(project, 0, "a", (5.0, 1.0))
    assert _line(start, "a") == Line(((10.0, 0.0), (50.0, 0.0), (50.0, 50.0)), 1.5)
    end = edits.trim(project, 0, "a", (50.0, 20.0))
    assert _line(end, "a") == Line(((0.0, 0.0), (30.0, 0.0)), 1.5)
    middle = edits.trim(project, 0, "a", (20.0, 0.0))
    assert _names(middle) == ["a", "drawn-1", "p", "q"]
    assert _line(middle, "a") == Line(((0.0, 0.0), (10.0, 0.0)), 1.5)
    assert _line(middle, "drawn-1") == Line(((30.0, 0.0), (50.0, 0.0), (50.0, 50.0)), 1.5)
    by_one = edits.trim(project, 0, "a", (20.0, 0.0), against=["p"])
    assert _line(by_one, "a") == Line(((0.0, 0.0), (10.0, 0.0)), 1.5)
    assert middle.sections[0].by_name["p"] is project.sections[0].by_name["p"]


def test_a_line_is_trimmed_at_the_outline_of_an_area(house: House) -> None:
    board = Area(((20.0, -5.0), (30.0, -5.0), (30.0, 5.0), (20.0, 5.0)))
    after = edits.trim(house(a=ANGLE, board=board), 0, "a", (25.0, 0.0))
    assert _line(after, "a").points == ((0.0, 0.0), (20.0, 0.0))
    assert _line(after, "drawn-1").points == ((30.0, 0.0), (50.0, 0.0), (50.0, 50.0))


@pytest.mark.parametrize(
    ("near", "left"),
    [
        ((45.0, 0.0), ((40.0, 50.0), (0.0, 50.0), (0.0, 0.0), (40.0, 0.0))),
        ((0.0, 20.0), ((40.0, 0.0), (50.0, 0.0), (50.0, 50.0), (40.0, 50.0))),
    ],
)
def test_a_closed_line_is_opened_by_trimming(house: House, near: Points, left: Points) -> None:
    project = house(a=RING, post=Line(((40.0, -9.0), (40.0, 59.0))))
    assert _line(edits.trim(project, 0, "a", near), "a") == Line(left)


def test_a_line_is_not_trimmed_where_nothing_cuts_it(house: House) -> None:
    touching = Line(((0.0, 0.0), (0.0, 9.0)))
    for other in (Line(((0.0, 60.0), (20.0, 60.0))), touching):
        with pytest.raises(EnclosureError, match='Nothing cuts "a" there: draw the line to trim'):
            edits.trim(house(a=ANGLE, b=other), 0, "a", (10.0, 0.0))
    with pytest.raises(EnclosureError, match='Nothing cuts "a" there'):
        edits.trim(house(a=RING, b=Line(((25.0, 25.0), (25.0, 60.0)))), 0, "a", (10.0, 0.0))


def test_a_line_is_extended_straight_on_to_the_first_that_it_meets(house: House) -> None:
    beam = Area(((0.0, 80.0), (99.0, 80.0), (99.0, 90.0), (0.0, 90.0)))
    project = house(a=ANGLE, beam=beam)
    after = edits.extend(project, 0, "a", End.END, "beam")
    assert _line(after, "a") == Line(((0.0, 0.0), (50.0, 0.0), (50.0, 80.0)), 1.5)
    start = edits.extend(project, 0, "a", End.START, ((-7.0, -9.0), (-7.0, 9.0)))
    assert _line(start, "a") == Line(((-7.0, 0.0), (50.0, 0.0), (50.0, 50.0)), 1.5)
    assert after.sections[0].by_name["beam"] is project.sections[0].by_name["beam"]


def test_a_line_that_does_not_meet_the_other_is_not_extended(house: House) -> None:
    project = house(a=ANGLE, b=Line(((60.0, 80.0), (99.0, 80.0))), ring=RING)
    with pytest.raises(
        EnclosureError, match='"a" does not meet "b" when it goes straight on from'
    ):
        edits.extend(project, 0, "a", End.END, "b")
    with pytest.raises(EnclosureError, match=r"does not meet that line .* from its start"):
        edits.extend(project, 0, "a", End.START, ((5.0, -9.0), (5.0, 9.0)))
    with pytest.raises(EnclosureError, match='"ring" is closed and has no end: split it first'):
        edits.extend(project, 0, "ring", End.END, "b")


@given(bends(), bends(), st.booleans(), st.booleans())
@settings(max_examples=60)
def test_lines_that_meet_are_joined_whichever_way_they_run(
    house: House, first: Points, second: Points, turn_first: bool, turn_second: bool
) -> None:
    dx, dy = first[-1][0] - second[0][0], first[-1][1] - second[0][1]
    second = (first[-1], *((x + dx, y + dy) for x, y in second[1:]))
    assume(dist(first[0], second[-1]) > 1)
    a = first[::-1] if turn_first else first
    b = second[::-1] if turn_second else second
    joined = _line(edits.join(house(a=Line(a), b=Line(b)), 0, "a", "b"), "a").points
    whole = first + second[1:]
    ends = (whole[-1], whole[0]) if turn_first else (whole[0], whole[-1])
    assert (joined[0], joined[-1]) == ends
    length = shapely.LineString(joined).length
    assert length == pytest.approx(shapely.LineString(whole).length, abs=1e-5)


def test_ends_a_drafting_slop_apart_are_joined_by_both_their_points(house: House) -> None:
    project = house(a=Line(((0.0, 0.0), (10.0, 0.0))), b=Line(((11.5, 0.5), (20.0, 9.0))))
    after = edits.join(project, 0, "a", "b")
    assert _line(after, "a").points == ((0.0, 0.0), (10.0, 0.0), (11.5, 0.5), (20.0, 9.0))
    assert after.sections[0].by_name["a"].handles == ("a", "b")
    with pytest.raises(EnclosureError, match='ends of "a" and "b" are more than 1 mm apart: move'):
        edits.join(project, 0, "a", "b", 1.0)


def test_a_line_joined_with_itself_is_closed(house: House) -> None:
    run = (*RING.points, (0.0, 0.0))
    assert _line(edits.join(house(a=Line(run)), 0, "a", "a"), "a") == RING
    with pytest.raises(EnclosureError, match='two ends of "a" are more than 2 mm apart'):
        edits.join(house(a=ANGLE), 0, "a", "a")


def test_lines_of_two_products_or_without_ends_are_not_joined(house: House) -> None:
    project = house(a=ANGLE, b=Line(((50.0, 50.0), (90.0, 50.0))), ring=RING)
    other = edits.set_product(project, 0, ["b"], "osb")
    with pytest.raises(EnclosureError, match='"a" and "b" are not of one product'):
        edits.join(other, 0, "a", "b")
    with pytest.raises(EnclosureError, match='"ring" is closed and has no end to join'):
        edits.join(project, 0, "a", "ring")
