"""The words INSIDE and OUTSIDE at their marks, moved aside where findings have words or rings."""

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
_STEP, _STEPS = 0.75, 16  # mm by which a word is moved aside, and how often at most
_WAYS = (90.0, -90.0, 0.0, 180.0, 45.0, 135.0, -45.0, -135.0)  # degrees, the most wished for first
_SHARES = {Anchor.START: 0.0, Anchor.MIDDLE: 0.5, Anchor.END: 1.0}


def side_words(frame: Box, sides: Sides, theme: Theme, taken: Iterable[Box]) -> Iterator[Label]:
    """Yield the words for the two sides within `frame`, clear of what is `taken` and of one another.

    A word never leaves its side of a layer: where that leaves no free place it stays at its mark.
    """
    taken = list(taken)
    size = next((s for s in (theme.large, theme.medium) if frame.width > 22 * s), theme.small)
    for word, marks in ((say("INSIDE"), sides.inside), (say("OUTSIDE"), sides.outside)):
        half = text_width(word, size, bold=True) / 2
        room = frame.inset(half + 2.5, size + 1.0)
        for mark in marks:
            at = room.clamp(mark)
            wishes = (_label(word, place, size, theme) for place in _places(room, at, sides))
            label = next((each for each in wishes if _is_free(each, taken)), None)
            label = label or _label(word, at, size, theme)
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


def _places(room: Box, at: Point, sides: Sides) -> Iterator[Point]:
    """Yield the places for a word on its side of every layer, the most wished for first."""
    yield at
    lefts = _lefts(at, sides)
    for step, way in product(range(1, _STEPS + 1), _WAYS):
        by, angle = step * _STEP, radians(way)
        place = room.clamp((at[0] + by * cos(angle), at[1] + by * sin(angle)))
        if _lefts(place, sides) == lefts:
            yield place


def _lefts(place: Point, sides: Sides) -> list[bool]:
    return [walk.way.foot(place).left for walk in sides.walks.values()]


def _is_free(label: Label, taken: list[Box]) -> bool:
    own = label_box(label).inset(-_AIR)
    return not any(
        own.left < box.right
        and box.left < own.right
        and own.bottom < box.top
        and box.bottom < own.top
        for box in taken
    )
