"""The pieces of a section: areas, sheets without a control, and each control in its own line."""

from collections.abc import Iterator, Mapping
from itertools import chain

from enclosure_app.drawing.marks import Fill, Mark, Overlay, Stroke, overlays_of
from enclosure_app.drawing.placement import Placement
from enclosure_app.drawing.polylines import dot, left_of, length, offset, walk_to
from enclosure_app.drawing.section.hatching import hatch
from enclosure_app.drawing.section.laps import painting_order
from enclosure_app.drawing.section.sides import Sides
from enclosure_app.drawing.theme import Pen, Theme
from enclosure_app.model.place import Area, Line, Points
from enclosure_app.model.product import Control
from enclosure_app.model.report import SectionResult
from enclosure_app.model.section import Piece, Section

_CLEAR = 0.12  # mm on paper between the lines of two controls of one sheet
_THICK = 0.6  # mm on paper from which a line's drawn thickness is shown
_LINEWORK = (Overlay.LINEWORK,)


def area_marks(section: Section, placement: Placement, theme: Theme) -> Iterator[Mark]:
    """Yield the areas: a light fill, a hatch by kind, and an outline."""
    areas = [piece for piece in section.pieces if isinstance(piece.shape, Area)]
    for piece in areas:
        yield from _ground(piece, section, placement, theme)
    for piece in areas:
        yield from _outline(piece, section, placement, theme)


def _ground(piece: Piece, section: Section, placement: Placement, theme: Theme) -> Iterator[Mark]:
    rings = _rings(piece.shape, placement)
    look = theme.area(section.product(piece).kind)
    yield Fill(rings, look.colour, piece.name, _LINEWORK)
    for angle, step in look.hatch:
        for line in hatch(rings, angle, step):
            yield Stroke(line, theme.pen("hatch"), piece.name, overlays=_LINEWORK)
    for ring in rings:
        yield Stroke(ring, theme.pen("piece"), piece.name, closed=True, overlays=_LINEWORK)


def _outline(piece: Piece, section: Section, placement: Placement, theme: Theme) -> Iterator[Mark]:
    """Draw the controls of an area along its edge, one inside the other."""
    for i, control in enumerate(controls_of(piece, section)):
        line = theme.control(control)
        pen = Pen(line.colour, theme.pen("edge").width, line.dash)
        for k, ring in enumerate(_rings(piece.shape, placement)):
            inward = (0.5 + i) * (pen.width + _CLEAR) * (1 if k == 0 else -1)
            inner = _ring_inward(ring, inward)
            yield Stroke(inner, pen, piece.name, closed=True, overlays=overlays_of(control))


def _ring_inward(ring: Points, by: float) -> Points:
    closed = (ring[-1], *ring, ring[0])
    turning = sum(
        a[0] * b[1] - b[0] * a[1] for a, b in zip(ring, ring[1:] + ring[:1], strict=True)
    )
    moved = offset(closed, by if turning > 0 else -by)
    return moved[1:-1] if len(moved) > 3 else ring


def _rings(shape: Line | Area, placement: Placement) -> tuple[Points, ...]:
    if isinstance(shape, Line):
        return ()
    return tuple(placement.points(ring) for ring in (shape.outer, *shape.holes))


def sheet_marks(
    result: SectionResult, shown: Mapping[str, Points], sides: Sides, theme: Theme
) -> Iterator[Mark]:
    """Yield the line pieces: those without a control first, outer sheets over inner ones.

    A sheet clears its ground on both sides, so that the inner one of two breaks where they cross.
    """
    section = result.section
    pieces = [section.by_name[name] for name in painting_order(result) if name in shown]
    plain = [p for p in pieces if not controls_of(p, section)]
    layered = [p for p in pieces if controls_of(p, section)]
    for piece in plain:
        yield Stroke(shown[piece.name], theme.pen("piece"), piece.name, overlays=_LINEWORK)
    for piece in layered:
        bands = list(_bands(piece, section, shown[piece.name], sides, theme))
        breadth = len(bands) * theme.pen("water").width
        overlays = overlays_of(*controls_of(piece, section))
        halo = theme.halo_pen(breadth)
        yield Stroke(shown[piece.name], halo, piece.name, overlays=overlays)
        yield from bands


def thickness_marks(section: Section, placement: Placement, theme: Theme) -> Iterator[Mark]:
    """Yield the body of lines that were drawn with a thickness which shows at this scale."""
    for piece in section.pieces:
        shape = piece.shape
        if isinstance(shape, Line) and placement.length(shape.width) >= _THICK:
            look = theme.area(section.product(piece).kind)
            pen = Pen(look.colour, placement.length(shape.width))
            run = placement.points(shape.points)
            yield Stroke(run, pen, piece.name, closed=shape.closed, overlays=_LINEWORK)


def _bands(
    piece: Piece, section: Section, run: Points, sides: Sides, theme: Theme
) -> Iterator[Stroke]:
    """Yield one parallel line for each control of the sheet, water outermost."""
    controls = controls_of(piece, section)
    at, direction = walk_to(run, length(run) / 2)
    outward = sides.outward(at, direction)
    left = 1 if dot(outward, left_of(direction)) > 0 else -1
    for i, control in enumerate(controls):
        pen = theme.control(control)
        steps = (len(controls) - 1) / 2 - i
        band = offset(run, left * steps * (pen.width + _CLEAR))
        yield Stroke(band, pen, piece.name, overlays=overlays_of(control))


def controls_of(piece: Piece, section: Section) -> tuple[Control, ...]:
    """Return the controls of a piece in the order water, air, vapour, heat."""
    own = section.product(piece).controls
    return tuple(control for control in Control if control in own)


def office_marks(section: Section, placement: Placement, theme: Theme) -> Iterator[Mark]:
    """Yield the office's own linework, the frame and the break lines."""
    for stroke in section.strokes:
        if len(stroke.points) > 1:
            points = placement.points(stroke.points)
            yield Stroke(points, theme.pen("office"), stroke.handle, overlays=_LINEWORK)
    outline = placement.points(section.frame)
    yield Stroke(outline, theme.pen("frame"), "frame", closed=True, overlays=_LINEWORK)
    for ends in chain.from_iterable((b.near, b.far) for b in section.breaks):
        yield Stroke(placement.points(ends), theme.pen("break"), "break", overlays=_LINEWORK)
