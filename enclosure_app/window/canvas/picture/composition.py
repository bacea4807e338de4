"""What is to be seen of a section in the window: the sheet's own marks, for one look at it.

The marks are made by the same functions as the sheet's; here it is only chosen what of the
section is worth making marks of, and every finding gets its numbered flag beside its place.
"""

from collections.abc import Generator, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from types import MappingProxyType

from enclosure_app.drawing.clipping import clip_ring
from enclosure_app.drawing.marks import Label, Mark, Stroke
from enclosure_app.drawing.placement import Box, Placement, box_around
from enclosure_app.drawing.section.rain_marks import STREAMS
from enclosure_app.drawing.section.section_marks import View, marks_in_turn
from enclosure_app.model.finding import Finding
from enclosure_app.model.place import Area
from enclosure_app.model.product import Control
from enclosure_app.model.report import SectionResult
from enclosure_app.model.section import Piece
from enclosure_app.window.canvas.ink.look import DOTS, Look
from enclosure_app.window.canvas.picture.flag_places import flags_of
from enclosure_app.window.canvas.picture.near_view import joints_of, pieces_near, rain_near

_AT_ONCE = 40  # marks composed before others have a turn
_LEGIBLE = 2.0  # dots: letters lower than this cannot be read


@dataclass(frozen=True, slots=True)
class Composed:
    """The marks of a section in sheet mm: under the office's lines, over them, and flags on top."""

    ground: tuple[Mark, ...]
    layers: tuple[Mark, ...]
    flags: tuple[Mark, ...] = ()


def composed(result: SectionResult, placement: Placement, window: Box, look: Look) -> Composed:
    """Compose what is seen of a section in `window` (section mm), for one look at it."""
    steps = composing(result, placement, window, look)
    while True:
        try:
            next(steps)
        except StopIteration as end:
            made: Composed = end.value
            return made


def composing(
    result: SectionResult, placement: Placement, window: Box, look: Look
) -> Generator[None, None, Composed]:
    """Compose the same in many steps, so that others may have a turn between them."""
    least = _LEGIBLE / DOTS * placement.scale
    shown = seen_in(only_control(result, look.only), window, least)
    period = sum(look.theme.pen("rain").dash) * placement.scale
    shown = replace(shown, rain=rain_near(shown.rain, result.section, window, period))
    if len(shown.section.frame) < 3:
        return Composed((), ())
    marks = yield from _in_turns(marks_in_turn(shown, _view(placement, look)))
    cut = next((i for i, mark in enumerate(marks) if _is_frame(mark)), len(marks))
    written = [mark for mark in marks[cut:] if isinstance(mark, Label) and mark.halo]
    numbers = numbers_of(result.findings)
    flags = yield from _in_turns(flags_of(shown, numbers, placement, look, written))
    return Composed(tuple(marks[:cut]), tuple(marks[cut:]), tuple(flags))


def _in_turns(made: Iterator[Mark | None]) -> Generator[None, None, list[Mark]]:
    """Return marks as they are made, so many at a time."""
    marks: list[Mark] = []
    for mark in made:
        if mark is not None:
            marks.append(mark)
        if mark is None or len(marks) % _AT_ONCE == 0:
            yield
    return marks


def _view(placement: Placement, look: Look) -> View:
    """Return how a section is seen: a control alone with its trace and its way in, drops apart."""
    alone = look.only is not None
    streams = (look.only,) if look.only else STREAMS
    return View(placement, look.units, look.theme, streams=streams, traced=alone, drops=False)


def numbers_of(findings: Sequence[Finding]) -> Mapping[str, int]:
    """Return the number of each finding in walking order, by its key, as on the sheet."""
    return {finding.key: number for number, finding in enumerate(findings, 1)}


def only_control(result: SectionResult, only: Control | None) -> SectionResult:
    """Return what of a result concerns one control: other pieces are lines without a control."""
    if only is None:
        return result
    section = result.section
    products = {
        key: replace(product, controls=product.controls & {only})
        for key, product in section.products.items()
    }
    return replace(
        result,
        section=replace(section, products=MappingProxyType(products)),
        layers=MappingProxyType({c: layer for c, layer in result.layers.items() if c is only}),
        rain=result.rain if only is Control.WATER else (),
        findings=tuple(f for f in result.findings if f.control in (only, None)),
    )


def seen_in(result: SectionResult, window: Box, least: float = 0.0) -> SectionResult:
    """Return the result without the office's lines, its areas cut off outside the window.

    Pieces that do not come near the window are left out, and their joints. A hatch is made line
    by line, so that an area far larger than the window would be slow, as would be ten thousand texts; those lower than `least` mm are left out.
    """
    section = result.section
    near = pieces_near(section, window)
    texts = tuple(
        text
        for text in section.texts
        if text.height >= least and window.holds(text.at, text.height * 40)
    )
    pieces = tuple(filter(None, (_cut(piece, window) for piece in near)))
    lean = replace(section, pieces=pieces, strokes=(), texts=texts)
    return replace(result, section=lean, layers=joints_of(result.layers, near, section))


def _cut(piece: Piece, window: Box) -> Piece | None:
    shape = piece.shape
    if not isinstance(shape, Area) or _holds(window, box_around(shape.outer)):
        return piece
    outer = clip_ring(shape.outer, window)
    if not outer:
        return None
    holes = tuple(filter(None, (clip_ring(hole, window) for hole in shape.holes)))
    return replace(piece, shape=Area(outer, holes))


def _holds(window: Box, other: Box) -> bool:
    return window.holds((other.left, other.bottom)) and window.holds((other.right, other.top))


def _is_frame(mark: Mark) -> bool:
    return isinstance(mark, Stroke) and mark.source == "frame"
