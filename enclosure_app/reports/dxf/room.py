"""Where a drawing still has room for a flag or a column of words, and how large it is lettered."""

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from math import cos, inf, radians, sin

import numpy as np
from numpy.typing import NDArray

from enclosure_app.drawing.placement import Box
from enclosure_app.files.dxf.raw import Raw, RawLeader, RawPath, RawText
from enclosure_app.model.place import Points

LETTER = 0.9  # of the height of a text: the breadth of a letter of a usual line font
_PIECES = 200  # so many pieces make the whole extent: long slanting lines are looked at in pieces
_MOST = 60  # places that are tried on each side

Boxes = NDArray[np.float64]
_NOTHING: Boxes = np.empty((0, 4))


class Room:
    """The boxes (left, bottom, right, top), in mm, of what is drawn already.

    Those of texts come last; `heights` are how high their letters are, in mm.
    """

    def __init__(self, boxes: Boxes = _NOTHING, heights: Sequence[float] = ()) -> None:
        self._drawn = boxes
        self._heights = heights
        self._taken: list[tuple[float, float, float, float]] = []

    @classmethod
    def beside(cls, items: Iterable[Raw], factor: float) -> "Room":
        """Return the room beside what a layout shows; `factor` makes mm of drawing units."""
        runs: list[Points] = []
        texts: list[RawText] = []
        for item in items:
            if isinstance(item, RawPath):
                runs += [(*ring, ring[0]) for ring in (item.points, *item.holes) if ring]
            elif isinstance(item, RawLeader):
                runs.append(item.points)
            elif isinstance(item, RawText):
                texts.append(item)
        boxes = [_run_boxes(runs), np.array([*map(_text_box, texts)]).reshape(-1, 4)]
        return cls(np.concatenate(boxes) * factor, [text.height * factor for text in texts])

    def letters_near(self, box: Box) -> float | None:
        """Return how high most letters in and beside a box are, in mm; else most of all letters."""
        around = box.inset(-box.width / 2, -box.height / 2)
        texts = self._drawn[len(self._drawn) - len(self._heights) :]
        near = [h for h, met in zip(self._heights, _met(texts, around), strict=True) if met]
        counted = Counter(float(f"{h:.2g}") for h in near or self._heights if h > 0)
        return max(counted, key=counted.__getitem__) if counted else None

    def is_free(self, box: Box) -> bool:
        """Whether nothing is drawn in a box."""
        taken = np.array(self._taken).reshape(-1, 4)
        return not any(_met(boxes, box).any() for boxes in (self._drawn, taken))

    def take(self, box: Box) -> None:
        """Say that something stands in a box from now on."""
        self._taken.append((box.left, box.bottom, box.right, box.top))

    def nearest(self, beside: Box, size: tuple[float, float], step: float) -> Box:
        """Return a free box of a size near to another: right of it if may be, else left, below, above."""
        for far in range(_MOST):
            for box in _around(beside, size, step * far):
                if self.is_free(box):
                    return box
        right = max(float(self._drawn[:, 2].max(initial=-inf)), beside.right) + step
        return Box(right, beside.top - size[1], right + size[0], beside.top)


def _around(beside: Box, size: tuple[float, float], far: float) -> Iterator[Box]:
    wide, high = size
    right, left = beside.right + far, beside.left - far
    below, above = beside.bottom - far, beside.top + far
    yield Box(right, beside.top - high, right + wide, beside.top)
    yield Box(left - wide, beside.top - high, left, beside.top)
    yield Box(beside.left, below - high, beside.left + wide, below)
    yield Box(beside.left, above, beside.left + wide, above + high)


def _met(boxes: Boxes, box: Box) -> NDArray[np.bool_]:
    """Return which boxes another one meets."""
    across = (boxes[:, 0] <= box.right) & (boxes[:, 2] >= box.left)
    return across & (boxes[:, 1] <= box.top) & (boxes[:, 3] >= box.bottom)


def _text_box(text: RawText) -> tuple[float, float, float, float]:
    lines = text.text.splitlines() or [""]
    wide, high = max(map(len, lines)) * LETTER * text.height, len(lines) * 1.6 * text.height
    turn = radians(text.angle)
    across, up = (cos(turn) * wide, sin(turn) * wide), (-sin(turn) * high, cos(turn) * high)
    xs = [text.at[0] + s * across[0] + t * up[0] for s in (0, 1) for t in (-0.5, 0.5)]
    ys = [text.at[1] + s * across[1] + t * up[1] for s in (0, 1) for t in (-0.5, 0.5)]
    return min(xs), min(ys), max(xs), max(ys)


def _run_boxes(runs: list[Points]) -> Boxes:
    """Return the boxes (n, 4) of the stretches of lines, none of them long."""
    starts = [point for run in runs for point in run[:-1]]
    ends = [point for run in runs for point in run[1:]]
    if not starts:
        return np.empty((0, 4))
    start, end = np.array(starts, dtype=float), np.array(ends, dtype=float)
    span = float(np.ptp(np.concatenate([start, end]), axis=0).max()) or 1.0
    pieces = np.ceil(np.abs(end - start).max(axis=1) / span * _PIECES).astype(int).clip(1, _PIECES)
    which = np.repeat(np.arange(len(start)), pieces)
    first = np.concatenate([[0], np.cumsum(pieces)[:-1]])
    share = (np.arange(len(which)) - first[which])[:, None]
    stretch = (end - start)[which] / pieces[which][:, None]
    a = start[which] + stretch * share
    b = a + stretch
    return np.concatenate([np.minimum(a, b), np.maximum(a, b)], axis=1)
