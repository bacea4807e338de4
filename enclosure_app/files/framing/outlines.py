"""What a closed outline stands for: a sheet drawn with its thickness, a loop, or an area.

Words: a *region* is a closed outline or a filled patch of one product; *twins* are a patch and
the outline drawn round it.
"""

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from math import floor, inf

from enclosure_app.geometry.outlines.chaining import canonical_ring, signed_area
from enclosure_app.geometry.outlines.outline import mean_thickness, same_ring, strip
from enclosure_app.model.place import Area, Line, Points, Shape
from enclosure_app.model.product import Product

THICK = 30.0  # mm: an outline of a sheet whose sides are further apart is a loop of that sheet
TWINS = 1.0  # mm

_Box = tuple[float, float, float, float]


@dataclass(frozen=True, slots=True)
class Region:
    """One closed outline (mm) of one product; `width` is that of the line it is drawn with."""

    points: Points
    product: str
    handles: tuple[str, ...]
    layer: str = ""
    holes: tuple[Points, ...] = ()
    filled: bool = False
    width: float = 0.0


def shape_of(region: Region, product: Product) -> tuple[Shape, bool]:
    """Return the shape that a region stands for, and whether that was a guess.

    A thin outline of even thickness of a product drawn as a line is the run of a sheet; a wide
    one is a loop of that sheet; what fits neither is an area, as a guess.
    """
    if product.drawn != "line":
        return area_of(region), False
    if region.width > 0 and not region.filled:
        return Line(canonical_ring(region.points), region.width, closed=True), False
    thick = mean_thickness(region.points)[1]
    limit = inf if region.filled else max(THICK, 3 * (product.thickness_mm or 0.0))
    if thick > limit:
        return Line(canonical_ring(region.points), closed=True), False
    run = None if region.holes else strip(region.points)
    if run is None:
        return area_of(region), True
    forward = run.points[0] <= run.points[-1]
    return Line(run.points if forward else run.points[::-1], run.width), False


def area_of(region: Region) -> Area:
    """Return a region as an area, its rings anticlockwise from their leftmost lowest points."""
    holes = tuple(canonical_ring(hole) for hole in region.holes if len(hole) > 2)
    return Area(canonical_ring(region.points), holes)


def without_twins(regions: Iterable[Region]) -> tuple[Region, ...]:
    """Fold each patch and the outline of the same product that runs round it into one region."""
    by_product: dict[str, list[Region]] = defaultdict(list)
    for region in regions:
        by_product[region.product].append(region)
    return tuple(each for same in by_product.values() for each in _folded(same))


def _folded(regions: Sequence[Region]) -> list[Region]:
    kept: list[tuple[_Box, Region]] = []
    cells: dict[tuple[int, int], list[int]] = defaultdict(list)
    for region in regions:
        box = _box(region.points)
        column, row = floor(box[0] / TWINS), floor(box[1] / TWINS)
        near = (cells.get((column + dx, row + dy), ()) for dx in (-1, 0, 1) for dy in (-1, 0, 1))
        at = next((k for cell in near for k in cell if _twins(kept[k], box, region)), None)
        if at is None:
            cells[column, row].append(len(kept))
            kept.append((box, region))
        else:
            kept[at] = (kept[at][0], _both(kept[at][1], region))
    return [region for _, region in kept]


def _box(points: Points) -> _Box:
    xs, ys = zip(*points, strict=True)
    return min(xs), min(ys), max(xs), max(ys)


def _twins(kept: tuple[_Box, Region], box: _Box, other: Region) -> bool:
    own, region = kept
    if any(abs(a - b) > TWINS for a, b in zip(own, box, strict=True)):
        return False
    return same_ring(region.points, other.points, TWINS)


def _both(one: Region, other: Region) -> Region:
    patch = one if one.filled or not other.filled else other
    holes = max(one.holes, other.holes, key=len)
    width = 0.0 if patch.filled else max(one.width, other.width)
    return replace(patch, handles=one.handles + other.handles, holes=holes, width=width)


def encloses(points: Points) -> bool:
    """Whether a ring is more than a line there and back."""
    return len(points) > 2 and abs(signed_area(points)) > 1e-3
