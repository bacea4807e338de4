"""Turns the edges of a triangulation that are not Delaunay, the walls excepted.

The library's triangulation may leave a flat triangle along an edge where a point lies on that edge
to within rounding. A way could slip past such a point unseen. After C. L. Lawson, "Software for
C1 surface interpolation", Mathematical Software III (1977).
"""

import numpy as np
import numpy.typing as npt

from enclosure_app.geometry.openings.triangle_edits import GONE, Triangles

Floats = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]
Flags = npt.NDArray[np.bool_]

SLACK = 1e-7  # sine of an angle; four points this near to one circle may stay as they are
TURNS = 200  # for each edge that is wrong at first; rounding could make edges turn for ever


def wrong(a: Floats, b: Floats, c: Floats, d: Floats) -> Flags:
    """Tell which edges ab are not Delaunay between the triangles abc and bad; all (n, 2)."""
    sine_c, cosine_c = _angle(a - c, b - c)
    sine_d, cosine_d = _angle(b - d, a - d)
    bad: Flags = sine_c * cosine_d + cosine_c * sine_d < -SLACK
    return bad


def turned(points: Floats, triangles: Ints, edges: Ints, walls: Ints) -> Ints:
    """Return `triangles` with the wrong `edges` (k, 2) turned, and all that get wrong by that."""
    changing = Triangles(triangles, len(points))
    fixed = {(min(a, b), max(a, b)) for a, b in walls.tolist()}
    waiting = [(min(a, b), max(a, b)) for a, b in edges.tolist()]
    left = TURNS * len(waiting)
    while waiting and left:
        left -= 1
        a, b = waiting.pop()
        c, d = changing.apex(a, b), changing.apex(b, a)
        if (a, b) in fixed or GONE in (c, d) or not wrong(*points[[a, b, c, d]][:, None]).item():
            continue
        changing.remove(a, b, c)
        changing.remove(b, a, d)
        changing.add(a, d, c)
        changing.add(d, b, c)
        rim = ((a, d), (d, b), (b, c), (c, a))
        waiting += [(min(p, q), max(p, q)) for p, q in rim]
    return changing.rows()


def _angle(one: Floats, two: Floats) -> tuple[Floats, Floats]:
    """Return sine and cosine of the angle from `one` to `two`."""
    size = np.maximum(np.hypot(*one.T) * np.hypot(*two.T), 1e-300)
    sine = (one[:, 0] * two[:, 1] - one[:, 1] * two[:, 0]) / size
    cosine = (one * two).sum(axis=1) / size
    return sine, cosine
