"""Paints a product in the list: its name, and under that what it controls and how it is held."""

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QFont, QPainter, QPalette, QPen
from PySide6.QtWidgets import QListView, QStyledItemDelegate, QStyleOptionViewItem

from enclosure_app.language import say
from enclosure_app.model.product import Product
from enclosure_app.window.products.product_words import held_words
from enclosure_app.window.products.products_model import PRODUCT, ProductsModel, is_own
from enclosure_app.window.rows.marks import controls_of, paint_controls, paint_ground

_SIDE, _TOP = 10, 4
_LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter


class ProductDelegate(QStyledItemDelegate):
    """Two lines for each product; the office's own ones wear a word in a box."""

    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        """Paint one product."""
        product: Product = index.data(PRODUCT)
        model = index.model()
        imperial = isinstance(model, ProductsModel) and model.imperial
        palette: QPalette = option.palette
        painter.save()
        paint_ground(painter, option)
        room: QRect = option.rect.adjusted(_SIDE, _TOP, -_SIDE, -_TOP)
        high = option.fontMetrics.height()
        _name(painter, QRect(room.left(), room.top(), room.width(), high), product, palette)
        face = QFont(option.font)
        face.setPointSizeF(face.pointSizeF() * 0.92)
        painter.setFont(face)
        lower = QRect(room.left(), room.top() + high + 1, room.width(), high)
        _does(painter, lower, product, palette, imperial=imperial)
        painter.restore()

    def sizeHint(
        self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> QSize:
        """Return the room for two lines of text."""
        del index
        widget = option.widget
        width = widget.viewport().width() if isinstance(widget, QListView) else 200
        return QSize(width, 2 * option.fontMetrics.height() + 2 * _TOP + 1)


def _name(painter: QPainter, room: QRect, product: Product, palette: QPalette) -> None:
    metrics, left = painter.fontMetrics(), room.width()
    if is_own(product):
        left -= _own_mark(painter, room, palette) + 8
    painter.setPen(palette.color(QPalette.ColorRole.Text))
    name = metrics.elidedText(say(product.name), Qt.TextElideMode.ElideRight, left)
    painter.drawText(room, _LEFT, name)


def _own_mark(painter: QPainter, room: QRect, palette: QPalette) -> int:
    """Paint the mark of an own product at the right; return how wide it is."""
    text = say("own")
    wide = painter.fontMetrics().horizontalAdvance(text) + 10
    box = QRectF(room.right() - wide, room.top() + 0.5, wide, room.height() - 1)
    painter.setPen(QPen(palette.color(QPalette.ColorRole.Link), 1))
    painter.drawRoundedRect(box, 4, 4)
    painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)
    return wide


def _does(
    painter: QPainter, room: QRect, product: Product, palette: QPalette, *, imperial: bool
) -> None:
    controls, metrics = controls_of(product), painter.fontMetrics()
    x = paint_controls(painter, room, controls, palette, words=True)
    held = held_words(product, imperial=imperial)
    text = metrics.elidedText(held, Qt.TextElideMode.ElideRight, max(room.right() - x, 0))
    painter.setPen(palette.color(QPalette.ColorRole.PlaceholderText))
    painter.drawText(QRect(x, room.top(), room.right() - x, room.height()), _LEFT, text)
