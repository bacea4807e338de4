"""Paints a layer in the list: its name and how much is on it, and under that what it is."""

from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QPainter, QPalette

from enclosure_app.model.layer import Role
from enclosure_app.window.lines.layers_model import LAYER, LayersModel
from enclosure_app.window.lines.layers_told import LayerTold
from enclosure_app.window.rows.marks import controls_of, paint_controls
from enclosure_app.window.rows.two_lines import LEFT, RIGHT, Index, TwoLines


class LayerDelegate(TwoLines):
    """Two lines for each layer; long names are cut in their middle, where they differ least."""

    def paint_upper(self, painter: QPainter, room: QRect, index: Index, palette: QPalette) -> None:
        """Paint the layer's name, and how much is on it."""
        told: LayerTold = index.data(LAYER)
        metrics = painter.fontMetrics()
        count = str(told.lines or told.texts)
        painter.setPen(palette.color(QPalette.ColorRole.PlaceholderText))
        painter.drawText(room, RIGHT, count)
        left = room.width() - metrics.horizontalAdvance(count) - 10
        painter.setPen(palette.color(QPalette.ColorRole.Text))
        name = metrics.elidedText(told.name, Qt.TextElideMode.ElideMiddle, left)
        painter.drawText(room, LEFT, name)

    def paint_lower(self, painter: QPainter, room: QRect, index: Index, palette: QPalette) -> None:
        """Paint what the layer is, and what is to be said beside it."""
        told, model = index.data(LAYER), index.model()
        if not isinstance(model, LayersModel):
            return
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
        painter.drawText(QRect(x, room.top(), left, room.height()), LEFT, meant)
        left -= metrics.horizontalAdvance(meant) + 12
        painter.setPen(palette.color(quiet))
        for beside in (model.beside(told), model.difference(told)):
            if metrics.horizontalAdvance(beside) <= left:
                painter.drawText(room, RIGHT, beside)
                break
