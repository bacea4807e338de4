"""One finding, large: its number and what it is, measured and required, what to do, its verdict."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from enclosure_app.drawing.lengths import format_length
from enclosure_app.drawing.rule_examples import EXAMPLES
from enclosure_app.drawing.sheet.findings_table import title
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding
from enclosure_app.model.said.decision import Decision
from enclosure_app.window.findings.verdict_box import VerdictBox


class FindingCard(QWidget):
    """Shows a finding and takes a verdict. `why`: show the page of the rule of this name."""

    why = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._rule = ""
        self.kind = self._label("kind")
        self.message, self.advice = self._label("asked"), self._label("advice")
        self.basis = self._label("small")
        self.measured, self.required = _Figure(self.tr("measured"), self), _Figure("", self)
        self.required.words.setText(self.tr("required"))
        self.ask_why = QPushButton(self.tr("Why is this a fault?"), self)
        self.ask_why.clicked.connect(lambda: self.why.emit(self._rule))
        self.verdict = VerdictBox(self)
        self._figures = QWidget(self)
        line = QHBoxLayout(self._figures)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(26)
        line.addWidget(self.measured)
        line.addWidget(self.required)
        line.addStretch(1)
        self._lay_out()

    def show_finding(
        self, finding: Finding, number: int, units: Units, decision: Decision | None
    ) -> None:
        """Show a finding with its number on the drawing, and what was decided."""
        self._rule = finding.rule
        self.kind.setText(f"{number}   {title(finding)}")
        self.message.setText(finding.message)
        self.advice.setText(finding.advice)
        self.basis.setText(finding.basis)
        self.basis.setVisible(bool(finding.basis))
        for figure, mm in ((self.measured, finding.measured), (self.required, finding.required)):
            figure.show_length(mm, units)
        lengths = (finding.measured, finding.required)
        self._figures.setVisible(any(mm is not None for mm in lengths))
        self.ask_why.setVisible(finding.rule in EXAMPLES)
        self.verdict.show_verdict(decision, about=f"{finding.section}:{finding.key}")

    def _label(self, name: str) -> QLabel:
        label = QLabel(self)
        label.setObjectName(name)
        label.setWordWrap(True)
        label.setTextFormat(Qt.TextFormat.PlainText)
        return label

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(9)
        parts = (self.kind, self.message, self._figures, self.basis, self.advice)
        for part in (*parts, self.verdict.told, self.verdict, self.ask_why):
            column.addWidget(part)


class _Figure(QWidget):
    """A length with the word for it above."""

    def __init__(self, words: str, parent: QWidget) -> None:
        super().__init__(parent)
        self.words, self.length = QLabel(words, self), QLabel(self)
        self.words.setObjectName("small")
        self.length.setObjectName("figure")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.words)
        column.addWidget(self.length)

    def show_length(self, mm: float | None, units: Units) -> None:
        """Show a length; without one, nothing."""
        self.setVisible(mm is not None)
        self.length.setText("" if mm is None else format_length(mm, units))
