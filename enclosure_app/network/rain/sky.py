"""Which places the rain gets to: those that the sky sees, and those that leaks wet.

Rain is taken to come down at any angle up to the driving angle off the vertical, and through every
slot between what stands above, but for slits that are drafting slop. Claddings and rigid flashings
leak at their joints, so that what lies along them gets wet too; so does what is right below a
window or a door, which leak at their feet (common practice, no source).
"""

from dataclasses import dataclass
from functools import cached_property
from math import acos, radians, tan

import numpy as np

from enclosure_app.geometry.surfaces.faces import Bools, Floats
from enclosure_app.geometry.surfaces.slots import Lookout, sees_sky
from enclosure_app.model.limits import Tolerances
from enclosure_app.model.place import Points
from enclosure_app.network.rain.surfaces import LayerSurfaces

_GRAZE = 0.035  # sine of the least angle at which rain strikes a face: 2 degrees
_FAR = 20_000.0  # mm: what is further up shelters nothing (common practice, no source)
_BUILD_UP = 200.0  # mm: how far a cladding stands off what it covers (common practice, no source)
_PLUMB, _FLAT = 0.1, 89.9  # degrees: rain comes down no steeper and no flatter
_UP = np.array([0.0, 1.0])
_ALIKE = 0.9  # cosine: a cladding lies along the face behind it, within some 25 degrees


@dataclass(frozen=True, eq=False)
class Sky:
    """The sky over a layer.

    `walls` are the other solid pieces. `leaky` names the pieces that wet what lies along them on
    the inner side, `openings` those that wet what is below them. `angle` is the driving angle,
    degrees off the vertical; sky that is seen no wider than `slop` mm is none.
    """

    layer: LayerSurfaces
    walls: LayerSurfaces
    leaky: frozenset[str]
    openings: frozenset[str]
    frame: Points
    angle: float
    slop: float = Tolerances().touch

    def wets(self, points: Floats, normals: Floats) -> Bools:
        """Return which points (n, 2), just in front of faces with `normals` (n, 2), rain gets to."""
        wet = np.zeros(len(points), dtype=bool)
        up = np.broadcast_to(_UP, points.shape)
        for look, names, alike in ((normals, self.leaky, _ALIKE), (up, self.openings, 0.0)):
            dry = np.flatnonzero(~wet)
            wet[dry] = self._leaks(points[dry], look[dry], names, alike)
        dry = np.flatnonzero(~wet)
        wet[dry] = self._sees(points[dry], normals[dry])
        return wet

    def near(self, low: Floats, high: Floats, boxes: Floats) -> Bools:
        """Return which extents, from `low` (n, 2) to `high` (n, 2), the sky may wet otherwise.

        That is where something comes or goes in the `boxes` (k, 2, 2).
        """
        near = np.zeros(len(low), dtype=bool)
        slant = tan(radians(min(self.angle, _FLAT)))
        for box_low, box_high in boxes:
            beside = np.maximum(np.maximum(box_low - high, low - box_high), 0.0)
            above = box_high[1] - low[:, 1]
            under = (above > 0) & (beside[:, 0] <= above * slant + _BUILD_UP)
            near |= under & (box_low[1] - high[:, 1] <= _FAR + _BUILD_UP)
            near |= (beside <= 2 * _BUILD_UP).all(axis=1)
        return near

    def _sees(self, points: Floats, normals: Floats) -> Bools:
        """Whether what stands above each point leaves sky that rain comes down from."""
        most = radians(min(max(self.angle, _PLUMB), _FLAT))
        faces = np.arctan2(normals[:, 0], normals[:, 1])
        over = acos(_GRAZE)  # from the face's normal to where rain only just strikes it
        low, high = np.maximum(faces - over, -most), np.minimum(faces + over, most)
        box = np.stack(self._extent)
        lookout = Lookout(points, low, high, box, _FAR, self.slop)
        return sees_sky([self.layer.surfaces, self.walls.surfaces], lookout)

    @cached_property
    def _extent(self) -> tuple[Floats, Floats]:
        ring = np.asarray(self.frame, dtype=float)
        return ring.min(axis=0), ring.max(axis=0)

    def _leaks(self, points: Floats, ways: Floats, names: frozenset[str], alike: float) -> Bools:
        """Whether the first face on the `ways` is of one of `names`, and square to them.

        `alike` is the least cosine between the way and the face's normal.
        """
        wet = np.zeros(len(points), dtype=bool)
        nearest = np.full(len(points), np.inf)
        for pieces in (self.layer, self.walls):
            edge, away = pieces.surfaces.first_met(points, points + ways * _BUILD_UP)
            nearer = np.flatnonzero(away < nearest)
            faces, edge = pieces.surfaces.faces, edge[nearer]
            square = np.abs(np.sum(faces.normal[edge] * ways[nearer], axis=1)) > alike
            named = np.array([name in names for name in pieces.names], dtype=bool)
            wet[nearer] = square & named[faces.owner[edge]]
            nearest[nearer] = away[nearer]
        return wet
