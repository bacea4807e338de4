"""The layers of the drawing: what each is taken for, and how many lines it has."""

from collections import Counter, defaultdict
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from enclosure_app.language import say
from enclosure_app.model.section import Section

Index = QModelIndex | QPersistentModelIndex


@dataclass(frozen=True, slots=True)
class LayerRow:
    """One layer: its name, what its lines are made of ("" for linework), and how many they are."""

    name: str
    meaning: str
    count: int


def rows_of(section: Section) -> tuple[LayerRow, ...]:
    """Return the layers of a section: those with products first, then linework, by name."""
    products: dict[str, Counter[str]] = defaultdict(Counter)
    for piece in section.pieces:
        products[piece.layer][say(section.product(piece).name)] += 1
    plain = Counter(stroke.layer for stroke in section.strokes)
    rows = [
        LayerRow(name, ", ".join(product for product, _ in found.most_common()), found.total())
        for name, found in products.items()
    ]
    rows += [LayerRow(name, "", n) for name, n in plain.items() if name not in products]
    return tuple(sorted(rows, key=lambda row: (not row.meaning, row.name.casefold())))


class LayersModel(QAbstractTableModel):
    """A table of layers for the left-hand panel."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.rows: tuple[LayerRow, ...] = ()

    def show(self, section: Section | None) -> None:
        """Show the layers of a section."""
        rows = rows_of(section) if section else ()
        if rows != self.rows:
            self.beginResetModel()
            self.rows = rows
            self.endResetModel()

    def rowCount(self, parent: Index | None = None) -> int:
        """Return how many layers there are."""
        return 0 if parent is not None and parent.isValid() else len(self.rows)

    def columnCount(self, parent: Index | None = None) -> int:
        """Return 3: layer, meaning, count."""
        return 0 if parent is not None and parent.isValid() else 3

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:  # noqa: ANN401
        """Return the head of a column."""
        if orientation != Qt.Orientation.Horizontal or role != Qt.ItemDataRole.DisplayRole:
            return None
        return (self.tr("Layer"), self.tr("Taken for"), self.tr("Lines"))[section]

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:  # noqa: ANN401
        """Return the words of a cell."""
        if not index.isValid():
            return None
        row = self.rows[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            name = row.name or self.tr("(drawn here)")
            return (name, row.meaning or self.tr("linework"), str(row.count))[index.column()]
        if role == Qt.ItemDataRole.ToolTipRole:
            return f"{row.name}: {row.meaning or self.tr('linework, not judged')}"
        if role == Qt.ItemDataRole.TextAlignmentRole and index.column() == 2:
            return Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        return None
