"""Follows leaders from a note to what they point at, whole ones and those in single lines.

A leader begins beside its text, runs over one or more bends and ends in its tip: with an arrow
head (a small closed outline, or short lines from the tip), or bare. Nothing is told of a line but
where it runs and its layer, so a line counts as a leader when it has an arrow head, or stands on
the layer of its text.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import dist

import numpy as np

from enclosure_app.geometry.outlines.chaining import length
from enclosure_app.geometry.rims.rims import Floats
from enclosure_app.model.place import Point, Points
from enclosure_app.model.section import Stroke, Text

MEET = 0.5  # mm: ends this near are one
LETTER = 0.8  # the width of a letter in text heights
LINES = 1.68  # text heights from line to line within one note; 5/3 is usual
BESIDE = 2.5  # text heights between a note and its leader
HEAD = 6.0  # text heights round an arrow head, along all its sides
FEW = 8  # lines that one leader has at most


@dataclass(frozen=True, slots=True)
class Note:
    """A note as it is read: the lines of one block of text, with its box, mm."""

    text: str
    low: Point
    high: Point
    height: float
    layer: str


@dataclass(frozen=True, slots=True)
class Leader:
    """A leader from its note to its tip; `strokes` are the indices of its lines."""

    note: Note
    tip: Point
    strokes: tuple[int, ...]
    headed: bool


def notes_of(texts: Sequence[Text]) -> tuple[Note, ...]:
    """Return the texts as notes: lines that stand under each other are one."""
    rest = sorted(
        (text for text in texts if text.text.strip() and text.height > 0),
        key=lambda text: (round(text.at[0]), -text.at[1]),
    )
    blocks: list[list[Text]] = []
    for text in rest:
        if blocks and _goes_on(blocks[-1][-1], text):
            blocks[-1].append(text)
        else:
            blocks.append([text])
    return tuple(map(_note, blocks))


def leaders_of(notes: Sequence[Note], strokes: Sequence[Stroke]) -> tuple[Leader, ...]:
    """Return every leader that can be followed, in the order of the notes."""
    lines = _Lines(strokes)
    nearest: dict[tuple[int, ...], tuple[float, Leader]] = {}
    for note in notes:
        for away, leader in _own(lines, note):
            key = tuple(sorted(leader.strokes))
            if key not in nearest or away < nearest[key][0]:
                nearest[key] = away, leader
    order = {note: i for i, note in enumerate(notes)}
    return tuple(sorted((each for _, each in nearest.values()), key=lambda e: order[e.note]))


def _own(lines: "_Lines", note: Note) -> list[tuple[float, Leader]]:
    """Return the leaders of a note: those on its layer, else those on the layer of the nearest."""
    found: list[tuple[float, Leader]] = []
    for end, away in lines.beside(note):
        leader = lines.followed(note, end)
        if leader and all(dist(leader.tip, other.tip) > MEET for _, other in found):
            found.append((away, leader))
    layers = [lines.strokes[leader.strokes[0]].layer for _, leader in found]
    layer = note.layer if note.layer in layers else next(iter(layers), "")
    return [each for each, its in zip(found, layers, strict=True) if its == layer]


def _goes_on(above: Text, below: Text) -> bool:
    lines = above.text.count("\n") + 1
    step = above.at[1] - below.at[1]
    return (
        abs(above.at[0] - below.at[0]) < above.height / 2
        and above.layer == below.layer
        and abs(above.height - below.height) < above.height / 10
        and lines == 1
        and 0 < step <= LINES * above.height
    )


def _note(block: Sequence[Text]) -> Note:
    first, height = block[0], block[0].height
    lines = [line for text in block for line in text.text.strip().split("\n")]
    wide = max(map(len, lines)) * LETTER * height
    x, y = first.at
    deep = (len(lines) - 1) * 1.7 * height
    return Note(
        "\n".join(lines), (x, y - deep - height), (x + wide, y + height), height, first.layer
    )


class _Lines:
    """The ends of all open strokes; end 2 i is the first of stroke i, 2 i + 1 its last."""

    def __init__(self, strokes: Sequence[Stroke]) -> None:
        self.strokes = strokes
        ends = [stroke.points[side] for stroke in strokes for side in (0, -1)]
        self.ends: Floats = np.array(ends, dtype=float).reshape(-1, 2)
        apart = [dist(stroke.points[0], stroke.points[-1]) > MEET for stroke in strokes]
        self.open = np.repeat(np.array(apart, dtype=bool), 2)
        self.whole = np.array([length(stroke.points) for stroke in strokes], dtype=float)

    def beside(self, note: Note) -> list[tuple[int, float]]:
        """Return the ends beside a note, the nearest first, with how far away they are."""
        low, high = np.array(note.low), np.array(note.high)
        out = np.hypot(*np.maximum(np.maximum(low - self.ends, self.ends - high), 0).T)
        middle = (low[0] + high[0]) / 2
        at_side = np.abs(self.ends[:, 0] - middle) > 0.3 * (high[0] - low[0])
        near = np.flatnonzero((out <= BESIDE * note.height) & self.open & at_side)
        return sorted(((int(e), float(out[e])) for e in near), key=lambda pair: pair[1])

    def followed(self, note: Note, end: int) -> Leader | None:
        """Return the leader that begins at an end, None where that is no leader."""
        used = [end // 2]
        at = end ^ 1
        while len(used) < FEW:
            on = self._next(at, used, note.height)
            if on is None:
                break
            used.append(on // 2)
            at = on ^ 1
        tip, head = self._head(at, used, note.height)
        run = sum(float(self.whole[i]) for i in used)
        plain = all(self.strokes[i].layer == note.layer for i in used)
        if run < 2 * note.height or not (head or plain) or _within(tip, note):
            return None
        return Leader(note, tip, (*used, *head), bool(head))

    def _at(self, end: int) -> Point:
        return self.strokes[end // 2].points[-(end % 2)]

    def _meeting(self, place: Point, used: Sequence[int]) -> list[int]:
        near = np.flatnonzero(np.abs(self.ends - place).max(axis=1, initial=0) <= MEET)
        return [int(e) for e in near if e // 2 not in used]

    def _next(self, end: int, used: Sequence[int], height: float) -> int | None:
        """Return the end at which the leader goes on: the only line there on its layer."""
        layer = self.strokes[used[0]].layer
        on = [
            e
            for e in self._meeting(self._at(end), used)
            if self.open[e] and self.strokes[e // 2].layer == layer
            and self.whole[e // 2] > height
        ]  # fmt: skip
        return on[0] if len(on) == 1 else None

    def _head(self, end: int, used: Sequence[int], height: float) -> tuple[Point, list[int]]:
        """Return the tip, and the lines of the arrow head there."""
        place = self._at(end)
        box = np.abs(self.ends - place).max(axis=1, initial=0) <= HEAD * height / 2
        close = [i for i in dict.fromkeys((np.flatnonzero(box) // 2).tolist()) if i not in used]
        layer = self.strokes[used[0]].layer
        small = [
            i for i in close
            if self.whole[i] <= HEAD * height and self.strokes[i].layer == layer
            and _touches(self.strokes[i].points, place)
        ]  # fmt: skip
        if not small:
            return place, []
        before = self.strokes[end // 2].points[1 if end % 2 == 0 else -2]
        corners = [p for i in small for p in self.strokes[i].points]
        return max([place, *corners], key=lambda p: dist(p, before)), small


def _touches(points: Points, place: Point) -> bool:
    """Tell whether a small outline has a corner or the middle of a side at a place."""
    middles = [((a[0] + b[0]) / 2, (a[1] + b[1]) / 2) for a, b in pairwise(points)]
    return any(dist(p, place) <= MEET for p in (*points, *middles))


def _within(place: Point, note: Note) -> bool:
    slack = note.height
    return (
        note.low[0] - slack <= place[0] <= note.high[0] + slack
        and note.low[1] - slack <= place[1] <= note.high[1] + slack
    )
