"""Frames: the drawn ones, their names, and the frame of a drawing that has none."""

import re
from collections.abc import Sequence
from dataclasses import dataclass

from enclosure_app.files.dxf.raw import RawPath
from enclosure_app.files.dxf.words import listed
from enclosure_app.files.framing.chains import handle_order
from enclosure_app.files.framing.marks import NO_MARKS, Marks
from enclosure_app.files.framing.outlines import Region, encloses, without_twins
from enclosure_app.geometry.outlines.chaining import canonical_ring, chain, signed_area, tidy
from enclosure_app.geometry.outlines.clipping import within
from enclosure_app.language import later, say
from enclosure_app.model.drawing import Note, NoteLevel
from enclosure_app.model.place import Points

_PLAN = re.compile(r"\bPLAN\b", re.I)


@dataclass(frozen=True, slots=True)
class Frame:
    """One frame: its ring (mm), its section's name, and the marks in it."""

    ring: Points
    name: str = ""
    drawn: bool = True
    marks: Marks = NO_MARKS

    @property
    def plan(self) -> bool:
        """Whether the title says that the section is a plan."""
        return bool(_PLAN.search(self.name))


def drawn_frames(paths: Sequence[RawPath]) -> tuple[tuple[Frame, ...], tuple[Note, ...]]:
    """Return the closed outlines among `paths` (mm), in drawing order, and what was left out.

    One that holds other frames is the border of the sheet and is left out.
    """
    regions, loose = _closed(paths)
    single = sorted(without_twins(regions), key=lambda each: _first(each.handles))
    around = [each for each in single if _holds_another(each, single)]
    border = [_first_name(each.handles) for each in around]
    notes = [
        *_left_out(
            border,
            later(
                "Outlines of frames that hold other frames: taken for the border of the sheet "
                "({names})."
            ),
        ),
        *_left_out(loose, later("Outlines of frames that do not close: left out ({names}).")),
    ]
    frames = tuple(Frame(canonical_ring(each.points)) for each in single if each not in around)
    return frames, tuple(notes)


def _closed(paths: Sequence[RawPath]) -> tuple[list[Region], list[str]]:
    regions, loose = [], []
    for path in paths:
        points = tidy(path.points, closed=True)
        if (path.closed or path.filled) and encloses(points):
            regions.append(Region(points, "", (path.tag.handle,)))
    opened = [path for path in paths if not (path.closed or path.filled)]
    for each in chain([path.points for path in opened]):
        handles = tuple(opened[i].tag.handle for i in each.members)
        if each.closed:
            regions.append(Region(each.points, "", handles))
        else:
            loose.append(_first_name(handles))
    return regions, loose


def _first_name(handles: Sequence[str]) -> str:
    return min(handles, key=handle_order)


def _first(handles: Sequence[str]) -> tuple[tuple[int, str], ...]:
    return handle_order(_first_name(handles))


def _holds_another(outer: Region, regions: Sequence[Region]) -> bool:
    size = abs(signed_area(outer.points))
    return any(
        abs(signed_area(each.points)) < size and bool(within(each.points, outer.points).all())
        for each in regions
        if each is not outer
    )


def _left_out(names: Sequence[str], why: str) -> list[Note]:
    if not names:
        return []
    return [Note(NoteLevel.IGNORED, say(why, names=listed(names)))]
