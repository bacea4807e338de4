"""Pens of the theme for the screen."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor

from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.product import Control
from enclosure_app.window.canvas.ink.line_pens import line_pen


def test_a_pattern_stays_a_pattern_at_any_width() -> None:
    theme = load_theme()
    for control in Control:
        pen = theme.control(control)
        patterned = line_pen(pen, 3.0).style() is Qt.PenStyle.CustomDashLine
        assert patterned is bool(pen.dash)


def test_a_pen_has_the_hue_and_the_width_that_is_wanted() -> None:
    water = load_theme().control(Control.WATER)
    pen = line_pen(water, 3.0)
    assert pen.color() == QColor(water.colour)
    assert pen.widthF() == 3.0
