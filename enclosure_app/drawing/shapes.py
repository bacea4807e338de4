"""The small shapes that glyphs are made of: arrows, drops, beads, bows."""

from math import cos, pi, sin

from enclosure_app.drawing.polylines import left_of, moved, unit
from enclosure_app.model.place import Point, Points
from enclosure_app.model.said.decision import State


def circle(centre: Point, radius: float, corners: int = 24) -> Points:
    """Return a ring close to a circle."""
    return ellipse(centre, radius, radius, corners)


def ellipse(centre: Point, across: float, up: float, corners: int = 24) -> Points:
    """Return a ring close to an upright ellipse with the two half-axes."""
    turns = (2 * pi * k / corners for k in range(corners))
    return tuple((centre[0] + across * cos(t), centre[1] + up * sin(t)) for t in turns)


def drop(tip: Point, size: float, down: Point = (0.0, -1.0)) -> Points:
    """Return a drop of water that hangs from `tip` and is `size` long."""
    radius = size * 0.31
    across = left_of(down)
    centre = moved(tip, down, size - radius)
    bow = (pi * (0.08 + 0.84 * k / 12) - pi / 2 for k in range(13))
    round_end = (moved(moved(centre, down, radius * cos(t)), across, radius * sin(t)) for t in bow)
    return (tip, *round_end)


def verdict_shape(state: State, centre: Point) -> tuple[tuple[Points, ...], tuple[Points, ...]]:
    """Return the rings to fill and the lines to draw that tell a verdict, 1.8 mm large.

    To be mended points onward, mended is a tick, accepted two level bars, no fault a stroke
    through; what is open has no shape.
    """
    rings, lines = _VERDICTS.get(state, ((), ()))
    x, y = centre

    def there(shapes: tuple[Points, ...]) -> tuple[Points, ...]:
        return tuple(tuple((x + dx, y + dy) for dx, dy in shape) for shape in shapes)

    return there(rings), there(lines)


_VERDICTS: dict[State, tuple[tuple[Points, ...], tuple[Points, ...]]] = {
    State.TO_BE_MENDED: ((((-0.5, -0.75), (0.85, 0.0), (-0.5, 0.75)),), ()),
    State.MENDED: ((), (((-0.8, 0.0), (-0.2, -0.6), (0.8, 0.7)),)),
    State.ACCEPTED: ((), (((-0.75, 0.33), (0.75, 0.33)), ((-0.75, -0.33), (0.75, -0.33)))),
    State.NO_FAULT: ((), (((-0.7, -0.7), (0.7, 0.7)),)),
}


def barb(tip: Point, towards: Point, size: float) -> Points:
    """Return the head of an arrow at `tip` that flies in the direction `towards`."""
    back = moved(tip, towards, -size)
    across = left_of(towards)
    return moved(back, across, size * 0.42), tip, moved(back, across, -size * 0.42)


def arrow_head(points: Points, size: float) -> Points:
    """Return the head of an arrow at the end of a polyline of two points or more."""
    return barb(points[-1], unit(points[-2], points[-1]), size)


def smooth(points: Points, steps: int = 6) -> Points:
    """Return a curve through all `points` (Catmull and Rom's spline)."""
    if len(points) < 3:
        return points
    padded = (points[0], *points, points[-1])
    curve = [
        _spline(padded[i : i + 4], k / steps) for i in range(len(points) - 1) for k in range(steps)
    ]
    return (*curve, points[-1])


def _spline(p: Points, t: float) -> Point:
    return _between(p[0][0], p[1][0], p[2][0], p[3][0], t), _between(
        p[0][1], p[1][1], p[2][1], p[3][1], t
    )


def _between(*args: float) -> float:
    a, b, c, d, t = args
    return 0.5 * (
        2 * b + (c - a) * t + (2 * a - 5 * b + 4 * c - d) * t**2 + (3 * b - a - 3 * c + d) * t**3
    )
