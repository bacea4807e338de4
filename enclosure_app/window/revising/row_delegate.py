"""Paints a row of what became of a finding: what became of it, then its whole sentence."""

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QSize, Qt
from PySide6.QtGui import QFontMetrics, QPainter, QPalette
from PySide6.QtWidgets import QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem

_EDGE = 6  # dots round the words
_WRAPPED = Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop
_HIGHEST = 10_000


class RowDelegate(QStyledItemDelegate):
    """Rows are as high as their words; nothing of a sentence is cut off."""

    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        """Paint the row's ground, its head in bold, and its sentence below."""
        head, _, sentence = str(index.data()).partition("\n")
        bare = QStyleOptionViewItem(option)
        self.initStyleOption(bare, index)
        bare.text = ""
        widget = option.widget
        widget.style().drawControl(QStyle.ControlElement.CE_ItemViewItem, bare, painter, widget)
        painter.save()
        painter.setPen(bare.palette.color(QPalette.ColorRole.Text))
        room = bare.rect.adjusted(_EDGE, _EDGE, -_EDGE, -_EDGE)
        bold = bare.font
        bold.setBold(True)
        painter.setFont(bold)
        used = painter.drawText(room, int(_WRAPPED), head)
        painter.setFont(option.font)
        painter.drawText(room.adjusted(0, used.height(), 0, 0), int(_WRAPPED), sentence)
        painter.restore()

    def sizeHint(
        self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> QSize:
        """Return the width of the list, and the height of all the words."""
        view = option.widget
        width = view.viewport().width() if isinstance(view, QListView) else option.rect.width()
        head, _, sentence = str(index.data()).partition("\n")
        bold = option.font
        bold.setBold(True)
        room = QRect(0, 0, max(width - 2 * _EDGE - 8, 1), _HIGHEST)
        high = QFontMetrics(bold).boundingRect(room, int(_WRAPPED), head).height()
        high += option.fontMetrics.boundingRect(room, int(_WRAPPED), sentence).height()
        return QSize(room.width(), high + 2 * _EDGE)
