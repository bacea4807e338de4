"""Everything that is drawn of one section, without flags: what is sound is calm, faults are loud."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from enclosure_app.drawing.clipping import clipped
from enclosure_app.drawing.lengths import format_length
from enclosure_app.drawing.marks import (
    Label,
    Mark,
    Overlay,
    Stroke,
    on,
    overlays_of,
)
from enclosure_app.drawing.placement import Box, Placement
from enclosure_app.drawing.polylines import distinct, foot, length, unit, walk_to
from enclosure_app.drawing.section.glyphs import Facts, Spot, glyph
from enclosure_app.drawing.section.laps import lap_run, sheets_in_turn
from enclosure_app.drawing.section.layer_marks import (
    area_marks,
    office_marks,
    sheet_marks,
    thickness_marks,
)
from enclosure_app.drawing.section.rain_marks import STREAMS, all_stream_marks, rain_marks
from enclosure_app.drawing.section.sealed_marks import sealed_marks
from enclosure_app.drawing.section.side_words import label_box, side_words
from enclosure_app.drawing.section.sides import Sides, sides_of
from enclosure_app.drawing.section.trace_marks import trace_marks
from enclosure_app.drawing.shapes import circle
from enclosure_app.drawing.theme import Theme
from enclosure_app.drawing.typeface import shorten
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.place import Point, Points
from enclosure_app.model.product import Control
from enclosure_app.model.report import LayerResult, Lift, SectionResult

RING = 4.4  # mm on paper: the ring around the place of a finding
_SMALL_RING = 3.0
_LAPS = frozenset({"reverse-lap", "short-lap", "level-lap", "unsealed-joint"})
_ALONG = _LAPS | {"gap", "edge-cover-short", "upturn-short"}  # glyphs that lie along a line
COMPACT = _LAPS | {"gap", "ponding"}  # faults that a detail is to show whole
CROWD = 16  # findings from which the rings are small


@dataclass(frozen=True, slots=True)
class View:
    """How a section is shown: where it stands on the sheet, in which units it is written.

    A `detail` has neither rings nor the words for the sides. Findings whose keys are in
    `elsewhere` get no glyph here, since a detail shows it larger. `streams` are the controls whose
    way in is shown; `traced` says that the way of the pen is; without `drops` rain has none.
    """

    placement: Placement
    units: Units
    theme: Theme
    detail: bool = False
    elsewhere: frozenset[str] = frozenset()
    streams: tuple[Control, ...] = STREAMS
    traced: bool = False
    drops: bool = True


def section_marks(result: SectionResult, view: View) -> tuple[Mark, ...]:
    """Return the marks of a section in sheet mm, cut off at its frame, faults on top."""
    return tuple(mark for mark in marks_in_turn(result, view) if mark is not None)


def marks_in_turn(result: SectionResult, view: View) -> Iterator[Mark | None]:
    """Yield the same marks as they are made, for whoever has something else to do meanwhile.

    None says that there is no mark yet: the laps of a sheet have been spread, or a glyph is made.
    """
    sides = sides_of(result, view.placement)
    shown = yield from sheets_in_turn(result, view.placement, sides)
    frame = frame_box(result, view.placement)
    yield from clipped(_calm(result, view, sides, shown), frame)
    yield from _loud(result, view, sides, shown)


def frame_box(result: SectionResult, placement: Placement) -> Box:
    """Return the box of the section's frame on the sheet."""
    xs, ys = zip(*placement.points(result.section.frame), strict=True)
    return Box(min(xs), min(ys), max(xs), max(ys))


def ring_radius(findings: Sequence[Finding]) -> float:
    """Return the radius of the rings around places, smaller where there are many."""
    return RING if len(findings) < CROWD else _SMALL_RING


def _calm(
    result: SectionResult, view: View, sides: Sides, shown: Mapping[str, Points]
) -> Iterator[Mark]:
    section, placement, theme = result.section, view.placement, view.theme
    yield from area_marks(section, placement, theme)
    yield from thickness_marks(section, placement, theme)
    yield from office_marks(section, placement, theme)
    if view.traced:
        for layer in result.layers.values():
            yield from on(overlays_of(layer.control), trace_marks(layer, placement, theme))
    yield from all_stream_marks(result.layers.values(), placement, theme, view.streams)
    down = (-sides.uphill[0], -sides.uphill[1])
    rain = rain_marks(result.rain, placement, down, theme, drops=view.drops)
    yield from on((Overlay.WATER,), rain)
    yield from sheet_marks(result, shown, sides, theme)
    yield from on((Overlay.LINEWORK,), _office_texts(result, view))


def _office_texts(result: SectionResult, view: View) -> Iterator[Mark]:
    """Yield the office's own texts, pale, except those that only mark the sides.

    A text that would run out of the frame is shortened.
    """
    theme, frame = view.theme, frame_box(result, view.placement)
    for text in result.section.texts:
        size = view.placement.length(text.height)
        near_mark = text.at in (*result.section.inside, *result.section.outside)
        if text.text.strip() and size > 0 and not near_mark:
            at = view.placement.point(text.at)
            size = min(size, theme.medium)
            room = frame.width + frame.height if text.angle else frame.right - at[0]
            words = shorten(text.text, size, room)
            yield Label(words, at, size, theme.pen("piece").colour, angle=text.angle)


def _loud(
    result: SectionResult, view: View, sides: Sides, shown: Mapping[str, Points]
) -> Iterator[Mark | None]:
    glyphs: list[Mark] = []
    for finding in result.findings:
        if finding.key not in view.elsewhere:
            glyphs += glyph_marks(finding, view, sides, shown)
            yield None
    radius = ring_radius(result.findings)
    if not view.detail:
        taken = [label_box(mark) for mark in glyphs if isinstance(mark, Label)]
        around = (view.placement.point(finding.at) for finding in result.findings)
        taken += [Box(x, y, x, y).inset(-radius) for x, y in around]
        yield from side_words(frame_box(result, view.placement), sides, view.theme, taken)
    for layer in result.layers.values():
        for lift in layer.lifts:
            yield from on(overlays_of(layer.control), _caps(lift, layer, view))
    yield from sealed_marks(result, view.placement, view.theme)
    for finding in result.findings:
        if not view.detail:
            yield from on((Overlay.FINDINGS,), _ring(finding, radius, view))
    yield from glyphs


def glyph_marks(
    finding: Finding, view: View, sides: Sides, shown: Mapping[str, Points]
) -> Iterator[Mark]:
    """Yield the glyph of a finding; `shown` are the sheets with their laps spread."""
    spot, facts = _seen(finding, view, sides, shown)
    yield from on((Overlay.FINDINGS,), glyph(finding.rule, spot, facts, view.theme))


def _caps(lift: Lift, layer: LayerResult, view: View) -> Iterator[Mark]:
    """Yield a blunt cap on each piece that the pen leaves or lands on."""
    start, end = view.placement.points((lift.start, lift.end))
    x, y = unit(start, end)
    for at, piece in ((start, lift.a), (end, lift.b)):
        if piece:
            bar = ((at[0] - y * 1.5, at[1] + x * 1.5), (at[0] + y * 1.5, at[1] - x * 1.5))
            yield Stroke(bar, view.theme.pen("cap"), f"lift:{layer.control.value}")


def _ring(finding: Finding, radius: float, view: View) -> Iterator[Mark]:
    """Yield the ring that says where, as heavy as the finding is severe."""
    pen = view.theme.severity(finding.severity)
    ring = circle(view.placement.point(finding.at), radius, 48)
    if finding.severity is Severity.FAULT:
        yield Stroke(ring, view.theme.halo_pen(pen.width), finding.key, closed=True)
    yield Stroke(ring, pen, finding.key, closed=True)


def _seen(
    finding: Finding, view: View, sides: Sides, shown: Mapping[str, Points]
) -> tuple[Spot, Facts]:
    """Return where and how a finding's glyph is drawn."""
    way = _way(finding, view, shown)
    size = length(way)
    if size and finding.rule in _ALONG and finding.measured is not None:
        size = view.placement.length(finding.measured)
    facts = Facts(
        length=size,
        needed=view.placement.length(finding.required or 0.0),
        text=_text(finding.measured, view.units),
        needed_text=_text(finding.required, view.units),
        way=way,
        down=(-sides.uphill[0], -sides.uphill[1]),
        source=finding.key,
    )
    return _spot(finding, way, view, sides), facts


def _spot(finding: Finding, way: Points, view: View, sides: Sides) -> Spot:
    """Return the place of a glyph with its directions: in the middle of the line that it follows."""
    at = view.placement.point(finding.at)
    if len(way) > 1 and finding.rule == "stops-short":  # its trail leads to where it should go on
        ahead = unit(way[0], way[-1])
        return Spot(way[0], ahead, sides.outward(way[0], ahead, finding.control))
    if len(way) > 1 and finding.rule in _ALONG:
        at, along = walk_to(way, length(way) / 2)
    else:
        along = _direction(finding, at, sides)
    up = sides.up(along)
    return Spot(at, up, sides.outward(at, up, finding.control))


def _direction(finding: Finding, at: Point, sides: Sides) -> Point:
    walk = sides.walks.get(finding.control) if finding.control else None
    walk = walk or next(iter(sides.walks.values()), None)
    return walk.way.foot(at).direction if walk else sides.uphill


def _text(mm: float | None, units: Units) -> str:
    return "" if mm is None else format_length(mm, units)


def _way(finding: Finding, view: View, shown: Mapping[str, Points]) -> Points:
    """Return the line on the sheet along which the glyph lies.

    Of a lap it is the inner sheet, as shown, so that the outer one lies on the glyph's outer side.
    """
    runs = [distinct(view.placement.points(run)) for run in finding.extent if run]
    if not runs:
        return ()
    if finding.rule not in _LAPS:
        return distinct(tuple(point for run in runs for point in run))
    inner = runs[-1]
    names = [name for name in finding.pieces if name in shown and len(shown[name]) > 1]
    if not names or len(inner) < 2:
        return inner
    middle_of = walk_to(inner, length(inner) / 2)[0]
    nearest = min(names, key=lambda name: foot(shown[name], middle_of).off)
    return lap_run(shown[nearest], inner)
