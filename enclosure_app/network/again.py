"""A section questioned again after a few of its pieces have moved.

What is returned is the very same as if all of it were questioned anew. It is found from what was
found the last time, and only where something has changed that it depends on.
"""

from collections.abc import Iterable, Mapping
from dataclasses import fields
from types import MappingProxyType
from typing import TypeVar

import numpy as np

from enclosure_app.geometry.rims.closed_curve import difference
from enclosure_app.geometry.rims.rims import Floats
from enclosure_app.geometry.rims.rows import unlike
from enclosure_app.model.place import Area, Line, Point, Points, Shape
from enclosure_app.model.product import Control
from enclosure_app.model.section import Piece, Section
from enclosure_app.network.airs import Air
from enclosure_app.network.fabric.bodies import Bodies, bodies_again, bodies_of
from enclosure_app.network.fabric.reweaving import Moved
from enclosure_app.network.joints.laps import Lap
from enclosure_app.network.layer import Layer, same_layer, trace_again, trace_layer
from enclosure_app.network.network import Network, hides, over_whom, pairs_laid, rain_on
from enclosure_app.network.order import building_order
from enclosure_app.network.rain.ground_again import Sides
from enclosure_app.network.rain.rain import Rain, together
from enclosure_app.network.rain.rain_again import Pieces, rain_again

_JUDGED_APART = {"name", "pieces", "products", "strokes", "taken", "texts", "by_name"}
_GROUND = [field.name for field in fields(Section) if field.name not in _JUDGED_APART]
FEW = 12  # pieces: when more of them move at once, all is questioned anew


def moved_between(last: Section, section: Section) -> frozenset[str] | None:
    """Return the names of the pieces that stand elsewhere than in `last`.

    None where anything else differs, or where too many moved: then all is to be questioned anew.
    """
    if len(last.pieces) != len(section.pieces) or not _same_ground(last, section):
        return None
    pairs = zip(last.pieces, section.pieces, strict=True)
    changed = [(old, new) for old, new in pairs if old is not new and old != new]
    if len(changed) > FEW or not all(_only_moved(old, new) for old, new in changed):
        return None
    return frozenset(new.name for _, new in changed)


def _same_ground(last: Section, section: Section) -> bool:
    """Whether the two sections differ in nothing but their pieces, their names, and the office's own lines."""
    if last.products is not section.products and last.products != section.products:
        return False
    return all(getattr(last, name) == getattr(section, name) for name in _GROUND)


def _only_moved(old: Piece, new: Piece) -> bool:
    return (old.name, old.product) == (new.name, new.product) and _alike(old.shape, new.shape)


def _alike(old: Shape, new: Shape) -> bool:
    """Whether two shapes are drawn with as many points in the same way."""
    if isinstance(old, Line) and isinstance(new, Line):
        kind = (old.width, old.closed) == (new.width, new.closed)
        return kind and len(old.points) == len(new.points)
    if isinstance(old, Area) and isinstance(new, Area):
        holes = [len(hole) for hole in old.holes] == [len(hole) for hole in new.holes]
        return holes and len(old.outer) == len(new.outer)
    return False


def question_again(last: Network, section: Section, names: frozenset[str]) -> Network:
    """Question a settled section of which the pieces called `names` stood elsewhere in `last`."""
    moved = Moved(names, _areas(last.section, section, names))
    bodies = bodies_again(last.bodies or bodies_of(last.section), section, sorted(names))
    layers = _layers(last, section, moved, bodies)
    laid = last.laid if _as_laid(last.layers, layers) else tuple(dict.fromkeys(pairs_laid(layers)))
    return Network(
        section=section,
        tolerances=last.tolerances,
        layers=MappingProxyType(layers),
        rain=_rain(last, section, layers[Control.WATER], names),
        order=last.order if laid == last.laid else building_order(laid),
        bodies=bodies,
        laid=laid,
        kinds=last.kinds,
    )


def _as_laid(last: Mapping[Control, Layer], layers: Mapping[Control, Layer]) -> bool:
    """Whether every lap of every layer shows the same sheet outside as before."""
    rows = [(last[control].laps, layers[control].laps) for control in layers]
    pairs = {(id(old), id(new)): (old, new) for old, new in rows}.values()
    return all(len(old) == len(new) for old, new in pairs) and all(
        _laid(old[n]) == _laid(new[n]) for old, new in pairs for n in unlike(old, new)
    )


def _laid(lap: Lap) -> tuple[str, str, bool]:
    return lap.inner.name, lap.outer.name, lap.outward is None


def concerned(last: Network, network: Network, moved: frozenset[str]) -> set[str]:
    """Return the pieces that moved, and those of which a lap or a joint is not what it was."""
    names = set(moved)
    told: set[int] = set()
    for control, layer in network.layers.items():
        if layer.work is not None and id(layer.work) in told:
            continue  # the same layer under another control
        told.add(id(layer.work))
        before = last.layers[control]
        for lap in _others(before.laps, layer.laps):
            names |= {lap.outer.name, lap.inner.name}
        for joint in _others(before.joints, layer.joints):
            names |= {joint.a, joint.b}
    return names


T = TypeVar("T")


def _others(old: tuple[T, ...], new: tuple[T, ...]) -> list[T]:
    """Return what is in only one of two tuples: each as an object, whatever it is equal to."""
    if len(old) == len(new):
        return [each for n in unlike(old, new) for each in (old[n], new[n])]
    of_old, of_new = {id(each) for each in old}, {id(each) for each in new}
    return [
        *(each for each in old if id(each) not in of_new),
        *(each for each in new if id(each) not in of_old),
    ]


def _rain(last: Network, section: Section, water: Layer, names: frozenset[str]) -> Rain | None:
    """Let it rain again, where it can be told how the sides of the layer have changed."""
    if section.gravity is None or water.walk is None:
        return None
    shapes = {name: section.by_name[name].shape for name in names}
    moved = Pieces(
        {n: shape for n, shape in shapes.items() if n in last.layers[Control.WATER].fabric.names},
        {n: shape for n, shape in shapes.items() if hides(section, section.by_name[n])},
    )
    sides = _sides(last, water)
    if last.rain is not None and last.rain.work and sides is not None:
        nothing = not (moved.layer or moved.walls or len(sides[0].unsure))
        if nothing and sides[0].over is _over(last):
            return last.rain
        found = [
            rain_again(work, moved, each) for work, each in zip(last.rain.work, sides, strict=True)
        ]
        told = [rain for rain in found if rain is not None]
        if len(told) == len(found):
            return together(told)
    return rain_on(section, water, last.tolerances)


def _over(last: Network) -> Mapping[tuple[str, str], str]:
    work = last.rain.work if last.rain else ()
    return work[0].water.ground.over if work else {}


def _sides(last: Network, water: Layer) -> list[Sides] | None:
    """Return for each air how the sides of the water layer have changed; None where that cannot be told."""
    before = last.layers[Control.WATER]
    old, new = before.airs, water.airs
    if [_kept_apart(air) for air in old] != [_kept_apart(air) for air in new]:
        return None
    boxes = [_unsure(*each) for each in zip(old, new, strict=True)]
    known = [box for box in boxes if box is not None]
    if len(known) < len(boxes):
        return None
    control, unsure = Control.WATER, np.concatenate([np.zeros((0, 2, 2)), *known])
    same = _as_laid({control: before}, {control: water})
    over = _over(last) if same else over_whom(water)
    return [
        Sides(air.holds, unsure, over, air.is_first_to_hold if air.before else None) for air in new
    ]


def _kept_apart(air: Air) -> tuple[Point, int]:
    return air.mark, len(air.curves)


def _unsure(old: Air, new: Air) -> Floats | None:
    """Return boxes (k, 2, 2) outside of which an air holds what it did; None where that cannot be told."""
    mark = np.array([new.mark])
    boxes = []
    for last, curve in zip(old.curves, new.curves, strict=True):
        changed = difference(last, curve)
        if changed is None or last.encloses(mark) != curve.encloses(mark):
            return None
        ends = np.concatenate([changed.gone, changed.new]).reshape(-1, 2)
        if len(ends):
            boxes.append(np.stack([ends.min(axis=0), ends.max(axis=0)]))
    return np.array(boxes).reshape(-1, 2, 2)


def _areas(last: Section, section: Section, names: Iterable[str]) -> Floats:
    """Return the extents (k, 2, 2) of the areas among the pieces, where they were and where they are."""
    shapes = [each.by_name[name].shape for name in names for each in (last, section)]
    extents = [_extent(shape.outer) for shape in shapes if isinstance(shape, Area)]
    return np.array(extents, dtype=np.float64).reshape(-1, 2, 2)


def _extent(points: Points) -> list[list[float]]:
    table = np.array(points)
    return [table.min(axis=0).tolist(), table.max(axis=0).tolist()]


def _layers(last: Network, section: Section, moved: Moved, bodies: Bodies) -> dict[Control, Layer]:
    """Trace each control again; what was one layer is traced once."""
    layers: dict[Control, Layer] = {}
    traced: dict[int, Layer] = {}
    for control, layer in last.layers.items():
        known = traced.get(id(layer.work)) if layer.work else None
        if known is not None:
            layers[control] = same_layer(known, control)
            continue
        again = trace_again(layer, section, moved, last.tolerances, bodies)
        if again is None:
            again = trace_layer(section, control, last.tolerances, bodies)
        layers[control] = traced[id(layer.work)] = again
    return layers
