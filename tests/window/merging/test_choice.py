"""One side of several."""

from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from enclosure_app.window.merging.choice import Choice


def test_words_are_shown_as_they_were_written_and_read_aloud(qtbot: QtBot) -> None:
    choice = Choice("Let this hold", "<b>Taped.</b>")
    qtbot.addWidget(choice)
    choice.show()
    assert choice.told.text() == "<b>Taped.</b>"
    assert choice.button.accessibleDescription() == "<b>Taped.</b>"


def test_a_picture_stands_below_the_button(qtbot: QtBot) -> None:
    choice, picture = Choice("Keep", ""), QWidget()
    qtbot.addWidget(choice)
    choice.show_picture(picture, 150)
    choice.show()
    assert not choice.told.isVisible()
    assert picture.height() >= 150
    assert picture.y() > choice.button.y()
