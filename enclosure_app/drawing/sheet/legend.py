"""The legend: only what is used on this sheet."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from enclosure_app.drawing.marks import Fill, Label, Mark, Stroke, badge
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.section.flags import flag_shape
from enclosure_app.drawing.section.layer_marks import controls_of
from enclosure_app.drawing.section.rain_marks import has_stream
from enclosure_app.drawing.section.sealed_marks import said_sealed, sealed_mark
from enclosure_app.drawing.shapes import arrow_head, drop
from enclosure_app.drawing.tags import Role, Tag
from enclosure_app.drawing.theme import Pen, Theme
from enclosure_app.drawing.typeface import shorten, text_width
from enclosure_app.drawing.verdict_words import state_word
from enclosure_app.language import say
from enclosure_app.model.finding import Severity
from enclosure_app.model.place import Point
from enclosure_app.model.product import Control, layer_words
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.decision import State

_ROW = 5.2
_SWATCH = 9.0
_BESIDE = 3.0  # between a swatch, its words and the next column
_SLACK = 0.1  # so that words that just fit are not cut for a rounding
_LAYERS = 0.56  # of the breadth: what the layers have at least

Draw = Callable[[Point, Theme], Iterator[Mark]]


@dataclass(frozen=True, slots=True)
class Entry:
    """One line of the legend: its swatch, drawn from the left end of its middle line, and its words.

    `short` says the same where there is no room for the words.
    """

    words: str
    draw: Draw
    short: str = ""

    def fits(self, room: float, theme: Theme) -> bool:
        """Whether all words fit into `room` mm."""
        return text_width(self.words, theme.small) <= room


def layer_entries(result: SectionResult) -> tuple[Entry, ...]:
    """Return one line for each control that is drawn, saying how its layer runs."""
    section = result.section
    used = {c for piece in section.pieces for c in controls_of(piece, section)}
    return tuple(_layer_entry(result, control) for control in Control if control in used)


def _layer_entry(result: SectionResult, control: Control) -> Entry:
    words, short, runs = layer_words(control), say(control.value), _runs(result, control)
    return Entry(f"{words}{runs}", _line(control), f"{short}{runs}")


def _runs(result: SectionResult, control: Control) -> str:
    layer = result.layers.get(control)
    return f": {say(layer.continuity.value)}" if layer else ""


def entries(result: SectionResult) -> tuple[Entry, ...]:
    """Return what else has to be explained on the sheet of one section."""
    severities = {f.severity for f in result.findings}
    found = [Entry(say(s.value), _flag(s)) for s in Severity if s in severities]
    states = {result.state(f) for f in result.findings} - {State.OPEN}
    found += [Entry(state_word(s), _verdict(s)) for s in State if s in states]
    if said_sealed(result):
        found.append(Entry(say("joint declared sealed"), _sealed))
    if result.rain:
        found.append(Entry(say("way of a drop"), _rain))
    open_layers = [layer.control for layer in result.layers.values() if has_stream(layer)]
    found += [
        Entry(say("way in, {control}", control=say(control.value)), _stream(control))
        for control in open_layers
    ]
    return tuple(found)


def legend_height(result: SectionResult) -> float:
    """Return the height that the legend takes in two columns."""
    rows = max(len(layer_entries(result)), len(entries(result)))
    return rows * _ROW + 3.0 if rows else 0.0


def legend_marks(result: SectionResult, box: Box, theme: Theme) -> Iterator[Mark]:
    """Yield the legend from the top of `box`: layers on the left, everything else on the right."""
    if box.height > 0:
        yield Stroke(((box.left, box.top), (box.right, box.top)), theme.pen("table"))
    others = entries(result)
    middle = _middle(box, others, theme)
    columns = ((box.left, middle, layer_entries(result)), (middle, box.right, others))
    for left, right, items in columns:
        room = right - left - _SWATCH - _BESIDE
        whole = all(entry.fits(room, theme) for entry in items)
        for row, entry in enumerate(items):
            y = box.top - 1.5 - (row + 0.5) * _ROW
            yield from entry.draw((left, y), theme)
            words = entry.words if whole else entry.short or entry.words
            at = (left + _SWATCH + 2.0, y - theme.small / 2)
            tag = Tag(Role.WORDS, entry.words)
            yield Label(shorten(words, theme.small, room), at, theme.small, theme.ink, tag=tag)


def _middle(box: Box, others: tuple[Entry, ...], theme: Theme) -> float:
    """Return where the right column begins: it takes what its words need, up to its usual share."""
    needed = max((text_width(each.words, theme.small) for each in others), default=0.0)
    return max(box.left + _LAYERS * box.width, box.right - needed - _SWATCH - _BESIDE - _SLACK)


def _line(control: Control) -> Draw:
    def draw(at: Point, theme: Theme) -> Iterator[Mark]:
        yield Stroke((at, (at[0] + _SWATCH, at[1])), theme.control(control))

    return draw


def _flag(severity: Severity) -> Draw:
    def draw(at: Point, theme: Theme) -> Iterator[Mark]:
        x, y = at[0] + _SWATCH / 2, at[1]
        ring = tuple((x + dx * 0.8, y + dy * 0.8) for dx, dy in flag_shape(severity, (0.0, 0.0)))
        yield Fill((ring,), theme.flag)
        yield Stroke(ring, theme.severity(severity), closed=True)

    return draw


def _verdict(state: State) -> Draw:
    def draw(at: Point, theme: Theme) -> Iterator[Mark]:
        yield from badge(state, (at[0] + _SWATCH / 2, at[1]), (theme.ink, theme.paper))

    return draw


def _sealed(at: Point, theme: Theme) -> Iterator[Mark]:
    yield from sealed_mark((at[0] + _SWATCH / 2, at[1]), theme)


def _rain(at: Point, theme: Theme) -> Iterator[Mark]:
    pen = theme.pen("rain")
    way = ((at[0], at[1] + 0.9), (at[0] + _SWATCH, at[1] - 0.9))
    yield Stroke(way, pen)
    yield Stroke(arrow_head(way, 1.3), Pen(pen.colour, pen.width))
    yield Fill((drop((at[0] + _SWATCH / 2, at[1]), 1.5),), pen.colour)


def _stream(control: Control) -> Draw:
    def draw(at: Point, theme: Theme) -> Iterator[Mark]:
        way = (at, (at[0] + _SWATCH, at[1]))
        pen = theme.control(control)
        yield Stroke(way, Pen(theme.tints[control.value][1], 2.2))
        yield Stroke(way, Pen(pen.colour, 0.13))
        yield Stroke(arrow_head(way, 2.0), Pen(pen.colour, theme.pen("glyph").width))

    return draw
