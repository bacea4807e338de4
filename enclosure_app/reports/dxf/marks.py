"""The office's own drawing handed back with what was found marked in it.

The drawing stays as it is, letter by letter; marks are plain lines, circles and texts on layers of
their own, in the layout that was checked, in the drawing's units and coordinates, sized like on a
sheet at the scale that suits each section. They replace those of an earlier run.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from enclosure_app.drawing.theme import load_theme
from enclosure_app.errors import EnclosureError
from enclosure_app.files.atomic import write_atomically
from enclosure_app.files.dxf.document import open_document
from enclosure_app.language import say
from enclosure_app.model.place import Point, Points
from enclosure_app.model.report import DrawingResult
from enclosure_app.reports.dxf.entities import Ring, Shape, Way, Words
from enclosure_app.reports.dxf.layers import mark_layers
from enclosure_app.reports.dxf.places import Placed, placed, spaces_of
from enclosure_app.reports.dxf.room import Room
from enclosure_app.reports.dxf.scale import scale_of
from enclosure_app.reports.dxf.section import Look, SectionMarker
from enclosure_app.reports.dxf.splice import with_marks
from enclosure_app.reports.dxf.words import columns


@dataclass(frozen=True, slots=True)
class MarkJob:
    """One order to mark a drawing.

    `sheet` is where the hyperlinks of findings lead, such as ``eave.pdf``; without it they name the
    finding as the BCF file of the same `scope` does, and only show its words.
    """

    sheet: str = ""
    scope: str = ""


_PLAIN = MarkJob()


def write_dxf(
    path: Path, source: Path, result: DrawingResult, job: MarkJob = _PLAIN
) -> tuple[str, ...]:
    """Write the drawing `source` to `path`, with what was found in it marked.

    Returns the names of sections that are left out because they are not of this drawing.

    Raises:
        EnclosureError: the drawing cannot be read, stops in the middle, is none of those that
            `result` is about, or would be written over; `path` cannot be written.
    """
    if path.exists() and path.samefile(source):
        raise EnclosureError(
            say(
                "{file} is the drawing itself: write the marked one under another name.", file=path
            )
        )
    spaces = spaces_of(open_document(source))
    there = placed(result.sections, spaces, result.drawing.units)
    if result.sections and not there:
        raise EnclosureError(
            say(
                "{file} is not the drawing that was checked: none of its lines stand where they "
                "stood. Name the right one.",
                file=source,
            )
        )
    write_atomically(path, marked(source.read_bytes(), there, job))
    own = {id(section) for each in there for section in each.sections}
    return tuple(each.section.name for each in result.sections if id(each) not in own)


def marked(data: bytes, there: Sequence[Placed], job: MarkJob = _PLAIN) -> bytes:
    """Return the bytes of a DXF drawing with what was found in its layouts marked.

    Raises:
        EnclosureError: the drawing stops in the middle.
    """
    theme = load_theme()
    shapes: dict[str, list[Shape]] = {}
    dashes: list[float] = []
    for each in there:
        room = Room.beside(each.space.items, each.units.in_mm)
        look = Look(each.units, theme, job.sheet, job.scope)
        made = (_scaled(shape, 1 / each.units.in_mm) for shape in shapes_of(each, look, room))
        shapes.setdefault(each.space.block, []).extend(made)
        dashes += (scale_of(s, each.units, room) / each.units.in_mm for s in each.sections)
    return with_marks(data, shapes, mark_layers(theme), dash_unit=max(dashes, default=1.0))


def shapes_of(there: Placed, look: Look, room: Room) -> Iterator[Shape]:
    """Yield the marks of the sections of a layout, in mm, beside what is drawn in it."""
    for each in there.sections:
        yield from SectionMarker(each, look, room).shapes()
    yield from columns(there.sections, look, room)


def _scaled(shape: Shape, factor: float) -> Shape:
    """Return a shape in units of which `factor` make a mm."""
    match shape:
        case Way():
            return replace(shape, points=_times(shape.points, factor))
        case Ring():
            (centre,) = _times((shape.centre,), factor)
            return replace(shape, centre=centre, radius=shape.radius * factor)
        case Words():
            (at,) = _times((shape.at,), factor)
            return replace(shape, at=at, height=shape.height * factor)


def _times(points: Iterable[Point], factor: float) -> Points:
    return tuple((x * factor, y * factor) for x, y in points)
