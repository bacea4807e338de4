"""Cards one below the other, with the bar that takes what is said on them."""

from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from enclosure_app.window.revising.card_window import CardWindow


class Shown(CardWindow):
    looked = 0

    def look_over(self) -> None:
        self.looked += 1


def test_other_cards_take_the_place_of_those_shown(qtbot: QtBot) -> None:
    window = Shown(("Title", "Leave", "Take"), (400, 300), None)
    qtbot.addWidget(window)
    window.show()
    first, second = QLabel("one"), QLabel("two")
    window.show_cards([first], "Ida")
    assert first.isVisible()
    assert (window.windowTitle(), window.bar.name, window.looked > 0) == ("Title", "Ida", True)
    window.show_cards([second], "Jon")
    assert second.isVisible()
    qtbot.keyClicks(window.bar.who, "x")
    assert window.bar.name == "Jonx"
    window.bar.leave.click()
    assert not window.isVisible()
