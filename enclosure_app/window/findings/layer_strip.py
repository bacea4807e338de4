"""How each control layer runs, one row each; a row shows its layer alone."""

from collections.abc import Mapping

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFontMetrics, QKeyEvent, QPainter, QPaintEvent, QPalette, QPen
from PySide6.QtWidgets import QAbstractButton, QButtonGroup, QVBoxLayout, QWidget

from enclosure_app.drawing.theme import Pen
from enclosure_app.drawing.unsure_words import why_unsure
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Severity
from enclosure_app.model.product import Control
from enclosure_app.model.report import SectionResult
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.words.labels import (
    continuity_words,
    control_tip,
    control_word,
    severity_count,
)
from enclosure_app.window.words.trade import taught

_BETWEEN = 12  # dots between the name of a layer and how it runs


class LayerRow(QAbstractButton):
    """One control: its line as it is drawn, its name, and how it runs."""

    def __init__(self, control: Control | None, parent: QWidget) -> None:
        super().__init__(parent)
        self.control = control
        self.pen: Pen | None = None
        self.words = ""
        self.setCheckable(True)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setText(control_word(control) if control else self.tr("All layers"))

    def say(self, words: str, pen: Pen | None, why: str = "") -> None:
        """Say how the layer runs, and `why` it could not be judged if it could not."""
        self.words, self.pen = words, pen
        tip = control_tip(self.control) if self.control else ""
        self.setToolTip(taught("\n".join(filter(None, (words, why, tip)))))
        self.setAccessibleName(f"{self.text()}: {words}" if words else self.text())
        self.update()

    def sizeHint(self) -> QSize:
        """Return the room for one line."""
        return QSize(220, self.fontMetrics().height() + 13)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the row."""
        del event
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        palette = self.palette()
        painter.fillRect(self.rect(), palette.color(self._ground()))
        if self.isChecked():
            painter.fillRect(0, 0, 4, self.height(), palette.color(QPalette.ColorRole.Link))
        if self.hasFocus():
            painter.setPen(QPen(palette.color(QPalette.ColorRole.Link), 1))
            painter.drawRect(QRectF(self.rect()).adjusted(1.5, 1.5, -1.5, -1.5))
        self._line(painter)
        self._text(painter, palette)

    def _ground(self) -> QPalette.ColorRole:
        if self.isChecked():
            return QPalette.ColorRole.Highlight
        return QPalette.ColorRole.Base if self.underMouse() else QPalette.ColorRole.Window

    def _line(self, painter: QPainter) -> None:
        if self.pen is None:
            return
        pen = QPen(QColor(self.pen.colour), 3.2)
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        if self.pen.dash:
            pen.setDashPattern([part / self.pen.width * 0.62 for part in self.pen.dash])
        painter.setPen(pen)
        middle = self.height() / 2
        painter.drawLine(QPointF(14, middle), QPointF(46, middle))

    def _text(self, painter: QPainter, palette: QPalette) -> None:
        face = self.font()
        face.setBold(True)
        painter.setFont(face)
        painter.setPen(palette.color(QPalette.ColorRole.Text))
        box = self.rect().adjusted(56, 0, -12, 0)
        upright = Qt.AlignmentFlag.AlignVCenter
        painter.drawText(box, upright | Qt.AlignmentFlag.AlignLeft, self.text())
        painter.setFont(self.font())
        painter.setPen(palette.color(QPalette.ColorRole.PlaceholderText))
        room = box.width() - QFontMetrics(face).horizontalAdvance(self.text()) - _BETWEEN
        words = self.fontMetrics().elidedText(self.words, Qt.TextElideMode.ElideRight, room)
        painter.drawText(box, upright | Qt.AlignmentFlag.AlignRight, words)


class LayerStrip(QWidget):
    """The control layers of the section in view. `chosen`: the control to show alone, or None."""

    chosen = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(self.tr("Control layers"))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        self._group = QButtonGroup(self)
        self.rows: dict[Control | None, LayerRow] = {}
        for control in (None, *Control):
            row = LayerRow(control, self)
            self.rows[control] = row
            self._group.addButton(row)
            column.addWidget(row)
        self.rows[None].setChecked(True)
        self._group.buttonClicked.connect(self._clicked)

    def show_result(self, result: SectionResult, look: Look) -> None:
        """Say how each layer of a section runs."""
        for control, row in self.rows.items():
            if control is None:
                row.say(_summary(result, None), None)
            else:
                layer = result.layers.get(control)
                why = why_unsure(layer, look.units) if layer else ""
                row.say(_words(result, control, look.units), look.theme.control(control), why)

    def choose(self, control: Control | None) -> None:
        """Mark a control as the one that is shown."""
        self.rows[control].setChecked(True)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Go from row to row with the arrows."""
        step = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1}.get(Qt.Key(event.key()))
        if step is None:
            super().keyPressEvent(event)
            return
        order = list(self.rows.values())
        now = next(i for i, row in enumerate(order) if row.isChecked())
        after = order[min(max(now + step, 0), len(order) - 1)]
        after.setFocus()
        after.click()

    def _clicked(self, row: QAbstractButton) -> None:
        if isinstance(row, LayerRow):
            self.chosen.emit(row.control)


def _words(result: SectionResult, control: Control, units: Units) -> str:
    layer = result.layers.get(control)
    if layer is None:
        return ""
    said = [continuity_words(layer, units), _summary(result, control)]
    return ", ".join(filter(None, said))


def _summary(result: SectionResult, control: Control | None) -> str:
    """Say how many faults and doubts there are: a layer that is continuous may still lap wrongly."""
    counts: Mapping[Severity, int] = {
        severity: sum(
            finding.severity is severity and control in (None, finding.control)
            for finding in result.findings
        )
        for severity in (Severity.FAULT, Severity.DOUBT)
    }
    return ", ".join(severity_count(severity, n) for severity, n in counts.items() if n)
