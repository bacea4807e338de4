"""What is to be seen of a section in the window: the sheet's own marks, for one look at it.

The marks are made by the same functions as the sheet's; here it is only chosen what of the
section is worth making marks of, and every finding gets its numbered flag beside its place.
"""

from collections.abc import Generator, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from math import cos, radians, sin
from types import MappingProxyType

from enclosure_app.drawing.clipping import clip_ring
from enclosure_app.drawing.marks import Anchor, Label, Mark, Stroke
from enclosure_app.drawing.placement import Box, Placement, box_around
from enclosure_app.drawing.section.flags import FLAG_HEIGHT, FLAG_WIDTH, Site, flag_at
from enclosure_app.drawing.section.rain_marks import STREAMS
from enclosure_app.drawing.section.section_marks import View, marks_in_turn, ring_radius
from enclosure_app.drawing.verdict_words import state_word
from enclosure_app.model.finding import Finding
from enclosure_app.model.place import Area, Point, Points
from enclosure_app.model.product import Control
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.decision import State
from enclosure_app.model.section import Piece
from enclosure_app.window.canvas.ink.look import DOTS, Look, legible
from enclosure_app.window.canvas.picture.near_view import joints_of, pieces_near, rain_near

_ROUND = (45, 135, -45, -135, 0, 180, 90, -90)  # degrees: where a flag may stand about its ring
_STEM = 2.2  # mm from the ring to the flag
_AT_ONCE = 40  # marks composed before others have a turn
_LEGIBLE = 2.0  # dots: letters lower than this cannot be read
_WORDS = 3.0  # mm below a flag for the word of its verdict


@dataclass(frozen=True, slots=True)
class Composed:
    """The marks of a section in sheet mm: what lies under the office's lines, and over them."""

    ground: tuple[Mark, ...]
    layers: tuple[Mark, ...]


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
    marks: list[Mark] = []
    for mark in marks_in_turn(shown, _view(placement, look)):
        if mark is not None:
            marks.append(mark)
        if mark is None or len(marks) % _AT_ONCE == 0:
            yield
    cut = next((i for i, mark in enumerate(marks) if _is_frame(mark)), len(marks))
    flags = flags_of(shown, numbers_of(result.findings), placement, look)
    return Composed(tuple(marks[:cut]), (*marks[cut:], *flags))


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


def flags_of(
    result: SectionResult, numbers: Mapping[str, int], placement: Placement, look: Look
) -> Iterator[Mark]:
    """Yield a flag for each finding beside its ring, where it covers no other flag.

    What was decided about it is told by its badge and, below it, by its word.
    """
    findings = result.findings
    radius = ring_radius(findings)
    taken: list[Point] = [placement.point(finding.at) for finding in findings]
    decided = len(result.undecided) < len(findings)
    tall = FLAG_HEIGHT + (_WORDS if decided else 0.0)
    for finding in findings:
        at = placement.point(finding.at)
        centre = _free_place(at, radius, taken, tall)
        taken.append(centre)
        state = result.state(finding)
        site = Site(numbers[finding.key], at, finding.severity, radius, finding.key, state)
        stem = Stroke(_stem(at, centre, radius), look.theme.pen("leader"), finding.key)
        yield legible(flag_at(site, centre, look.theme, stem), dark=look.dark)
        if state is not State.OPEN:
            yield _word(state, centre, finding.key, look)


def _word(state: State, centre: Point, key: str, look: Look) -> Label:
    theme = look.theme
    at = (centre[0], centre[1] - FLAG_HEIGHT / 2 - theme.small - 0.7)
    words = state_word(state)
    return Label(
        words, at, theme.small, theme.ink, Anchor.MIDDLE, bold=True, halo=theme.paper, source=key
    )


def _free_place(at: Point, radius: float, taken: Sequence[Point], tall: float) -> Point:
    places = [
        _away(at, radius + _STEM + (FLAG_WIDTH / 2) * ring, angle)
        for ring in (1.0, 3.2, 5.4)
        for angle in _ROUND
    ]
    return next((place for place in places if not _covers(place, taken, tall)), places[0])


def _away(at: Point, by: float, degrees: float) -> Point:
    return at[0] + by * cos(radians(degrees)), at[1] + by * sin(radians(degrees))


def _covers(place: Point, taken: Sequence[Point], tall: float) -> bool:
    return any(
        abs(place[0] - x) < FLAG_WIDTH + 0.4 and abs(place[1] - y) < tall + 0.4 for x, y in taken
    )


def _stem(at: Point, centre: Point, radius: float) -> Points:
    dx, dy = centre[0] - at[0], centre[1] - at[1]
    whole = max((dx * dx + dy * dy) ** 0.5, 1e-9)
    return (at[0] + dx / whole * radius, at[1] + dy / whole * radius), centre
