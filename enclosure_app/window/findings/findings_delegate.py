"""Paints one finding in the list: its flag, what it is, the lengths, and the sentence."""

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QPointF, QRect, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPalette, QPen, QPolygonF
from PySide6.QtWidgets import QAbstractItemView, QStyle, QStyledItemDelegate, QStyleOptionViewItem

from enclosure_app.drawing.section.flags import FLAG_HEIGHT, FLAG_WIDTH, flag_shape
from enclosure_app.model.finding import Severity
from enclosure_app.model.said.decision import State
from enclosure_app.window.findings.findings_model import ROW, AnyRow, Row
from enclosure_app.window.findings.verdict_box import paint_badge

_EDGE, _FLAG, _SCALE = 12, 40, 4.2
_LINES = 3
_WEIGHT = {Severity.FAULT: 2.6, Severity.DOUBT: 1.5, Severity.REMARK: 0.9, Severity.OFF: 0.9}
_INK, _GROUND = QColor("#15181b"), QColor("#fff6cf")


class FindingsDelegate(QStyledItemDelegate):
    """The look of the rows of the findings list."""

    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        """Paint one row."""
        row: AnyRow = index.data(ROW)
        rect: QRect = option.rect
        palette: QPalette = option.palette
        state: QStyle.StateFlag = option.state
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        picked = bool(state & QStyle.StateFlag.State_Selected)
        if picked or state & QStyle.StateFlag.State_MouseOver:
            role = QPalette.ColorRole.Highlight if picked else QPalette.ColorRole.Base
            painter.fillRect(rect, palette.color(role))
        painter.setPen(QPen(palette.color(QPalette.ColorRole.Mid), 1))
        painter.drawLine(rect.bottomLeft(), rect.bottomRight())
        centre = QPointF(rect.left() + 26, rect.top() + 24)
        if isinstance(row, Row):
            paint_flag(painter, centre, row)
        if row.state is not State.OPEN:
            corner = QPointF(FLAG_WIDTH, -FLAG_HEIGHT) * (_SCALE / 2)
            at = centre + corner if isinstance(row, Row) else centre
            paint_badge(painter, at, row.state, palette)
        self._words(painter, rect, palette, row)
        painter.restore()

    def sizeHint(
        self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> QSize:
        """Return the room of one row: two lines of head and as much of the sentence as needed."""
        widget = option.widget
        width = widget.viewport().width() if isinstance(widget, QAbstractItemView) else 300
        row: AnyRow = index.data(ROW)
        metrics = QFontMetrics(widget.font() if widget else QFont())
        room = _room(width)
        flags = int(Qt.TextFlag.TextWordWrap)
        tall = metrics.boundingRect(QRect(0, 0, room, 2000), flags, row.sentence).height()
        tall = min(tall, _LINES * metrics.lineSpacing())
        return QSize(width, 2 * metrics.lineSpacing() + tall + 22)

    def _words(self, painter: QPainter, rect: QRect, palette: QPalette, row: AnyRow) -> None:
        ink = palette.color(QPalette.ColorRole.Text)
        quiet = palette.color(QPalette.ColorRole.PlaceholderText)
        plain = painter.font()
        bold = QFont(plain)
        bold.setBold(True)
        line = QFontMetrics(plain).lineSpacing()
        left, top, wide = rect.left() + _FLAG + _EDGE, rect.top() + 9, _room(rect.width())
        painter.setFont(bold)
        painter.setPen(ink)
        painter.drawText(QRect(left, top, wide, line), Qt.AlignmentFlag.AlignRight, row.measured)
        taken = QFontMetrics(bold).horizontalAdvance(row.measured) + 10
        name = row.heading
        name = QFontMetrics(bold).elidedText(name, Qt.TextElideMode.ElideRight, wide - taken)
        painter.drawText(QRect(left, top, wide, line), Qt.AlignmentFlag.AlignLeft, name)
        painter.setFont(plain)
        painter.setPen(quiet)
        second = QRect(left, top + line + 1, wide, line)
        needed = self.needed(row)
        painter.drawText(second, Qt.AlignmentFlag.AlignRight, needed)
        room = wide - QFontMetrics(plain).horizontalAdvance(needed) - (10 if needed else 0)
        told = QFontMetrics(plain).elidedText(row.told, Qt.TextElideMode.ElideRight, room)
        painter.drawText(second, Qt.AlignmentFlag.AlignLeft, told)
        painter.setPen(ink)
        third = QRect(left, top + 2 * line + 4, wide, rect.bottom() - top - 2 * line - 10)
        painter.drawText(third, int(Qt.TextFlag.TextWordWrap), row.sentence)

    def needed(self, row: AnyRow) -> str:
        """Return the figure that is required; where nothing at all may be there, in words."""
        if isinstance(row, Row) and row.finding.required == 0.0:
            return self.tr("none allowed")
        return self.tr("of {}").format(row.required) if row.required else ""


def _room(width: int) -> int:
    """Return how wide the words of a row are."""
    return width - _FLAG - 2 * _EDGE


def paint_flag(painter: QPainter, centre: QPointF, row: Row) -> None:
    """Paint the numbered flag of a finding, the same shape as in the drawing."""
    painter.save()
    shape = flag_shape(row.finding.severity, (0.0, 0.0))
    ring = QPolygonF([centre + QPointF(x * _SCALE, -y * _SCALE) for x, y in shape])
    painter.setPen(QPen(_INK, _WEIGHT[row.finding.severity]))
    painter.setBrush(_GROUND)
    painter.drawPolygon(ring)
    face = QFont(painter.font())
    face.setBold(True)
    painter.setFont(face)
    width, height = int(FLAG_WIDTH * _SCALE) + 4, int(FLAG_HEIGHT * _SCALE)
    box = QRect(int(centre.x()) - width // 2, int(centre.y()) - height // 2, width, height)
    painter.drawText(box, Qt.AlignmentFlag.AlignCenter, str(row.number))
    painter.restore()
