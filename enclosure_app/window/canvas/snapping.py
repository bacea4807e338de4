"""What the pointer catches: ends, middles, crossings, square to a line, beside a board, the grid.

Segments are kept in arrays; those near the pointer are found in one go, so that a drawing of a
hundred thousand lines is no slower to draw on than an empty sheet.
"""

from collections.abc import Iterable, Sequence
from itertools import pairwise
from math import dist

import numpy as np
from numpy.typing import NDArray

from enclosure_app.model.edits.looking_up import run_of
from enclosure_app.model.place import Area, Line, Point, Points
from enclosure_app.model.section import Section, Stroke
from enclosure_app.window.canvas.catches import (
    Ask,
    Catch,
    Kind,
    Near,
    Origin,
    catches_near,
    distance_to,
)
from enclosure_app.window.canvas.made_ready import made_of

__all__ = ["Ask", "Catch", "Kind", "Snapper"]

_MOST = 24  # segments near the pointer whose crossings are sought

Rows = NDArray[np.float64]


class Snapper:
    """Everything in one section that the pointer can catch, but for the pieces in `without`.

    `last` is the one made before: lines of the office that are the same as then are not gathered
    again.
    """

    def __init__(
        self,
        section: Section,
        without: frozenset[str] = frozenset(),
        last: "Snapper | None" = None,
    ) -> None:
        self.section, self.without = section, without
        same = last is not None and last.section.strokes is section.strokes
        self._strokes: Rows = (
            last._strokes  # noqa: SLF001  another of the same kind
            if last is not None and same
            else made_of(section.strokes, stroke_rows)
        )
        s = np.vstack([*_drawn(section, without), self._strokes])
        self._segments = s
        self._low = np.minimum(s[:, :2], s[:, 2:4])
        self._high = np.maximum(s[:, :2], s[:, 2:4])

    def catch(self, ask: Ask) -> Catch | None:
        """Return what lies within reach, the most telling first and of those the nearest."""
        found = [
            (catch.kind.rank, dist(catch.at, ask.at), catch)
            for catch in catches_near(self._near(ask.at, ask.reach + ask.beside), ask)
            if dist(catch.at, ask.at) <= ask.reach
        ]
        return min(found, key=lambda each: each[:2])[2] if found else None

    def _near(self, at: Point, reach: float) -> Sequence[Near]:
        x, y = at
        inside = (
            (self._low[:, 0] <= x + reach)
            & (self._high[:, 0] >= x - reach)
            & (self._low[:, 1] <= y + reach)
            & (self._high[:, 1] >= y - reach)
        )
        rows = self._segments[np.flatnonzero(inside)].tolist()
        near = [Near((ax, ay), (bx, by), Origin(int(origin))) for ax, ay, bx, by, origin in rows]
        off = [(distance_to(at, each.a, each.b), i) for i, each in enumerate(near)]
        return [near[i] for far, i in sorted(off)[:_MOST] if far <= reach]


def stroke_rows(strokes: tuple[Stroke, ...]) -> Rows:
    """Return the segments of the office's lines, which take long where there are very many."""
    return _rows((stroke.points for stroke in strokes), Origin.STROKE)


def _drawn(section: Section, without: frozenset[str]) -> Iterable[Rows]:
    """Yield the segments of the frame, of lines and of areas."""
    shapes = [piece.shape for piece in section.pieces if piece.name not in without]
    closed = (*section.frame, section.frame[0]) if len(section.frame) > 2 else ()
    yield _rows([closed], Origin.FRAME)
    yield _rows((run_of(s) for s in shapes if isinstance(s, Line)), Origin.LINE)
    yield _rows((run for s in shapes if isinstance(s, Area) for run in _rims(s)), Origin.AREA)


def _rims(area: Area) -> Iterable[Points]:
    """Yield the rings of an area, closed, so that what is outside it lies at their right."""
    for number, ring in enumerate((area.outer, *area.holes)):
        anticlockwise = sum(a[0] * b[1] - b[0] * a[1] for a, b in pairwise((*ring, ring[0])))
        onward = ring if (anticlockwise > 0) is (number == 0) else ring[::-1]
        yield (*onward, onward[0])


def _rows(runs: Iterable[Points], origin: Origin) -> Rows:
    rows = [(*a, *b, origin) for run in runs for a, b in pairwise(run)]
    return np.array(rows, dtype=np.float64).reshape(-1, 5)
