"""The list of what became of everything, and buttons that leave some of it out."""

from collections import Counter
from collections.abc import Mapping, Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QListWidget, QListWidgetItem, QPushButton, QWidget

from enclosure_app.planning.revision import Fate, LookMatch
from enclosure_app.window.revising.row_delegate import RowDelegate
from enclosure_app.window.revising.rows import ORDER, Answer, Row, fate_count, fate_words
from enclosure_app.window.surround.flow_layout import FlowLayout

_LEAST = 220  # dots


class RowFilters(QWidget):
    """Says in words how many there are of each; a click leaves those out or lets them in again."""

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.fates: dict[Fate, QPushButton] = {}
        self.spoken = self._button(self.tr("Only what something was said of"))
        self._row = FlowLayout()
        self._row.setContentsMargins(0, 0, 0, 0)
        self.setLayout(self._row)

    def show_rows(self, rows: Sequence[Row]) -> None:
        """Count rows anew, and let all of them in."""
        for button in self.fates.values():
            self._row.removeWidget(button)
            button.hide()
            button.deleteLater()
        self._row.removeWidget(self.spoken)
        counts = Counter(row.match.fate for row in rows)
        self.fates = {
            fate: self._button(fate_count(fate, counts[fate]), count=counts[fate])
            for fate in ORDER
        }
        for button in (*self.fates.values(), self.spoken):
            self._row.addWidget(button)
            button.show()
        self.spoken.setChecked(False)  # hidden it could not be let go of
        self.spoken.setVisible(any(row.said for row in rows))

    def lets_in(self, row: Row) -> bool:
        """Whether a row is wanted."""
        return self.fates[row.match.fate].isChecked() and (
            bool(row.said) or not self.spoken.isChecked()
        )

    def _button(self, words: str, *, count: int | None = None) -> QPushButton:
        """Return a button; one that says how many there are lets them in, if there are any."""
        button = QPushButton(words, self)
        button.setCheckable(True)
        button.setChecked(bool(count))
        button.setEnabled(count != 0)
        button.toggled.connect(lambda _: self.changed.emit())
        return button


class RowList(QListWidget):
    """The rows, each with what became of it, what was said, and its sentence."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._rows: Sequence[Row] = ()
        self.setMinimumWidth(_LEAST)
        self.setSpacing(3)
        self.setResizeMode(QListWidget.ResizeMode.Adjust)
        self.setItemDelegate(RowDelegate(self))
        self.setAccessibleName(self.tr("What became of each finding"))

    @property
    def shown(self) -> Row | None:
        """The row that is looked at."""
        item = self.currentItem()
        return self._rows[item.data(Qt.ItemDataRole.UserRole)] if item else None

    def fill(
        self, rows: Sequence[Row], filters: RowFilters, answers: Mapping[int, Answer]
    ) -> None:
        """List the rows that the filters let in, with what the person answered by their places."""
        before = self.shown
        self._rows = rows
        self.clear()
        for index, row in enumerate(rows):
            if filters.lets_in(row):
                item = QListWidgetItem(self.words(row, answers.get(index)))
                item.setData(Qt.ItemDataRole.UserRole, index)
                self.addItem(item)
                if row is before:
                    self.setCurrentItem(item)
        if self.currentRow() < 0:
            self.setCurrentRow(0)

    def words(self, row: Row, answer: Answer) -> str:
        """Return what is told of a row: a head, then its sentence."""
        said = self._answered(row, answer)
        head = " · ".join(filter(None, (fate_words(row.match.fate), row.name, row.said, said)))
        return f"{head}\n{row.message}"

    def _answered(self, row: Row, answer: Answer) -> str:
        """Return what the person said, in the words that were offered, "" while it is open."""
        if answer is None:
            return ""
        if not isinstance(answer, str):
            return self.tr("You say: it is found again")
        if isinstance(row.match, LookMatch):
            return self.tr("You say: it is to be looked at again")
        return self.tr("You say: it is gone")
