"""Paints rows of two lines: what something is called, and under that, smaller, what it is."""

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QSize, Qt
from PySide6.QtGui import QFont, QPainter, QPalette
from PySide6.QtWidgets import QListView, QStyledItemDelegate, QStyleOptionViewItem

from enclosure_app.window.rows.marks import paint_ground

Index = QModelIndex | QPersistentModelIndex
LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter

_SIDE, _TOP, _BETWEEN = 10, 4, 1
_SMALLER = 0.92  # the lower line's letters


class TwoLines(QStyledItemDelegate):
    """Gives every row its ground and the room of two lines; what stands in them is its heirs'."""

    def paint_upper(self, painter: QPainter, room: QRect, index: Index, palette: QPalette) -> None:
        """Paint the upper line of a row."""
        raise NotImplementedError

    def paint_lower(self, painter: QPainter, room: QRect, index: Index, palette: QPalette) -> None:
        """Paint the lower line of a row."""
        raise NotImplementedError

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Paint one row."""
        painter.save()
        paint_ground(painter, option)
        room: QRect = option.rect.adjusted(_SIDE, _TOP, -_SIDE, -_TOP)
        high = option.fontMetrics.height()
        upper = QRect(room.left(), room.top(), room.width(), high)
        self.paint_upper(painter, upper, index, option.palette)
        face = QFont(option.font)
        face.setPointSizeF(face.pointSizeF() * _SMALLER)
        painter.setFont(face)
        self.paint_lower(painter, upper.translated(0, high + _BETWEEN), index, option.palette)
        painter.restore()

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """Return the room for two lines of text."""
        del index
        widget = option.widget
        width = widget.viewport().width() if isinstance(widget, QListView) else 200
        return QSize(width, 2 * option.fontMetrics.height() + 2 * _TOP + _BETWEEN)
