"""What is wrong, as a list in walking order, and which of it is shown."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import (
    QAbstractListModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    Qt,
    Signal,
)

from enclosure_app.drawing.lengths import format_length
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.product import Control
from enclosure_app.window.words import control_word, rule_name, severity_word

ROW = Qt.ItemDataRole.UserRole
Index = QModelIndex | QPersistentModelIndex


@dataclass(frozen=True, slots=True)
class Row:
    """One finding with its number, and its lengths in the drawing's units ("" where none)."""

    number: int
    finding: Finding
    measured: str
    required: str

    @property
    def heading(self) -> str:
        """What kind of fault it is and in which layer."""
        control = control_word(self.finding.control)
        name = rule_name(self.finding.rule)
        return f"{name} · {control}" if control else name

    @property
    def spoken(self) -> str:
        """The row in one sentence, for those who hear it."""
        severity = severity_word(self.finding.severity)
        lengths = f" {self.measured}" + (f" / {self.required}" if self.required else "")
        return f"{self.number}. {severity}: {self.heading}. {self.finding.message}{lengths}"


class FindingsModel(QAbstractListModel):
    """The findings of one section that pass the filter; numbers are those of the whole list."""

    counted = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._all: tuple[Row, ...] = ()
        self._shown: tuple[Row, ...] = ()
        self.control: Control | None = None
        self.hidden: frozenset[Severity] = frozenset()

    def show(self, findings: Sequence[Finding], units: Units) -> None:
        """Show other findings."""
        self._all = tuple(
            Row(number, f, _length(f.measured, units), _length(f.required, units))
            for number, f in enumerate(findings, 1)
        )
        self._filter()

    def filter_by(self, control: Control | None, hidden: frozenset[Severity]) -> None:
        """Show the findings of one control only, or of all, and leave some severities out."""
        self.control, self.hidden = control, hidden
        self._filter()

    def count(self, severity: Severity) -> int:
        """Return how many findings of a severity there are, shown or not."""
        return sum(row.finding.severity is severity for row in self._of_control())

    @property
    def rows(self) -> tuple[Row, ...]:
        """The rows that are shown."""
        return self._shown

    @property
    def total(self) -> int:
        """How many findings there are, shown or not."""
        return len(self._all)

    def place_of(self, key: str) -> int:
        """Return which row shows the finding with this key, -1 if none does."""
        keys = [row.finding.key for row in self._shown]
        return keys.index(key) if key in keys else -1

    def rowCount(self, parent: Index | None = None) -> int:
        """Return how many rows are shown."""
        return 0 if parent is not None and parent.isValid() else len(self._shown)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:  # noqa: ANN401
        """Return a row, or its sentence."""
        if not index.isValid() or index.row() >= len(self._shown):
            return None
        row = self._shown[index.row()]
        if role == ROW:
            return row
        spoken = (
            Qt.ItemDataRole.DisplayRole,
            Qt.ItemDataRole.AccessibleTextRole,
        )
        return row.spoken if role in spoken else None

    def _of_control(self) -> tuple[Row, ...]:
        if self.control is None:
            return self._all
        return tuple(r for r in self._all if r.finding.control in (self.control, None))

    def _filter(self) -> None:
        self.beginResetModel()
        self._shown = tuple(
            row for row in self._of_control() if row.finding.severity not in self.hidden
        )
        self.endResetModel()
        self.counted.emit()


def _length(mm: float | None, units: Units) -> str:
    return "" if mm is None else format_length(mm, units)
