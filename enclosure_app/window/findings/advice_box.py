"""What to do about one finding: the advice, where the figure is from, the rule's page, a verdict."""

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from enclosure_app.drawing.rule_examples import EXAMPLES
from enclosure_app.window.findings.findings_model import AnyRow, GoneRow
from enclosure_app.window.findings.verdict_box import VerdictBox
from enclosure_app.window.words.trade import explained

_NARROWEST = 240


class AdviceBox(QWidget):
    """Stands under the list. `why`: show the page of the rule of this name."""

    why = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._rule = ""
        self._advice = QLabel(self)
        self._basis = QLabel(self)
        self._basis.setObjectName("small")
        for label in (self._advice, self._basis):
            label.setWordWrap(True)
            label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.button = QPushButton(self.tr("Why?"), self)
        self.button.setToolTip(
            self.tr("Show the rule's page: why it matters and where it is from")
        )
        self.button.clicked.connect(lambda: self.why.emit(self._rule))
        self.verdict = VerdictBox(self)
        line = QHBoxLayout()
        line.addWidget(self._advice, 1)
        line.addWidget(self.button, 0, Qt.AlignmentFlag.AlignTop)
        self._column = column = QVBoxLayout(self)
        column.setContentsMargins(14, 10, 12, 12)
        column.setSpacing(4)
        column.addLayout(line)
        for part in (self._basis, self.verdict.told, self.verdict):
            column.addWidget(part)
        self._settling = QTimer(self)
        self._settling.setSingleShot(True)
        self._settling.setInterval(0)
        self._settling.timeout.connect(self._take_height)
        self.verdict.laid_out.connect(self._fit)
        self.hide()

    def show_row(self, row: AnyRow | None) -> None:
        """Show what to do about a row of the list; nothing without one."""
        self.setVisible(row is not None)
        if row is None:
            return
        self._rule = row.rule
        self.button.setEnabled(row.rule in EXAMPLES)
        self._advice.setText(row.advice)
        self._advice.setToolTip(explained(row.advice))
        self._basis.setText(row.basis)
        self._basis.setVisible(bool(row.basis))
        self.verdict.show_verdict(row.decision, about=row.key, gone=isinstance(row, GoneRow))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Be as high as the sentences need at the new width."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        """Take no more height than is needed, now and when the labels know theirs: the list has the rest."""
        self._take_height()
        self._settling.start()

    def _take_height(self) -> None:
        self._column.activate()  # so that no line within keeps the height it had
        needed = self._column.heightForWidth(max(self.width(), _NARROWEST))
        if needed > 0:  # with nothing to wrap there is no height for a width
            self.setFixedHeight(needed)
