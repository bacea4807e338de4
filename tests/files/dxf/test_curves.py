"""Flattened curves stay within the sagitta of the true curve, measured against their equations."""

import math
from itertools import pairwise

import pytest
from ezdxf.math import BSpline, Vec3
from hypothesis import given, settings
from hypothesis import strategies as st

from enclosure_app.files.dxf.curves import (
    NumberError,
    bulge_points,
    ellipse_points,
    is_full,
    join_ends,
    spline_points,
    stretch,
    turn,
    without_repeats,
)
from enclosure_app.model.place import Point

LENGTHS = st.floats(0.5, 2_000)
ANGLES = st.floats(-360, 360)
SAGITTAS = st.sampled_from([0.01, 0.1, 3.0])
NEAR = st.tuples(st.floats(-300, 300), st.floats(-300, 300))
PLACES = st.tuples(st.floats(-1e5, 1e5), st.floats(-1e5, 1e5))


@st.composite
def chords(draw: st.DrawFn) -> tuple[Point, Point]:
    """Draw two different points."""
    x, y = draw(PLACES)
    length, angle = draw(LENGTHS), math.radians(draw(ANGLES))
    return (x, y), (x + length * math.cos(angle), y + length * math.sin(angle))


@st.composite
def half_axes(draw: st.DrawFn) -> tuple[Point, Point]:
    """Draw the half axes of an ellipse."""
    major, ratio, angle = draw(LENGTHS), draw(st.floats(0.01, 1)), math.radians(draw(ANGLES))
    x, y = major * math.cos(angle), major * math.sin(angle)
    return (x, y), (-ratio * y, ratio * x)


def circle_through(start: Point, end: Point, bulge: float) -> tuple[complex, float]:
    """Return centre and radius of the arc from the definition: bulge = tan(angle / 4)."""
    one, two = complex(*start), complex(*end)
    half_angle = 2 * math.atan(bulge)
    radius = abs(two - one) / (2 * math.sin(abs(half_angle)))
    to_center = 1j * (two - one) / abs(two - one) * radius * math.cos(half_angle)
    return (one + two) / 2 + math.copysign(1, bulge) * to_center, radius


@settings(deadline=None, max_examples=60)
@given(chords(), st.floats(0.01, 3), st.booleans(), SAGITTAS)
def test_a_bulge_stays_within_the_sagitta_of_its_arc(
    chord: tuple[Point, Point], size: float, right: bool, sagitta: float
) -> None:
    """Each chord's middle lies off the circle by its sagitta, its ends by nothing."""
    start, end = chord
    bulge = -size if right else size
    center, radius = circle_through(start, end, bulge)
    points = [complex(*place) for place in (start, *bulge_points(start, end, bulge, sagitta))]
    slack = 1e-9 * (abs(center) + radius)
    for one, two in pairwise(points):
        assert abs(abs(one - center) - radius) <= slack
        middle = (one + two) / 2
        assert radius - abs(middle - center) <= sagitta + slack


@settings(deadline=None, max_examples=60)
@given(chords(), st.floats(0.01, 3), SAGITTAS)
def test_a_bulge_covers_the_length_of_its_arc(
    chord: tuple[Point, Point], bulge: float, sagitta: float
) -> None:
    """Left and right, short and long way round: the polygon's length says which arc it is."""
    start, end = chord
    _, radius = circle_through(start, end, bulge)
    points = [start, *bulge_points(start, end, bulge, sagitta)]
    walked = sum(math.dist(one, two) for one, two in pairwise(points))
    arc = radius * 4 * math.atan(bulge)
    # Chords over at most 30 degrees are at most 1.2 % shorter than their arcs.
    assert 0.985 * arc - 4 * sagitta <= walked <= arc * (1 + 1e-9) + 1e-6
    assert points[-1] == end


def test_a_half_circle_bulges_to_the_right_of_its_direction_anticlockwise() -> None:
    """Bulge 1 from (0, 0) to (2, 0) runs anticlockwise: down through (1, -1)."""
    points = bulge_points((0, 0), (2, 0), 1.0, 0.01)
    lowest = min(points, key=lambda point: point[1])
    assert lowest == pytest.approx((1.0, -1.0), abs=1e-9)


def test_a_bulge_that_no_one_can_see_is_a_straight_line() -> None:
    assert bulge_points((0, 0), (10, 0), 1e-9, 0.1) == [(10, 0)]


@pytest.mark.parametrize("bulge", [math.nan, math.inf])
def test_a_bulge_that_is_no_number_is_refused(bulge: float) -> None:
    with pytest.raises(NumberError):
        bulge_points((0, 0), (1, 0), bulge, 0.1)


@settings(deadline=None, max_examples=60)
@given(PLACES, half_axes(), ANGLES, st.floats(1, 360), SAGITTAS)
def test_an_ellipse_stays_within_the_sagitta(
    center: Point, axes: tuple[Point, Point], start: float, sweep: float, sagitta: float
) -> None:
    """The middle of the parameter step is the farthest place from the chord, up to third order."""
    u, v = axes
    span = turn(start, start + sweep)
    points = ellipse_points(center, (u, v), span, sagitta)
    step = (span[1] - span[0]) / (len(points) - 1)
    for index, (one, two) in enumerate(pairwise(points)):
        t = span[0] + step * (index + 0.5)
        true = (
            center[0] + math.cos(t) * u[0] + math.sin(t) * v[0],
            center[1] + math.cos(t) * u[1] + math.sin(t) * v[1],
        )
        middle = ((one[0] + two[0]) / 2, (one[1] + two[1]) / 2)
        assert math.dist(true, middle) <= sagitta * 1.0001 + 1e-6


@settings(deadline=None, max_examples=60)
@given(st.lists(NEAR, min_size=4, max_size=7, unique=True), SAGITTAS)
def test_a_spline_stays_within_the_sagitta(control: list[Point], sagitta: float) -> None:
    """A dense walk along the true curve never leaves the flattened one by more."""
    spline = BSpline(Vec3.generate(control), order=4)
    scale = 1e-9 * max(abs(number) for point in control for number in point)
    points = [(point.x, point.y) for point in spline_points(spline, sagitta)]
    walk = [spline.point(spline.max_t * step / 60) for step in range(61)]
    for true in walk:
        off = min(_off(true, one, two) for one, two in pairwise(points))
        assert off <= sagitta + scale


def test_a_spline_with_an_infinite_knot_is_refused() -> None:
    spline = BSpline([(0, 0), (1, 1), (2, 0), (3, math.nan)], order=4)
    with pytest.raises(NumberError):
        spline_points(spline, 0.1)


def test_equal_angles_are_a_full_turn() -> None:
    assert is_full(turn(30, 30))
    assert is_full(turn(0, 360))
    assert turn(350, 10) == pytest.approx((math.radians(350), math.radians(370)))


def test_an_angle_that_is_no_number_is_refused() -> None:
    with pytest.raises(NumberError):
        turn(math.nan, 10)


def test_an_infinite_ellipse_is_refused() -> None:
    with pytest.raises(NumberError):
        ellipse_points((0, 0), ((math.inf, 0), (0, 1)), (0, 1), 0.1)


@settings(deadline=None, max_examples=60)
@given(st.tuples(ANGLES, ANGLES), st.tuples(ANGLES, ANGLES))
def test_the_stretch_is_the_longest_image_of_a_unit_vector(u: Point, v: Point) -> None:
    angles = [math.tau * step / 720 for step in range(720)]
    longest = max(
        math.hypot(
            math.cos(a) * u[0] + math.sin(a) * v[0], math.cos(a) * u[1] + math.sin(a) * v[1]
        )
        for a in angles
    )
    assert longest == pytest.approx(stretch(u, v), rel=1e-4, abs=1e-6)


def test_repeats_are_dropped_round_the_end_of_a_ring_only() -> None:
    points = [(0, 0), (0, 0), (1, 0), (1, 1), (0, 0)]
    assert without_repeats(points, closed=False) == ((0, 0), (1, 0), (1, 1), (0, 0))
    assert without_repeats(points, closed=True) == ((0, 0), (1, 0), (1, 1))


def test_edges_are_chained_whichever_way_they_run() -> None:
    square = [[(0, 0), (1, 0)], [(1, 1), (1, 0)], [(0, 1), (1, 1)], [(0, 1), (0, 0)]]
    assert join_ends(square, 1e-6) == [((0, 0), (1, 0), (1, 1), (0, 1))]


def test_an_edge_that_leads_to_the_beginning_goes_before_it() -> None:
    edges = [[(1, 0), (1, 1)], [(0, 0), (1, 0)], [(0, 0), (0, 1)]]
    assert join_ends(edges, 1e-6) == [((0, 1), (0, 0), (1, 0), (1, 1))]


def test_edges_with_a_gap_are_joined_by_a_straight_line() -> None:
    edges = [[(0, 0), (1, 0)], [(1, 2), (1, 0.5)], []]
    assert join_ends(edges, 1e-6) == [((0, 0), (1, 0), (1, 0.5), (1, 2))]


def test_a_closed_ring_is_followed_by_a_new_one() -> None:
    ring = [(0, 0), (1, 0), (1, 1), (0, 0)]
    other = [(5, 5), (6, 5), (6, 6), (5, 5)]
    assert join_ends([ring, other], 1e-6) == [tuple(ring[:-1]), tuple(other[:-1])]


def _off(point: Vec3, start: Point, end: Point) -> float:
    along = Vec3(end) - Vec3(start)
    square = along.dot(along)
    share = max(0.0, min(1.0, (point - Vec3(start)).dot(along) / square)) if square else 0.0
    return (point - Vec3(start) - along * share).magnitude
