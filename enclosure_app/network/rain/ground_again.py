"""The ground of the rain again, after a few pieces have moved."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np

from enclosure_app.geometry.surfaces.faces import Floats, Ints
from enclosure_app.model.place import Shape
from enclosure_app.network.rain.runs import Ground, IsOutside
from enclosure_app.network.rain.surfaces import SurfacesAgain, surfaces_again

_ONE = 3.0  # times the largest: boxes that fit into this are taken for one
_NEAR = 1.0  # mm more than anything is looked for beside an edge
# What a run or an edge is by itself, whatever lies beside it.
_OF_RUNS = (
    "start", "end", "heading", "_near_frame", "_turns_on", "goes_on", "wets", "feet",
    "sheltered", "_lines",
)  # fmt: skip
_OF_EDGES = ("normals", "cut", "_lengths")
_OF_NUMBERS = ("follower", "_owners")


@dataclass(frozen=True, slots=True)
class Sides:
    """Which side of the layer is which, now: where that may have changed, and who lies outside whom.

    `is_outside` tells the side of points, and `rained_on` where rain is to be followed from (None:
    everywhere outside); `unsure` are boxes (k, 2, 2) outside of which neither says anything else
    than before. `over` names the outer piece of each pair.
    """

    is_outside: IsOutside
    unsure: Floats
    over: Mapping[tuple[str, str], str]
    rained_on: IsOutside | None = None


@dataclass(frozen=True, slots=True, eq=False)
class GroundAgain:
    """The ground as it is now; `edges` are all for which something may be other than before.

    `boxes` (k, 2, 2) are the extents of the edges that moved, before and after.
    """

    ground: Ground
    edges: Ints
    boxes: Floats


def merged(boxes: Floats) -> Floats:
    """Return one box for all that lie close together, else the boxes (k, 2, 2) themselves."""
    low, high = boxes[:, 0].min(axis=0), boxes[:, 1].max(axis=0)
    if (high - low).max() <= _ONE * (boxes[:, 1] - boxes[:, 0]).max():
        return np.stack([low, high])[None]
    return boxes


def ground_again(last: Ground, moved: Mapping[str, Shape], sides: Sides) -> GroundAgain | None:
    """Return the ground after the pieces in `moved` have; None where it has other edges in number."""
    surfaces = surfaces_again(last.layer, moved, last.frame)
    if surfaces is None:
        return None
    ground = Ground(
        surfaces.layer,
        last.frame,
        last.tolerances,
        sides.is_outside,
        sides.over,
        last.glued,
        sides.rained_on,
    )
    _take_over(ground, last, surfaces)
    edges = _changed(last, ground, surfaces, sides)
    _look_beside(ground, last, edges)
    return GroundAgain(ground, edges, surfaces.boxes)


def _take_over(ground: Ground, last: Ground, surfaces: SurfacesAgain) -> None:
    """Let the ground know of its edges what the last one knew, and of those that moved anew."""
    few = Ground(surfaces.few, last.frame, last.tolerances, ground.is_outside, {}, last.glued)
    runs = np.stack([2 * surfaces.rows, 2 * surfaces.rows + 1], axis=1).reshape(-1)
    for names, rows in ((_OF_RUNS, runs), (_OF_EDGES, surfaces.rows)):
        for name in names:
            ground.__dict__[name] = _patched(getattr(last, name), getattr(few, name), rows)
    for name in _OF_NUMBERS:
        ground.__dict__[name] = getattr(last, name)


def _patched(table: Any, values: Any, rows: Ints) -> Any:  # noqa: ANN401  an array or a list
    table = table.copy()
    if isinstance(table, list):
        for row, value in zip(rows.tolist(), values, strict=True):
            table[row] = value
    else:
        table[rows] = values
    return table


def _changed(last: Ground, ground: Ground, surfaces: SurfacesAgain, sides: Sides) -> Ints:
    """Return the edges that moved, that something moved beside, or that may have changed sides."""
    tolerances, faces = last.tolerances, ground.layer.surfaces.faces
    reach = tolerances.lap_reach + tolerances.touch + _NEAR
    reach += 2 * float(faces.half.max(initial=0.0))
    turned = {
        name
        for pair in last.over.keys() | sides.over.keys()
        if last.over.get(pair) != sides.over.get(pair)
        for name in pair
    } if last.over is not sides.over else set()  # fmt: skip
    owners = [number for number, name in enumerate(ground.layer.names) if name in turned]
    return np.unique(
        np.concatenate(
            [
                surfaces.rows,
                faces.near(surfaces.boxes, reach),
                faces.near(sides.unsure, reach),
                np.flatnonzero(np.isin(faces.owner, owners)) if owners else surfaces.rows,
            ]
        )
    )


def _look_beside(ground: Ground, last: Ground, edges: Ints) -> None:
    """Look anew for what lies beside `edges` and bars the way on them."""
    runs = np.stack([2 * edges, 2 * edges + 1], axis=1).reshape(-1)
    wet = runs[ground.wets[runs]]
    flanks = dict(last.flanks)
    for edge in edges.tolist():
        flanks.pop(edge, None)
    ground.__dict__["flanks"] = flanks
    flanks |= ground.find_flanks(np.unique(wet // 2))
    bars = dict(last.bars)
    for run in runs.tolist():
        bars.pop(run, None)
    ground.__dict__["bars"] = bars
    bars |= ground.bars_on(wet)
