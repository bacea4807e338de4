"""Edits of the ends of lines: a line runs on to what is in its way, or by a length.

Each takes a project and gives a new one, and raises `EnclosureError` for what cannot be done.
"""

from collections.abc import Sequence
from dataclasses import replace
from math import dist, isfinite

from enclosure_app.errors import EnclosureError
from enclosure_app.geometry.runs import editing
from enclosure_app.language import say
from enclosure_app.model.edits.lines import End
from enclosure_app.model.edits.looking_up import Which, line_of, runs_of, same_place, section_of
from enclosure_app.model.edits.pieces import replace_shape
from enclosure_app.model.place import Line, Point, Points
from enclosure_app.model.project import Project


def nearest_end(line: Line, at: Point) -> End:
    """Return the end of a line that is nearest to a place."""
    return End.START if dist(line.points[0], at) < dist(line.points[-1], at) else End.END


def run_on(
    project: Project,
    which: Which,
    name: str,
    end: End,
    lines: Sequence[Points] | None = None,
) -> Project:
    """Lengthen a line straight on from one end to what is first in its way.

    That is a piece, a line of the office's or the frame. `lines` are those of the office's that
    may be in its way, for whoever knows them; without them all are looked at.

    Raises:
        EnclosureError: there is no such piece, it is closed, or nothing lies ahead of that
            end.
    """
    _, line = line_of(project, which, name)
    _must_be_open(name, line)
    section = section_of(project, which)
    others = [run for p in section.pieces if p.name != name for run in runs_of(p.shape)]
    others += [stroke.points for stroke in section.strokes] if lines is None else lines
    rim = [(*section.frame, section.frame[0])] if section.frame else []
    before, last = _last_stretch(_towards(line, end))
    towards = last[0] - before[0], last[1] - before[1]
    hit = editing.first_hit(last, towards, [*others, *rim])
    if hit is None:
        raise EnclosureError(
            say(
                '"{name}" meets nothing when it runs straight on from there: turn its last stretch, '
                "or type how far it is to go.",
                name=name,
            )
        )
    return _ending_at(project, which, name, (end, hit))


def lengthen(project: Project, which: Which, name: str, end: End, by: float) -> Project:
    """Lengthen a line straight on from one end by so many mm; below 0 it gets shorter.

    Raises:
        EnclosureError: there is no such piece, it is closed, or its last stretch would be
            gone.
    """
    _, line = line_of(project, which, name)
    _must_be_open(name, line)
    before, last = _last_stretch(_towards(line, end))
    size = dist(before, last)
    if not isfinite(by) or by <= -size:
        raise EnclosureError(
            say('The last stretch of "{name}" is no longer than that: type less.', name=name)
        )
    share = by / size
    there = last[0] + (last[0] - before[0]) * share, last[1] + (last[1] - before[1]) * share
    return _ending_at(project, which, name, (end, there))


def _towards(line: Line, end: End) -> Points:
    return line.points if end is End.END else line.points[::-1]


def _ending_at(project: Project, which: Which, name: str, ending: tuple[End, Point]) -> Project:
    _, line = line_of(project, which, name)
    end, there = ending
    longer = (*_towards(line, end)[:-1], there)
    points = longer if end is End.END else longer[::-1]
    return replace_shape(project, which, name, replace(line, points=points))


def _last_stretch(points: Points) -> tuple[Point, Point]:
    last = points[-1]
    return next(p for p in reversed(points) if not same_place(p, last, editing.SAME)), last


def _must_be_open(name: str, line: Line) -> None:
    if line.closed:
        raise EnclosureError(say('"{name}" is closed and has no end: split it first.', name=name))
