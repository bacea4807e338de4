"""A finding in the earlier and in the revised drawing, side by side, each zoomed to its place."""

from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from enclosure_app.model.place import Point
from enclosure_app.planning.revision import Fate, LookMatch
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.revising.asking import Asking
from enclosure_app.window.revising.laying import Laid
from enclosure_app.window.revising.rows import Answer, Row, Told, number_in, section_named
from enclosure_app.window.revising.side import Side


class Comparison(QWidget):
    """Shows both places of a row, and asks where nobody can be sure."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._laid: Laid | None = None
        self._look = Look()
        self.before, self.now = Side(self), Side(self)
        self.asking = Asking(self)
        sides = QHBoxLayout()
        for side in (self.before, self.now):
            sides.addWidget(side, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(sides, 1)
        column.addWidget(self.asking)

    def show_laid(self, laid: Laid, look: Look) -> None:
        """Take a revised drawing laid over an earlier one, to show its rows."""
        self._laid, self._look = laid, look

    def show_row(self, row: Row, answer: Answer) -> None:
        """Show a row, with what the person said of it."""
        if self._laid is None:
            return
        unsure = row.match.fate is Fate.NOT_SURE
        self.asking.setVisible(unsure)
        if unsure:
            self._ask(self._laid, row, answer)
        self._show_before(self._laid, row)
        shown = row.match.new if answer is None or isinstance(answer, str) else answer
        if unsure and answer is None and row.match.asked:
            shown = row.match.asked[0]
        self._show_now(self._laid, row, shown)

    def _ask(self, laid: Laid, row: Row, answer: Answer) -> None:
        anew = laid.anew
        gone = self.tr("It is to be looked at again") if isinstance(row.match, LookMatch) else ""
        self.asking.ask([(each, number_in(anew, each)) for each in row.match.asked], answer, gone)

    def _show_before(self, laid: Laid, row: Row) -> None:
        result = section_named(laid.found, row.section.old)
        self.before.title.setText(self.tr("Before · {}").format(row.section.old or "–"))
        self.before.show_section(laid.before, result, self._look)
        if row.match.old:
            told = "\n".join(filter(None, (row.match.old.message, row.said)))
            self.before.show_finding(row.match.old, told)
        else:
            self.before.show_nothing(None, self.tr("It was not found in the earlier drawing."))

    def _show_now(self, laid: Laid, row: Row, shown: Told | None) -> None:
        name = shown.section if shown else row.section.new
        result = section_named(laid.anew, name)
        self.now.title.setText(self.tr("Revised · {}").format(name or "–"))
        self.now.show_section(laid.revision.project, result, self._look)
        if shown:
            number = number_in(laid.anew, shown)
            told = shown.message if number is None else f"{number} · {shown.message}"
            self.now.show_finding(shown, told)
        elif result:
            told = self.tr("It is not found in the revised drawing any more.")
            self.now.show_nothing(_where(row), told)
        else:
            self.now.show_nothing(None, self.tr("The section was not surely found again."))


def _where(row: Row) -> Point | None:
    """Return where a finding would be in the revised drawing, None where nobody knows."""
    if row.match.old is None or row.section.pieces is None:
        return None
    return row.section.pieces.ground.place(row.match.old.at)
