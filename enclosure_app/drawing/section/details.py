"""Enlarged details of the places of findings, in the paper that the drawing leaves free."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from math import dist

from enclosure_app.drawing.clipping import clipped
from enclosure_app.drawing.marks import Fill, Flag, Label, Mark, Overlay, Stroke, on
from enclosure_app.drawing.placement import Box, Placement, box_around
from enclosure_app.drawing.polylines import mean
from enclosure_app.drawing.scales import Scale, series
from enclosure_app.drawing.section.flags import (
    FLAG_HEIGHT,
    FLAG_WIDTH,
    LANE,
    Site,
    capacity,
    flag_at,
)
from enclosure_app.drawing.section.section_marks import COMPACT, CROWD, View, section_marks
from enclosure_app.drawing.theme import Theme
from enclosure_app.drawing.typeface import text_width
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding
from enclosure_app.model.place import Area, Point, Points
from enclosure_app.model.report import SectionResult

_SMALLEST = 38  # mm, the sides of a detail
_MODERATE, _LARGEST = 70, 220  # not larger than half the room, once they are moderate
_GAP = 5.0
_CAPTION = 4.2
_RIM = 11.0  # places of findings stand at least so far inside a detail
_ENLARGED = 3.9  # a detail is drawn at least so many times larger,
_LEAST = 1.6  # or so many times where a larger one would not hold the fault
_READABLE = 8.0  # mm on paper from which a glyph can be read in the drawing itself


@dataclass(frozen=True, slots=True)
class Detail:
    """One detail: the square it fills on the sheet, its middle in section mm, whose places it shows."""

    box: Box
    middle: Point
    findings: tuple[Finding, ...]
    scale: Scale


@dataclass(frozen=True, slots=True)
class Arrangement:
    """Where the drawing stands on the sheet, and the details beside or below it."""

    drawing: Box
    details: tuple[Detail, ...]

    def told(self, scale: Scale, findings: Sequence[Finding]) -> frozenset[str]:
        """Return the keys of `findings` whose glyphs the drawing at `scale` does without.

        Those are small, and a detail shows them, or there are too many for glyphs to be read.
        """
        shown = {f.key for detail in self.details for f in detail.findings}
        small = [f for f in findings if _size(f) / scale.ratio < _READABLE]
        return frozenset(f.key for f in small if len(findings) >= CROWD or f.key in shown)


def arrange(
    result: SectionResult, findings: Sequence[Finding], free: Box, scale: Scale, units: Units
) -> Arrangement:
    """Place the drawing in `free` and fill the paper beside or below it with details.

    The lanes of the flags lie around `free`, and around the drawing wherever it ends up.
    """
    frame = box_around(result.section.frame)
    width, height = frame.width / scale.ratio, frame.height / scale.ratio
    scales = detail_scales(scale, units)
    if scales and findings:
        beside = Box(
            free.left + width + 2 * LANE + 1.0,
            free.bottom - LANE,
            free.right + LANE,
            free.top + LANE,
        )
        below = Box(
            free.left - LANE, free.bottom - LANE, free.right + LANE, free.top - height - 2 * LANE
        )
        for room, across in ((beside, True), (below, False)):
            drawing = _drawing(free, (width, height), across)
            details = _grid(findings, room, scales)
            if details and capacity(drawing) >= len(findings):
                return Arrangement(drawing, details)
    return Arrangement(free, ())


def detail_scales(scale: Scale, units: Units) -> list[Scale]:
    """Return the standard scales for details of a drawing at `scale`, the usual one first, then smaller."""
    usual = [s for s in series(units) if s.ratio * _ENLARGED <= scale.ratio]
    smaller = [s for s in series(units) if s.ratio * _ENLARGED > scale.ratio >= s.ratio * _LEAST]
    return [*usual[-1:], *smaller]


def _fitting(group: Sequence[Finding], side: float, scales: Sequence[Scale]) -> Scale:
    """Return the largest of `scales` at which the faults themselves fit into a detail."""
    points = [p for f in group for run in f.extent if f.rule in COMPACT for p in run]
    around = box_around([*points, *(f.at for f in group)])
    size = max(around.width, around.height)
    return next((s for s in scales if size / s.ratio <= side - 2 * _RIM), scales[0])


def _size(finding: Finding) -> float:
    """Return how large in section mm the fault itself is."""
    points = [p for run in finding.extent for p in run]
    around = box_around([*points, finding.at])
    return max(around.width, around.height)


def _drawing(free: Box, size: tuple[float, float], beside: bool) -> Box:
    """Return the box of the drawing: at the left, or at the top, in the middle of the other way."""
    width, height = size
    if beside:
        return Box(free.left, free.bottom, free.left + width, free.top)
    return Box(free.left, free.top - height, free.right, free.top)


def _grid(findings: Sequence[Finding], room: Box, scales: Sequence[Scale]) -> tuple[Detail, ...]:
    """Return as large details as show all findings, or as many as fit."""
    for side in range(_largest(room), _SMALLEST - 1, -2):
        boxes = _boxes(room, side)
        groups = grouped(findings, (side / 2 - _RIM) * scales[0].ratio)
        if boxes and (len(groups) <= len(boxes) or side == _SMALLEST):
            shown = sorted(groups, key=_loudness)[: len(boxes)]
            shown.sort(key=groups.index)
            return tuple(
                Detail(box, _middle(group), group, _fitting(group, side, scales))
                for box, group in zip(boxes, shown, strict=False)
            )
    return ()


def _middle(group: Sequence[Finding]) -> Point:
    return mean(tuple(f.at for f in group))


def _largest(room: Box) -> int:
    return min(max(int((room.width - _GAP) / 2), _MODERATE), _LARGEST)


def _loudness(group: tuple[Finding, ...]) -> int:
    order = ("fault", "doubt", "remark", "off")
    return min(order.index(f.severity.value) for f in group)


def _boxes(room: Box, side: float) -> list[Box]:
    """Return the squares that fit into `room`, row by row from the top, spread evenly."""
    across = int((room.width + _GAP) / (side + _GAP)) if room.width > 0 else 0
    tall = side + _CAPTION + _GAP
    down = int((room.height + _GAP) / tall) if room.height > 0 else 0
    tops = [room.top - row * tall for row in range(down)]
    lefts = [room.left + column * (side + _GAP) for column in range(across)]
    return [Box(x, y - side, x + side, y) for y in tops for x in lefts]


def grouped(findings: Sequence[Finding], reach: float) -> list[tuple[Finding, ...]]:
    """Return groups of findings that lie within `reach` mm of the middle of their group."""
    groups: list[tuple[Finding, ...]] = []
    for finding in findings:
        for i, group in enumerate(groups):
            grown = (*group, finding)
            middle = mean(tuple(f.at for f in grown))
            if all(dist(f.at, middle) <= reach for f in grown):
                groups[i] = grown
                break
        else:
            groups.append((finding,))
    return groups


def detail_marks(
    detail: Detail, result: SectionResult, numbers: dict[str, int], view: View
) -> Iterator[Mark]:
    """Yield one detail: the same marks as the drawing's, larger, without rings, in a ruled square."""
    placement = Placement(detail.scale.ratio, detail.middle, detail.box.centre)
    enlarged = replace(view, placement=placement, detail=True, elsewhere=frozenset())
    part = trimmed(result, window_of(placement, detail.box))
    yield Fill((detail.box.ring,), view.theme.paper, "detail")
    yield from in_its_square(detail, section_marks(part, enlarged), result, numbers, view.theme)


def in_its_square(
    detail: Detail,
    marks: Iterable[Mark],
    result: SectionResult,
    numbers: dict[str, int],
    theme: Theme,
) -> Iterator[Mark]:
    """Yield what of `marks` lies in the square of a detail, ruled, with its flags and its scale."""
    box = detail.box
    for mark in clipped(marks, box):
        if not isinstance(mark, Label):
            yield mark
        elif (
            mark.halo or _kept_inside(mark, box) == mark
        ):  # the office's texts are whole or not there
            yield _kept_inside(mark, box)
    yield Stroke(box.ring, theme.pen("tick"), "detail", closed=True)
    yield from on((Overlay.FINDINGS,), _numbers(detail, result, numbers, theme))
    at = (box.left, box.bottom - _CAPTION + 1.2)
    yield Label(detail.scale.text, at, theme.small, theme.quiet)


def window_of(placement: Placement, box: Box) -> Box:
    """Return the part of a section, in its mm, that stands in a box on the sheet."""
    return box_around(
        (placement.back((box.left, box.bottom)), placement.back((box.right, box.top)))
    )


def trimmed(result: SectionResult, window: Box) -> SectionResult:
    """Leave out what lies outside the window, so that large drawings stay quick; sheets stay."""
    section = result.section
    pieces = tuple(
        p for p in section.pieces if not isinstance(p.shape, Area) or _meets(p.shape.outer, window)
    )
    strokes = tuple(s for s in section.strokes if s.points and _meets(s.points, window))
    return replace(result, section=replace(section, pieces=pieces, strokes=strokes))


def _meets(points: Points, window: Box) -> bool:
    around = box_around(points)
    apart = around.right < window.left or around.left > window.right
    return not (apart or around.top < window.bottom or around.bottom > window.top)


def _kept_inside(label: Label, box: Box) -> Label:
    """Return the label moved so that its letters do not leave the box."""
    width = text_width(label.text, label.size, bold=label.bold)
    share = {"start": 0.0, "middle": 0.5, "end": 1.0}[label.anchor.value]
    low, high = box.left + 1.0 + share * width, box.right - 1.0 - (1 - share) * width
    x, y = label.at
    x = min(max(x, low), max(high, low))
    return replace(label, at=(x, min(max(y, box.bottom + 1.0), box.top - label.size - 1.0)))


def _numbers(
    detail: Detail, result: SectionResult, numbers: dict[str, int], theme: Theme
) -> Iterator[Flag]:
    """Yield the flags of the detail in a row on its upper edge."""
    y = detail.box.top - FLAG_HEIGHT / 2 - 0.9
    for k, finding in enumerate(detail.findings):
        x = detail.box.left + 0.9 + FLAG_WIDTH / 2 + k * (FLAG_WIDTH + 1.0)
        if x + FLAG_WIDTH / 2 > detail.box.right:
            break
        number, state = numbers[finding.key], result.state(finding)
        site = Site(number, finding.at, finding.severity, 0.0, finding.key, state)
        yield flag_at(site, (x, y), theme)
