"""What is painted over the drawing at every frame."""

import pytest
from PySide6.QtCore import QSizeF
from PySide6.QtGui import QColor, QImage, QPainter
from pytestqt.qtbot import QtBot

from enclosure_app.model.drawing import Units
from enclosure_app.model.project import Project
from enclosure_app.model.report import SectionResult
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.canvas.overlay import Overlay, round_length
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.document import Document
from tests.drawing import eave

CAMERA = Camera((100.0, 1000.0), 0.3, QSizeF(600, 700))
MAGENTA = QColor(214, 51, 132)


@pytest.fixture
def place(qtbot: QtBot) -> Workplace:
    section = eave.section()
    return Workplace(Document(Project("House", Units.MM, (section,))))


def painted(overlay: Overlay, result: SectionResult | None = None) -> QImage:
    image = QImage(CAMERA.size.toSize(), QImage.Format.Format_RGB32)
    image.fill(QColor("#ffffff"))
    painter = QPainter(image)
    overlay.paint(painter, CAMERA, result or eave.result())
    painter.end()
    return image


def near(image: QImage, place: tuple[float, float], colour: QColor, reach: int = 4) -> bool:
    dot = CAMERA.seen(place).toPoint()
    return any(
        image.pixelColor(dot.x() + dx, dot.y() + dy) == colour
        for dx in range(-reach, reach + 1)
        for dy in range(-reach, reach + 1)
    )


def test_what_is_picked_is_lit_along_all_its_length(place: Workplace) -> None:
    overlay = Overlay(place)
    assert not near(painted(overlay), (163.0, 1500.0), MAGENTA)
    place.pick(("w2",))
    image = painted(overlay)
    for y in (950.0, 1500.0, 1990.0):
        assert near(image, (163.0, y), MAGENTA)
    place.pick(("w1",))
    assert not near(painted(overlay), (163.0, 1500.0), MAGENTA)


def test_a_ring_stands_about_the_place_gone_to(place: Workplace) -> None:
    overlay = Overlay(place)
    overlay.place_gone_to = (500.0, 1200.0)
    image = painted(overlay)
    assert near(image, (500.0 + 25 / CAMERA.zoom, 1200.0), MAGENTA, 2)
    assert not near(image, (500.0, 1200.0), MAGENTA)


@pytest.mark.parametrize(
    ("wanted", "imperial", "length"),
    [(366.0, False, 200.0), (55.0, False, 50.0), (0.7, False, 0.5), (366.0, True, 304.8)],
)
def test_the_scale_is_a_round_length(wanted: float, imperial: bool, length: float) -> None:
    assert round_length(wanted, imperial=imperial) == pytest.approx(length)


def test_the_scale_bar_is_as_long_as_it_says(place: Workplace) -> None:
    overlay = Overlay(place)
    overlay.look = Look()
    image = painted(overlay)
    y = round(CAMERA.size.height() - 16.0)
    white = QColor("#ffffff")
    dark = [x for x in range(600) if image.pixelColor(x, y) != white]
    assert max(dark) - min(dark) == pytest.approx(200.0 * CAMERA.zoom, abs=3)


def test_the_paper_is_that_of_the_look(place: Workplace) -> None:
    overlay = Overlay(place)
    assert overlay.paper.lightness() > 200
    overlay.look = Look(dark=True)
    assert overlay.paper.lightness() < 60
