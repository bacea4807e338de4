"""Gathers what a drawing shows of its units."""

from collections.abc import Iterable, Sequence
from pathlib import Path

from enclosure_app.files.dxf.document import Document
from enclosure_app.files.dxf.raw import Raw, RawDimension, RawPath, RawText
from enclosure_app.files.maps.guesses import names_furniture
from enclosure_app.files.maps.meaning import Meaning
from enclosure_app.files.units.evidence import Evidence
from enclosure_app.geometry.outlines.outline import mean_thickness
from enclosure_app.model.layer import LayerRow, Role
from enclosure_app.model.place import Point, Points
from enclosure_app.model.product import Kind, Product

MEASURED = 200  # outlines are enough to judge thicknesses by


def evidence_of(
    path: Path, document: Document, items: Iterable[Raw], meaning: Meaning
) -> Evidence:
    """Return what a drawing shows of its units."""
    found = _Gathered(meaning)
    for item in items:
        found.take(item)
    return Evidence(
        file=str(path),
        insunits=document.insunits,
        metric=None if document.measurement is None else document.measurement == 1,
        dimensions=tuple(found.dimensions),
        heights=tuple(found.heights),
        thicknesses=tuple(found.thicknesses),
        extent=max(found.box.sides),
        high=found.box.sides[1],
        furniture=found.furniture,
        drawn_high=found.box.drawn_high,
    )


class _Gathered:
    """What was found in the items of a drawing so far."""

    def __init__(self, meaning: Meaning) -> None:
        self._meaning = meaning
        self.dimensions: list[RawDimension] = []
        self.heights: list[float] = []
        self.thicknesses: list[tuple[float, float]] = []
        self.box = _Extent()
        self.furniture = ""

    def take(self, item: Raw) -> None:
        """Look at one item."""
        if isinstance(item, RawDimension) and item.tag.kind == "DIMENSION":
            self.dimensions.append(item)
        elif isinstance(item, RawText) and item.height > 0:
            self.heights.append(item.height)
        elif isinstance(item, RawPath):
            if not self.furniture and names_furniture(item.tag.layer):
                self.furniture = item.tag.layer
            self._take_path(item, self._meaning.row(item.tag))

    def _take_path(self, path: RawPath, row: LayerRow | None) -> None:
        if row is not None and row.role == Role.IGNORE:
            return
        product = row.product if row is not None else None
        framed = row is not None and row.role == Role.FRAME
        self.box.add(path.points, 2 if framed else int(product is not None))
        known = _board(self._meaning.products[product]) if product else None
        if known and len(self.thicknesses) < MEASURED:
            self.thicknesses += [(drawn, known) for drawn in _thickness(path)]


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

    @property
    def drawn_high(self) -> float:
        """How high all is that is drawn, frames too."""
        every = [*self._points[0], *self._points[1]]
        return max(self._frame[1], _sides(every)[1])


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
