"""The products that a section knows, searched by name, family and what they control."""

from collections.abc import Mapping
from typing import Any

from PySide6.QtCore import QAbstractListModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from enclosure_app.language import say
from enclosure_app.model.product import Control, Product
from enclosure_app.window.words import control_word, word

Index = QModelIndex | QPersistentModelIndex
PRODUCT = Qt.ItemDataRole.UserRole


class ProductsModel(QAbstractListModel):
    """A list of products; those in use in the drawing come first."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._all: tuple[Product, ...] = ()
        self._sought = ""
        self.rows: tuple[Product, ...] = ()

    def show(self, products: Mapping[str, Product], used: frozenset[str]) -> None:
        """Show the products of a section, those it uses before the others."""
        first = sorted(products.values(), key=lambda product: product.key not in used)
        if tuple(first) != self._all:
            self._all = tuple(first)
            self._filter()

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
        return describe(product) if role in told else None

    def _filter(self) -> None:
        self.beginResetModel()
        wanted = self._sought.casefold().split()
        self.rows = tuple(
            product for product in self._all if all(w in _words(product) for w in wanted)
        )
        self.endResetModel()


def describe(product: Product) -> str:
    """Return what a product is and controls, in a line."""
    controls = ", ".join(control_word(c).lower() for c in Control if c in product.controls)
    held = word(product.bond.value)
    does = controls or word("controls nothing")
    return f"{say(product.name)} — {does}; {held}"


def _words(product: Product) -> str:
    controls = " ".join(control.value for control in product.controls)
    parts = (
        product.name,
        say(product.name),
        product.key,
        product.kind.value,
        product.bond.value,
        controls,
    )
    return " ".join(parts).casefold()
