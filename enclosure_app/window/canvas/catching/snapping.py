"""What the pointer catches: ends, middles, crossings, square to a line, beside a board, the grid.

Segments are kept in arrays; those near the pointer are found in one go, so that a drawing of a
hundred thousand lines is no slower to draw on than an empty sheet.
"""

from collections.abc import Iterable, Sequence
from itertools import pairwise
from math import dist

from enclosure_app.model.edits.looking_up import run_of
from enclosure_app.model.place import Area, Line, Point, Points
from enclosure_app.model.section import Section
from enclosure_app.window.canvas.catching.catches import (
    Ask,
    Catch,
    Kind,
    Near,
    Origin,
    catches_near,
    distance_to,
)
from enclosure_app.window.canvas.catching.segments import Segments, segments_of, stroke_segments
from enclosure_app.window.canvas.made_ready import made_of

__all__ = ["Ask", "Catch", "Kind", "Snapper"]

_MOST = 24  # segments near the pointer whose crossings are sought


class Snapper:
    """Everything in one section that the pointer can catch, but for the pieces in `without`."""

    def __init__(self, section: Section, without: frozenset[str] = frozenset()) -> None:
        self.section, self.without = section, without
        self._blocks = (
            *_drawn(section, without),
            (Origin.STROKE, made_of(section.strokes, stroke_segments)),
        )

    def catch(self, ask: Ask) -> Catch | None:
        """Return what lies within reach, the most telling first and of those the nearest."""
        found = [
            (catch.kind.rank, dist(catch.at, ask.at), catch)
            for catch in catches_near(self._near(ask.at, ask.reach + ask.beside), ask)
            if dist(catch.at, ask.at) <= ask.reach
        ]
        return min(found, key=lambda each: each[:2])[2] if found else None

    def _near(self, at: Point, reach: float) -> Sequence[Near]:
        near = [
            Near(*segments.ends(int(number)), origin)
            for origin, segments in self._blocks
            for number in segments.near(at, reach)
        ]
        off = [(distance_to(at, each.a, each.b), i) for i, each in enumerate(near)]
        return [near[i] for far, i in sorted(off)[:_MOST] if far <= reach]


def _drawn(section: Section, without: frozenset[str]) -> Iterable[tuple[Origin, Segments]]:
    """Yield the segments of the frame, of lines and of areas."""
    shapes = [piece.shape for piece in section.pieces if piece.name not in without]
    closed = (*section.frame, section.frame[0]) if len(section.frame) > 2 else ()
    lines = (run_of(shape) for shape in shapes if isinstance(shape, Line))
    rims = (run for shape in shapes if isinstance(shape, Area) for run in _rims(shape))
    yield Origin.FRAME, segments_of([closed])
    yield Origin.LINE, segments_of(lines)
    yield Origin.AREA, segments_of(rims)


def _rims(area: Area) -> Iterable[Points]:
    """Yield the rings of an area, closed, so that what is outside it lies at their right."""
    for number, ring in enumerate((area.outer, *area.holes)):
        anticlockwise = sum(a[0] * b[1] - b[0] * a[1] for a, b in pairwise((*ring, ring[0])))
        onward = ring if (anticlockwise > 0) is (number == 0) else ring[::-1]
        yield (*onward, onward[0])
