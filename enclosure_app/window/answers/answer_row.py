"""One answer of a reviewer in the list: about which finding, what was said, and whether to take it."""

from dataclasses import replace

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QFrame,
    QLabel,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from enclosure_app.drawing.verdict_words import state_word
from enclosure_app.files.replies.proposal import Proposal
from enclosure_app.model.said.moment import shown


class AnswerRow(QFrame):
    """Shows one proposal. `wanted`: the person wants to see its place; `changed`: what is to be taken.

    What is certain is ticked from the start; what is in doubt only a person ticks. A verdict that
    needs a reason and has none gets one here. What is about no finding cannot be taken, and where
    the finding's own note is gone there is nothing to take.
    """

    wanted = Signal(object)
    changed = Signal()

    def __init__(self, proposal: Proposal, place: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.proposal = proposal
        self.setObjectName("card")
        self.go = QPushButton(place, self)
        self.go.setEnabled(bool(proposal.key))
        self.take = QCheckBox(_said(proposal), self)
        self.take.setChecked(proposal.sure)
        self.take.setEnabled(bool(proposal.key) and not proposal.lost)
        self.take.setVisible(not proposal.lost)
        self.reason = QLineEdit(self)
        self.reason.setPlaceholderText(self.tr("Why it may stand"))
        self.reason.setAccessibleName(self.reason.placeholderText())
        self.reason.setVisible(_needs_words(proposal))
        self._lay_out()
        self.take.toggled.connect(lambda _: self.changed.emit())
        self.reason.textChanged.connect(lambda _: self.changed.emit())
        self.go.clicked.connect(lambda _=False: self.wanted.emit(self.proposal))

    @property
    def taken(self) -> Proposal | None:
        """The proposal with its reason, None where it is not to be taken."""
        if not self.take.isChecked():
            return None
        return replace(self.proposal, remark=self.proposal.remark or self.reason.text().strip())

    @property
    def complete(self) -> bool:
        """Whether nothing is missing that a verdict needs."""
        return self.taken is None or not _needs_words(self.taken)

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 8, 12, 10)
        column.setSpacing(4)
        column.addWidget(self.go, 0, Qt.AlignmentFlag.AlignLeft)
        about, *_ = self.proposal.note.splitlines() or [""]
        for text, name in ((about, "quiet"), (self.proposal.remark, "")):
            if text:
                column.addWidget(self._label(text, name))
        column.addWidget(self.take)
        column.addWidget(self.reason)
        if self.proposal.doubt:
            doubt = self.proposal.doubt
            told = doubt if self.proposal.lost else self.tr("Not sure: {}").format(doubt)
            label = self._label(told, "message")
            label.setContentsMargins(8, 4, 8, 4)
            column.addWidget(label)

    def _label(self, text: str, name: str) -> QLabel:
        label = QLabel(text, self)
        label.setObjectName(name)
        label.setWordWrap(True)
        label.setTextFormat(Qt.TextFormat.PlainText)
        return label


def _needs_words(proposal: Proposal) -> bool:
    """Whether it is a verdict without the reason that it needs, or a remark without words."""
    if proposal.remark or proposal.lost:
        return False
    return proposal.state is None or proposal.state.needs_reason


def _said(proposal: Proposal) -> str:
    """Return what was said, by whom and when, for the box to tick."""
    what = state_word(proposal.state) if proposal.state else say("Remark")
    when = shown(proposal.when) if proposal.when else ""
    return " · ".join(filter(None, (what, proposal.who, when)))


def say(text: str) -> str:
    """Return a text in the language of the window."""
    return QCoreApplication.translate("AnswerRow", text)
