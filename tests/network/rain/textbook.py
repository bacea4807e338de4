"""Textbook junctions in the rain, each with the route worked out by hand, for the tests of the rain.

That water runs downhill, over a shingle lap and behind a reversed one, is common practice, no
source; the places follow from the drawn coordinates.
"""

from collections.abc import Callable
from dataclasses import dataclass, field

import numpy as np

from enclosure_app.geometry.surfaces.faces import Bools, Floats
from enclosure_app.model.limits import Tolerances
from enclosure_app.model.place import Area, Line, Point, Points, Shape
from enclosure_app.model.report import RainRoute, RouteEnd
from enclosure_app.network.rain.rain import Rain, find_routes

FRAME = ((-500.0, -100.0), (500.0, -100.0), (500.0, 1000.0), (-500.0, 1000.0))
WALL_OUT = ((0.0, -200.0), (600.0, -200.0), (600.0, 1100.0), (0.0, 1100.0))  # right of x = 0
Told = tuple[RouteEnd, tuple[str, ...], tuple[tuple[float, float], ...]]
OUT, IN, STANDS = RouteEnd.OUTSIDE, RouteEnd.INSIDE, RouteEnd.STANDS


def within(ring: Points) -> Callable[[Floats], Bools]:
    """Return whether points lie in a ring, counted by the edges to their left."""

    def inside(points: Floats) -> Bools:
        a = np.array(ring)
        b = np.roll(a, -1, axis=0)
        x, y = points[:, :1], points[:, 1:]
        spans = (a[:, 1] <= y) != (b[:, 1] <= y)
        rise = np.where(a[:, 1] == b[:, 1], 1.0, b[:, 1] - a[:, 1])
        cross = a[:, 0] + (y - a[:, 1]) / rise * (b[:, 0] - a[:, 0])
        return np.asarray((spans & (cross < x)).sum(axis=1) % 2 == 1)

    return inside


@dataclass(frozen=True)
class Case:
    """A junction: its pieces, the outer region, and every route by hand."""

    pieces: dict[str, Shape]
    outside: Points
    routes: list[Told]
    over: dict[tuple[str, str], str] = field(default_factory=dict)
    drains: frozenset[str] = frozenset()


def line(*points: Point) -> Line:
    return Line(points)


def board(left: float, bottom: float, right: float, top: float) -> Area:
    return Area(((left, bottom), (right, bottom), (right, top), (left, top)))


def wall_out(jog: float, upper: float, lower: float) -> Points:
    """The outer region of a wall whose trace jogs from x = `upper` to `lower` at y = `jog`."""
    return (
        (lower, -200.0), (600.0, -200.0), (600.0, 1100.0),
        (upper, 1100.0), (upper, jog), (lower, jog),
    )  # fmt: skip


def rain(case: Case) -> Rain:
    return find_routes(
        case.pieces, within(case.outside), FRAME, Tolerances(), case.drains, over=case.over
    )


def told(route: RainRoute) -> Told:
    return route.end, route.pieces, tidy(route.points)


def tidy(points: Points) -> tuple[tuple[float, float], ...]:
    """Round to 0.01 mm and drop what lies on a straight way."""
    kept: list[tuple[float, float]] = []
    for x, y in points:
        here = (round(x, 2) + 0.0, round(y, 2) + 0.0)
        while kept and here == kept[-1]:
            kept.pop()
        while len(kept) > 1 and _straight(kept[-2], kept[-1], here):
            kept.pop()
        kept.append(here)
    return tuple(kept)


def _straight(p: Point, q: Point, r: Point) -> bool:
    (ux, uy), (vx, vy) = (q[0] - p[0], q[1] - p[1]), (r[0] - q[0], r[1] - q[1])
    away = abs(ux * vy - uy * vx) / max(np.hypot(ux, uy), np.hypot(vx, vy), 1e-9)
    return bool(away < 0.05 and ux * vx + uy * vy > 0)


CASES = {
    "a shingle lap keeps the drop outside": Case(
        {"U": line((5, 1000), (5, 450)), "L": line((0, 500), (0, 0))},
        wall_out(450, 5, 0),
        [(OUT, ("U", "L"), ((5, 1000), (5, 450), (0, 450), (0, -100)))],
    ),
    "a reversed lap lets the drop in behind the lower sheet": Case(
        {"U": line((0, 1000), (0, 450)), "L": line((5, 500), (5, 0))},
        wall_out(475, 0, 5),
        [
            (IN, ("U", "L"), ((0, 1000), (0, 450), (5, 450), (5, -100))),
            (OUT, ("L",), ((5, 500), (5, -100))),
        ],
    ),
    "sheets drawn as one lap as told: shingle": Case(
        {"U": line((0, 1000), (0, 450)), "L": line((0, 500), (0, 0))},
        WALL_OUT,
        [(OUT, ("U", "L"), ((0, 1000), (0, -100)))],
        over={("L", "U"): "U"},
    ),
    "sheets drawn as one lap as told: reversed": Case(
        {"U": line((0, 1000), (0, 450)), "L": line((0, 500), (0, 0))},
        WALL_OUT,
        [(IN, ("U", "L"), ((0, 1000), (0, -100))), (OUT, ("L",), ((0, 500), (0, -100)))],
        over={("L", "U"): "L"},
    ),
    "what is told outweighs slop: the lower sheet is drawn 1 mm in front but lies behind": Case(
        {"U": line((0, 1000), (0, 450)), "L": line((1, 500), (1, 0))},
        wall_out(460, 0, 1),
        [(OUT, ("U", "L"), ((0, 1000), (0, 450), (1, 450), (1, -100)))],
        over={("L", "U"): "U"},
    ),
    "a sheet that ends right above another one goes on down it": Case(
        {"U": line((0, 1000), (0, 530)), "L": line((0, 500), (0, 0))},
        WALL_OUT,
        [(OUT, ("U", "L"), ((0, 1000), (0, -100)))],
    ),
    "a head flashing under the wall sheet throws the drop off": Case(
        {
            "U": line((0, 1000), (0, 510)),
            "F": line((-4, 600), (-4, 505), (60, 495), (60, 470)),
            "L": line((-4, 480), (-4, 0)),
        },
        ((-4, -200), (600, -200), (600, 1100), (0, 1100), (0, 510), (-4, 510)),
        [
            (OUT, ("U", "F"), ((0, 1000), (0, 510), (-4, 510), (-4, 505),
                               (60, 495), (60, -100))),
            (OUT, ("L",), ((-4, 480), (-4, -100))),
        ],
    ),
    "a head flashing over the wall sheet lets the drop in": Case(
        {
            "U": line((0, 1000), (0, 510)),
            "F": line((4, 600), (4, 505), (60, 495), (60, 470)),
            "W": board(-40, 300, 40, 485),
        },
        ((0, 1100), (0, 555), (4, 555), (4, 505), (60, 495), (60, 470), (40, 470), (40, 300),
         (0, 300), (0, -200), (600, -200), (600, 1100)),
        [
            (OUT, ("F",), ((4, 600), (4, 505), (60, 495), (60, -100))),
            # The drop that got in falls on the window's head and spreads to both sides.
            (IN, ("U", "F", "W"), ((0, 1000), (0, 510), (4, 510), (4, 505), (4, 485), (-40, 485),
                                   (-40, -100))),
            (OUT, ("U", "F", "W"), ((0, 1000), (0, 510), (4, 510), (4, 505), (4, 485), (40, 485),
                                    (40, -100))),
        ],
    ),
    "a flashing leg that runs out of the wall sheet catches the drop": Case(
        {"S": line((0, 1000), (0, 0)), "F": line((-20, 504), (100, 480), (100, 450))},
        WALL_OUT,
        [
            (OUT, ("S", "F"), ((0, 1000), (0, 500), (100, 480), (100, -100))),
            (OUT, ("S",), ((0, 500), (0, -100))),
        ],
    ),
    "a leg that ends 1.5 mm short of the sheet catches it too": Case(
        {"S": line((0, 1000), (0, 0)), "F": line((1.5, 499.7), (100, 480), (100, 450))},
        WALL_OUT,
        [
            (OUT, ("S", "F"), ((0, 1000), (0, 499.7), (1.5, 499.7), (100, 480), (100, -100))),
            (OUT, ("S",), ((0, 499.7), (0, -100))),
        ],
    ),
    "a leg that rises from the sheet holds the drop": Case(
        {"S": line((0, 1000), (0, 0)), "F": line((0, 500), (100, 520))},
        WALL_OUT,
        [
            (STANDS, ("S",), ((0, 1000), (0, 500))),
            (STANDS, ("F",), ((100, 520), (0, 500))),
            (OUT, ("S",), ((0, 500), (0, -100))),
        ],
    ),
    "a sheet that ends on a pan hands the drop to it": Case(
        {"S": line((0, 1000), (0, 501)), "P": line((-50, 505), (50, 495), (50, 470))},
        ((0, 1100), (0, 500), (50, 495), (50, -200), (600, -200), (600, 1100)),
        [(OUT, ("S", "P"), ((0, 1000), (0, 500), (50, 495), (50, -100)))],
    ),
    "a sill pan sloped out drains over its front leg": Case(
        {"P": line((-100, 520), (-100, 505), (10, 495), (10, 450)), "W": line((0, 490), (0, 0))},
        ((-100, 1100), (-100, 505), (10, 495), (10, 450), (0, 450), (0, -200),
         (600, -200), (600, 1100)),
        [(OUT, ("P", "W"), ((-100, 520), (-100, 505), (10, 495), (10, 450), (0, 450), (0, -100)))],
    ),
    "a sill pan sloped in with no back dam drains to the inside": Case(
        {"P": line((-100, 495), (10, 505), (10, 450)), "W": line((0, 490), (0, 0))},
        ((-100, 1100), (-100, 495), (10, 505), (10, 450), (0, 450), (0, -200),
         (600, -200), (600, 1100)),
        [
            (OUT, ("P", "W"), ((10, 505), (10, 450), (0, 450), (0, -100))),
            (IN, ("P",), ((10, 505), (-100, 495), (-100, -100))),
        ],
    ),
    "a drip edge under the eave underlayment": Case(
        {"R": line((-400, 702), (-3, 503.5)), "D": line((-80, 540), (0, 500), (0, 450))},
        ((-600, 802), (-3, 503.5), (0, 500), (0, -200), (600, -200), (600, 1100), (-600, 1100)),
        [(OUT, ("R", "D"), ((-400, 702), (-3, 503.5), (-3.8, 501.9), (0, 500), (0, -100)))],
    ),
    "a drip edge over the eave underlayment lets the drop in": Case(
        {"R": line((-400, 694), (-10, 499)), "D": line((-80, 540), (0, 500), (0, 450))},
        ((-600, 794), (-80, 534), (-80, 540), (0, 500), (0, -200), (600, -200), (600, 1100),
         (-600, 1100)),
        [
            (IN, ("R",), ((-400, 694), (-10, 499), (-10, -100))),
            (OUT, ("D",), ((-80, 540), (0, 500), (0, -100))),
        ],
    ),
    "an apron over the upturn of a membrane": Case(
        {
            "S": line((0, 1000), (0, 640)),
            "A": line((-4, 700), (-4, 630), (12, 620), (12, 560)),
            "M": line((5, 600), (5, 500), (500, 475)),
        },
        ((0, 1100), (0, 640), (-4, 640), (-4, 630), (12, 620), (12, 600), (5, 600), (5, 500),
         (600, 470), (600, 1100)),
        [(OUT, ("S", "A", "M"), ((0, 1000), (0, 640), (-4, 640), (-4, 630), (12, 620), (12, 560),
                                 (5, 560), (5, 500), (500, 475)))],
    ),
    "a drop falls from the eave to the lower roof": Case(
        {"E": line((-300, 900), (0, 800)), "R": line((-8, 477), (500, 350))},
        ((-600, 1000), (0, 800), (0, 475), (600, 325), (600, 1100), (-600, 1100)),
        [
            (OUT, ("E", "R"), ((-300, 900), (0, 800), (0, 475), (500, 350))),
        ],
    ),
    "boards stacked with a closed joint": Case(
        {"B": board(-20, 500, 0, 1000), "C": board(-20, 0, 0, 500)},
        WALL_OUT,
        [(OUT, ("B", "C"), ((0, 1000), (0, -100)))],
    ),
    "boards with an open joint and a ledge let the drop in": Case(
        {"B": board(-20, 506, 0, 990), "C": board(-20, 0, 5, 500)},
        ((0, 1100), (0, 503), (5, 503), (5, -200), (600, -200), (600, 1100)),
        [
            (OUT, ("B", "C"), ((0, 990), (0, 500), (5, 500), (5, -100))),
            (IN, ("B", "C"), ((0, 990), (0, 500), (-20, 500), (-20, -100))),
        ],
    ),
    "a level roof drains over both edges": Case(
        {"V": line((-200, 500), (200, 500))},
        ((-200, -200), (-600, -200), (-600, 1100), (600, 1100), (600, -200), (200, -200),
         (200, 500), (-200, 500)),
        [
            (OUT, ("V",), ((-200, 500), (200, 500), (200, -100))),
            (OUT, ("V",), ((200, 500), (-200, 500), (-200, -100))),
        ],
    ),
    "a drain takes the water out of a basin": Case(
        {
            "V": line((-400, 700), (-20, 500)),
            "O": board(-20, 480, 20, 500),
            "W": line((20, 500), (400, 700)),
        },
        ((-600, 805), (-20, 500), (20, 500), (600, 805), (600, 1100), (-600, 1100)),
        [
            (OUT, ("V", "O"), ((-400, 700), (-20, 500))),
            (OUT, ("W", "O"), ((400, 700), (20, 500))),
        ],
        drains=frozenset({"O"}),
    ),
}  # fmt: skip
