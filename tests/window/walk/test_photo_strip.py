"""Photographs of a stop: small in a row."""

from io import BytesIO

import pytest
from PIL import Image
from PySide6.QtCore import QSize, Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model.said.photograph import Photograph
from enclosure_app.window.walk.photo_strip import PhotoStrip, pixmap_of


def photograph(name: str, colour: str = "red") -> Photograph:
    held = BytesIO()
    Image.new("RGB", (120, 90), colour).save(held, "JPEG")
    return Photograph(held.getvalue(), (120, 90), name, "2026-05-04T10:00:00")


@pytest.fixture
def strip(qtbot: QtBot) -> PhotoStrip:
    shown = PhotoStrip()
    qtbot.addWidget(shown)
    shown.resize(400, 200)
    return shown


def test_without_photographs_it_takes_no_room(strip: PhotoStrip) -> None:
    strip.show_photographs([])
    assert strip.isHidden()


def test_a_touch_opens_the_photograph(strip: PhotoStrip, qtbot: QtBot) -> None:
    first, second = photograph("lap.jpg"), photograph("tape.jpg", "blue")
    strip.show_photographs([first, second])
    assert [b.accessibleName() for b in strip.buttons] == [
        "Photograph lap.jpg", "Photograph tape.jpg",
    ]  # fmt: skip
    with qtbot.waitSignal(strip.opened) as told:
        qtbot.mouseClick(strip.buttons[1], Qt.MouseButton.LeftButton)
    assert told.args == [second]


def test_the_picture_is_the_one_that_was_taken() -> None:
    colour = pixmap_of(photograph("x.jpg", "blue")).toImage().pixelColor(60, 45)
    assert (colour.blue() > 200, colour.red() < 60) == (True, True)


def test_a_small_one_is_read_small(strip: PhotoStrip) -> None:
    small = pixmap_of(photograph("x.jpg", "blue"), QSize(60, 60))
    assert (small.width(), small.height()) == (60, 45)
    assert small.toImage().pixelColor(30, 20).blue() > 200
