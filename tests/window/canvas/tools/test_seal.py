"""Saying of a joint that it is sealed on site."""

from pytestqt.qtbot import QtBot

from enclosure_app.drawing.section.sealed_marks import said_sealed
from enclosure_app.model.edits import Side, add_mark, add_piece
from enclosure_app.model.place import Line
from enclosure_app.window.main_window import MainWindow

LAPPED = (((400.0, 300.0), (400.0, 1000.0)), ((404.0, 900.0), (404.0, 1500.0)))


def lapped(window: MainWindow, product: str, qtbot: QtBot) -> MainWindow:
    project = window.document.project
    for run in LAPPED:
        project = add_piece(project, 0, product, Line(run))
    project = add_mark(project, 0, Side.OUTSIDE, (100.0, 500.0))
    project = add_mark(project, 0, Side.INSIDE, (1500.0, 500.0))
    window.document.apply("Draw", project)
    qtbot.waitUntil(lambda: window.checking.current, timeout=5000)
    window.do("tool_seal")
    return window


def test_a_joint_is_sealed_by_a_click_and_by_another_no_longer(
    sheet: MainWindow,
    hand,  # noqa: ANN001
    qtbot: QtBot,
) -> None:
    window = lapped(sheet, "housewrap", qtbot)
    (joint, *_) = window.canvas.tool.joints["drawn-1", "drawn-2"]
    assert not joint.sealed
    hand.move(joint.at)
    assert "nothing seals them" in window.views.hint.text()
    hand.click(joint.at)
    assert window.document.project.sections[0].sealed == {("drawn-1", "drawn-2")}
    assert window.document.undo_stack.undoText() == "Seal a joint"
    qtbot.waitUntil(lambda: window.checking.current, timeout=5000)
    assert all(each.sealed for each in window.canvas.tool.joints["drawn-1", "drawn-2"])
    assert joint.at in said_sealed(window.place.result), "and so it is marked, on the sheet too"
    hand.move(joint.at)
    assert "says a person" in window.views.hint.text()
    hand.click(joint.at)
    assert window.document.project.sections[0].sealed == frozenset()


def test_what_its_products_seal_needs_no_word(
    sheet: MainWindow,
    hand,  # noqa: ANN001
    qtbot: QtBot,
) -> None:
    window = lapped(sheet, "fluid-permeable", qtbot)
    (joint, *_) = window.canvas.tool.joints["drawn-1", "drawn-2"]
    assert joint.sealed
    hand.click(joint.at)
    assert "seals that joint already" in window.messages.words.text()
    assert window.document.project.sections[0].sealed == frozenset()


def test_nothing_is_sealed_where_there_is_no_joint(
    sheet: MainWindow,
    hand,  # noqa: ANN001
    qtbot: QtBot,
) -> None:
    window = lapped(sheet, "housewrap", qtbot)
    before = window.document.project
    hand.click((1500.0, 1500.0))
    assert window.document.project is before


def test_a_sheet_without_joints_says_so(sheet: MainWindow) -> None:
    sheet.do("tool_seal")
    assert "No joints are found" in sheet.views.hint.text()
