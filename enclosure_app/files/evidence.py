"""Gathers what a drawing shows of its units."""

from collections.abc import Iterable
from pathlib import Path

from enclosure_app.files.dxf_document import Document
from enclosure_app.files.meaning import Meaning
from enclosure_app.files.raw import Raw, RawDimension, RawPath, RawText
from enclosure_app.files.units import Evidence
from enclosure_app.geometry.outline import mean_thickness
from enclosure_app.model.place import Point, Points

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
            box.add(item.points, mapped=row is not None and row.product is not None)
            known = meaning.products[row.product].thickness_mm if row and row.product else None
            if known and len(thicknesses) < MEASURED:
                thicknesses += [(drawn, known) for drawn in _thickness(item)]
    return Evidence(
        file=str(path),
        insunits=document.insunits,
        metric=None if document.measurement is None else document.measurement == 1,
        dimensions=tuple(dimensions),
        heights=tuple(heights),
        thicknesses=tuple(thicknesses),
        extent=box.side,
    )


class _Extent:
    """The larger side of what is mapped, or of everything where nothing is."""

    def __init__(self) -> None:
        self._points: dict[bool, list[Point]] = {True: [], False: []}

    def add(self, points: Points, *, mapped: bool) -> None:
        self._points[mapped].extend(points)

    @property
    def side(self) -> float:
        points = self._points[True] or self._points[False]
        if not points:
            return 0.0
        xs, ys = zip(*points, strict=True)
        return float(max(max(xs) - min(xs), max(ys) - min(ys)))


def _thickness(path: RawPath) -> list[float]:
    if path.width > 0:
        return [path.width]
    if not (path.closed or path.filled) or len(path.points) < 3:
        return []
    return [mean_thickness(path.points)[1]]
