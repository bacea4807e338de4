"""Paints a layer in the list: its name and how much is on it, and under that what it is."""

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QSize, Qt
from PySide6.QtGui import QFont, QPainter, QPalette
from PySide6.QtWidgets import QListView, QStyledItemDelegate, QStyleOptionViewItem

from enclosure_app.model.layer import Role
from enclosure_app.window.lines.layers_model import LAYER, LayersModel
from enclosure_app.window.lines.layers_told import LayerTold
from enclosure_app.window.rows.marks import controls_of, paint_controls, paint_ground

_SIDE, _TOP, _BETWEEN = 10, 4, 1
_LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter


class LayerDelegate(QStyledItemDelegate):
    """Two lines for each layer; long names are cut in their middle, where they differ least."""

    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        """Paint one layer."""
        told: LayerTold = index.data(LAYER)
        model = index.model()
        if not isinstance(model, LayersModel):
            return
        palette: QPalette = option.palette
        painter.save()
        paint_ground(painter, option)
        room: QRect = option.rect.adjusted(_SIDE, _TOP, -_SIDE, -_TOP)
        high = option.fontMetrics.height()
        upper = QRect(room.left(), room.top(), room.width(), high)
        self._upper(painter, upper, told, palette)
        face = QFont(option.font)
        face.setPointSizeF(face.pointSizeF() * 0.92)
        painter.setFont(face)
        lower = QRect(room.left(), room.top() + high + _BETWEEN, room.width(), high)
        self._lower(painter, lower, (told, model), palette)
        painter.restore()

    def _upper(self, painter: QPainter, room: QRect, told: LayerTold, palette: QPalette) -> None:
        metrics = painter.fontMetrics()
        count = str(told.lines or told.texts)
        painter.setPen(palette.color(QPalette.ColorRole.PlaceholderText))
        painter.drawText(room, _RIGHT, count)
        left = room.width() - metrics.horizontalAdvance(count) - 10
        painter.setPen(palette.color(QPalette.ColorRole.Text))
        name = metrics.elidedText(told.name, Qt.TextElideMode.ElideMiddle, left)
        painter.drawText(room, _LEFT, name)

    def _lower(
        self, painter: QPainter, room: QRect, row: tuple[LayerTold, LayersModel], palette: QPalette
    ) -> None:
        told, model = row
        product = model.products.get(told.meant)
        x = room.left()
        if product:
            x = paint_controls(painter, room, controls_of(product), palette, words=False)
        plain = told.meant == Role.LINEWORK
        quiet, ink = QPalette.ColorRole.PlaceholderText, QPalette.ColorRole.Text
        metrics = painter.fontMetrics()
        left = room.right() - x
        painter.setPen(palette.color(quiet if plain else ink))
        meant = metrics.elidedText(model.meant(told), Qt.TextElideMode.ElideRight, left)
        painter.drawText(QRect(x, room.top(), left, room.height()), _LEFT, meant)
        left -= metrics.horizontalAdvance(meant) + 12
        painter.setPen(palette.color(quiet))
        for beside in (model.beside(told), model.difference(told)):
            if metrics.horizontalAdvance(beside) <= left:
                painter.drawText(room, _RIGHT, beside)
                break

    def sizeHint(
        self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> QSize:
        """Return the room for two lines of text."""
        del index
        widget = option.widget
        width = widget.viewport().width() if isinstance(widget, QListView) else 200
        return QSize(width, 2 * option.fontMetrics.height() + 2 * _TOP + _BETWEEN)
