"""What rows of a layer map say of each line of a drawing."""

from collections.abc import Mapping, Sequence

from enclosure_app.files.dxf.raw import Tag
from enclosure_app.files.maps.layer_map import LayerMap
from enclosure_app.model.layer import LayerRow, Role
from enclosure_app.model.product import Product
from enclosure_app.model.section import Stroke

Meant = str
"""A product's key, or a role; a product whose key is that of a role cannot be told apart."""


class Meanings:
    """What rows say of each line, asked once for each way of drawing one."""

    def __init__(self, rows: Sequence[LayerRow], products: Mapping[str, Product]) -> None:
        self._map = LayerMap(tuple(rows), products)
        self._by_handle = any(row.handles for row in rows)
        self._known: dict[tuple[str, str, int, str], Meant] = {}

    def of(self, stroke: Stroke) -> Meant:
        """Return the product's key or the role of a line."""
        if self._by_handle:
            return self._ask(stroke)
        key = (stroke.layer, stroke.linetype, stroke.color, stroke.block)
        if key not in self._known:
            self._known[key] = self._ask(stroke)
        return self._known[key]

    def _ask(self, stroke: Stroke) -> Meant:
        tag = Tag("", stroke.handle, stroke.layer, stroke.linetype, stroke.color, stroke.block)
        return meant_by(self._map.row_for(tag))


def meant_by(row: LayerRow | None) -> Meant:
    """Return the product's key or the role that a row gives; without a row it is linework."""
    return (row and (row.product or row.role)) or Role.LINEWORK
