"""What became of everything, beside the drawing: counts, a list, both places, and what is asked."""

from collections import Counter
from pathlib import Path

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from enclosure_app.model.said.carried import Subject
from enclosure_app.planning.revision import Fate
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.revising.comparison import Comparison
from enclosure_app.window.revising.laying import Choices, Laid
from enclosure_app.window.revising.row_delegate import RowDelegate
from enclosure_app.window.revising.rows import ORDER, Row, fate_count, fate_words, rows_of
from enclosure_app.window.surround.flow_layout import FlowLayout

_SIZE = (1080, 660)
_GAP = 10  # dots between the list and the pictures
_LEAST = 220  # dots of the list
_SHARES = (340, 740)


class Revised(QDialog):
    """Shows a revised drawing laid over the open one; nothing waits for it, nothing is changed by it.

    `taken`: the person lays it over, with what they said and their name.
    """

    taken = Signal(object, str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("A revised drawing"))
        self.resize(QSize(*_SIZE).boundedTo(self.screen().availableSize()))
        self.laid: Laid | None = None
        self.rows: tuple[Row, ...] = ()
        self.choices: dict[Subject, tuple[str, str]] = {}
        self.told, self.missing, self.lacking = (self._label() for _ in range(3))
        self.filters: dict[Fate, QPushButton] = {}
        self._filters = FlowLayout()
        self.list = QListWidget(self)
        self.list.setMinimumWidth(_LEAST)
        self.list.setSpacing(3)
        self.list.setResizeMode(QListWidget.ResizeMode.Adjust)
        self.list.setItemDelegate(RowDelegate(self.list))
        self.list.setAccessibleName(self.tr("What became of each finding"))
        self.comparison = Comparison(self)
        self.who = QLineEdit(self)
        self.who.setPlaceholderText(self.tr("Your name"))
        self.who.setAccessibleName(self.who.placeholderText())
        self.leave = QPushButton(self.tr("Leave the drawing as it was"), self)
        self.take = QPushButton(self.tr("Lay the revised drawing over it"), self)
        self.take.setObjectName("main")
        self._lay_out()
        self._connect()

    def show_laid(self, laid: Laid, look: Look, who: str) -> None:
        """Show what became of everything; what is asked about stands first."""
        self.laid, self.rows, self.choices = laid, rows_of(laid), {}
        self.comparison.show_laid(laid, look)
        self.who.setText(who)
        self.told.setText(
            self.tr("{} over {}. Look at what changed; nothing is lost of what was said.").format(
                Path(laid.revision.project.source).name,
                Path(laid.before.source).name or laid.before.title,
            )
        )
        missing = self.tr(
            "Not surely found in it: {}. These go with the earlier drawing; what was said there stays "
            "in the history. If they are of other drawings, choose all of these at once."
        )
        self.missing.setText(missing.format(", ".join(laid.missing)))
        self.missing.setVisible(bool(laid.missing))
        self._show_filters()
        self._fill()
        self._check()

    def _label(self) -> QLabel:
        label = QLabel(self)
        label.setWordWrap(True)
        label.setTextFormat(Qt.TextFormat.PlainText)
        return label

    def _lay_out(self) -> None:
        halves = QSplitter(Qt.Orientation.Horizontal, self)
        halves.addWidget(self.list)
        halves.addWidget(self.comparison)
        halves.setSizes(_SHARES)
        halves.setStretchFactor(1, 1)
        halves.setChildrenCollapsible(False)
        halves.setHandleWidth(_GAP)
        buttons = QHBoxLayout()
        buttons.addWidget(self.lacking, 1)
        for part in (self.who, self.leave, self.take):
            buttons.addWidget(part)
        column = QVBoxLayout(self)
        column.addWidget(self.told)
        column.addWidget(self.missing)
        column.addLayout(self._filters)
        column.addWidget(halves, 1)
        column.addLayout(buttons)

    def _connect(self) -> None:
        self.list.currentRowChanged.connect(lambda _: self._show_row())
        self.comparison.asking.answered.connect(self._answer)
        self.who.textChanged.connect(lambda _: self._check())
        self.leave.clicked.connect(self.close)
        self.take.clicked.connect(
            lambda _=False: self.taken.emit(dict(self.choices), self.who.text().strip())
        )

    # ---- the list ------------------------------------------------------------------------------

    def _show_filters(self) -> None:
        """Say in words how many there are of each; a click leaves those out or lets them in."""
        for button in self.filters.values():
            self._filters.removeWidget(button)
            button.hide()
            button.deleteLater()
        counts = Counter(row.match.fate for row in self.rows)
        self.filters = {}
        for fate in ORDER:
            button = QPushButton(fate_count(fate, counts[fate]), self)
            button.setCheckable(True)
            button.setChecked(bool(counts[fate]))
            button.setEnabled(bool(counts[fate]))
            button.toggled.connect(lambda _: self._fill())
            self.filters[fate] = button
            self._filters.addWidget(button)

    def _fill(self) -> None:
        before = self.row
        self.list.clear()
        for index, row in enumerate(self.rows):
            if self.filters[row.match.fate].isChecked():
                item = QListWidgetItem(self._words(row))
                item.setData(Qt.ItemDataRole.UserRole, index)
                self.list.addItem(item)
                if row is before:
                    self.list.setCurrentItem(item)
        if self.list.currentRow() < 0:
            self.list.setCurrentRow(0)
        self._show_row()

    def _words(self, row: Row) -> str:
        said = ""
        if row.subject in self.choices:
            key = self.choices[row.subject][1]
            said = self.tr("You say: it is found again") if key else self.tr("You say: it is gone")
        head = " · ".join(filter(None, (fate_words(row.match.fate), row.name, said)))
        return f"{head}\n{row.message}"

    @property
    def row(self) -> Row | None:
        """The row that is looked at."""
        item = self.list.currentItem()
        return self.rows[item.data(Qt.ItemDataRole.UserRole)] if item else None

    def _show_row(self) -> None:
        row = self.row
        self.comparison.setVisible(row is not None)
        if row:
            said = self.choices.get(row.subject) if row.subject else None
            self.comparison.show_row(row, said)

    # ---- what the person says ------------------------------------------------------------------

    def _answer(self) -> None:
        row, answer = self.row, self.comparison.asking.answer
        if row is None or row.subject is None:
            return
        if answer is None:
            self.choices.pop(row.subject, None)
        elif isinstance(answer, str):
            self.choices[row.subject] = row.gone
        else:
            self.choices[row.subject] = (answer.section, answer.key)
        self.list.currentItem().setText(self._words(row))
        self._show_row()
        self._check()

    @property
    def said(self) -> Choices:
        """What the person said until now."""
        return dict(self.choices)

    def _check(self) -> None:
        """Say what is still open, and ask for a name once something is said."""
        named = bool(self.who.text().strip())
        self.who.setVisible(bool(self.choices))
        self.take.setEnabled(named or not self.choices)
        unsure = sum(row.match.fate is Fate.NOT_SURE for row in self.rows) - len(self.choices)
        if self.choices and not named:
            told = self.tr("Type your name: it is put beside what you say.")
        elif unsure:
            told = self.tr("Left open: {}. What was said of them stays, and waits.").format(unsure)
        else:
            told = ""
        self.lacking.setText(told)
