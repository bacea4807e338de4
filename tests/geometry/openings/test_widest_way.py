"""Ways whose width can be worked out by hand."""

from itertools import pairwise
from math import hypot, inf

import numpy as np
import pytest
import shapely
from shapely.geometry.base import BaseGeometry

from enclosure_app.geometry.openings.widest_way import MarkError, Way, way_and_rooms

Point = tuple[float, float]

FRAME = [(0.0, 0.0), (1000.0, 0.0), (1000.0, 600.0), (0.0, 600.0)]
ABOVE, BELOW = (500.0, 480.0), (500.0, 120.0)
TOUCH = 2.0


def line(*points: Point) -> BaseGeometry:
    return shapely.LineString(points)


def box(left: float, low: float, right: float, high: float) -> BaseGeometry:
    return shapely.box(left, low, right, high)


def way(*solids: BaseGeometry, bridges: list[tuple[Point, Point]] | None = None) -> Way:
    return way_and_rooms(FRAME, solids, bridges or [], ([ABOVE], [BELOW]), TOUCH)[0]


LEFT, RIGHT = line((0, 300), (485, 300)), line((515, 300), (1000, 300))
WIDTHS = {
    "a gap between two ends": ([LEFT, RIGHT], 30.0),
    "no gap": ([LEFT, line((485, 300), (1000, 300))], 0.0),
    "ends no further apart than touch": ([line((0, 300), (513, 300)), RIGHT], 0.0),
    "ends a little further apart": ([line((0, 300), (512.5, 300)), RIGHT], 2.5),
    "sheets side by side": ([line((0, 300), (600, 300)), line((400, 260), (1000, 260))], 40.0),
    "an end over the middle of a sheet": (
        [line((0, 300), (500, 300), (500, 235)), line((300, 200), (1000, 210))],
        # The foot of (500, 235) on the line through (300, 200) that rises 1 in 70.
        (35 - 200 / 70) / hypot(1, 1 / 70),
    ),
    "a sheet that stops short of the frame": ([line((0, 300), (940, 300))], 60.0),
    "a sheet that stops short in a corner of the frame": (
        [line((0, 300), (500, 300), (960, 30))],
        30.0,
    ),
    "a disc between two ends": (
        [
            line((0, 300), (400, 300)),
            shapely.Point(500, 300).buffer(60),
            line((585, 300), (1000, 300)),
        ],
        40.0,
    ),
    "a disc over a wall": (
        [
            line((0, 200), (1000, 200)),
            line((0, 300), (300, 300)),
            shapely.Point(300, 300).buffer(55),
        ],
        0.0,
    ),
    "an island in a gap leaves the wider side": (
        [line((0, 300), (400, 300)), box(420, 290, 470, 310), line((500, 300), (1000, 300))],
        30.0,
    ),
    "two doors in a row: the narrower counts": (
        [LEFT, RIGHT, line((0, 200), (700, 200)), line((712, 200), (1000, 200))],
        12.0,
    ),
    "two doors side by side: the wider counts": (
        [line((0, 300), (200, 300)), line((212, 300), (485, 300)), RIGHT],
        30.0,
    ),
    "lines that cross": ([line((0, 250), (600, 350)), line((400, 380), (1000, 200))], 0.0),
    "lines that nearly meet in a tee": (
        [line((0, 300), (700, 300)), line((400, 293), (400, 0)), line((400, 200), (1000, 200))],
        0.0,
    ),
    "a sheet that leaves the frame and comes back": (
        [line((-50, 300), (300, 300), (300, -40), (700, -40), (700, 300), (1100, 300))],
        400.0,
    ),
    "a bay whose mouth is narrower than its inside": (
        [line((480, 200), (300, 200), (300, 50), (700, 50), (700, 200), (525, 200))],
        45.0,
    ),
    "a solid board with a slot": (
        [box(0, 250, 480, 350).union(box(496, 250, 1000, 350))],
        16.0,
    ),
}


@pytest.mark.parametrize(("solids", "width"), WIDTHS.values(), ids=WIDTHS)
def test_width(solids: list[BaseGeometry], width: float) -> None:
    assert way(*solids).width == pytest.approx(width, abs=2e-6)


def test_the_narrowest_passage_has_the_ends_of_the_gap() -> None:
    found = way(LEFT, RIGHT)
    assert found.narrowest is not None
    assert sorted(found.narrowest)[0] == pytest.approx((485, 300))
    assert sorted(found.narrowest)[1] == pytest.approx((515, 300))


def test_the_narrowest_passage_may_end_on_the_middle_of_a_wall() -> None:
    found = way(line((0, 300), (500, 300), (500, 230)), line((300, 200), (1000, 200)))
    assert found.narrowest is not None
    assert sorted(found.narrowest)[0] == pytest.approx((500, 200))
    assert sorted(found.narrowest)[1] == pytest.approx((500, 230))


def test_the_path_leads_from_outside_to_inside_through_the_gap() -> None:
    found = way(LEFT, RIGHT)
    assert found.path[0] == ABOVE
    assert found.path[-1] == BELOW
    crossing = shapely.LineString(found.path).intersection(line((485, 300), (515, 300)))
    assert (crossing.x, crossing.y) == pytest.approx((500, 300))


def test_a_bridge_across_the_only_gap_closes_it() -> None:
    assert way(LEFT, RIGHT, bridges=[((485, 300), (515, 300))]).width == 0


def test_a_bridge_across_a_corridor_closes_it() -> None:
    upper, lower = line((0, 300), (600, 300)), line((400, 260), (1000, 260))
    assert way(upper, lower, bridges=[((500, 300), (500, 260))]).width == 0


def test_no_distance_is_measured_to_a_bridge() -> None:
    """A post stands 20 mm from the middle of a bridge and 29 mm from the ends of its sheets."""
    sheets = line((0, 300), (460, 300)), line((502, 300), (600, 300)), line((600, 300), (600, 600))
    post = line((481, 280), (481, 0))
    bridge = ((460.0, 300.0), (502.0, 300.0))
    marks = [(300.0, 150.0)], [(800.0, 150.0)]
    found = way_and_rooms(FRAME, [*sheets, post], [bridge], marks, TOUCH)[0]
    assert found.width == pytest.approx(hypot(21, 20))


def test_a_bridge_that_crosses_others_still_closes() -> None:
    posts = line((0, 300), (480, 300)), line((520, 300), (1000, 300)), line((500, 340), (500, 345))
    bridges: list[tuple[Point, Point]] = [((480, 300), (500, 340)), ((500, 340), (520, 300))]
    bridges += [((480, 300), (520, 300))]
    assert way(*posts, bridges=bridges).width == 0
    assert way(*posts, bridges=bridges[:1]).width == pytest.approx(40, abs=1e-6)


def test_a_bridge_may_end_off_the_wall_by_a_rounding() -> None:
    bridge = ((485.0000004, 300.0000003), (514.9999998, 299.9999996))
    assert way(LEFT, RIGHT, bridges=[bridge]).width == 0


def test_a_bridge_through_a_third_sheet_closes_on_both_sides_of_it() -> None:
    between = line((500, 340), (500, 260))
    assert way(LEFT, RIGHT, between).width == pytest.approx(15)
    assert way(LEFT, RIGHT, between, bridges=[((485, 300), (515, 300))]).width == 0


@pytest.mark.parametrize("outside", [(400.0, 300.5), (484.9, 300.2), (0.6, 300.7), (500.0, 301.0)])
def test_a_mark_close_to_a_sheet_or_in_a_corner_gives_the_same_width(outside: Point) -> None:
    found = way_and_rooms(FRAME, [LEFT, RIGHT], [], ([outside], [BELOW]), TOUCH)[0]
    assert found.width == pytest.approx(30, abs=1e-6)
    assert found.path[0] == pytest.approx(outside)


def test_the_path_from_a_mark_behind_a_corner_crosses_nothing() -> None:
    bay = line((0, 300), (480, 300), (480, 330), (300, 330), (300, 310), (470, 310))
    found = way_and_rooms(FRAME, [bay, RIGHT], [], ([(305.0, 320.0)], [BELOW]), TOUCH)[0]
    assert found.width == pytest.approx(10, abs=1e-6)
    assert shapely.distance(shapely.LineString(found.path), bay) > 0


def test_the_widest_way_over_all_pairs_of_marks_counts() -> None:
    room = line((700, 300), (700, 600))
    marks = [(900.0, 500.0), (200.0, 500.0)], [BELOW, (850.0, 100.0)]
    solids = [
        line((0, 300), (485, 300)),
        line((515, 300), (800, 300)),
        line((810, 300), (1000, 300)),
    ]
    assert way_and_rooms(FRAME, [*solids, room], [], marks, TOUCH)[0].width == pytest.approx(
        30, abs=1e-6
    )
    right_only = ([(900.0, 500.0)], marks[1])
    assert way_and_rooms(FRAME, [*solids, room], [], right_only, TOUCH)[0].width == pytest.approx(
        10, abs=1e-6
    )


def test_a_mark_in_the_hole_of_a_solid_is_shut_in() -> None:
    ring = box(350, 150, 650, 450).difference(box(400, 200, 600, 400))
    marks = [(500.0, 300.0)], [(100.0, 100.0)]
    assert way_and_rooms(FRAME, [ring], [], marks, TOUCH)[0].width == 0
    slot = ring.difference(box(350, 300, 400, 321))
    assert way_and_rooms(FRAME, [slot], [], marks, TOUCH)[0].width == pytest.approx(21, abs=1e-6)


def test_a_frame_with_a_waist_bounds_the_way() -> None:
    waist = [
        (0, 0),
        (400, 0),
        (400, 280),
        (600, 280),
        (600, 0),
        (1000, 0),
        (1000, 600),
        (600, 600),
    ]
    waist += [(600, 330), (400, 330), (400, 600), (0, 600)]
    found = way_and_rooms(waist, [], [], ([(200.0, 300.0)], [(800.0, 300.0)]), TOUCH)[0]
    assert found.width == pytest.approx(50, abs=1e-6)
    post = line((500, 310), (500, 318))
    found = way_and_rooms(waist, [post], [], ([(200.0, 300.0)], [(800.0, 300.0)]), TOUCH)[0]
    assert found.width == pytest.approx(30, abs=1e-6)


def test_with_nothing_in_the_way_the_room_round_the_marks_counts() -> None:
    """The frame is 600 mm high, so no disc wider than that fits."""
    found = way_and_rooms(FRAME, [], [], ([(300.0, 480.0)], [(640.0, 120.0)]), TOUCH)[0]
    assert found.width == pytest.approx(600, rel=1e-4)
    assert found.width < inf


def test_coordinates_far_from_the_origin_lose_nothing() -> None:
    far = 1e9
    frame = [(x + far, y - far) for x, y in FRAME]
    solids = [shapely.transform(s, lambda xy: xy + np.array([far, -far])) for s in (LEFT, RIGHT)]
    marks = [(500.0 + far, 480.0 - far)], [(500.0 + far, 120.0 - far)]
    found = way_and_rooms(frame, solids, [], marks, TOUCH)[0]
    assert found.width == pytest.approx(30, abs=1e-6)
    assert found.path[0] == marks[0][0]


@pytest.mark.parametrize("mark", [(485.0, 300.0), (200.0, 300.0), (0.0, 10.0), (-5.0, 100.0)])
def test_a_mark_on_an_obstacle_or_beyond_the_frame_is_named(mark: Point) -> None:
    with pytest.raises(MarkError) as caught:
        way_and_rooms(FRAME, [LEFT, RIGHT], [], ([ABOVE], [mark]), TOUCH)[0]
    assert caught.value.place == mark


def test_a_mark_inside_a_solid_is_named() -> None:
    with pytest.raises(MarkError) as caught:
        way_and_rooms(FRAME, [box(400, 50, 600, 250)], [], ([ABOVE], [BELOW]), TOUCH)[0]
    assert caught.value.place == BELOW


def test_a_side_without_a_mark_is_refused() -> None:
    with pytest.raises(ValueError, match="mark on each side"):
        way_and_rooms(FRAME, [LEFT], [], ([ABOVE], []), TOUCH)[0]


def test_a_foot_on_the_frame_is_seen_although_rounding_moves_it_off() -> None:
    """The library's triangulation of this frame, turned by 4 degrees, has a flat triangle there."""
    angle = np.radians(4)
    turn = np.array([[np.cos(angle), np.sin(angle)], [-np.sin(angle), np.cos(angle)]])

    def turned(*points: Point) -> list[Point]:
        return [(float(x), float(y)) for x, y in np.array(points) @ turn]

    frame = turned((0, 0), (600, 0), (600, 400), (0, 400))
    corners = [(15, 140), *((15 + 73.125 * k, 210) for k in range(1, 9))]
    pieces = [line(*turned(a, b)) for a, b in pairwise(corners)]
    marks = turned((99, 311)), turned((145, 107))
    assert way_and_rooms(frame, pieces, [], marks, TOUCH)[0].width == pytest.approx(15, abs=2e-6)
