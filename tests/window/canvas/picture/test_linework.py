"""The office's lines: all of them are painted, those outside the view and too short are not."""

import pytest
from PySide6.QtCore import QSizeF
from PySide6.QtGui import QImage, QPainter
from pytestqt.qtbot import QtBot

from enclosure_app.drawing.placement import Box
from enclosure_app.model.section import Stroke
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.picture.linework import Linework, office_pen

CAMERA = Camera((100.0, 100.0), 1.0, QSizeF(200, 200))
CROSS = (
    Stroke(((20.0, 100.0), (180.0, 100.0))),
    Stroke(((100.0, 20.0), (100.0, 180.0))),
)


@pytest.fixture
def image(qtbot: QtBot) -> QImage:
    made = QImage(200, 200, QImage.Format.Format_RGB32)
    made.fill(0xFFFFFFFF)
    return made


def paint(lines: Linework, image: QImage, camera: Camera = CAMERA) -> int:
    """Paint lines in black; return in how many turns."""
    painter = QPainter(image)
    turns = sum(1 for _ in lines.paint(painter, camera, office_pen("black")))
    painter.end()
    return turns


def dark(image: QImage, x: int, y: int) -> bool:
    """Whether there is ink within a dot of a place, y upwards."""
    around = [(x + i, 200 - y + j) for i in (-1, 0, 1) for j in (-1, 0, 1)]
    return any(image.pixelColor(*dot).lightness() < 128 for dot in around)


def test_the_box_is_around_all_lines_and_none_has_no_box() -> None:
    assert Linework(CROSS).box == Box(20, 20, 180, 180)
    assert Linework(()).box is None
    assert Linework((Stroke(()),)).box is None


def test_lines_are_painted_where_they_are(image: QImage) -> None:
    paint(Linework(CROSS), image)
    assert dark(image, 40, 100)
    assert dark(image, 100, 40)
    assert not dark(image, 40, 40)


def test_what_is_outside_the_view_takes_no_turn(image: QImage) -> None:
    far = tuple(Stroke(((x * 50.0 + 9000, 9000.0), (x * 50.0 + 9030, 9000.0))) for x in range(400))
    assert paint(Linework((*CROSS, *far)), image) <= 2
    assert dark(image, 40, 100)


def test_what_is_shorter_than_a_dot_is_left_out(image: QImage) -> None:
    crumbs = tuple(Stroke(((50.0, y * 0.1), (50.2, y * 0.1))) for y in range(1900))
    assert paint(Linework(crumbs), image) == 0
    near = Camera((50.0, 100.0), 40.0, QSizeF(200, 200))
    assert paint(Linework(crumbs), image, near) > 0


def test_many_lines_are_painted_in_many_turns(image: QImage) -> None:
    many = tuple(Stroke(((5.0, y * 0.02), (195.0, y * 0.02))) for y in range(5000))
    assert paint(Linework(many), image) >= 5000 / 200
    assert dark(image, 100, 50)
