"""The strip that asks for a name."""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.errors import EnclosureError
from enclosure_app.window.surround.name_strip import NameStrip


@pytest.fixture
def strip(qtbot: QtBot) -> NameStrip:
    shown = NameStrip()
    qtbot.addWidget(shown)
    return shown


def test_the_name_that_is_there_is_typed_over(strip: NameStrip, qtbot: QtBot) -> None:
    taken: list[str] = []
    strip.ask("Name of the section", "Eave", taken.append)
    assert strip.field.accessibleName() == "Name of the section"
    qtbot.keyClicks(strip.field, "Ridge")
    with qtbot.waitSignal(strip.closed):
        qtbot.keyClick(strip.field, Qt.Key.Key_Return)
    assert taken == ["Ridge"]
    assert strip.isHidden()


def test_a_name_that_cannot_be_had_is_told_and_may_be_changed(
    strip: NameStrip, qtbot: QtBot
) -> None:
    def refuse(name: str) -> None:
        raise EnclosureError(f"There is a section {name} already.")

    strip.ask("Name of the section", "Eave", refuse)
    with qtbot.waitSignal(strip.refused) as told:
        qtbot.mouseClick(strip.button, Qt.MouseButton.LeftButton)
    assert told.args == ["There is a section Eave already."]
    assert not strip.isHidden()


def test_escape_changes_nothing(strip: NameStrip, qtbot: QtBot) -> None:
    taken: list[str] = []
    strip.ask("Name of the section", "Eave", taken.append)
    qtbot.keyClick(strip.field, Qt.Key.Key_Escape)
    assert taken == []
    assert strip.isHidden()
