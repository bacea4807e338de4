"""Edits of lines: trim, extend, split, join, offset.

Each takes a project and gives a new one. `which` is the section's name or place. A piece that an
edit does not name stays the very same object. Every edit raises `EnclosureError`, in the user's
words, for a section or piece that does not exist and for what cannot be done.
"""

from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from itertools import pairwise
from math import dist, isfinite

from enclosure_app.errors import EnclosureError
from enclosure_app.geometry.runs import editing
from enclosure_app.language import say
from enclosure_app.model.edits.looking_up import (
    Which,
    finite,
    line_of,
    new_names,
    piece_of,
    run_of,
    runs_of,
    same_place,
    section_of,
    with_pieces,
)
from enclosure_app.model.edits.pieces import add_piece
from enclosure_app.model.edits.sealing import also_sealed, renamed
from enclosure_app.model.place import Line, Point, Points
from enclosure_app.model.project import Project

DRAFTING_SLOP = 2.0
"""Ends no further apart than this (mm) can be joined."""


class End(StrEnum):
    """One end of a line."""

    START = "start"
    END = "end"


@dataclass(frozen=True, slots=True)
class Beside:
    """Where an offset line goes: `distance` mm off, on the side of a place, and of what product."""

    distance: float
    side: Point
    product: str


def split(project: Project, which: Which, name: str, at: Point) -> Project:
    """Cut a line in two at the point nearest to `at`; the part from its start keeps the name.

    A closed line is opened there and stays one piece.

    Raises:
        EnclosureError: there is no such line, or it ends there.
    """
    _, line = line_of(project, which, name)
    run = run_of(line)
    along = editing.position_of(run, *finite((at,)))
    total = editing.length_of(run)
    if line.closed:
        return _in_parts(project, which, name, [_opened(run, along, total)])
    if not editing.SAME < along < total - editing.SAME:
        raise EnclosureError(
            say('"{name}" ends there: click where it is to be cut, between its ends.', name=name)
        )
    parts = [editing.part_of(run, 0.0, along), editing.part_of(run, along, total)]
    return _in_parts(project, which, name, parts)


def trim(
    project: Project,
    which: Which,
    name: str,
    near: Point,
    against: Collection[str] | None = None,
) -> Project:
    """Take away the part of a line at `near`, up to where other pieces cross or touch it.

    Args:
        project: The project.
        which: The section.
        name: The line to shorten.
        near: A place on the part to take away, mm.
        against: The pieces that may cut it; None for every other piece.

    Raises:
        EnclosureError: there is no such line, or nothing cuts it.
    """
    _, line = line_of(project, which, name)
    run = run_of(line)
    cuts = _cuts(run, _others(project, which, name, against), closed=line.closed)
    if len(cuts) < (2 if line.closed else 1):
        raise EnclosureError(
            say(
                'Nothing cuts "{name}" there: draw the line to trim it at, or split it.', name=name
            )
        )
    clicked = editing.position_of(run, *finite((near,)))
    parts = _left_of_ring(run, cuts, clicked) if line.closed else _left(run, cuts, clicked)
    return _in_parts(project, which, name, parts)


def extend(project: Project, which: Which, name: str, end: End, to: str | Points) -> Project:
    """Lengthen a line straight on from one end until it meets a piece, or a line of points.

    Raises:
        EnclosureError: there is no such line, it is closed, or it meets nothing.
    """
    _, line = line_of(project, which, name)
    if line.closed:
        raise EnclosureError(say('"{name}" is closed and has no end: split it first.', name=name))
    target = runs_of(piece_of(project, which, to).shape) if isinstance(to, str) else [finite(to)]
    points = line.points if end is End.END else line.points[::-1]
    before, last = _last_stretch(points)
    hit = editing.first_hit(last, (last[0] - before[0], last[1] - before[1]), target)
    if hit is None:
        what = f'"{to}"' if isinstance(to, str) else say("that line")
        raise EnclosureError(
            say(
                '"{name}" does not meet {what} when it goes straight on from its {end}: turn its '
                "last stretch, or choose another line.",
                name=name,
                what=what,
                end=say(end.value),
            )
        )
    longer = (*points[:-1], hit)
    in_order = longer if end is End.END else longer[::-1]
    return _in_parts(project, which, name, [in_order])


def join(
    project: Project, which: Which, first: str, second: str, reach: float = DRAFTING_SLOP
) -> Project:
    """Join two lines of one product end to end, where their ends are within `reach` mm.

    The line keeps the name and the direction of the first. Joined with itself, a line is closed.

    Raises:
        EnclosureError: a line is missing or closed, they are of two products, or their
            ends are too far apart.
    """
    a, line = line_of(project, which, first)
    b, other = line_of(project, which, second)
    _must_be_open(first, line)
    _must_be_open(second, other)
    if a.product != b.product:
        raise EnclosureError(
            say(
                '"{first}" and "{second}" are not of one product: make them so before joining '
                "them.",
                first=first,
                second=second,
            )
        )
    if a is b:
        return _closed(project, which, first, reach)
    points = _end_to_end(line.points, other.points, reach)
    if not points:
        raise EnclosureError(
            say(
                'The ends of "{first}" and "{second}" are more than {reach:g} mm apart: move them'
                " together, or extend one.",
                first=first,
                second=second,
                reach=reach,
            )
        )
    handles = (*a.handles, *(handle for handle in b.handles if handle not in a.handles))
    joined = replace(a, shape=replace(line, points=points), handles=handles)
    changed = with_pieces(project, which, {first: [joined], second: []})
    return renamed(changed, which, {second: first})


def offset(project: Project, which: Which, of: str | Points, beside: Beside) -> Project:
    """Draw a line beside a piece (all round an area) or beside a run of points.

    Args:
        project: The project.
        which: The section.
        of: A piece by its name, or the points of a run such as one edge of a board.
        beside: How far, on which side, and of what; corners are mitred.

    Raises:
        EnclosureError: there is no such line or product, or no line at that distance.
    """
    if isinstance(of, str):
        points, closed = _outline(project, which, of)
    else:
        points, closed = finite(of), False
    if not (isfinite(beside.distance) and beside.distance > 0):
        raise EnclosureError(
            say(
                "A line cannot be {distance:g} mm beside another: give more than 0.",
                distance=beside.distance,
            )
        )
    finite((beside.side,))
    run = editing.offset_run(points, beside.distance, beside.side, closed=closed)
    if not run:
        raise EnclosureError(
            say(
                "There is no room for one line {distance:g} mm beside that one on this side: give"
                " a smaller distance.",
                distance=beside.distance,
            )
        )
    return add_piece(project, which, beside.product, Line(run, closed=closed))


def _outline(project: Project, which: Which, name: str) -> tuple[Points, bool]:
    shape = piece_of(project, which, name).shape
    if isinstance(shape, Line):
        return shape.points, shape.closed
    return shape.outer, True


def _in_parts(project: Project, which: Which, name: str, parts: Sequence[Points]) -> Project:
    """Put open lines in the place of one; the first keeps its name.

    What was declared about the joints of the line holds for each part.
    """
    piece, line = line_of(project, which, name)
    section = section_of(project, which)
    names = [name, *new_names(section, ["drawn"] * (len(parts) - 1))]
    pieces = [
        replace(piece, name=each, shape=Line(points, line.width))
        for each, points in zip(names, parts, strict=True)
    ]
    return also_sealed(with_pieces(project, which, {name: pieces}), which, name, names[1:])


def _opened(run: Points, along: float, total: float) -> Points:
    """Return a closed run opened at a place."""
    if not editing.SAME < along < total - editing.SAME:
        return run
    return editing.part_over_seam(run, along, along)


def _others(
    project: Project, which: Which, name: str, against: Collection[str] | None
) -> list[Points]:
    if against is None:
        cutters = [p for p in section_of(project, which).pieces if p.name != name]
    else:
        cutters = [piece_of(project, which, cutter) for cutter in against if cutter != name]
    return [run for piece in cutters for run in runs_of(piece.shape)]


def _cuts(run: Points, others: Sequence[Points], *, closed: bool) -> list[float]:
    """Return where a run is cut, mm along it; its own ends do not count, a seam counts once."""
    total = editing.length_of(run)
    first = -editing.SAME if closed else editing.SAME
    return [at for at in editing.crossings(run, others) if first < at < total - editing.SAME]


def _left(run: Points, cuts: Sequence[float], clicked: float) -> list[Points]:
    """Return what is left of an open run without the part that was clicked."""
    total = editing.length_of(run)
    start = max((cut for cut in cuts if cut <= clicked), default=0.0)
    end = min((cut for cut in cuts if cut > clicked), default=total)
    kept = [(0.0, start), (end, total)]
    return [editing.part_of(run, a, b) for a, b in kept if b > a]


def _left_of_ring(run: Points, cuts: Sequence[float], clicked: float) -> list[Points]:
    """Return what is left of a closed run (first point repeated) without the clicked part."""
    for start, end in pairwise(cuts):
        if start <= clicked < end:
            return [editing.part_over_seam(run, start, end)]
    return [editing.part_of(run, cuts[0], cuts[-1])]


def _last_stretch(points: Points) -> tuple[Point, Point]:
    """Return the last two points of a run that are apart."""
    last = points[-1]
    return next(p for p in reversed(points) if not same_place(p, last, editing.SAME)), last


def _must_be_open(name: str, line: Line) -> None:
    if line.closed:
        raise EnclosureError(
            say('"{name}" is closed and has no end to join: split it first.', name=name)
        )


def _closed(project: Project, which: Which, name: str, reach: float) -> Project:
    piece, line = line_of(project, which, name)
    points = line.points
    if len(points) < 3 or not same_place(points[0], points[-1], reach):
        raise EnclosureError(
            say(
                'The two ends of "{name}" are more than {reach:g} mm apart: move them together to'
                " close it.",
                name=name,
                reach=reach,
            )
        )
    same = same_place(points[0], points[-1], editing.SAME)
    shape = Line(points[:-1] if same else points, line.width, closed=True)
    return with_pieces(project, which, {name: [replace(piece, shape=shape)]})


def _end_to_end(first: Points, second: Points, reach: float) -> Points:
    """Return two runs as one in the direction of the first, () where their ends are apart."""
    ways = [
        (first, second),
        (first, second[::-1]),
        (second, first),
        (second[::-1], first),
    ]
    before, after = min(ways, key=lambda way: dist(way[0][-1], way[1][0]))
    if not same_place(before[-1], after[0], reach):
        return ()
    if not same_place(before[-1], after[0], editing.SAME):
        return before + after
    return before[:-1] + _corner(before, after) + after[1:]


def _corner(before: Points, after: Points) -> Points:
    """Return the point where two runs meet, unless it lies straight between its neighbours."""
    a, b, c = before[-2], before[-1], after[1]
    turn = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
    onward = (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1]) > 0
    return () if onward and abs(turn) <= editing.SAME * dist(a, c) else (b,)
