"""The ribbon: a control layer unrolled to a straight band, read like a measuring tape."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import atan2, degrees, floor, log10

from enclosure_app.drawing.flags import FLAG_HEIGHT, FLAG_WIDTH, Site, flag_at, spaced
from enclosure_app.drawing.lengths import format_length
from enclosure_app.drawing.marks import Anchor, Fill, Label, Mark, Stroke
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.polylines import distinct, dot, foot, length, unit
from enclosure_app.drawing.sides import walk_points
from enclosure_app.drawing.theme import Pen, Theme
from enclosure_app.drawing.typeface import shorten, text_width
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding
from enclosure_app.model.place import Point, Points
from enclosure_app.model.report import (
    Joint,
    JointKind,
    LayerResult,
    Lift,
    Run,
    SectionResult,
    Verdict,
)
from enclosure_app.model.section import Section

HEIGHT = 23.0  # mm, of one ribbon with its words, flags and ticks
_BAND = 4.6
_HAIR = 0.6  # a lift is never shown narrower than this
_FOLD = 25.0  # degrees from which a change of direction is a fold
_LEVEL, _UPRIGHT = 1.5, 75.0  # degrees
_TICKS = 9  # about so many


@dataclass(frozen=True, slots=True)
class Course:
    """One sheet on the ribbon: where the pen follows it, in mm along the walk."""

    piece: str
    start: float
    end: float
    points: Points


@dataclass(frozen=True, slots=True)
class Hole:
    """One lift on the ribbon, in mm along the walk."""

    start: float
    end: float


@dataclass(frozen=True, slots=True)
class Unrolled:
    """A layer's walk laid out straight: its courses and holes, and its whole length in mm."""

    courses: tuple[Course, ...]
    holes: tuple[Hole, ...]
    length: float


def unrolled(layer: LayerResult) -> Unrolled:
    """Lay the walk of a layer out straight."""
    courses: list[Course] = []
    holes: list[Hole] = []
    done = 0.0
    for step in layer.walk:
        size = step.width if isinstance(step, Lift) else length(step.points)
        if isinstance(step, Run):
            courses.append(Course(step.piece, done, done + size, step.points))
        else:
            holes.append(Hole(done, done + size))
        done += size
    return Unrolled(tuple(courses), tuple(holes), done)


@dataclass(frozen=True, slots=True)
class Ribbon:
    """One ribbon in its place on the sheet; x of the sheet is `left` + mm along the walk × `per_mm`."""

    result: SectionResult
    layer: LayerResult
    laid: Unrolled
    box: Box
    units: Units
    theme: Theme

    @property
    def top(self) -> float:
        """The upper edge of the band."""
        return self.box.top - 8.0

    @property
    def bottom(self) -> float:
        """The lower edge of the band."""
        return self.top - _BAND

    def x(self, along: float) -> float:
        """Return where a place along the walk stands on the sheet."""
        return self.box.left + along / max(self.laid.length, 1e-9) * self.box.width


def ribbon_marks(
    result: SectionResult,
    layer: LayerResult,
    numbers: dict[str, int],
    box: Box,
    look: tuple[Units, Theme],
) -> tuple[Mark, ...]:
    """Return the marks of the ribbon of one layer within `box` (`HEIGHT` mm high)."""
    ribbon = Ribbon(result, layer, unrolled(layer), box, *look)
    marks = [*_heading(ribbon)]
    if ribbon.laid.length <= 0:
        return tuple(marks)
    marks += [*_band(ribbon), *_laps(ribbon), *_holes(ribbon), *_words(ribbon)]
    return (*marks, *_ticks(ribbon), *_flags(ribbon, numbers))


def _heading(ribbon: Ribbon) -> Iterator[Mark]:
    """Name the control and say in one line how it runs; show its line beside the name."""
    box, theme, control = ribbon.box, ribbon.theme, ribbon.layer.control
    y = box.top - theme.medium
    pen = theme.control(control)
    yield Stroke(((box.left, y + 1.2), (box.left + 9.0, y + 1.2)), pen, control.value)
    name = control.value.capitalize()
    yield Label(name, (box.left + 11.0, y), theme.medium, theme.ink, bold=True)
    start = box.left + 13.0 + text_width(name, theme.medium, bold=True)
    text = shorten(verdict_line(ribbon.layer, ribbon.units), theme.small, box.right - start)
    yield Label(text, (start, y), theme.small, theme.quiet)


def verdict_line(layer: LayerResult, units: Units) -> str:
    """Return in one line how a layer runs."""
    match layer.verdict:
        case Verdict.ABSENT:
            return layer.why or "No sheet or board of this layer is drawn."
        case Verdict.CONTINUOUS:
            return "continuous: can be followed from end to end without lifting the pen"
        case Verdict.UNSURE:
            return f"unsure: {layer.why}" if layer.why else "unsure: judge this layer by eye"
    count = len(layer.lifts)
    places = "1 place" if count == 1 else f"{count} places"
    widest = max((lift.width for lift in layer.lifts), default=0.0)
    words = f"broken at {places}, {'' if count == 1 else 'at most '}{format_length(widest, units)} wide"
    if layer.opening is not None:
        words += f"; open from outside to inside by {format_length(layer.opening, units)}"
    return words


def _band(ribbon: Ribbon) -> Iterator[Mark]:
    """Draw the courses in two tints that take turns, each with its sheet's name where it fits."""
    tints = ribbon.theme.tints[ribbon.layer.control.value]
    section = ribbon.result.section
    for i, course in enumerate(ribbon.laid.courses):
        left, right = ribbon.x(course.start), ribbon.x(course.end)
        ring = Box(left, ribbon.bottom, right, ribbon.top).ring
        yield Fill((ring,), tints[i % 2], course.piece)
    edge = Pen(ribbon.theme.control(ribbon.layer.control).colour, 0.25)
    for course in ribbon.laid.courses:
        for y in (ribbon.bottom, ribbon.top):
            ends = ((ribbon.x(course.start), y), (ribbon.x(course.end), y))
            yield Stroke(ends, edge, course.piece)
        yield from _name(ribbon, course, section)


def _name(ribbon: Ribbon, course: Course, section: Section) -> Iterator[Mark]:
    theme = ribbon.theme
    piece = section.by_name.get(course.piece)
    if piece is None:
        return
    margin = 1.4 + 2.2
    room = ribbon.x(course.end) - ribbon.x(course.start) - 2 * margin
    text = shorten(section.product(piece).name, theme.small, room)
    if len(text) > 3:
        at = ((ribbon.x(course.start) + ribbon.x(course.end)) / 2, ribbon.bottom + 1.4)
        yield Label(text, at, theme.small, theme.ink, Anchor.MIDDLE, source=course.piece)


def _laps(ribbon: Ribbon) -> Iterator[Mark]:
    """Lay the outer sheet of each lap over the inner one, whose hidden end is dashed."""
    tints = ribbon.theme.tints[ribbon.layer.control.value]
    courses = ribbon.laid.courses
    hard = Pen(ribbon.theme.control(ribbon.layer.control).colour, 0.35)
    for before, after in pairwise(courses):
        joint = _joint(ribbon.layer.joints, before.piece, after.piece)
        if before.end != after.start or joint is None:
            continue
        if joint.kind is not JointKind.LAP:
            yield _edge(ribbon, before.end, hard)
            continue
        start, end = _lap_span(ribbon.layer, joint, before.end)
        outer_before = joint.over != after.piece
        ring = Box(ribbon.x(start), ribbon.bottom, ribbon.x(end), ribbon.top).ring
        yield Fill((ring,), tints[2])
        shown, hidden = (end, start) if outer_before else (start, end)
        yield _edge(ribbon, shown, Pen(hard.colour, 0.5))
        yield _edge(ribbon, hidden, Pen(hard.colour, 0.18, (0.6, 0.5)))


def _edge(ribbon: Ribbon, along: float, pen: Pen) -> Stroke:
    x = ribbon.x(along)
    return Stroke(((x, ribbon.bottom), (x, ribbon.top)), pen)


def _joint(joints: Sequence[Joint], a: str, b: str) -> Joint | None:
    return next((j for j in joints if {j.a, j.b} == {a, b}), None)


def _lap_span(layer: LayerResult, joint: Joint, switch: float) -> tuple[float, float]:
    """Return where a lap starts and ends along the walk, which changes sheets somewhere in it."""
    walk = walk_points(layer)
    stations = [foot(walk, p).along for run in (joint.run_a, joint.run_b) for p in run]
    near = [s for s in stations if abs(s - switch) <= 1.5 * joint.length + 1.0]
    if not near or max(near) - min(near) < joint.length / 2:
        return switch - joint.length / 2, switch + joint.length / 2
    return min(near), max(near)


def _holes(ribbon: Ribbon) -> Iterator[Mark]:
    """Cut the lifts out, to scale but never thinner than a hair, with blunt ends."""
    cap = Pen(ribbon.theme.pen("cap").colour, 0.35)
    for hole in ribbon.laid.holes:
        middle = ribbon.x((hole.start + hole.end) / 2)
        half = max(ribbon.x(hole.end) - ribbon.x(hole.start), _HAIR) / 2
        ring = Box(middle - half, ribbon.bottom - 0.4, middle + half, ribbon.top + 0.4).ring
        yield Fill((ring,), ribbon.theme.paper, "lift")
        for x in (middle - half - 0.1, middle + half + 0.1):
            yield Stroke(((x, ribbon.bottom - 0.6), (x, ribbon.top + 0.6)), cap, "lift")


def _words(ribbon: Ribbon) -> Iterator[Mark]:
    """Say above the band how each stretch lies, where it folds, and where the ends go on."""
    theme = ribbon.theme
    y = ribbon.top + 1.1
    taken = ribbon.box.left
    for start, end, word in stretches(ribbon.laid, ribbon.result.section):
        left, right = ribbon.x(start), ribbon.x(end)
        width = text_width(word, theme.small)
        at = max((left + right) / 2 - width / 2, taken)
        if at + width <= right + 0.01:
            yield Label(word, (at, y), theme.small, theme.quiet)
            taken = at + width + 1.5
        if start > 0:
            fold = (
                (left - 0.9, ribbon.top + 2.6),
                (left, ribbon.top + 0.5),
                (left + 0.9, ribbon.top + 2.6),
            )
            yield Stroke(fold, theme.pen("tick"))


def stretches(laid: Unrolled, section: Section) -> list[tuple[float, float, str]]:
    """Return the stretches between folds: where each starts and ends along the walk, and its lie."""
    found: list[tuple[float, float, Point]] = []
    for course in laid.courses:
        at = course.start
        points = distinct(course.points)
        for a, b in pairwise(points):
            size, direction = length((a, b)), unit(a, b)
            if found and _turn(found[-1][2], direction) < _FOLD:
                found[-1] = (found[-1][0], at + size, found[-1][2])
            elif size > laid.length / 60:
                found.append((found[-1][1] if found else 0.0, at + size, direction))
            at += size
    ends = [s for s, _, _ in found[1:]] + [laid.length]
    return [(s, e, _lie(d, section)) for (s, _, d), e in zip(found, ends, strict=False)]


def _turn(a: Point, b: Point) -> float:
    cross = a[0] * b[1] - a[1] * b[0]
    return abs(degrees(atan2(cross, dot(a, b))))


def _lie(direction: Point, section: Section) -> str:
    if section.gravity is None:
        return "straight"
    rise = abs(dot(direction, section.gravity))
    run = abs(direction[0] * section.gravity[1] - direction[1] * section.gravity[0])
    angle = degrees(atan2(rise, run))
    if angle < _LEVEL:
        return "level"
    return "upright" if angle > _UPRIGHT else f"slope {angle:.0f}°"


def _ticks(ribbon: Ribbon) -> Iterator[Mark]:
    """Measure the length out along the bottom in the drawing's units."""
    theme, bottom = ribbon.theme, ribbon.box.bottom + 2.6
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
            yield Label(text, (x, bottom - 2.6), theme.small, theme.quiet, anchor)
    yield Stroke(((right, bottom), (right, bottom + 1.8)), pen)
    yield Label(total, (right, bottom - 2.6), theme.small, theme.ink, Anchor.END, bold=True)


def tick_step(whole: float, units: Units) -> float:
    """Return the distance of ticks in mm: 1, 2 or 5 times a power of ten, or inches and feet."""
    wanted = whole / _TICKS
    if units.imperial:
        inches = (1, 2, 3, 6, 12, 24, 36, 60, 120, 240, 600, 1200, 6000)
        return next((n * 25.4 for n in inches if n * 25.4 >= wanted), 12000 * 25.4)
    power = 10.0 ** floor(log10(wanted))
    return next((n * power for n in (1, 2, 5) if n * power >= wanted), 10 * power)


def _flags(ribbon: Ribbon, numbers: dict[str, int]) -> Iterator[Mark]:
    """Hang the faults from the band by straight stems, as the same flags as in the drawing."""
    theme, box = ribbon.theme, ribbon.box
    walk = walk_points(ribbon.layer)
    mine = [
        f for f in ribbon.result.findings if f.control is ribbon.layer.control and f.key in numbers
    ]
    placed = sorted(
        ((ribbon.x(_along(f, walk)), numbers[f.key], f) for f in mine), key=lambda p: p[:2]
    )
    pitch = min(FLAG_WIDTH + 0.8, box.width / max(len(placed), 1))
    half = FLAG_WIDTH / 2
    xs = spaced([x for x, _, _ in placed], pitch, (box.left + half, box.right - half))
    y = ribbon.bottom - 2.0 - FLAG_HEIGHT / 2
    for (x, number, finding), at in zip(placed, xs, strict=True):
        site = Site(number, (x, ribbon.bottom), finding.severity, 0.0, finding.key)
        stem = Stroke(
            ((x, ribbon.bottom + _BAND / 2), (x, ribbon.bottom - 0.3), (at, y + FLAG_HEIGHT / 2)),
            theme.pen("leader"),
            finding.key,
        )
        yield flag_at(site, (at, y), theme, stem)


def _along(finding: Finding, walk: Points) -> float:
    return foot(walk, finding.at).along
