"""What of a section comes near the view, found by boxes instead of piece by piece.

From one check to the next nearly all pieces and joints are the very same objects, so that the
boxes of the last pieces are kept by identity, and only those of new ones are made.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from types import MappingProxyType

import numpy as np
from numpy.typing import NDArray

from enclosure_app.drawing.placement import Box, box_around
from enclosure_app.drawing.section.ways import Way, seen_parts, way_through
from enclosure_app.model.place import Area, Points
from enclosure_app.model.product import Control
from enclosure_app.model.report import LayerResult, RainRoute
from enclosure_app.model.section import Piece, Section

_SHARE = 0.1  # of the window's sides, beyond which a piece is left out
_LONG = 64  # points from which a way is cut off beyond the view
_KEPT = 32  # ways that are kept: few sections have more routes of rain that are long


def around(window: Box) -> Box:
    """Return the box in which a piece is near: its lap or its pen may reach into the window."""
    return window.inset(-_SHARE * window.width, -_SHARE * window.height)


@dataclass(frozen=True, slots=True)
class _Boxes:
    """Pieces, and the box of each: rows (left, bottom, right, top), mm."""

    pieces: tuple[Piece, ...]
    rows: NDArray[np.float64]

    def of(self, pieces: tuple[Piece, ...]) -> "_Boxes":
        """Return the boxes of other pieces, making only those of pieces that are not the same."""
        known = {id(piece): row for row, piece in enumerate(self.pieces)}
        last = np.array([known.get(id(piece), -1) for piece in pieces], dtype=np.intp)
        rows = self.rows[last] if len(self.rows) else np.zeros((len(pieces), 4))
        for new in np.flatnonzero(last < 0).tolist():
            rows[new] = _box(pieces[new])
        return _Boxes(pieces, rows)


# replaced as a whole, never changed: pictures for reports are composed in other threads
_last = [_Boxes((), np.zeros((0, 4)))]


def _boxes_of(pieces: tuple[Piece, ...]) -> NDArray[np.float64]:
    boxes = _last[0]
    if boxes.pieces is not pieces:
        _last[0] = boxes = boxes.of(pieces)
    return boxes.rows


def _box(piece: Piece) -> tuple[float, float, float, float]:
    shape = piece.shape
    box = box_around(shape.outer if isinstance(shape, Area) else shape.points)
    return box.left, box.bottom, box.right, box.top


def pieces_near(section: Section, window: Box) -> list[Piece]:
    """Return the pieces whose boxes come near a window, in their order."""
    near, rows = around(window), _boxes_of(section.pieces)
    met = (
        (rows[:, 0] <= near.right)
        & (rows[:, 2] >= near.left)
        & (rows[:, 1] <= near.top)
        & (rows[:, 3] >= near.bottom)
    )
    return [section.pieces[number] for number in np.flatnonzero(met).tolist()]


def joints_of(
    layers: Mapping[Control, LayerResult], pieces: Sequence[Piece], section: Section
) -> Mapping[Control, LayerResult]:
    """Return the layers with the joints of some pieces, and those that a person said are sealed."""
    names, sealed = {piece.name for piece in pieces}, section.sealed
    if len(names) == len(section.pieces):
        return layers
    lean = {}
    for control, layer in layers.items():
        kept = tuple(
            joint
            for joint in layer.joints
            if joint.a in names
            or joint.b in names
            or (sealed and (min(joint.a, joint.b), max(joint.a, joint.b)) in sealed)
        )
        lean[control] = replace(layer, joints=kept)
    return MappingProxyType(lean)


def rain_near(
    rain: tuple[RainRoute, ...], section: Section, window: Box, period: float
) -> tuple[RainRoute, ...]:
    """Return the routes of drops, long ones only as far as they come near a window.

    Each part starts after a whole number of `period` mm (of the section), in which the dashes of
    a route repeat. A route that leaves the frame is kept whole: it is cut off there first.
    """
    if not section.frame:
        return rain
    frame, near = box_around(section.frame), around(window)
    return tuple(part for route in rain for part in _parts_near(route, frame, near, period))


def _parts_near(route: RainRoute, frame: Box, near: Box, period: float) -> tuple[RainRoute, ...]:
    if len(route.points) < _LONG:
        return (route,)
    way = way_of(route.points)
    low, high = way.array.min(axis=0).tolist(), way.array.max(axis=0).tolist()
    if not (frame.holds(low) and frame.holds(high)):
        return (route,)
    return tuple(replace(route, points=part) for part in seen_parts(way, near, period))


_ways: dict[int, tuple[Points, Way]] = {}


def way_of(points: Points) -> Way:
    """Return the way along points, made once as long as they are the very same object."""
    there = _ways.get(id(points))
    if there is None or there[0] is not points:
        there = _ways[id(points)] = points, way_through((points,))
        while len(_ways) > _KEPT:
            _ways.pop(next(iter(_ways)), None)
    return there[1]
