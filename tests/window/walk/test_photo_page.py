"""A photograph, large: whole at first, closer by hand, and back again."""

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QColor, QPainter, QPixmap
from pytestqt.qtbot import QtBot

from enclosure_app.window.walk.photo_page import PhotoPage, PhotoView
from tests.window.walk.test_photo_strip import photograph

LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def view(qtbot: QtBot) -> PhotoView:
    """Return a view of 600 x 400 dots on a picture of 1200 x 900, red with a blue corner."""
    shown, picture = PhotoView(), QPixmap(1200, 900)
    qtbot.addWidget(shown)
    picture.fill(QColor("red"))
    corner = QPixmap(300, 225)
    corner.fill(QColor("blue"))

    painter = QPainter(picture)
    painter.drawPixmap(0, 0, corner)
    painter.end()
    shown.resize(600, 400)
    shown.show()
    shown.show_picture(picture)
    return shown


def colour(view: PhotoView, x: int, y: int) -> str:
    return view.grab().toImage().pixelColor(x, y).name()


def test_it_is_shown_whole_the_way_up_it_was_taken(view: PhotoView) -> None:
    filled = view.filled
    assert filled.width() == pytest.approx(400 * 1200 / 900)
    assert filled.height() == pytest.approx(400)
    assert colour(view, 50, 20) == "#0000ff"
    assert colour(view, 300, 200) == "#ff0000"
    view.resize(300, 500)
    assert view.filled.width() == pytest.approx(300)


def test_it_is_looked_at_closer_about_a_place_and_moved(view: PhotoView, qtbot: QtBot) -> None:
    corner = QPointF(view.filled.topLeft())
    view.zoom(4.0, corner)
    assert (view.filled.topLeft() - corner).manhattanLength() < 1e-6
    assert view.filled.height() == pytest.approx(1600)
    assert colour(view, 300, 200) == "#0000ff"
    qtbot.mousePress(view, LEFT, pos=QPoint(500, 350))
    qtbot.mouseMove(view, QPoint(100, 50))
    qtbot.mouseRelease(view, LEFT, pos=QPoint(100, 50))
    assert view.filled.left() < corner.x() - 300


def test_it_is_never_moved_out_of_sight(view: PhotoView, qtbot: QtBot) -> None:
    whole = view.filled
    view.pan(QPointF(300.0, 200.0))
    assert view.filled == whole  # there is nothing else to see
    view.zoom(2.0)
    view.pan(QPointF(5000.0, 5000.0))
    assert view.filled.topLeft() == QPointF(300.0, 200.0)
    assert colour(view, 310, 210) == "#0000ff"


def test_wider_than_whole_it_is_never_shown(view: PhotoView, qtbot: QtBot) -> None:
    whole = view.filled
    view.zoom(3.0)
    view.zoom(0.1)
    assert view.filled == whole
    view.zoom(3.0)
    qtbot.mouseDClick(view, LEFT)
    assert view.filled == whole


def test_the_page_names_the_photograph_and_leads_back(qtbot: QtBot) -> None:
    page = PhotoPage()
    qtbot.addWidget(page)
    page.resize(600, 500)
    page.show()
    page.show_photograph(photograph("lap.jpg"))
    assert page.view.filled.width() > 400
    assert "lap.jpg" in page.told.text()
    assert "2026-05-04 10:00:00" in page.told.text()
    with qtbot.waitSignal(page.closed):
        qtbot.keyClick(page.back, Qt.Key.Key_Space)
