"""What the rain does, again, after a few pieces have moved."""

from collections.abc import Mapping
from dataclasses import dataclass, replace

import numpy as np

from enclosure_app.geometry.surfaces.faces import Floats, Ints
from enclosure_app.model.place import Shape
from enclosure_app.network.rain.courses import tell
from enclosure_app.network.rain.ground_again import GroundAgain, Sides, ground_again, merged
from enclosure_app.network.rain.landing import Part, landed, outer_parts
from enclosure_app.network.rain.rain import Rain, Work, rain_of
from enclosure_app.network.rain.sky import Sky
from enclosure_app.network.rain.sources import flow_of, heads, landings_of
from enclosure_app.network.rain.surfaces import surfaces_again
from enclosure_app.network.rain.water_again import water_again


@dataclass(frozen=True, slots=True)
class Pieces:
    """The pieces that moved: those of the water layer, and others that a drop may come near."""

    layer: Mapping[str, Shape]
    walls: Mapping[str, Shape]


def rain_again(last: Work, moved: Pieces, sides: Sides) -> Rain | None:
    """Return what the rain does, where `last` tells what it did; None where that has to be asked anew."""
    ground = ground_again(last.water.ground, moved.layer, sides)
    walls = surfaces_again(last.others, moved.walls)
    if ground is None or walls is None:
        return None
    layer = ground.ground.layer
    sky = replace(last.sky, layer=layer, walls=walls.layer) if last.sky else None
    water = water_again(last.water, last.falls, ground)
    parts = _parts(last, ground)
    asked = _asked(ground, sky, np.concatenate([ground.boxes, walls.boxes]))
    found = landed(
        ground.ground, sky, [part for run in asked.tolist() for part in parts.get(run, ())]
    )
    flow = flow_of(water.water, found, last.flow, water.changed)
    landings = landings_of(water.water, flow, found, (last.landings, asked))
    told = tell(water.water, heads(water.water, flow, landings), last.told, water.changed)
    work = Work(water.water, walls.layer, sky, water.falls, parts, flow, landings, told)
    return rain_of(work, last, sides.unsure)


def _parts(last: Work, again: GroundAgain) -> dict[int, tuple[Part, ...]]:
    """Return the outer parts of each run, looked for anew only on the edges that changed."""
    runs = np.stack([2 * again.edges, 2 * again.edges + 1], axis=1).reshape(-1)
    parts = dict(last.parts)
    for run in runs.tolist():
        parts.pop(run, None)
    return parts | outer_parts(again.ground, runs)


def _asked(again: GroundAgain, sky: Sky | None, boxes: Floats) -> Ints:
    """Return the runs on which rain may land elsewhere than before."""
    edges = np.zeros(len(again.ground.wets) // 2, dtype=bool)
    edges[again.edges] = True
    if sky is not None and len(boxes):
        faces = again.ground.layer.surfaces.faces
        low, high = np.minimum(faces.a, faces.b), np.maximum(faces.a, faces.b)
        edges |= sky.near(low, high, merged(boxes))
    return np.flatnonzero(np.repeat(edges, 2))
