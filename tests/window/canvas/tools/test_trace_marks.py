"""What tracing shows and says."""

from collections.abc import Callable

import pytest
from PySide6.QtCore import QSizeF
from PySide6.QtGui import QImage, QPainter
from pytestqt.qtbot import QtBot

from enclosure_app.model.drawing import Units
from enclosure_app.planning.tracing.guiding import Lay
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.ink import INK
from enclosure_app.window.canvas.tools.trace_marks import (
    lay_words,
    paint_gap,
    paint_start,
    paint_way,
)

CAMERA = Camera((100.0, 100.0), 1.0, QSizeF(200, 200))


@pytest.fixture
def painted(qtbot: QtBot) -> Callable[[Callable[[QPainter], None]], QImage]:
    """Return a function that gives the picture of what is painted on white."""

    def picture(paint: Callable[[QPainter], None]) -> QImage:
        image = QImage(200, 200, QImage.Format.Format_RGB32)
        image.fill(0xFFFFFFFF)
        painter = QPainter(image)
        paint(painter)
        painter.end()
        return image

    return picture


def inked(image: QImage, x: int, y: int) -> bool:
    """Whether there is ink within three dots of a place, y upwards."""
    around = [(x + i, 200 - y + j) for i in range(-3, 4) for j in range(-3, 4)]
    return any(image.pixelColor(*dot) == INK for dot in around)


Painted = Callable[[Callable[[QPainter], None]], QImage]


def test_a_way_is_dashed_along_the_lines(painted: Painted) -> None:
    run = ((20.0, 20.0), (20.0, 180.0), (180.0, 180.0))
    image = painted(lambda painter: paint_way(painter, CAMERA, run))
    along = [image.pixelColor(20, y) == INK for y in range(30, 170)]
    assert any(along)
    assert not all(along), "dashes, since it is not done yet"
    assert not inked(image, 100, 100)


def test_a_gap_has_a_ring_at_either_end_and_says_its_width(painted: Painted) -> None:
    gap = ((40.0, 60.0), (160.0, 60.0))
    image = painted(lambda painter: paint_gap(painter, CAMERA, gap, Units.MM))
    assert inked(image, 40, 64)
    assert inked(image, 160, 56)
    dark = [image.pixelColor(x, 200 - y).lightness() < 80 for x in range(80, 190) for y in range(62, 80)]  # fmt: skip
    assert any(dark), "words on a dark tab"


def test_a_start_is_a_ring_and_none_is_nothing(painted: Painted) -> None:
    assert inked(painted(lambda p: paint_start(p, CAMERA, (100.0, 100.0))), 106, 100)
    nothing = painted(lambda p: paint_start(p, CAMERA, None))
    assert nothing == painted(lambda _: None)


def test_sides_are_told_by_marks_where_there_are_any() -> None:
    assert "outside of" in lay_words(Lay.OUTSIDE, marked=True)
    assert "left of" in lay_words(Lay.OUTSIDE, marked=False)
    assert "inside of" in lay_words(Lay.INSIDE, marked=True)
    assert "right of" in lay_words(Lay.INSIDE, marked=False)
    assert "{}" not in lay_words(Lay.ON, marked=True)
