"""The ribbon: a control layer unrolled to a straight band, read like a measuring tape."""

from collections.abc import Iterator
from itertools import pairwise
from math import floor

from enclosure_app.drawing.lengths import format_length
from enclosure_app.drawing.marks import Anchor, Fill, Label, Mark, Overlay, Stroke, on, overlays_of
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.ribbon.band import BAND, HAIR, Ribbon
from enclosure_app.drawing.ribbon.unrolled import (
    Lapped,
    Part,
    joints_by_pair,
    lapped,
    tick_step,
    unrolled,
)
from enclosure_app.drawing.ribbon.words import word_marks
from enclosure_app.drawing.section.flags import FLAG_HEIGHT, FLAG_WIDTH, Site, flag_at, spaced
from enclosure_app.drawing.theme import Pen, Theme
from enclosure_app.drawing.typeface import shorten, text_width
from enclosure_app.drawing.unsure_words import why_unsure
from enclosure_app.language import say, say_count
from enclosure_app.model.drawing import Units
from enclosure_app.model.report import Continuity, LayerResult, SectionResult

_NAMELESS = 2.0  # mm on either side of a sheet's name, so much of a sheet has room for none


def ribbon_marks(
    result: SectionResult,
    layer: LayerResult,
    numbers: dict[str, int],
    box: Box,
    look: tuple[Units, Theme],
) -> tuple[Mark, ...]:
    """Return the marks of the ribbon of one layer within `box` (`HEIGHT` mm high)."""
    return tuple(marks_in_turn(result, layer, numbers, box, look))


def marks_in_turn(
    result: SectionResult,
    layer: LayerResult,
    numbers: dict[str, int],
    box: Box,
    look: tuple[Units, Theme],
) -> Iterator[Mark]:
    """Yield the same marks as they are made, for whoever has something else to do meanwhile."""
    ribbon = Ribbon(result, layer, unrolled(layer), box, *look)
    yield from _heading(ribbon)
    if ribbon.laid.length <= 0:
        return
    yield from _band(ribbon, lapped(layer, ribbon.laid))
    yield from _holes(ribbon)
    yield from word_marks(ribbon)
    yield from _ticks(ribbon)
    yield from on((Overlay.FINDINGS, *overlays_of(layer.control)), _flags(ribbon, numbers))


def _heading(ribbon: Ribbon) -> Iterator[Mark]:
    """Name the control and say in one line how it runs; show its line beside the name."""
    box, theme, control = ribbon.box, ribbon.theme, ribbon.layer.control
    y = box.top - theme.medium
    pen = theme.control(control)
    yield Stroke(((box.left, y + 1.2), (box.left + 9.0, y + 1.2)), pen, control.value)
    name = say(control.value.capitalize())
    yield Label(name, (box.left + 11.0, y), theme.medium, theme.ink, bold=True)
    start = box.left + 13.0 + text_width(name, theme.medium, bold=True)
    text = shorten(continuity_line(ribbon.layer, ribbon.units), theme.small, box.right - start)
    yield Label(text, (start, y), theme.small, theme.quiet)


def continuity_line(layer: LayerResult, units: Units) -> str:
    """Return in one line how a layer runs."""
    match layer.continuity:
        case Continuity.ABSENT:
            return layer.why or say("No sheet or board of this layer is drawn.")
        case Continuity.CONTINUOUS:
            return say("continuous: can be followed from end to end without lifting the pen")
        case Continuity.UNSURE:
            why = why_unsure(layer, units)
            return say("unsure: {why}", why=why) if why else say("unsure: judge this layer by eye")
    count = len(layer.lifts)
    widest = max((lift.width for lift in layer.lifts), default=0.0)
    words = say_count(
        count,
        "broken at 1 place, {width} wide",
        "broken at {count} places, at most {width} wide",
        width=format_length(widest, units),
    )
    if layer.opening is not None:
        width = format_length(layer.opening, units)
        words += say("; open from outside to inside by {width}", width=width)
    return words


def _band(ribbon: Ribbon, laps: tuple[Lapped, ...]) -> Iterator[Mark]:
    """Draw the sheets in two tints that take turns, over them the laps, and the names that fit."""
    tints = ribbon.theme.tints[ribbon.layer.control.value]
    edge = Pen(ribbon.theme.control(ribbon.layer.control).colour, 0.25)
    for i, course in enumerate(ribbon.laid.courses):
        yield Fill((ribbon.block(course.start, course.end),), tints[i % 2], course.piece)
    joints = joints_by_pair(ribbon.layer)
    for before, after in pairwise(ribbon.laid.courses):
        if before.end == after.start and frozenset((before.piece, after.piece)) in joints:
            yield ribbon.across(before.end, edge)
    for lap in laps:
        yield from _lap(ribbon, lap)
    for course in ribbon.laid.courses:
        for y in (ribbon.bottom, ribbon.top):
            yield Stroke(
                ((ribbon.x(course.start), y), (ribbon.x(course.end), y)), edge, course.piece
            )
        yield from _name(ribbon, course, laps)


def _lap(ribbon: Ribbon, lap: Lapped) -> Iterator[Mark]:
    """Lay the outer sheet over the inner one, whose hidden end is dashed."""
    colour = ribbon.theme.control(ribbon.layer.control).colour
    yield Fill(
        (ribbon.block(lap.start, lap.end),), ribbon.theme.tints[ribbon.layer.control.value][2]
    )
    ends = (lap.end, lap.start) if lap.earlier_outside else (lap.start, lap.end)
    yield ribbon.across(ends[0], Pen(colour, 0.5))
    yield ribbon.across(ends[1], Pen(colour, 0.18, (0.6, 0.5)))


def _name(ribbon: Ribbon, course: Part, laps: tuple[Lapped, ...]) -> Iterator[Mark]:
    """Write the product's name between the laps, if there is room for it."""
    theme, section = ribbon.theme, ribbon.result.section
    piece = section.by_name.get(course.piece)
    if piece is None or ribbon.x(course.end) - ribbon.x(course.start) <= _NAMELESS:
        return
    start = max([course.start, *(lap.end for lap in laps if lap.start <= course.start <= lap.end)])
    end = min([course.end, *(lap.start for lap in laps if lap.start <= course.end <= lap.end)])
    room = ribbon.x(end) - ribbon.x(start) - _NAMELESS
    text = shorten(say(section.product(piece).name), theme.small, room)
    if len(text) > 3:
        at = ((ribbon.x(start) + ribbon.x(end)) / 2, ribbon.bottom + (BAND - theme.small) / 2)
        yield Label(text, at, theme.small, theme.ink, Anchor.MIDDLE, source=course.piece)


def _holes(ribbon: Ribbon) -> Iterator[Mark]:
    """Cut the lifts out, to scale but never thinner than a hair, with blunt ends."""
    cap = Pen(ribbon.theme.pen("cap").colour, 0.35)
    for hole in ribbon.laid.holes:
        middle = ribbon.x((hole.start + hole.end) / 2)
        half = max(ribbon.x(hole.end) - ribbon.x(hole.start), HAIR) / 2
        ring = Box(middle - half, ribbon.bottom - 0.4, middle + half, ribbon.top + 0.4).ring
        yield Fill((ring,), ribbon.theme.paper, "lift")
        for x in (middle - half, middle + half):
            yield Stroke(((x, ribbon.bottom - 0.6), (x, ribbon.top + 0.6)), cap, "lift")


def _ticks(ribbon: Ribbon) -> Iterator[Mark]:
    """Measure the length out along the bottom in the drawing's units."""
    theme, bottom = ribbon.theme, ribbon.box.bottom + 3.9
    pen = theme.pen("tick")
    left, right = ribbon.box.left, ribbon.box.right
    yield Stroke(((left, bottom), (right, bottom)), pen)
    step = tick_step(ribbon.laid.length, ribbon.units)
    total = format_length(ribbon.laid.length, ribbon.units)
    limit = right - text_width(total, theme.small, bold=True) - 2.0
    for k in range(floor(ribbon.laid.length / step) + 1):
        x = ribbon.x(k * step)
        yield Stroke(((x, bottom), (x, bottom + 1.2)), pen)
        text = format_length(k * step, ribbon.units) if k else "0"
        width = text_width(text, theme.small)
        anchor = Anchor.MIDDLE if k else Anchor.START
        if x + (width / 2 if k else width) <= limit:
            yield Label(text, (x, bottom - 2.5), theme.small, theme.quiet, anchor)
    yield Stroke(((right, bottom), (right, bottom + 1.8)), pen)
    yield Label(total, (right, bottom - 2.5), theme.small, theme.ink, Anchor.END, bold=True)


def _flags(ribbon: Ribbon, numbers: dict[str, int]) -> Iterator[Mark]:
    """Hang the faults from the band by straight stems, as the same flags as in the drawing."""
    theme, box = ribbon.theme, ribbon.box
    mine = [
        f for f in ribbon.result.findings if f.control is ribbon.layer.control and f.key in numbers
    ]
    stations = ribbon.laid.all_along([f.at for f in mine])
    placed = sorted(
        ((ribbon.x(at), numbers[f.key], f) for at, f in zip(stations, mine, strict=True)),
        key=lambda p: p[:2],
    )
    pitch = min(FLAG_WIDTH + 0.8, box.width / max(len(placed), 1))
    half = FLAG_WIDTH / 2
    xs = spaced([x for x, _, _ in placed], pitch, (box.left + half, box.right - half))
    y = ribbon.bottom - 1.4 - FLAG_HEIGHT / 2
    for (x, number, finding), at in zip(placed, xs, strict=True):
        state = ribbon.result.state(finding)
        site = Site(number, (x, ribbon.bottom), finding.severity, 0.0, finding.key, state)
        stem = Stroke(
            ((x, ribbon.bottom + 1.0), (x, ribbon.bottom - 0.3), (at, y + FLAG_HEIGHT / 2)),
            theme.pen("leader"),
            finding.key,
        )
        yield flag_at(site, (at, y), theme, stem)
