"""Draws a short way through gates that are wide enough, clear of their ends where there is room."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from heapq import heappop, heappush

import numpy as np
import numpy.typing as npt

from enclosure_app.geometry.openings.gates import Gates

Floats = npt.NDArray[np.float64]

SWEEPS = 30


@dataclass(frozen=True, slots=True)
class Stop:
    """Where a route may begin or end: a place in a triangle."""

    triangle: int
    place: complex


@dataclass(frozen=True, slots=True)
class Route:
    """A route's stops (by number), the half-edges that it crosses, and where it crosses them."""

    start: int
    goal: int
    crossed: list[int]
    places: list[complex]


@dataclass(frozen=True, slots=True)
class _Leg:
    """How far a route has come: across which half-edge, where, after how many mm, from what."""

    entry: int
    place: complex
    gone: float
    before: "_Leg | None"
    start: int


def route(gates: Gates, starts: Sequence[Stop], goals: Sequence[Stop], width: float) -> Route:
    """Return a short way from one of `starts` to one of `goals` through gates `width` mm wide.

    Raises:
        ValueError: there is none.
    """
    ends = {goal.triangle: number for number, goal in enumerate(goals)}
    queue: list[tuple[float, int, int, _Leg]] = []
    for number, start in enumerate(starts):
        leg = _Leg(-1, start.place, 0.0, None, number)
        heappush(queue, (_to_go(start.place, goals), len(queue), start.triangle, leg))
    done: set[int] = set()
    while queue:
        _, _, triangle, leg = heappop(queue)
        if triangle in ends:
            goal = ends[triangle]
            return _straightened(gates, leg, goals[goal].place, goal, width)
        if triangle not in done:
            done.add(triangle)
            for onward in _onward(gates, triangle, leg, width):
                beyond = int(gates.mesh.twin[onward.entry]) // 3
                total = onward.gone + _to_go(onward.place, goals)
                heappush(queue, (total, -onward.entry, beyond, onward))
    raise ValueError("Nothing that wide leads from the starts to the goals.")


def _to_go(place: complex, goals: Sequence[Stop]) -> float:
    return min(abs(goal.place - place) for goal in goals)


def _onward(gates: Gates, triangle: int, leg: _Leg, width: float) -> Iterator[_Leg]:
    """Yield the legs out of a triangle, each to the nearest place on another edge."""
    for edge in range(3 * triangle, 3 * triangle + 3):
        back = leg.entry >= 0 and int(gates.mesh.twin[edge]) == leg.entry
        if gates.open[edge] and gates.width[edge] >= width and not back:
            low, high = _span(gates, edge, width)
            along = high - low
            if along:
                part = ((leg.place - low) / along).real
                place = low + min(max(part, 0.0), 1.0) * along
            else:
                place = low
            yield _Leg(edge, place, leg.gone + abs(place - leg.place), leg, leg.start)


def _span(gates: Gates, edge: int, width: float) -> tuple[complex, complex]:
    """Return the stretch of a gate on which its ends are half of `width` away, or its middle."""
    mesh = gates.mesh
    start, end = complex(*mesh.points[mesh.starts[edge]]), complex(*mesh.points[mesh.ends[edge]])
    margin = min(0.5, width / 2 / abs(end - start)) * (end - start)
    return start + margin, end - margin


def _straightened(gates: Gates, leg: _Leg, goal_place: complex, goal: int, width: float) -> Route:
    """Pull the way taut: each crossing moves to where it lies straight between its neighbours."""
    legs: list[_Leg] = []
    back: _Leg | None = leg
    while back is not None:
        legs.append(back)
        back = back.before
    legs.reverse()
    crossed = [each.entry for each in legs[1:]]
    places = [*(each.place for each in legs), goal_place]
    spans = [_span(gates, edge, width) for edge in crossed]
    moved, sweeps = 1.0, 0
    while moved > 0.01 and sweeps < SWEEPS:  # mm; nobody sees less
        before = places.copy()
        for k, (low, high) in enumerate(spans, start=1):
            places[k] = _between(places[k - 1], places[k + 1], low, high)
        moved = max(abs(a - b) for a, b in zip(before, places, strict=True))
        sweeps += 1
    return Route(leg.start, goal, crossed, places[1:-1])


def _between(before: complex, after: complex, low: complex, high: complex) -> complex:
    """Return the place between `low` and `high` nearest to the straight way across."""
    along, way = high - low, after - before
    turn = (along.conjugate() * way).imag
    if not along or abs(turn) < 1e-12:
        return (low + high) / 2
    part = ((before - low).conjugate() * way).imag / turn
    return low + min(max(part, 0.0), 1.0) * along
