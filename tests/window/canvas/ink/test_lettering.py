"""Words over the drawing: on a dark tab, whatever is below."""

from PySide6.QtCore import QPointF
from PySide6.QtGui import QColor, QImage, QPainter
from pytestqt.qtbot import QtBot

from enclosure_app.window.canvas.ink.lettering import face, words


def written(ground: str, text: str) -> QImage:
    image = QImage(200, 60, QImage.Format.Format_RGB32)
    image.fill(QColor(ground))
    painter = QPainter(image)
    words(painter, QPointF(20, 40), text)
    painter.end()
    return image


def test_words_are_light_on_dark_on_any_ground(qtbot: QtBot) -> None:
    for ground in ("#ffffff", "#14171a", "#d33384"):
        image = written(ground, "900 mm")
        tones = [image.pixelColor(x, 36).lightness() for x in range(20, 60)]
        assert max(tones) > 200
        assert min(tones) < 70


def test_a_longer_word_has_a_longer_tab(qtbot: QtBot) -> None:
    short, long = written("#ffffff", "end"), written("#ffffff", "end of the sheet")
    assert long.pixelColor(80, 38).lightness() < 255
    assert short.pixelColor(80, 38).lightness() == 255


def test_a_face_is_found_once(qtbot: QtBot) -> None:
    assert face(2.1) is face(2.1)
    assert face(2.1).bold()


def test_words_at_the_edge_stand_so_near_that_all_of_them_is_seen(qtbot: QtBot) -> None:
    image = QImage(200, 60, QImage.Format.Format_RGB32)
    image.fill(QColor("#ffffff"))
    painter = QPainter(image)
    words(painter, QPointF(180, 4), "3 mm beside the line")
    painter.end()
    dark = [
        (x, y) for x in range(200) for y in range(60) if image.pixelColor(x, y).lightness() < 70
    ]
    assert max(x for x, _ in dark) < 199
    assert min(y for _, y in dark) > 0
