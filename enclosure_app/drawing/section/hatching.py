"""Hatch lines inside rings."""

from collections.abc import Iterator
from math import ceil, cos, floor, radians, sin

from enclosure_app.model.place import Point, Points


def hatch(rings: tuple[Points, ...], angle: float, distance: float) -> Iterator[Points]:
    """Yield the lines at `angle` degrees, `distance` mm apart, inside `rings` (even and odd).

    Lines lie on one grid for the whole sheet, so that parts of one material match.
    """
    c, s = cos(radians(angle)), sin(radians(angle))
    turned = [[(x * c + y * s, -x * s + y * c) for x, y in ring] for ring in rings]
    heights = [y for ring in turned for _, y in ring]
    if not heights:
        return
    for k in range(ceil(min(heights) / distance), floor(max(heights) / distance) + 1):
        level = k * distance + 1e-7  # never exactly through a corner of round coordinates
        cuts = sorted(x for ring in turned for x in _cuts(ring, level))
        for a, b in zip(cuts[::2], cuts[1::2], strict=False):
            yield (a * c - level * s, a * s + level * c), (b * c - level * s, b * s + level * c)


def _cuts(ring: list[Point], level: float) -> Iterator[float]:
    for (ax, ay), (bx, by) in zip(ring, ring[1:] + ring[:1], strict=True):
        if (ay > level) != (by > level):
            yield ax + (level - ay) * (bx - ax) / (by - ay)
