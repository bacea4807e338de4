"""The grid that is seen and caught."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QSizeF
from PySide6.QtGui import QColor, QImage, QPainter

from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.catching.grid import nearest_crossing, paint_grid, seen_spacing
from enclosure_app.window.main_window import MainWindow


@given(st.floats(0.1, 1000), st.floats(0.0005, 60))
def test_lines_of_the_grid_can_always_be_told_apart(spacing: float, zoom: float) -> None:
    seen = seen_spacing(spacing, zoom)
    assert seen * zoom >= 9.0
    assert seen == spacing or seen * zoom < 9.0 * 2.5 + 1e-9


@pytest.mark.parametrize(("at", "crossing"), [((74.0, 26.0), (50.0, 50.0)), ((-26, 1), (-50, 0))])
def test_the_nearest_crossing_is_caught(
    at: tuple[float, float], crossing: tuple[float, float]
) -> None:
    assert nearest_crossing(at, 50.0) == crossing


def test_lines_stand_where_they_are_caught() -> None:
    image = QImage(200, 200, QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    painter = QPainter(image)
    paint_grid(painter, Camera((0.0, 0.0), 1.0, QSizeF(200, 200)), 50.0, QColor("black"))
    painter.end()
    dark = [x for x in range(200) if QColor(image.pixel(x, 30)).lightness() < 250]
    assert dark == [0, 50, 100, 150]


def test_points_of_a_sheet_land_on_the_grid(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.canvas.catching = True
    sheet.place.aid(grid=100.0, grid_shown=True)
    sheet.do("tool_sheet")
    hand.click((497.0, 303.0))
    assert sheet.canvas.caught is not None
    hand.click((503.0, 1102.0))
    hand.keys("\r")
    (piece,) = sheet.document.project.sections[0].pieces
    assert piece.shape.points == ((500.0, 300.0), (500.0, 1100.0))
