"""Open air on the outer side of a layer, told by its traces; one for each side of what stands between.

A porch roof that runs to the edge of the drawing has open air above and below it. Rain falls in
both, and what is behind for the one need not be for the other: a drop that comes through the roof
from above is behind it, although it may end on the outer face of the wall below.
"""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from enclosure_app.geometry.rims.closed_curve import ClosedCurve
from enclosure_app.geometry.rims.rims import Bools, Floats
from enclosure_app.model.place import Point
from enclosure_app.network.trace import Trace
from enclosure_app.network.walk import Walk


@dataclass(frozen=True, slots=True)
class Air:
    """Open air round an outside mark.

    `curves` are the traces between it and each inside mark; `before` the airs that count first.
    """

    mark: Point
    curves: tuple[ClosedCurve, ...]
    before: tuple["Air", ...] = ()

    def holds(self, points: Floats) -> Bools:
        """Return which points (k, 2) lie on the mark's side of every trace."""
        mark, held = np.array([self.mark]), np.ones(len(points), dtype=bool)
        for curve in self.curves:
            held &= curve.encloses(points) == curve.encloses(mark)[0]
        return held

    def is_first_to_hold(self, points: Floats) -> Bools:
        """Return which points (k, 2) lie in this air, and in none that counts first."""
        held = self.holds(points)
        for other in self.before:
            held &= ~other.holds(points)
        return held


def airs_of(traced: Sequence[tuple[Trace, Walk]]) -> tuple[Air, ...]:
    """Return the airs that the traces keep from the inside.

    Marks of which each lies in the other's air are in one. An air that holds few marks counts
    before one that holds more: where only its own trace runs along the porch roof, what is above
    the roof belongs to it. Else that of the widest bottleneck comes first.
    """
    curves: defaultdict[Point, list[ClosedCurve]] = defaultdict(list)
    for trace, walk in sorted(traced, key=_narrowness):
        curves[trace.outside].append(walk.curve)
    marks = np.array(list(curves)).reshape(-1, 2)
    every = [Air(mark, tuple(own)) for mark, own in curves.items()]
    airs: list[Air] = []
    for air in sorted(every, key=lambda air: int(air.holds(marks).sum())):
        if not any(_are_one(air, other) for other in airs):
            airs.append(replace(air, before=tuple(airs)))
    return tuple(airs)


def _narrowness(each: tuple[Trace, Walk]) -> tuple[float, float]:
    return -each[0].bottleneck, -each[0].round.lift


def _are_one(one: Air, other: Air) -> bool:
    return bool(one.holds(np.array([other.mark]))[0] and other.holds(np.array([one.mark]))[0])
