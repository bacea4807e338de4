"""Words that are too long are cut with dots, and told whole by the tip."""

from PySide6.QtGui import QImage
from pytestqt.qtbot import QtBot

from enclosure_app.window.surround.elided_label import ElidedLabel


def test_what_has_no_room_is_cut_with_dots(qtbot: QtBot) -> None:
    label = ElidedLabel()
    qtbot.addWidget(label)
    label.resize(120, 20)
    label.tell("short")
    assert label.shown == "short"
    label.tell("much longer than there is room for in here")
    assert label.shown.endswith("…")
    assert label.toolTip() == label.text() == "much longer than there is room for in here"
    assert label.minimumSizeHint().height() <= 20


def test_the_words_are_painted(qtbot: QtBot) -> None:
    label = ElidedLabel()
    qtbot.addWidget(label)
    label.resize(120, 20)
    empty = label.grab().toImage()
    label.tell("words")
    assert label.grab().toImage() != empty
    assert isinstance(empty, QImage)
