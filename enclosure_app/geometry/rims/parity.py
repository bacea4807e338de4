"""Which side of a reference segment: parity of crossings, without ever cutting a rim.

Lay a straight way from an outside mark to an inside mark. A closed curve separates the two marks
exactly if it crosses that way an odd number of times. All crossings are decided by one function of
a point (the sign of its distance from the straight way), so that two rims that share a point, even
one lying on the way itself, can never disagree about it.
"""

from dataclasses import dataclass

import numpy as np

from enclosure_app.geometry.rims.rims import Bools, Floats, Ints, Rims


@dataclass(frozen=True, slots=True)
class Way:
    """The straight way from `start` to `end`, both (2,) mm."""

    start: Floats
    end: Floats

    def offset(self, points: Floats) -> Floats:
        """Return the signed distance of points (k, 2) from the straight way (times its length)."""
        u = self.end - self.start
        across, up = points[:, 0] - self.start[0], points[:, 1] - self.start[1]
        return np.asarray(u[0] * up - u[1] * across)

    def crossed(self, a: Floats, b: Floats) -> Bools:
        """Return whether the straight moves a (k, 2) to b (k, 2) cross the way."""
        da, db = self.offset(a), self.offset(b)
        crossed = (da >= 0) != (db >= 0)
        apart = np.flatnonzero(crossed)
        share = da[apart] / (da[apart] - db[apart])
        at = a[apart] + share[:, None] * (b[apart] - a[apart])
        u = self.end - self.start
        t = (at - self.start) @ u / (u @ u)
        crossed[apart] = (t > 0) & (t < 1)
        return np.asarray(crossed)


@dataclass(frozen=True, slots=True)
class Flips:
    """Parity along rims: `at_start` (n,) for each segment's start, `whole` (r,) once round a ring."""

    way: Way
    rims: Rims
    at_start: Bools
    whole: Bools

    def at(self, segments: Ints, points: Floats) -> Bools:
        """Return the parity of points (k, 2) lying on segments (k,), counted along their rims."""
        moved = self.way.crossed(self.rims.start[segments], points)
        parity: Bools = self.at_start[segments] ^ moved
        return parity


def flips_along(rims: Rims, way: Way) -> Flips:
    """Count the crossings of `way` along every rim."""
    crossed = way.crossed(rims.start, rims.end)
    count = np.concatenate([[0], np.cumsum(crossed)])
    before = count[:-1] - count[rims.first[rims.rim]]
    whole = (count[rims.first[1:]] - count[rims.first[:-1]]) % 2 == 1
    return Flips(way, rims, before % 2 == 1, whole & rims.ring)
