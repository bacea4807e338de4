"""A run that is traced leg by leg, from click to click, and laid on the drawn line or beside it.

A leg follows drawn lines; where none join its two places, and these are near each other, it is a
straight bridge, which is to be shown as one.
"""

from collections.abc import Iterator, Sequence
from enum import StrEnum
from itertools import chain
from math import dist

from enclosure_app.errors import EnclosureError
from enclosure_app.geometry.linework.graph import SNAP, LineworkGraph
from enclosure_app.geometry.linework.sides import side_of
from enclosure_app.geometry.linework.ways import Way, cleaned, parting, ways_in_turn
from enclosure_app.geometry.runs.offsetting import run_beside
from enclosure_app.language import say
from enclosure_app.model.place import Point, Points
from enclosure_app.model.section import Section
from enclosure_app.planning.tracing.tracing import NotJoinedError, no_room, nothing_to_follow

STRAIGHT = 600.0  # mm: what a leg may bridge at most, since that is clicked and seen
ROUND = 4.0  # so many times the straight distance is a long way round
MOST_WAYS = 6
_SAME = 1e-3  # mm


class Lay(StrEnum):
    """Where a sheet lies: on the traced line, or beside it on one side of it."""

    ON = "on"
    OUTSIDE = "outside"
    INSIDE = "inside"


def on_line(graph: LineworkGraph, place: Point, reach: float) -> Point:
    """Return the place of a drawn line nearest to a click.

    Raises:
        EnclosureError: no line is drawn within `reach` mm, or none at all.
    """
    if not len(graph.start):
        raise EnclosureError(nothing_to_follow())
    stretch, at, away = graph.nearest(place)
    if away > reach:
        raise EnclosureError(
            say("No line is drawn here: click on the line that the sheet follows.")
        )
    return graph.place(stretch, at)


def legs(graph: LineworkGraph, a: Point, b: Point) -> Iterator[Way]:
    """Yield the ways from a place on a line to another, the shortest first; each when asked for.

    Straight over what is not drawn is one of them where the places are near each other: the first
    where drawn lines lead a long way round, as they do about the tail of a rafter, else the second.

    Raises:
        EnclosureError: both are one place.
        NotJoinedError: no lines join them, and they are too far apart to be bridged.
    """
    if dist(a, b) <= _SAME:
        raise EnclosureError(
            say("Both clicks lie on one place: click where the sheet starts and where it ends.")
        )
    found = ways_in_turn(graph, a, b, MOST_WAYS)
    drawn, away = next(found, None), dist(a, b)
    if drawn is None and away > STRAIGHT:
        raise NotJoinedError(parting(graph, a, b))
    bridge = Way((a, b), away, ((a, b),))
    if drawn is None:
        return iter([bridge])
    if away > STRAIGHT or drawn.length < away + SNAP:
        return chain([drawn], found)
    first = [drawn, bridge] if drawn.length < ROUND * away else [bridge, drawn]
    return chain(first, found)


def run_of(several: Sequence[Way]) -> Points:
    """Return the run of legs that follow each other, without points that change nothing."""
    return cleaned([point for leg in several for point in leg.points], SNAP)


def laid(points: Points, lay: Lay, distance: float, *, outer_left: bool) -> Points:
    """Return the run of a sheet on a traced line, or `distance` mm beside it.

    Args:
        points: The traced line.
        lay: On which side of it the sheet lies.
        distance: How far from it, mm.
        outer_left: Whether the outer side is to the left, seen along the line.

    Raises:
        EnclosureError: there is no room for it on that side.
    """
    if lay is Lay.ON or distance == 0:
        return points
    left = outer_left is (lay is Lay.OUTSIDE)
    run = run_beside(points, distance if left else -distance)
    if not run:
        raise EnclosureError(no_room(distance))
    return run


def outer_left(section: Section, points: Points) -> bool:
    """Whether the outer side of a run is to its left: the mark knows that lies most beside it.

    Of several that lie right beside it, the nearest; one that lies beyond an end, as the mark
    beside a wall does for the roof above it, only where there is no other. Where neither side is
    marked, the left one counts as the outer one.
    """
    marks = [(mark, 1.0) for mark in section.outside] + [(mark, -1.0) for mark in section.inside]
    if not marks:
        return True
    seen = [(side_of(points, mark) * sign, mark) for mark, sign in marks]
    return max(seen, key=lambda each: (round(abs(each[0]), 3), -_off(points, each[1])))[0] > 0


def _off(points: Points, mark: Point) -> float:
    return min(dist(mark, point) for point in points)
