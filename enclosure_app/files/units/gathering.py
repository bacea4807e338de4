"""Gathers what a drawing shows of its units."""

from collections.abc import Iterable, Sequence
from pathlib import Path

from enclosure_app.files.dxf.document import Document
from enclosure_app.files.dxf.raw import Raw, RawDimension, RawPath, RawText
from enclosure_app.files.maps.meaning import Meaning
from enclosure_app.files.units.evidence import Evidence
from enclosure_app.geometry.outlines.outline import mean_thickness
from enclosure_app.model.layer import Role
from enclosure_app.model.place import Point, Points
from enclosure_app.model.product import Kind, Product

MEASURED = 200  # outlines are enough to judge thicknesses by


def evidence_of(
    path: Path, document: Document, items: Iterable[Raw], meaning: Meaning
) -> Evidence:
    """Return what a drawing shows of its units."""
    dimensions: list[RawDimension] = []
    heights: list[float] = []
    thicknesses: list[tuple[float, float]] = []
    box = _Extent()
    for item in items:
        if isinstance(item, RawDimension) and item.tag.kind == "DIMENSION":
            dimensions.append(item)
        elif isinstance(item, RawText) and item.height > 0:
            heights.append(item.height)
        elif isinstance(item, RawPath):
            row = meaning.row(item.tag)
            if row is not None and row.role == Role.IGNORE:
                continue
            framed = row is not None and row.role == "frame"
            mapped = row is not None and row.product is not None
            box.add(item.points, 2 if framed else int(mapped))
            known = _board(meaning.products[row.product]) if row and row.product else None
            if known and len(thicknesses) < MEASURED:
                thicknesses += [(drawn, known) for drawn in _thickness(item)]
    return Evidence(
        file=str(path),
        insunits=document.insunits,
        metric=None if document.measurement is None else document.measurement == 1,
        dimensions=tuple(dimensions),
        heights=tuple(heights),
        thicknesses=tuple(thicknesses),
        extent=max(box.sides),
        high=box.sides[1],
    )


def _board(product: Product) -> float | None:
    """Return the thickness of a product that is drawn as thick as it is, mm: that of boards."""
    return product.thickness_mm if product.kind is Kind.BOARD else None


class _Extent:
    """How wide and high the largest frame is, else what is mapped, else everything."""

    def __init__(self) -> None:
        self._frame = (0.0, 0.0)
        self._points: dict[int, list[Point]] = {0: [], 1: []}

    def add(self, points: Points, rank: int) -> None:
        """Count a path that is linework (0), mapped (1) or a frame (2)."""
        if rank == 2:
            self._frame = max(self._frame, _sides(points), key=max)
        else:
            self._points[rank].extend(points)

    @property
    def sides(self) -> tuple[float, float]:
        """How wide and how high."""
        found = (self._frame, _sides(self._points[1]), _sides(self._points[0]))
        return next((sides for sides in found if max(sides) > 0), (0.0, 0.0))


def _sides(points: Sequence[Point]) -> tuple[float, float]:
    if not points:
        return 0.0, 0.0
    xs, ys = zip(*points, strict=True)
    return float(max(xs) - min(xs)), float(max(ys) - min(ys))


def _thickness(path: RawPath) -> list[float]:
    if path.width > 0:
        return [path.width]
    if not (path.closed or path.filled) or len(path.points) < 3:
        return []
    return [mean_thickness(path.points)[1]]
