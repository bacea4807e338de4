"""The office's own drawing handed back with what was found marked in it.

The drawing stays as it is, letter by letter; marks are plain lines, circles and texts on layers of
their own, in the drawing's units and coordinates, sized like on a sheet at the scale that suits
each section. They replace those of an earlier run.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from pathlib import Path

from enclosure_app.drawing.theme import load_theme
from enclosure_app.errors import EnclosureError
from enclosure_app.files.atomic import write_atomically
from enclosure_app.files.dxf.content import content
from enclosure_app.files.dxf.document import open_document
from enclosure_app.language import say
from enclosure_app.model.place import Point, Points
from enclosure_app.model.report import DrawingResult
from enclosure_app.reports.dxf.entities import Ring, Shape, Way, Words
from enclosure_app.reports.dxf.layers import mark_layers
from enclosure_app.reports.dxf.room import Room
from enclosure_app.reports.dxf.section import Look, SectionMarker, scale_of
from enclosure_app.reports.dxf.source import is_drawn_in, lines_by_handle
from enclosure_app.reports.dxf.splice import with_marks
from enclosure_app.reports.dxf.words import column


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
    factor = result.drawing.units.in_mm
    drawn = content(open_document(source), all_layers=True).items
    lines = lines_by_handle(drawn, factor)
    own = tuple(each for each in result.sections if is_drawn_in(each, lines))
    if result.sections and not own:
        raise EnclosureError(
            say(
                "{file} is not the drawing that was checked: none of its lines stand where they "
                "stood. Name the right one.",
                file=source,
            )
        )
    room = Room.beside(drawn, factor)
    data = marked(source.read_bytes(), replace(result, sections=own), job, room)
    write_atomically(path, data)
    return tuple(each.section.name for each in result.sections if each not in own)


def marked(
    data: bytes, result: DrawingResult, job: MarkJob = _PLAIN, room: Room | None = None
) -> bytes:
    """Return the bytes of a DXF drawing with what was found in it marked.

    `room` says what is drawn already, in mm, so that flags and words do not cover it.

    Raises:
        EnclosureError: the drawing stops in the middle.
    """
    units, theme = result.drawing.units, load_theme()
    look = Look(units, theme, job.sheet, job.scope)
    shapes = (_scaled(each, 1 / units.in_mm) for each in shapes_of(result, look, room or Room()))
    ratios = [scale_of(each, units) for each in result.sections]
    dash = max(ratios, default=1.0) / units.in_mm
    return with_marks(data, shapes, mark_layers(theme), dash_unit=dash)


def shapes_of(result: DrawingResult, look: Look, room: Room) -> Iterator[Shape]:
    """Yield the marks of all sections of a drawing, in mm."""
    for each in result.sections:
        yield from SectionMarker(each, look, room).shapes()
    for each in result.sections:
        yield from column(each, look, room)


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
