"""What became of everything, beside the drawing: a sentence, a list, both places, what is asked."""

from collections.abc import Mapping, Sequence

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import QDialog, QSplitter, QVBoxLayout, QWidget

from enclosure_app.planning.revision import Fate
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.revising.comparison import Comparison
from enclosure_app.window.revising.head import Head
from enclosure_app.window.revising.laying import About, Choices, Laid
from enclosure_app.window.revising.row_list import RowFilters, RowList
from enclosure_app.window.revising.rows import Answer, Row, rows_of, unlisted
from enclosure_app.window.revising.saying_bar import SayingBar

_SIZE = (1080, 660)
_GAP = 10  # dots between the list and the pictures
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
        self.answers: dict[int, Answer] = {}
        self._unlisted = 0
        self.head, self.filters, self.list = Head(self), RowFilters(self), RowList(self)
        self.comparison = Comparison(self)
        leave = self.tr("Leave the drawing as it was")
        self.bar = SayingBar(leave, self.tr("Lay the revised drawing over it"), self)
        self._lay_out()
        self._connect()

    def show_laid(self, laid: Laid, look: Look, who: str) -> None:
        """Show what became of everything; what is asked about stands first.

        Where it is compared again, what the person answered stays.
        """
        answered = {self.rows[n].abouts: answer for n, answer in self.answers.items()}
        self.laid, self.rows = laid, rows_of(laid)
        self.answers = _answered_still(self.rows, answered)
        self._unlisted = unlisted(laid, self.rows)
        self.comparison.show_laid(laid, look)
        self.bar.who.setText(who)
        self.head.show_laid(laid, self.rows)
        self.filters.show_rows(self.rows)
        self._fill()
        self._look_over()

    @property
    def row(self) -> Row | None:
        """The row that is looked at."""
        return self.list.shown

    @property
    def said(self) -> Choices:
        """What the person said until now."""
        told = (self.rows[index].choices(answer) for index, answer in self.answers.items())
        return {about: now for each in told for about, now in each.items()}

    def _lay_out(self) -> None:
        halves = QSplitter(Qt.Orientation.Horizontal, self)
        halves.addWidget(self.list)
        halves.addWidget(self.comparison)
        halves.setSizes(_SHARES)
        halves.setStretchFactor(1, 1)
        halves.setChildrenCollapsible(False)
        halves.setHandleWidth(_GAP)
        column = QVBoxLayout(self)
        column.addWidget(self.head)
        column.addWidget(self.filters)
        column.addWidget(halves, 1)
        column.addWidget(self.bar)

    def _connect(self) -> None:
        self.list.currentRowChanged.connect(lambda _: self._show_row())
        self.filters.changed.connect(self._fill)
        self.comparison.asking.answered.connect(self._answer)
        self.bar.changed.connect(self._look_over)
        self.bar.left.connect(self.close)
        self.bar.taken.connect(lambda: self.taken.emit(self.said, self.bar.name))

    def _fill(self) -> None:
        self.list.fill(self.rows, self.filters, self.answers)
        self._show_row()

    def _show_row(self) -> None:
        row = self.row
        self.comparison.setVisible(row is not None)
        if row:
            self.comparison.show_row(row, self.answers.get(self.rows.index(row)))

    def _answer(self) -> None:
        row, answer = self.row, self.comparison.asking.answer
        if row is None:
            return
        index = self.rows.index(row)
        self.answers.pop(index, None)
        if answer is not None:
            self.answers[index] = answer
        self.list.currentItem().setText(self.list.words(row, answer))
        self._show_row()
        self._look_over()

    def _look_over(self) -> None:
        """Say what is still open, and ask for a name once something is said."""
        unsure = sum(row.asks for n, row in enumerate(self.rows) if n not in self.answers)
        unsure += self._unlisted
        told = self.tr("Left open: {}. What was said of them stays, and waits.").format(unsure)
        place = self.laid.place if self.laid else None
        if placeless := place is not None and not place.sure:
            told = self.tr("Choose above which drawing it takes the place of.")
        says = bool(self.said)
        lacking = told if placeless or (unsure and (self.bar.name or not says)) else ""
        self.bar.show_state(says=says, lacking=lacking, ready=not placeless)


def _answered_still(
    rows: Sequence[Row], answered: Mapping[tuple[About, ...], Answer]
) -> dict[int, Answer]:
    """Return what was answered of rows that are still asked about, with the same to choose from."""
    held: dict[int, Answer] = {}
    for n, row in enumerate(rows):
        answer = answered.get(row.abouts) if row.match.fate is Fate.NOT_SURE else None
        if isinstance(answer, str):
            held[n] = answer
        elif answer is not None:
            same = (
                e for e in row.match.asked if (e.section, e.key) == (answer.section, answer.key)
            )
            if again := next(same, None):
                held[n] = again
    return held
