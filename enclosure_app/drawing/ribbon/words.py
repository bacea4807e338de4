"""What is written above the band of a ribbon: ends, junctions, how stretches lie, and folds."""

from collections.abc import Iterator

from enclosure_app.drawing.marks import Anchor, Label, Mark, Stroke
from enclosure_app.drawing.ribbon.band import Ribbon
from enclosure_app.drawing.ribbon.junctions import junctions
from enclosure_app.drawing.ribbon.unrolled import end_words, stretches
from enclosure_app.drawing.typeface import text_width


def word_marks(ribbon: Ribbon) -> Iterator[Mark]:
    """Say above the band where the ends go on, the junctions, how stretches lie, and the folds."""
    theme, box, y = ribbon.theme, ribbon.box, ribbon.top + 1.1
    first, last = end_words(ribbon.laid, ribbon.result.section)
    yield Label(first, (box.left, y), theme.small, theme.ink, bold=True)
    yield Label(last, (box.right, y), theme.small, theme.ink, Anchor.END, bold=True)
    start = box.left + text_width(first, theme.small, bold=True) + 2.0
    limit = box.right - text_width(last, theme.small, bold=True) - 2.0
    named = list(_junctions(ribbon, start, limit))
    for label in named:
        yield label
        yield Stroke(((label.at[0], ribbon.top), (label.at[0], y - 0.3)), theme.pen("tick"))
    taken = [_span(label) for label in named]
    yield from _lies(ribbon, start, limit, taken)


def _junctions(ribbon: Ribbon, start: float, limit: float) -> Iterator[Label]:
    """Name the junctions above the band, as many as there is room for."""
    theme, taken = ribbon.theme, start
    for junction in junctions(ribbon.result.section, ribbon.laid):
        half = text_width(junction.name, theme.small, bold=True) / 2
        x = ribbon.x(junction.along)
        if x - half >= taken and x + half <= limit:
            at = (x, ribbon.top + 1.1)
            yield Label(
                junction.name,
                at,
                theme.small,
                theme.ink,
                Anchor.MIDDLE,
                bold=True,
                source="junction",
            )
            taken = x + half + 1.5


def _span(label: Label) -> tuple[float, float]:
    half = text_width(label.text, label.size, bold=label.bold) / 2
    return label.at[0] - half - 1.5, label.at[0] + half + 1.5


def _lies(
    ribbon: Ribbon, start: float, limit: float, taken: list[tuple[float, float]]
) -> Iterator[Mark]:
    """Say how each stretch between two folds lies, where no other word stands."""
    theme, y, first = ribbon.theme, ribbon.top + 1.1, start
    for stretch in stretches(ribbon.laid, ribbon.result.section):
        left, right = ribbon.x(stretch.start), ribbon.x(stretch.end)
        under_words = any(begin < left < end for begin, end in taken)
        if stretch.start > 0 and first < left < limit and not under_words:
            yield _fold(ribbon, left)
        width = text_width(stretch.lie, theme.small)
        low, high = max(left + 1.8, start), min(right - 1.8, limit)
        at = _free(low, high, width, taken)
        if at is not None:
            yield Label(stretch.lie, (at, y), theme.small, theme.quiet)
            start = at + width + 1.5


def _free(low: float, high: float, width: float, taken: list[tuple[float, float]]) -> float | None:
    """Return where words of a width stand between `low` and `high`, near their middle, if they can."""
    middle = (low + high - width) / 2
    wishes = [middle, *(end for _, end in taken), *(begin - width for begin, _ in taken), low]
    fits = [
        at
        for at in wishes
        if low <= at <= high - width
        and not any(begin < at + width and at < end for begin, end in taken)
    ]
    return min(fits, key=lambda at: abs(at - middle), default=None)


def _fold(ribbon: Ribbon, x: float) -> Stroke:
    """Return the small mark above the band where the layer folds."""
    arms = ((x - 0.9, ribbon.top + 2.4), (x, ribbon.top + 0.6), (x + 0.9, ribbon.top + 2.4))
    return Stroke(arms, ribbon.theme.pen("tick"), "fold")
