"""The legend: only what is used on this sheet."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from enclosure_app.drawing.flags import flag_shape
from enclosure_app.drawing.layer_marks import controls_of
from enclosure_app.drawing.marks import Fill, Label, Mark, Stroke
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.shapes import arrow_head, drop
from enclosure_app.drawing.theme import Pen, Theme
from enclosure_app.drawing.typeface import shorten
from enclosure_app.model.finding import Severity
from enclosure_app.model.place import Point
from enclosure_app.model.product import Control
from enclosure_app.model.report import SectionResult, Verdict

_ROW = 5.2
_SWATCH = 9.0

Draw = Callable[[Point, Theme], Iterator[Mark]]


@dataclass(frozen=True, slots=True)
class Entry:
    """One line of the legend: its swatch, drawn from the left end of its middle line, and its words."""

    words: str
    draw: Draw


def entries(result: SectionResult) -> tuple[Entry, ...]:
    """Return what has to be explained on the sheet of one section."""
    section = result.section
    used = {c for piece in section.pieces for c in controls_of(piece, section)}
    severities = {f.severity for f in result.findings}
    found = [Entry(f"{c.value} layer", _line(c)) for c in Control if c in used]
    found += [Entry(s.value, _flag(s)) for s in Severity if s in severities]
    if result.rain:
        found.append(Entry("way of a drop", _rain))
    if any(
        layer.way_in and layer.verdict is not Verdict.CONTINUOUS
        for layer in result.layers.values()
    ):
        found.append(Entry("way in", _stream))
    return tuple(found)


def legend_height(result: SectionResult) -> float:
    """Return the height that the legend takes in two columns."""
    return (len(entries(result)) + 1) // 2 * _ROW + 3.0


def legend_marks(result: SectionResult, box: Box, theme: Theme) -> Iterator[Mark]:
    """Yield the legend in two columns from the top of `box`."""
    yield Stroke(((box.left, box.top), (box.right, box.top)), theme.pen("table"))
    items = entries(result)
    per_column = (len(items) + 1) // 2
    for i, entry in enumerate(items):
        column, row = divmod(i, per_column)
        x = box.left + column * box.width / 2
        y = box.top - 1.5 - (row + 0.5) * _ROW
        yield from entry.draw((x, y), theme)
        room = box.width / 2 - _SWATCH - 3.0
        text = shorten(entry.words, theme.small, room)
        yield Label(text, (x + _SWATCH + 2.0, y - theme.small / 2), theme.small, theme.ink)


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


def _rain(at: Point, theme: Theme) -> Iterator[Mark]:
    pen = theme.pen("rain")
    way = ((at[0], at[1] + 0.9), (at[0] + _SWATCH, at[1] - 0.9))
    yield Stroke(way, pen)
    yield Stroke(arrow_head(way, 1.3), Pen(pen.colour, pen.width))
    yield Fill((drop((at[0] + _SWATCH / 2, at[1]), 1.5),), pen.colour)


def _stream(at: Point, theme: Theme) -> Iterator[Mark]:
    way = (at, (at[0] + _SWATCH, at[1]))
    yield Stroke(way, Pen(theme.tints["air"][1], 2.2))
    yield Stroke(way, Pen(theme.pen("air").colour, 0.13))
    yield Stroke(arrow_head(way, 2.0), Pen(theme.pen("air").colour, theme.pen("glyph").width))
