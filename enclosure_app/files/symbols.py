"""Drafting symbols: lines inside an area that only say what it is, like the cross in a timber."""

from collections import defaultdict
from collections.abc import Sequence

from enclosure_app.geometry.clipping import standing
from enclosure_app.model.place import Area, Line, Points
from enclosure_app.model.section import Piece

_Box = tuple[float, float, float, float]


def symbols_among(lines: Sequence[Piece], pieces: Sequence[Piece]) -> frozenset[str]:
    """Return the names of those `lines` that lie in an area of their own product."""
    areas: dict[str, list[tuple[_Box, Points]]] = defaultdict(list)
    for piece in pieces:
        if isinstance(piece.shape, Area):
            areas[piece.product].append((_box(piece.shape.outer), piece.shape.outer))
    return frozenset(
        piece.name
        for piece in lines
        if isinstance(piece.shape, Line) and _lies_in(piece.shape.points, areas[piece.product])
    )


def _lies_in(points: Points, areas: Sequence[tuple[_Box, Points]]) -> bool:
    x0, y0, x1, y1 = _box(points)
    return any(
        left - 1 <= x0
        and low - 1 <= y0
        and x1 <= right + 1
        and y1 <= high + 1
        and bool(standing([points], ring)[0][0])
        for (left, low, right, high), ring in areas
    )


def _box(points: Points) -> _Box:
    xs, ys = zip(*points, strict=True)
    return min(xs), min(ys), max(xs), max(ys)
