"""Rain on textbook junctions (`textbook.py`), moved, mirrored, drawn otherwise, and cut in two."""

from collections.abc import Callable, Mapping
from math import inf

import numpy as np
import pytest
import shapely
from hypothesis import example, given, settings
from hypothesis import strategies as st

from enclosure_app.model.limits import Tolerances
from enclosure_app.model.place import Area, Line, Point, Points, Shape
from enclosure_app.model.report import RainRoute, RouteEnd
from enclosure_app.network.rain.rain import Rain, find_routes
from tests.network.rain.textbook import (
    CASES,
    FRAME,
    WALL_OUT,
    Case,
    Told,
    rain,
    tidy,
    told,
    within,
)


@pytest.mark.parametrize("case", CASES.values(), ids=CASES)
def test_a_drop_takes_the_way_worked_out_by_hand(case: Case) -> None:
    expected = {(end, pieces, tidy(points)) for end, pieces, points in case.routes}
    assert {told(route) for route in rain(case).routes} == expected


def _moved(shape: Shape, move: Callable[[Point], Point]) -> Shape:
    if isinstance(shape, Line):
        return Line(tuple(map(move, shape.points)), shape.width, shape.closed)
    return Area(tuple(map(move, shape.outer)))


def _moved_case(case: Case, move: Callable[[Point], Point]) -> Case:
    pieces = {name: _moved(shape, move) for name, shape in case.pieces.items()}
    return Case(pieces, tuple(map(move, case.outside)), [], case.over, case.drains)


def _ways(routes: tuple[RainRoute, ...], move: Callable[[Point], Point]) -> set[Told]:
    return {(r.end, r.pieces, tidy(tuple(map(move, r.points)))) for r in routes}


named_cases = st.sampled_from(sorted(CASES))


@settings(max_examples=60, deadline=None)
@given(named_cases, st.integers(-(10**5), 10**5), st.integers(-(10**5), 10**5), st.booleans())
def test_moving_and_mirroring_the_drawing_moves_and_mirrors_the_routes(
    name: str, across: int, up: int, mirrored: bool
) -> None:
    case, sign = CASES[name], -1 if mirrored else 1
    frame = tuple((sign * x + across, y + up) for x, y in FRAME)
    moved = _moved_case(case, lambda p: (sign * p[0] + across, p[1] + up))
    found = find_routes(
        moved.pieces, within(moved.outside), frame, Tolerances(), case.drains, over=case.over
    )
    back = _ways(found.routes, lambda p: (sign * (p[0] - across), p[1] - up))
    assert back == {told(route) for route in rain(case).routes}


@settings(max_examples=60, deadline=None)
@given(named_cases, st.data())
def test_the_direction_in_which_pieces_are_drawn_does_not_matter(
    name: str, data: st.DataObject
) -> None:
    case = CASES[name]
    turned = data.draw(st.sets(st.sampled_from(sorted(case.pieces))))
    pieces: dict[str, Shape] = {
        piece: Line(shape.points[::-1])
        if isinstance(shape, Line) and piece in turned
        else Area(shape.outer[::-1])
        if isinstance(shape, Area) and piece in turned
        else shape
        for piece, shape in case.pieces.items()
    }
    found = rain(Case(pieces, case.outside, [], case.over, case.drains))
    assert {told(r) for r in found.routes} == {told(r) for r in rain(case).routes}


def _cut(shape: Line, share: float) -> tuple[Line, Line]:
    """Cut a line in two, at `share` of its longest straight part."""
    parts = list(zip(shape.points, shape.points[1:], strict=False))
    longest = max(range(len(parts)), key=lambda i: np.hypot(*np.subtract(*parts[i])))
    (x0, y0), (x1, y1) = parts[longest]
    place = (x0 + share * (x1 - x0), y0 + share * (y1 - y0))
    return (
        Line((*shape.points[: longest + 1], place)),
        Line((place, *shape.points[longest + 1 :])),
    )


SLOPPY = {  # drawn with slop: cut right there, the way moves by as much
    "a leg that ends 1.5 mm short of the sheet catches it too",
    "a sheet that ends on a pan hands the drop to it",
}
CUTTABLE = [
    (name, piece)
    for name, case in sorted(CASES.items())
    if not case.over and name not in SLOPPY
    for piece, shape in case.pieces.items()
    if isinstance(shape, Line)
]
SLOP = 2 * Tolerances().touch  # mm: how near to another piece a cut counts as drawn right there
LEG = "a flashing leg that runs out of the wall sheet catches the drop"
RISING = "a leg that rises from the sheet holds the drop"


@settings(max_examples=80, deadline=None)
@given(st.sampled_from(CUTTABLE), st.floats(0.2, 0.8))
@example((LEG, "S"), 0.50390625)  # a stub of 4 mm right under the leg: rain lands on it, too
@example((LEG, "S"), 0.501)
@example((RISING, "S"), 0.4985)
def test_cutting_a_piece_in_two_does_not_change_the_way_of_the_drop(
    cut: tuple[str, str], share: float
) -> None:
    """Right where another piece meets it, the two ends are drawn slop, by which a way may move."""
    case, target = CASES[cut[0]], cut[1]
    whole = case.pieces[target]
    assert isinstance(whole, Line)
    upper, lower = _cut(whole, share)
    others = {name: shape for name, shape in case.pieces.items() if name != target}
    pieces = {**others, target: upper, f"{target}'": lower}
    found = _ended(rain(Case(pieces, case.outside, [], case.over, case.drains)))
    slop = SLOP if _near(upper.points[-1], others) else 0.0
    assert _moved_by(found, _ended(rain(case))) <= slop


def _ended(found: Rain) -> set[tuple[RouteEnd, Points]]:
    return {(route.end, tidy(route.points)) for route in found.routes}


def _near(place: Point, others: Mapping[str, Shape]) -> bool:
    rings = (s.points if isinstance(s, Line) else (*s.outer, s.outer[0]) for s in others.values())
    return any(shapely.LineString(ring).distance(shapely.Point(place)) <= SLOP for ring in rings)


def _moved_by(found: set[tuple[RouteEnd, Points]], ways: set[tuple[RouteEnd, Points]]) -> float:
    """Return how far ways lie from those they should be, which end alike; infinite where one lacks."""
    if found == ways:
        return 0.0
    return max(_farthest(found, ways), _farthest(ways, found))


def _farthest(found: set[tuple[RouteEnd, Points]], ways: set[tuple[RouteEnd, Points]]) -> float:
    return max(
        min(
            (
                shapely.hausdorff_distance(shapely.LineString(one), shapely.LineString(other))
                for ending, other in ways
                if ending is end
            ),
            default=inf,
        )
        for end, one in found
    )


def test_a_layer_without_pieces_has_no_rain() -> None:
    assert rain(Case({}, WALL_OUT, [])) == Rain()
