"""A rule in two small pictures: a fault as it is drawn, and the same place as it should be.

The pictures are composed of the sheet's own marks, so that what is seen here is what is seen in
the drawing; whoever shows them has the two sections judged first.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from enclosure_app.drawing.clipping import clipped
from enclosure_app.drawing.marks import Anchor, Fill, Label, Mark, Stroke
from enclosure_app.drawing.placement import Box, Placement, box_around
from enclosure_app.drawing.section.section_marks import View, section_marks
from enclosure_app.drawing.theme import Theme
from enclosure_app.drawing.typeface import text_width
from enclosure_app.language import later, say
from enclosure_app.model.drawing import Units
from enclosure_app.model.report import SectionResult

GAP = 4.0  # mm between the two pictures
_HEAD = 5.4  # mm above a picture, for its words
_FEWEST = 64.0  # mm of breadth from which the two stand side by side
_AS_DRAWN, _MENDED = later("As drawn"), later("As it should be")


@dataclass(frozen=True, slots=True)
class Pair:
    """The results of a rule's two sections: as a fault is drawn, and as it should be."""

    rule: str
    drawn: SectionResult
    mended: SectionResult


def picture_height(pair: Pair, width: float) -> float:
    """Return how high the two pictures are in a space `width` mm wide."""
    one = _HEAD + _tall(pair, _breadth(width))
    return one if width >= _FEWEST else 2 * one + GAP


def picture_marks(pair: Pair, width: float, units: Units, theme: Theme) -> Iterator[Mark]:
    """Yield the two pictures, side by side or one above the other, upwards from the origin."""
    breadth = _breadth(width)
    tall = _tall(pair, breadth)
    beside = width >= _FEWEST
    foot = 0.0 if beside else tall + _HEAD + GAP
    left = breadth + GAP if beside else 0.0
    first = Box(0.0, foot, breadth, foot + tall)
    second = Box(left, 0.0, left + breadth, tall)
    yield from _head(first, say(_AS_DRAWN), theme, sound=False)
    yield from _one(_only(pair.drawn, pair.rule), first, units, theme)
    yield from _head(second, say(_MENDED), theme, sound=True)
    yield from _one(_only(pair.mended, pair.rule), second, units, theme)


def _breadth(width: float) -> float:
    return (width - GAP) / 2 if width >= _FEWEST else width


def _tall(pair: Pair, breadth: float) -> float:
    frame = box_around(pair.drawn.section.frame)
    return breadth * frame.height / frame.width


def _only(result: SectionResult, rule: str) -> SectionResult:
    """Return the result with what its rule finds alone: what the fault brings is in the words."""
    own = tuple(finding for finding in result.findings if finding.rule == rule)
    return replace(result, findings=own)


def _head(box: Box, words: str, theme: Theme, *, sound: bool) -> Iterator[Mark]:
    """Write above a picture what it shows, after a cross or a tick."""
    x, y = box.left + 1.4, box.top + 1.5 + theme.medium / 2
    pen = theme.pen("stream")
    if sound:
        yield Stroke(((x - 1.2, y), (x - 0.3, y - 1.0), (x + 1.3, y + 1.3)), pen, "sound")
    else:
        for way in (1.0, -1.0):
            yield Stroke(((x - 1.1, y - 1.1 * way), (x + 1.1, y + 1.1 * way)), pen, "wrong")
    at = (box.left + 4.4, box.top + 1.5)
    yield Label(words, at, theme.medium, theme.ink, bold=True)


def _one(result: SectionResult, box: Box, units: Units, theme: Theme) -> Iterator[Mark]:
    frame = box_around(result.section.frame)
    placement = Placement(frame.width / box.width, frame.centre, box.centre)
    yield Fill((box.ring,), theme.paper, "picture")
    view = View(placement, units, theme, detail=True)
    yield from clipped(section_marks(result, view), box)
    yield Stroke(box.ring, theme.pen("tick"), "picture", closed=True)
    yield from _sides(result, placement, box, theme)


def _sides(result: SectionResult, placement: Placement, box: Box, theme: Theme) -> Iterator[Mark]:
    """Say which side is outside and which is inside."""
    section = result.section
    for words, marks in ((say("outside"), section.outside), (say("inside"), section.inside)):
        half = text_width(words, theme.small) / 2
        for mark in marks:
            x, y = box.inset(half + 1.0, theme.small + 0.6).clamp(placement.point(mark))
            at = (x, y - theme.small / 2)
            yield Label(
                words, at, theme.small, theme.quiet, Anchor.MIDDLE, halo=theme.paper, source="side"
            )
