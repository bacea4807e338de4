"""Paints a product in the list: its name, and under that what it controls and how it is held."""

from PySide6.QtCore import QRect, QRectF, Qt
from PySide6.QtGui import QPainter, QPalette, QPen

from enclosure_app.language import say
from enclosure_app.model.product import Product
from enclosure_app.window.products.product_words import held_words
from enclosure_app.window.products.products_model import PRODUCT, ProductsModel, is_own
from enclosure_app.window.rows.marks import controls_of, paint_controls
from enclosure_app.window.rows.two_lines import LEFT, Index, TwoLines


class ProductDelegate(TwoLines):
    """Two lines for each product; the office's own ones wear a word in a box."""

    def paint_upper(self, painter: QPainter, room: QRect, index: Index, palette: QPalette) -> None:
        """Paint the product's name."""
        _name(painter, room, index.data(PRODUCT), palette)

    def paint_lower(self, painter: QPainter, room: QRect, index: Index, palette: QPalette) -> None:
        """Paint what it controls, and how it is held."""
        model = index.model()
        imperial = isinstance(model, ProductsModel) and model.imperial
        _does(painter, room, index.data(PRODUCT), palette, imperial=imperial)


def _name(painter: QPainter, room: QRect, product: Product, palette: QPalette) -> None:
    metrics, left = painter.fontMetrics(), room.width()
    if is_own(product):
        left -= _own_mark(painter, room, palette) + 8
    painter.setPen(palette.color(QPalette.ColorRole.Text))
    name = metrics.elidedText(say(product.name), Qt.TextElideMode.ElideRight, left)
    painter.drawText(room, LEFT, name)


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
    painter.drawText(QRect(x, room.top(), room.right() - x, room.height()), LEFT, text)
