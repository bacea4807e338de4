"""How what was caught is shown: each kind by a shape of its own and by its name."""

import pytest
from PySide6.QtCore import QPointF
from PySide6.QtGui import QColor, QImage, QPainter

from enclosure_app.model.drawing import Units
from enclosure_app.window.canvas.catching.catches import Catch, Kind
from enclosure_app.window.canvas.ink.catch_marks import catch_shape, catch_words, paint_catch
from enclosure_app.window.canvas.ink.ink import INK


def test_every_kind_has_a_shape_and_a_name_that_no_other_has() -> None:
    shapes = {str(catch_shape(kind, QPointF(0, 0)).toFillPolygon().toList()) for kind in Kind}
    names = {catch_words(kind, 3.0, Units.MM) for kind in Kind}
    assert len(shapes) == len(names) == len(Kind)


def test_the_distance_beside_a_board_is_told_in_the_units_of_the_drawing() -> None:
    assert catch_words(Kind.OFF_LINE, 6.35, Units.IN) == '1/4" beside the line'
    assert catch_words(Kind.OFF_END, 3.0, Units.MM) == "3 mm beside the end"


def test_the_shape_stands_where_it_was_caught(qapp: object) -> None:
    image = QImage(120, 60, QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    painter = QPainter(image)
    paint_catch(painter, QPointF(20, 40), Catch((0.0, 0.0), Kind.LINE), "on the line")
    painter.end()
    assert QColor(image.pixel(20, 35)).hue() == pytest.approx(INK.hue(), abs=3)
    assert QColor(image.pixel(20, 40)) == QColor("white")
