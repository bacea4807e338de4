"""Spreads lapped sheets so that a reader can tell them apart, as draughtsmen do.

Sheets are drawn a few mm apart, which is nothing on paper. The outer sheet of a lap is therefore
shown further out over the length of the lap; everything else stays where it was drawn.
"""

from collections import defaultdict
from collections.abc import Generator, Mapping
from dataclasses import dataclass
from graphlib import CycleError, TopologicalSorter
from math import dist

from enclosure_app.drawing.placement import Placement
from enclosure_app.drawing.polylines import (
    distinct,
    dot,
    foot,
    left_of,
    length,
    offset,
    stretch,
    walk_to,
)
from enclosure_app.drawing.section.sides import Sides
from enclosure_app.model.place import Line, Point, Points
from enclosure_app.model.report import Joint, JointKind, SectionResult

APART = 1.5  # mm on paper between the middle lines of two lapped sheets
_RAMP = 1.3  # mm on paper over which the outer sheet goes back to its place
_LEAST = 0.3  # mm on paper: a shorter lap cannot be seen, and its sheet has no room to come back
_MOST = 4 * APART  # mm on paper that a sheet is shown from its place, however many lie under it
_AT_END = 0.3  # mm on paper within which a lap reaches the end of its sheet


@dataclass(frozen=True, slots=True)
class Shift:
    """From `start` to `end` along a sheet it is shown `by` mm to its left."""

    start: float
    end: float
    by: float


def painting_order(result: SectionResult) -> tuple[str, ...]:
    """Return the names of the pieces, outer sheets after the sheets that they cover.

    Those of which none has to wait for another stand as they were drawn.
    """
    names = dict.fromkeys(piece.name for piece in result.section.pieces)
    order = TopologicalSorter(dict.fromkeys(names, ()))  # the sorter keeps this order
    for joint in _laps(result):
        if joint.over in (joint.a, joint.b):
            order.add(joint.over, joint.b if joint.over == joint.a else joint.a)
    try:
        return tuple(name for name in order.static_order() if name in names)
    except CycleError:  # sheets that cannot be put on as drawn have no order: as they were drawn
        return tuple(names)


def shown_sheets(
    result: SectionResult, placement: Placement, sides: Sides
) -> Mapping[str, Points]:
    """Return the run of each line piece on the sheet, laps spread."""
    steps = sheets_in_turn(result, placement, sides)
    while True:
        try:
            next(steps)
        except StopIteration as end:
            shown: Mapping[str, Points] = end.value
            return shown


def sheets_in_turn(
    result: SectionResult, placement: Placement, sides: Sides
) -> Generator[None, None, Mapping[str, Points]]:
    """Return the same sheet by sheet, so that others may have a turn between them."""
    true = {
        piece.name: distinct(placement.points(_run(piece.shape)))
        for piece in result.section.pieces
        if isinstance(piece.shape, Line)
    }
    shown: dict[str, Points] = {name: true[name] for name in true}
    over = _laps_over(result)
    for name in painting_order(result):
        if name in true:
            shifts = []
            for joint in over[name]:
                under = joint.b if joint.a == name else joint.a
                if under in shown:
                    run = placement.points(joint.run_a if joint.a == name else joint.run_b)
                    shifts.extend(_shift(true[name], run, shown[under], sides))
            shown[name] = _shifted(true[name], shifts)
            yield
    return shown


def _laps_over(result: SectionResult) -> Mapping[str, list[Joint]]:
    """Return the laps in which a sheet is the outer one, by the sheet's name."""
    found: defaultdict[str, list[Joint]] = defaultdict(list)
    for joint in _laps(result):
        if joint.over in (joint.a, joint.b):
            found[joint.over].append(joint)
    return found


def _laps(result: SectionResult) -> list[Joint]:
    """Return the laps of all controls, each pair of runs once."""
    found: dict[tuple[str, str, Point], Joint] = {}
    for layer in result.layers.values():
        for joint in layer.joints:
            if joint.kind is JointKind.LAP and joint.run_a and joint.run_b:
                found.setdefault((joint.a, joint.b, joint.at), joint)
    return list(found.values())


def _run(line: Line) -> Points:
    return (*line.points, line.points[0]) if line.closed else line.points


def _shift(sheet: Points, run: Points, under: Points, sides: Sides) -> list[Shift]:
    """Return how far the lapped `run` of an outer `sheet` is to be shown from the one below."""
    if len(sheet) < 2 or len(under) < 2:
        return []
    start, end = sorted((foot(sheet, run[0]).along, foot(sheet, run[-1]).along))
    at, direction = walk_to(sheet, (start + end) / 2)
    outward = sides.outward(at, direction)
    below = foot(under, at).at
    by = APART - dot((at[0] - below[0], at[1] - below[1]), outward)
    if by <= 0 or end - start < _LEAST:
        return []
    by = min(by, _MOST)
    return [Shift(start, end, by if dot(outward, left_of(direction)) > 0 else -by)]


def _shifted(sheet: Points, shifts: list[Shift]) -> Points:
    whole = length(sheet)
    points: list[Point] = []
    done = 0.0
    for shift in sorted(shifts, key=lambda s: s.start):
        start, end = max(shift.start, done), shift.end
        if end <= start:
            continue
        before = start - _RAMP if start > _AT_END else 0.0
        if before > done:
            points.extend(stretch(sheet, done, before))
        points.extend(offset(stretch(sheet, start, end), shift.by))
        done = whole if whole - end <= _AT_END else min(end + _RAMP, whole)
    if done < whole:
        points.extend(stretch(sheet, done, whole))
    return distinct(tuple(points))


def lap_run(shown: Points, run: Points) -> Points:
    """Return the stretch of a shown sheet beside `run`, in the direction of `run`."""
    if len(shown) < 2 or len(run) < 2:
        return run
    start, end = foot(shown, run[0]).along, foot(shown, run[-1]).along
    part = stretch(shown, min(start, end), max(start, end))
    return part if dist(part[0], run[0]) <= dist(part[-1], run[0]) else part[::-1]
