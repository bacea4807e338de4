"""The words INSIDE and OUTSIDE at their marks, moved aside where the words of findings stand."""

from collections.abc import Iterable, Iterator
from itertools import product
from math import cos, radians, sin

from enclosure_app.drawing.marks import Anchor, Label
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.section.sides import Sides
from enclosure_app.drawing.theme import Theme
from enclosure_app.drawing.typeface import text_width
from enclosure_app.language import say
from enclosure_app.model.place import Point

_AIR = 0.5  # mm between two texts
_STEP, _FURTHEST = 0.75, 12.0  # mm by which a word is moved aside, and at most
_WAYS = (90.0, -90.0, 0.0, 180.0, 45.0, 135.0, -45.0, -135.0)  # degrees, the most wished for first
_SHARES = {Anchor.START: 0.0, Anchor.MIDDLE: 0.5, Anchor.END: 1.0}


def side_words(frame: Box, sides: Sides, theme: Theme, labels: Iterable[Label]) -> Iterator[Label]:
    """Yield the words for the two sides within `frame`, clear of upright `labels` and one another.

    A word never leaves its side of a layer: where that leaves no free place it stays at its mark.
    """
    taken = [label_box(label) for label in labels]
    size = next((s for s in (theme.large, theme.medium) if frame.width > 22 * s), theme.small)
    for word, marks in ((say("INSIDE"), sides.inside), (say("OUTSIDE"), sides.outside)):
        half = text_width(word, size, bold=True) / 2
        room = frame.inset(half + 2.5, size + 1.0)
        for mark in marks:
            wishes = _places(room, mark, _reach(room.clamp(mark), sides))
            labelled = [_label(word, at, size, theme) for at in wishes]
            label = next((each for each in labelled if _is_free(each, taken)), labelled[0])
            taken.append(label_box(label))
            yield label


def label_box(label: Label) -> Box:
    """Return the box that an upright label fills, its base line below."""
    width = text_width(label.text, label.size, bold=label.bold)
    left = label.at[0] - _SHARES[label.anchor] * width
    return Box(left, label.at[1], left + width, label.at[1] + label.size)


def _label(word: str, at: Point, size: float, theme: Theme) -> Label:
    base = (at[0], at[1] - size / 2)
    return Label(word, base, size, theme.quiet, Anchor.MIDDLE, bold=True, halo=theme.paper)


def _reach(place: Point, sides: Sides) -> float:
    """Return how far a word may be moved: not as far as to the nearest layer."""
    return min([_FURTHEST, *(walk.way.foot(place).off for walk in sides.walks.values())])


def _places(room: Box, mark: Point, reach: float) -> list[Point]:
    """Return the places for a word in the order in which they are wished for."""
    x, y = room.clamp(mark)
    steps = [_STEP * k for k in range(1, int(reach / _STEP) + 1)]
    moved = [
        room.clamp((x + by * cos(radians(way)), y + by * sin(radians(way))))
        for by, way in product(steps, _WAYS)
    ]
    return [(x, y), *moved]


def _is_free(label: Label, taken: list[Box]) -> bool:
    own = label_box(label).inset(-_AIR)
    return not any(
        own.left < box.right
        and box.left < own.right
        and own.bottom < box.top
        and box.bottom < own.top
        for box in taken
    )
