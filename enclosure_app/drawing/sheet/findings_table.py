"""The table of findings: number, severity, what and where, measured against required, what to do."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from math import ceil
from types import MappingProxyType

from enclosure_app.drawing.icons import HEIGHT as ICON_HEIGHT
from enclosure_app.drawing.icons import WIDTH as ICON_WIDTH
from enclosure_app.drawing.icons import icon
from enclosure_app.drawing.lengths import format_length
from enclosure_app.drawing.marks import BADGE, Anchor, Label, Mark, Stroke, badge
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.section.flags import FLAG_HEIGHT, FLAG_WIDTH, Site, flag_at
from enclosure_app.drawing.section.glyphs import GLYPHS
from enclosure_app.drawing.tags import Role, Tag, cell
from enclosure_app.drawing.theme import Theme
from enclosure_app.drawing.typeface import text_width, wrap
from enclosure_app.drawing.unsure_words import why_unsure
from enclosure_app.drawing.verdict_words import gone_line, verdict_line
from enclosure_app.language import say
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding
from enclosure_app.model.product import layer_words
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.decision import Decision, State

LINE = 1.78  # line distance, in heights of capitals
_MARGIN = FLAG_WIDTH + ICON_WIDTH + 4.0  # from the left edge to the words: flag and picture
_PAD = 1.9
_FIGURE = 17.0  # the breadth of one column of figures
_APART = 1.5  # from the title to the figures beside it
_BADGE = 2 * BADGE + 1.2  # what the badge of a verdict takes before its words
_SLACK = 1e-6  # of a line, for roundings
_DECIDED = 0.8  # above a verdict, so that it is not read as a part of what is to be done
HEAD = 5.0
_TABLE = "findings"  # what the cells of the table are called for whoever has them read aloud


@dataclass(frozen=True, slots=True)
class Row:
    """One finding set in lines that fit the column."""

    number: int
    finding: Finding
    title: tuple[str, ...]
    figures: tuple[str, str]
    message: tuple[str, ...]
    advice: tuple[str, ...]
    basis: tuple[str, ...]
    height: float
    state: State = State.OPEN
    verdict: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class GoneRow:
    """A verdict whose finding is no longer found: what was decided, and about what."""

    state: State
    verdict: tuple[str, ...]
    about: tuple[str, ...]
    height: float


TableRow = Row | GoneRow
_NONE: Mapping[str, Decision] = MappingProxyType({})


def rows(
    findings: Sequence[Finding],
    numbers: dict[str, int],
    width: float,
    look: tuple[Units, Theme],
    decisions: Mapping[str, Decision] = _NONE,
) -> tuple[Row, ...]:
    """Return the rows of the table for a column `width` mm wide, in the order of `findings`."""
    return tuple(_row(f, numbers[f.key], width, look, decisions.get(f.key)) for f in findings)


def gone_rows(decisions: Sequence[Decision], width: float, theme: Theme) -> tuple[GoneRow, ...]:
    """Return a row for each verdict whose finding is no longer found."""
    return tuple(_gone_row(decision, width - _MARGIN, theme) for decision in decisions)


def _gone_row(decision: Decision, room: float, theme: Theme) -> GoneRow:
    size = theme.small
    about = wrap(say("No longer found: {about}", about=gone_line(decision)), size, room)
    verdict = wrap(verdict_line(decision), size, room, bold=True)
    return GoneRow(decision.state, verdict, about, _gone_height(len(about) + len(verdict), size))


def _gone_height(lines: int, size: float) -> float:
    return lines * size * LINE + 2 * _PAD


def _row(
    finding: Finding,
    number: int,
    width: float,
    look: tuple[Units, Theme],
    decision: Decision | None,
) -> Row:
    units, theme = look
    room, size = width - _MARGIN, theme.small
    figures = _length(finding.measured, units), _length(finding.required, units)
    message = wrap(finding.message, size, room)
    advice = wrap(finding.advice, size, room, bold=True)
    basis = wrap(finding.basis, size, room) if finding.basis else ()
    decided = decision if decision and decision.state is not State.OPEN else None
    verdict = wrap(verdict_line(decided), size, room - _BADGE, bold=True) if decided else ()
    heads = _title_lines(title(finding), figures, room, size)
    words = message, advice, basis
    lines = sum(map(len, (heads, *words, verdict)))
    height = _height(finding, lines, size, decided=decided is not None)
    state = decided.state if decided else State.OPEN
    return Row(number, finding, heads, figures, *words, height, state, verdict)


def _height(finding: Finding, lines: int, size: float, *, decided: bool) -> float:
    text = lines * size * LINE + (_DECIDED if decided else 0.0)
    picture = ICON_HEIGHT if finding.rule in GLYPHS else FLAG_HEIGHT
    return max(text, picture) + 2 * _PAD


def parted(row: TableRow, room: float, theme: Theme) -> tuple[TableRow, ...]:
    """Return a row with as many lines of its verdict as `room` mm hold, and the rest, if any.

    What people remark may be longer than a column; everything else in a row is short. The rest
    stands under the same number and the same head.
    """
    line = theme.small * LINE
    over = ceil((row.height - room) / line - _SLACK)
    cut = max(len(row.verdict) - max(over, 0), 1)
    first, rest = row.verdict[:cut], row.verdict[cut:]
    if not rest:
        return (row,)
    shorter = replace(row, verdict=first, height=row.height - len(rest) * line)
    return shorter, _rest_of(row, rest, theme.small)


def _rest_of(row: TableRow, verdict: tuple[str, ...], size: float) -> TableRow:
    if isinstance(row, GoneRow):
        height = _gone_height(len(row.about) + len(verdict), size)
        return replace(row, verdict=verdict, height=height)
    height = _height(row.finding, len(row.title) + len(verdict), size, decided=True)
    bare = replace(row, figures=("", ""), message=(), advice=(), basis=())
    return replace(bare, verdict=verdict, height=height)


def _title_lines(
    words: str, figures: tuple[str, str], room: float, size: float
) -> tuple[str, ...]:
    """Return the title in lines that leave the figures beside the first one alone."""
    measured, required = (text_width(each, size, bold=True) for each in figures)
    return wrap(words, size, room - max(_FIGURE + measured, required) - _APART, bold=True)


def title(finding: Finding) -> str:
    """Return the head of a row, such as ``Fault · short lap, water``."""
    what = say(finding.rule.replace("-", " "))
    control = f", {say(finding.control.value)}" if finding.control else ""
    return f"{say(finding.severity.value.capitalize())} · {what}{control}"


def _length(mm: float | None, units: Units) -> str:
    return "–" if mm is None else format_length(mm, units)


def head_marks(box: Box, theme: Theme) -> Iterator[Mark]:
    """Yield the head of the table at the top of `box`."""
    yield from _heading(box, theme, cell(_TABLE, "", 1, scope="Column"))
    y = box.top - HEAD + 1.4
    heads = (say("measured"), box.right - _FIGURE), (say("required"), box.right)
    for column, (text, right) in enumerate(heads, 2):
        tag = cell(_TABLE, "", column, scope="Column")
        yield Label(text, (right, y), theme.small, theme.quiet, Anchor.END, tag=tag)


def _heading(box: Box, theme: Theme, tag: Tag) -> Iterator[Mark]:
    bottom = box.top - HEAD
    at = (box.left, bottom + 1.4)
    yield Label(say("What was found"), at, theme.medium, theme.ink, bold=True, tag=tag)
    yield Stroke(((box.left, bottom), (box.right, bottom)), theme.pen("table"))


def row_marks(
    row: TableRow, left: float, right: float, top: float, theme: Theme
) -> Iterator[Mark]:
    """Yield one row whose upper edge is at `top`."""
    if isinstance(row, GoneRow):
        yield from _gone_marks(row, left, right, top, theme)
        return
    site = Site(row.number, (0, 0), row.finding.severity, 0.0, row.finding.key, row.state)
    at = (left + FLAG_WIDTH / 2 + 0.4, top - _PAD - FLAG_HEIGHT / 2)
    yield replace(flag_at(site, at, theme), tag=cell(_TABLE, str(row.number), 0, scope="Row"))
    picture = (left + FLAG_WIDTH + 2.2 + ICON_WIDTH / 2, top - _PAD - ICON_HEIGHT / 2)
    yield from icon(row.finding.rule, row.finding.control, picture, theme)
    yield from _texts(row, left + _MARGIN, right, top - _PAD, theme)
    bottom = top - row.height
    yield Stroke(((left, bottom), (right, bottom)), theme.pen("rule"))


def _gone_marks(
    row: GoneRow, left: float, right: float, top: float, theme: Theme
) -> Iterator[Mark]:
    """Yield the row of a verdict without a finding: its badge and words, but no flag."""
    size = theme.small
    y = top - _PAD - size
    yield from badge(row.state, (left + FLAG_WIDTH / 2, y + size / 2), (theme.ink, theme.paper))
    for lines, colour, bold in ((row.about, theme.quiet, False), (row.verdict, theme.ink, True)):
        for line in lines:
            tag = cell(_TABLE, " ".join(row.about), 1)
            yield Label(line, (left + _MARGIN, y), size, colour, bold=bold, tag=tag)
            y -= size * LINE
    bottom = top - row.height
    yield Stroke(((left, bottom), (right, bottom)), theme.pen("rule"))


def _texts(row: Row, left: float, right: float, top: float, theme: Theme) -> Iterator[Mark]:
    """Yield the words of a row in the order in which they are read."""
    size = theme.small
    y = top - size
    tags = [cell(_TABLE, str(row.number), column) for column in range(4)]
    at = (right - _FIGURE, y), (right, y)
    figures = (
        Label(row.figures[0], at[0], size, theme.ink, Anchor.END, bold=True, tag=tags[2]),
        Label(row.figures[1], at[1], size, theme.ink, Anchor.END, tag=tags[3]),
    )
    blocks = (
        (row.title, theme.ink, True),
        (row.message, theme.ink, False),
        (row.advice, theme.ink, True),
        (row.basis, theme.quiet, False),
    )
    for lines, colour, bold in blocks:
        for line in lines:
            key, tag = row.finding.key, tags[1]
            yield Label(line, (left, y), size, colour, bold=bold, source=key, tag=tag)
            y -= size * LINE
        if lines is row.title and any(row.figures):
            yield from figures
    yield from _verdict_marks(row, left, y - _DECIDED, theme)


def _verdict_marks(row: Row, left: float, y: float, theme: Theme) -> Iterator[Mark]:
    """Yield the words of a verdict after its badge; none where nothing was decided."""
    size = theme.small
    yield from badge(row.state, (left + BADGE, y + size / 2), (theme.ink, theme.paper))
    for k, line in enumerate(row.verdict):
        at, tag = (left + _BADGE, y - k * size * LINE), cell(_TABLE, str(row.number), 1)
        yield Label(line, at, size, theme.ink, bold=True, source=row.finding.key, tag=tag)


def no_findings(result: SectionResult, box: Box, look: tuple[Units, Theme]) -> Iterator[Mark]:
    """Yield the words of an empty table: that nothing was found, or what could not be judged."""
    units, theme = look
    yield from _heading(box, theme, Tag(Role.TITLE, _TABLE))
    y = box.top - HEAD - _PAD - theme.small
    for text in _why_empty(result, units):
        for line in wrap(text, theme.small, box.width):
            tag = Tag(Role.WORDS, text)
            yield Label(line, (box.left, y), theme.small, theme.ink, tag=tag)
            y -= theme.small * LINE


def _why_empty(result: SectionResult, units: Units) -> Iterator[str]:
    for layer in result.unjudged:
        why = why_unsure(layer, units) or say("Look at this layer yourself.")
        told = say("The {layer} could not be judged.", layer=layer_words(layer.control))
        yield f"{told} {why}"
    if result.unjudged:
        yield say("Nothing else was found by the checks that were run.")
    else:
        yield say("Nothing was found by the checks that were run.")


def more_words(count: int, box: Box, theme: Theme) -> Label:
    """Return the words that send the reader to the next page."""
    text = say("{count} more on the next sheet", count=count)
    at = (box.right - text_width(text, theme.small, bold=True), box.bottom + 0.6)
    return Label(text, at, theme.small, theme.ink, bold=True, tag=Tag(Role.WORDS, "more"))
