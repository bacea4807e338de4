"""The layers of the drawing as a list that can be searched; a row keeps its place as it changes."""

from collections.abc import Mapping
from types import MappingProxyType
from typing import Any

from PySide6.QtCore import QAbstractListModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from enclosure_app.language import say
from enclosure_app.model.product import Product
from enclosure_app.model.project import Project
from enclosure_app.window.lines.layer_words import (
    beside_words,
    difference_word,
    drawn_words,
    meant_word,
    pieces_words,
    why_words,
)
from enclosure_app.window.lines.layers_told import LayersTold, LayerTold

Index = QModelIndex | QPersistentModelIndex
LAYER = Qt.ItemDataRole.UserRole


class LayersModel(QAbstractListModel):
    """A list of layers for the left-hand panel."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._told = LayersTold()
        self._all: tuple[LayerTold, ...] = ()
        self._sought = ""
        self.rows: tuple[LayerTold, ...] = ()
        self.products: Mapping[str, Product] = MappingProxyType({})

    @property
    def total(self) -> int:
        """How many layers there are, sought or not."""
        return len(self._all)

    def show(self, project: Project) -> None:
        """Show the layers of a project."""
        self.products = project.sections[0].products if project.sections else {}
        self._all = self._told.of(project)
        self._renew()

    def seek(self, text: str) -> None:
        """Show those whose name, or what they are, holds every word that is sought."""
        self._sought = text
        self._renew()

    def rowCount(self, parent: Index | None = None) -> int:
        """Return how many layers are shown."""
        return 0 if parent is not None and parent.isValid() else len(self.rows)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:  # noqa: ANN401
        """Return a layer, its name, or all that there is to tell of it."""
        if not index.isValid():
            return None
        told = self.rows[index.row()]
        if role == LAYER:
            return told
        if role == Qt.ItemDataRole.DisplayRole:
            return told.name
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return ", ".join(filter(None, (f"{told.name}: {self.meant(told)}", self.beside(told))))
        if role == Qt.ItemDataRole.ToolTipRole:
            return self._tip(told)
        return None

    def _tip(self, told: LayerTold) -> str:
        if told.drawn:
            return f"{told.name} · {pieces_words(told.lines)}"
        amount = drawn_words(told.lines, told.texts)
        said = f"{told.name} · {amount} · {self.meant(told)}"
        return f"{said}\n{why_words(told.guess, self.products)}"

    def meant(self, told: LayerTold) -> str:
        """Return what a layer is said to be; of what was drawn here its name says it already."""
        if told.drawn:
            return say("drawn here")
        return meant_word(told.meant, self.products)

    def beside(self, told: LayerTold) -> str:
        """Return how that stands beside what its name suggests."""
        return beside_words(told.meant, told.guess, self.products)

    def difference(self, told: LayerTold) -> str:
        """Return the same in two words, where there is no room for more."""
        return difference_word(told.meant, told.guess)

    def _renew(self) -> None:
        wanted = self._sought.casefold().split()
        rows = tuple(
            told
            for told in self._all
            if all(w in f"{told.name} {self.meant(told)}".casefold() for w in wanted)
        )
        if [told.row for told in rows] != [told.row for told in self.rows]:
            self.beginResetModel()
            self.rows = rows
            self.endResetModel()
        elif rows != self.rows:
            self.rows = rows
            self.dataChanged.emit(self.index(0), self.index(len(rows) - 1))
