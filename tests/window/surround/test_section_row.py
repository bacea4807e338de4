"""Several sections: tabs, a list when they are many, and keys from one to the next."""

from collections.abc import Callable
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.surround.section_row import FEW, SectionRow

Opened = Callable[..., MainWindow]


@pytest.fixture
def row(qtbot: QtBot) -> SectionRow:
    made = SectionRow()
    qtbot.addWidget(made)
    return made


def names(count: int) -> list[str]:
    return [f"Section {n}" for n in range(1, count + 1)]


def test_one_section_needs_no_row(row: SectionRow) -> None:
    row.show_sections(names(1), 0)
    assert row.isHidden()


def test_few_sections_have_tabs(row: SectionRow, qtbot: QtBot) -> None:
    row.show_sections(names(3), 1)
    row.show()
    assert row.tabs.isVisible()
    assert not row.every.isVisible()
    assert row.tabs.currentIndex() == 1
    with qtbot.waitSignal(row.turned) as turned:
        qtbot.mouseClick(row.tabs, Qt.MouseButton.LeftButton, pos=row.tabs.tabRect(2).center())
    assert turned.args == [2]


def test_many_sections_have_a_list_and_arrows(row: SectionRow, qtbot: QtBot) -> None:
    row.show_sections(names(FEW + 20), 0)
    row.show()
    assert not row.tabs.isVisible()
    assert row.every.isVisible()
    row.every.setFocus()
    with qtbot.waitSignal(row.turned) as turned:
        qtbot.keyClick(row.every, Qt.Key.Key_Down)
    assert turned.args == [1]
    with qtbot.waitSignal(row.turned) as turned:
        qtbot.mouseClick(row.after, Qt.MouseButton.LeftButton)
    assert turned.args == [2]
    with qtbot.waitSignal(row.turned) as turned:
        qtbot.mouseClick(row.before, Qt.MouseButton.LeftButton)
    assert turned.args == [1]


def test_the_first_comes_after_the_last(row: SectionRow, qtbot: QtBot) -> None:
    row.show_sections(names(3), 2)
    with qtbot.waitSignal(row.turned) as turned:
        row.step(1)
    assert turned.args == [0]


def test_showing_asks_for_nothing(row: SectionRow, qtbot: QtBot) -> None:
    with qtbot.assertNotEmitted(row.turned):
        row.show_sections(names(3), 1)
        row.show_sections(names(12), 7)
        row.show_sections(names(2), 0)


def test_keys_turn_to_the_next_section_and_the_one_before(opened: Opened, qtbot: QtBot) -> None:
    window = opened("four-sections-faulty.dxf")
    window.activateWindow()
    control = Qt.KeyboardModifier.ControlModifier
    qtbot.keyClick(window.canvas, Qt.Key.Key_PageDown, control)
    assert window.place.index == 1
    assert window.result is not None
    assert window.result.section is window.document.project.sections[1]
    qtbot.keyClick(window.canvas, Qt.Key.Key_PageUp, control)
    qtbot.keyClick(window.canvas, Qt.Key.Key_PageUp, control)
    assert window.place.index == 3
    assert window.views.sections.currentIndex() == 3


def test_a_project_of_many_sections_is_walked_by_the_list(opened: Opened, qtbot: QtBot) -> None:
    window = opened("four-sections-faulty.dxf")
    project = window.document.project
    many = [replace(section, name=f"{section.name} {n}") for n in range(4) for section in project.sections]  # fmt: skip
    window.document.open(replace(project, sections=tuple(many)))
    window.showing.begin()
    row = window.views.section_row
    assert row.every.isVisible()
    assert row.every.count() == 16
    assert "fault" in row.every.itemText(0)
    row.every.setFocus()
    qtbot.keyClick(row.every, Qt.Key.Key_End)
    assert window.place.index == 15
