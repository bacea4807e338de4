"""What rows of lists are painted with."""

from PySide6.QtCore import QRect
from PySide6.QtGui import QColor, QImage, QPainter, QPalette
from pytestqt.qtbot import QtBot

from enclosure_app.drawing.theme import load_theme
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.product import Control
from enclosure_app.window.canvas.ink.look import screen_theme
from enclosure_app.window.dress import NIGHT
from enclosure_app.window.rows.marks import (
    SWATCH,
    control_icon,
    controls_of,
    is_dark,
    paint_controls,
)


def palette(ground: str) -> QPalette:
    made = QPalette()
    made.setColor(QPalette.ColorRole.Base, QColor(ground))
    return made


def colours(image: QImage) -> set[str]:
    return {
        image.pixelColor(x, y).name() for x in range(image.width()) for y in range(image.height())
    }


def painted(controls: list[Control], ground: str, *, words: bool) -> tuple[QImage, int]:
    image = QImage(300, 20, QImage.Format.Format_RGB32)
    image.fill(QColor(ground))
    painter = QPainter(image)
    after = paint_controls(painter, QRect(0, 0, 300, 20), controls, palette(ground), words=words)
    painter.end()
    return image, after


def test_each_control_is_painted_in_its_hue_by_day_and_by_night(qtbot: QtBot) -> None:
    for ground, dark in (("#ffffff", False), (NIGHT.raised, True)):
        assert is_dark(palette(ground)) is dark
        theme = screen_theme(dark=dark)
        for control in Control:
            image, _ = painted([control], ground, words=False)
            assert QColor(theme.control(control).colour).name() in colours(image)


def test_what_follows_begins_after_the_marks_and_their_words(qtbot: QtBot) -> None:
    _, bare = painted([Control.AIR, Control.HEAT], "#ffffff", words=False)
    _, worded = painted([Control.AIR, Control.HEAT], "#ffffff", words=True)
    assert 2 * SWATCH < bare < worded < 300
    assert painted([], "#ffffff", words=True)[1] == 0


def test_controls_come_in_the_usual_order() -> None:
    sheet = load_products()["self-adhered-sheet"]
    assert controls_of(sheet) == [Control.WATER, Control.AIR, Control.VAPOUR]


def test_an_icon_shows_the_mark(qtbot: QtBot) -> None:
    image = control_icon(Control.WATER, palette("#ffffff")).pixmap(SWATCH, SWATCH).toImage()
    assert QColor(load_theme().control(Control.WATER).colour).name() in colours(image)


def test_where_not_all_words_have_room_there_are_none_rather_than_half_of_one(
    qtbot: QtBot,
) -> None:
    image = QImage(400, 24, QImage.Format.Format_RGB32)
    painter = QPainter(image)
    three = [Control.WATER, Control.AIR, Control.VAPOUR]
    wide = paint_controls(painter, QRect(0, 0, 400, 24), three, palette("#ffffff"), words=True)
    bare = paint_controls(painter, QRect(0, 0, 400, 24), three, palette("#ffffff"), words=False)
    tight = QRect(0, 0, wide - 40, 24)
    assert paint_controls(painter, tight, three, palette("#ffffff"), words=True) == bare < wide
    painter.end()
