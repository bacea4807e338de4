"""Required figures: found, typed, refused in a sentence, given back to the book."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit
from pytestqt.qtbot import QtBot

from enclosure_app.files.maps.rule_book import load_limits, unused_figures
from enclosure_app.model.drawing import Units
from enclosure_app.window.preferences.preferences_figures import FiguresPage

OWN = {"touch": 4.0}
LIMITS = load_limits().overridden(OWN, "this project's own figure")
OFFERED = [each for each in LIMITS.figures if each not in unused_figures()]


@pytest.fixture
def page(qtbot: QtBot) -> FiguresPage:
    made = FiguresPage()
    qtbot.addWidget(made)
    made.resize(680, 500)
    made.show_figures(LIMITS, OWN, "", Units.MM)
    made.show()
    return made


def row_of(page: FiguresPage, name: str) -> int:
    return OFFERED.index(name)


def text(page: FiguresPage, name: str, column: int) -> str:
    item = page.table.item(row_of(page, name), column)
    assert item is not None
    return item.text()


def type_over(page: FiguresPage, name: str, typed: str) -> None:
    """Type into the cell as a person does: choose it, edit, type, Return."""
    page.table.setCurrentCell(row_of(page, name), 1)
    page.table.editItem(page.table.item(row_of(page, name), 1))
    line = page.table.findChild(QLineEdit)
    assert line is not None
    line.selectAll()
    QTest.keyClicks(line, typed)
    QTest.keyClick(line, Qt.Key.Key_Return)
    QApplication.processEvents()  # the line hands over what it holds after the key


def test_every_figure_that_a_rule_asks_for_stands_with_its_source(page: FiguresPage) -> None:
    rows = (page.table.item(row, 0) for row in range(page.table.rowCount()))
    shown = {item.data(Qt.ItemDataRole.UserRole) for item in rows if item}
    assert shown == {*OFFERED}
    assert text(page, "wall-lap", 0) == "Lap of wall sheets"
    assert text(page, "wall-lap", 1) == "50.8 mm"
    assert text(page, "wall-lap", 2) == LIMITS.figure("wall-lap").basis
    assert text(page, "touch", 2) == "this project's own figure"


def test_a_typed_figure_is_told_in_mm(page: FiguresPage, qtbot: QtBot) -> None:
    with qtbot.waitSignal(page.figure) as told:
        type_over(page, "wall-lap", '3"')
    assert told.args == ["wall-lap", pytest.approx(76.2)]


def test_what_is_no_figure_is_refused_and_the_old_one_stands(
    page: FiguresPage, qtbot: QtBot
) -> None:
    with qtbot.assertNotEmitted(page.figure):
        type_over(page, "wall-lap", "wide")
    assert page.refused.isVisible()
    assert "is no length" in page.refused.text()
    assert text(page, "wall-lap", 1) == "50.8 mm"


def test_typing_the_same_again_changes_nothing(page: FiguresPage, qtbot: QtBot) -> None:
    with qtbot.assertNotEmitted(page.figure):
        type_over(page, "wall-lap", "50.8 mm")


def test_a_project_s_own_figure_goes_back_to_the_book(page: FiguresPage, qtbot: QtBot) -> None:
    page.table.setCurrentCell(row_of(page, "wall-lap"), 0)
    assert not page.back.isEnabled()
    page.table.setCurrentCell(row_of(page, "touch"), 0)
    assert page.back.isEnabled()
    assert "Drafting slop" in page.told.text() or "drafting slop" in page.told.text()
    with qtbot.waitSignal(page.figure) as told:
        qtbot.mouseClick(page.back, Qt.MouseButton.LeftButton)
    assert told.args == ["touch", None]


def test_figures_are_found_by_their_words(page: FiguresPage, qtbot: QtBot) -> None:
    qtbot.keyClicks(page.sought, "lap wall")
    shown = [name for row, name in enumerate(OFFERED) if not page.table.isRowHidden(row)]
    assert shown == ["wall-lap", "wall-end-lap"]


def test_books_and_units_are_chosen(page: FiguresPage, qtbot: QtBot) -> None:
    assert page.books.currentData() == LIMITS.book
    with qtbot.waitSignal(page.book) as told:
        qtbot.keyClick(page.books, Qt.Key.Key_Home)
    assert told.args == ["practice"]
    with qtbot.waitSignal(page.units) as told:
        qtbot.keyClick(page.shown_units, Qt.Key.Key_End)
    assert told.args[0] is Units.FT


def test_figures_follow_the_units_shown(page: FiguresPage) -> None:
    page.show_figures(LIMITS, OWN, "", Units.IN)
    assert text(page, "wall-lap", 1) == '2"'
