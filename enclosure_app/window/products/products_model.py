"""The products that a section knows, searched by name, family and what they control."""

from collections.abc import Mapping, Sequence
from typing import Any

from PySide6.QtCore import QAbstractListModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.language import say
from enclosure_app.model.product import Product
from enclosure_app.window.products.product_words import sought_words, told_words

Index = QModelIndex | QPersistentModelIndex
PRODUCT = Qt.ItemDataRole.UserRole


class ProductsModel(QAbstractListModel):
    """A list of products: those taken lately first, then those in use, then the office's own."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._all: tuple[Product, ...] = ()
        self._sought = ""
        self.rows: tuple[Product, ...] = ()
        self.imperial = False

    def show(
        self, products: Mapping[str, Product], used: frozenset[str], lately: Sequence[str] = ()
    ) -> None:
        """Show the products of a section, in the order in which they are likely wanted."""
        late = {key: place for place, key in enumerate(lately)}

        def wanted(product: Product) -> tuple[int, bool, bool]:
            place = late.get(product.key, len(late))
            return place, product.key not in used, not is_own(product)

        first = tuple(sorted(products.values(), key=wanted))
        if first != self._all:
            self._all = first
            self._filter()

    @property
    def every(self) -> tuple[Product, ...]:
        """Every product, sought or not."""
        return self._all

    def seek(self, text: str) -> None:
        """Show those whose words hold every word that is sought."""
        self._sought = text
        self._filter()

    def place_of(self, key: str) -> int:
        """Return which row shows a product, -1 if none does."""
        keys = [product.key for product in self.rows]
        return keys.index(key) if key in keys else -1

    def rowCount(self, parent: Index | None = None) -> int:
        """Return how many products are shown."""
        return 0 if parent is not None and parent.isValid() else len(self.rows)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:  # noqa: ANN401
        """Return a product, its name, or what it does."""
        if not index.isValid():
            return None
        product = self.rows[index.row()]
        if role == PRODUCT:
            return product
        if role == Qt.ItemDataRole.DisplayRole:
            return say(product.name)
        told = (Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.AccessibleDescriptionRole)
        return told_words(product, imperial=self.imperial) if role in told else None

    def _filter(self) -> None:
        self.beginResetModel()
        wanted = self._sought.casefold().split()
        self.rows = tuple(
            product for product in self._all if all(w in sought_words(product) for w in wanted)
        )
        self.endResetModel()


def is_own(product: Product) -> bool:
    """Whether a product is the office's own: the program has none such, or another one."""
    return load_products().get(product.key) != product
