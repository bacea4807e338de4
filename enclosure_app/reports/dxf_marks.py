"""The office's own drawing handed back with what was found marked in it.

The drawing stays as it is, letter by letter; marks are plain lines, circles and texts on layers of
their own, in the drawing's units and coordinates, sized like on a sheet at the scale that suits
each section. They replace those of an earlier run.
"""

from collections.abc import Iterable, Iterator
from dataclasses import replace
from pathlib import Path

from enclosure_app.drawing.theme import load_theme
from enclosure_app.errors import EnclosureError
from enclosure_app.files.atomic import write_atomically
from enclosure_app.files.dxf_content import content
from enclosure_app.files.dxf_document import open_document
from enclosure_app.language import say
from enclosure_app.model.place import Point, Points
from enclosure_app.model.report import DrawingResult
from enclosure_app.reports.dxf_entities import Ring, Shape, Way, Words
from enclosure_app.reports.dxf_layers import mark_layers
from enclosure_app.reports.dxf_room import Room
from enclosure_app.reports.dxf_section import Look, SectionMarker, scale_of
from enclosure_app.reports.dxf_splice import with_marks
from enclosure_app.reports.dxf_words import column


def write_dxf(path: Path, source: Path, result: DrawingResult, sheet: str = "") -> None:
    """Write the drawing `source` to `path`, with what was found in it marked.

    `sheet` is where the hyperlinks of findings lead, such as ``eave.pdf``; without it they name the
    finding as the BCF file does, and only show its words.

    Raises:
        EnclosureError: the drawing cannot be read or stops in the middle; `path` cannot be written.
    """
    drawn = content(open_document(source), all_layers=True).items
    room = Room.beside(drawn, result.drawing.units.in_mm)
    try:
        data = source.read_bytes()
    except OSError as error:
        raise EnclosureError(
            say(
                "{file}: the drawing cannot be read ({reason}), so nothing can be marked in it.",
                file=source,
                reason=error.strerror or error,
            )
        ) from error
    write_atomically(path, marked(data, result, sheet, room))


def marked(data: bytes, result: DrawingResult, sheet: str = "", room: Room | None = None) -> bytes:
    """Return the bytes of a DXF drawing with what was found in it marked.

    `room` says what is drawn already, in mm, so that flags and words do not cover it.

    Raises:
        EnclosureError: the drawing stops in the middle.
    """
    units, theme = result.drawing.units, load_theme()
    look = Look(units, theme, sheet)
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
