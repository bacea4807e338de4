"""What reviewers answered in a PDF, beside the drawing: a person looks, and takes over what is right."""

from collections.abc import Mapping, Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from enclosure_app.files.replies.proposal import Proposal
from enclosure_app.window.answers.answer_row import AnswerRow

_SIZE = (560, 640)

Place = tuple[str, str]
"""Section and key of a finding."""


class Answers(QDialog):
    """Lists proposals; nothing waits for it.

    `taken`: a tuple of proposals that the person ticked; `wanted`: one whose place is to be seen.
    """

    taken = Signal(object)
    wanted = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Answers in the PDF"))
        self.resize(*_SIZE)
        self.rows: list[AnswerRow] = []
        self.told = QLabel(self)
        self.told.setWordWrap(True)
        self.lacking = QLabel(self)
        self.lacking.setWordWrap(True)
        self.take = QPushButton(self.tr("Take over what is ticked"), self)
        self.take.setObjectName("main")
        self.take.clicked.connect(self._take)
        self.leave = QPushButton(self.tr("Close"), self)
        self.leave.clicked.connect(self.close)
        self._room = QScrollArea(self)
        self._room.setWidgetResizable(True)
        self._room.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._lay_out()

    def show_answers(self, proposals: Sequence[Proposal], numbers: Mapping[Place, int]) -> None:
        """Show proposals; `numbers` are those of the findings on the drawing."""
        self.rows = [self._made_row(each, numbers) for each in proposals]
        inside = QWidget(self._room)
        column = QVBoxLayout(inside)
        column.setSpacing(8)
        for row in self.rows:
            column.addWidget(row)
        column.addStretch(1)
        self._room.setWidget(inside)
        self.told.setText(self._told(proposals))
        self._check()

    def _told(self, proposals: Sequence[Proposal]) -> str:
        """Return how many answers there are, and that notes are not in the file any more."""
        answers = [each for each in proposals if not each.lost]
        unsure = sum(not each.sure for each in answers)
        told = self.tr(
            "{} answers, {} of them not sure: look at these, and tick what is right."
        ).format(len(answers), unsure)
        if len(answers) == len(proposals):
            return told
        lost = self.tr("Notes are not in the file any more: look at the rows that say so.")
        return f"{told} {lost}" if answers else lost

    def _made_row(self, proposal: Proposal, numbers: Mapping[Place, int]) -> AnswerRow:
        number = numbers.get((proposal.section, proposal.key))
        if number is not None:
            place = self.tr("Go to {} · {}").format(number, proposal.section)
        elif proposal.key:
            place = proposal.section or proposal.key
        else:
            place = self.tr("Page {} of the PDF").format(proposal.page)
        row = AnswerRow(proposal, place, self)
        row.wanted.connect(self.wanted)
        row.changed.connect(self._check)
        return row

    def _lay_out(self) -> None:
        buttons = QHBoxLayout()
        buttons.addWidget(self.lacking, 1)
        buttons.addWidget(self.leave)
        buttons.addWidget(self.take)
        column = QVBoxLayout(self)
        column.addWidget(self.told)
        column.addWidget(self._room, 1)
        column.addLayout(buttons)

    def _ticked(self) -> tuple[Proposal, ...]:
        return tuple(row.taken for row in self.rows if row.taken is not None)

    def _check(self) -> None:
        """Let it be taken over once something is ticked and no reason is missing."""
        complete = all(row.complete for row in self.rows)
        self.take.setEnabled(bool(self._ticked()) and complete)
        lacking = self.tr("A verdict that is ticked lacks its reason.")
        self.lacking.setText("" if complete else lacking)

    def _take(self) -> None:
        self.taken.emit(self._ticked())
