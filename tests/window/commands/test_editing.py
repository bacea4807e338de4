"""What Edit in the menu does."""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model.edits import add_piece
from enclosure_app.model.place import Line
from enclosure_app.window.main_window import MainWindow


@pytest.fixture
def three(sheet: MainWindow) -> MainWindow:
    project = sheet.document.project
    for x, product in ((100.0, "felt"), (200.0, "housewrap"), (300.0, "felt")):
        project = add_piece(project, 0, product, Line(((x, 0.0), (x, 900.0))))
    sheet.document.apply("Draw", project)
    return sheet


def test_everything_is_picked_and_nothing(three: MainWindow) -> None:
    three.do("pick_all")
    assert three.place.picked == {"drawn-1", "drawn-2", "drawn-3"}
    three.do("pick_none")
    assert three.place.picked == frozenset()


def test_all_of_a_product_is_picked_from_a_piece_or_from_the_list(three: MainWindow) -> None:
    three.place.pick(("drawn-1",))
    three.do("pick_same")
    assert three.place.picked == {"drawn-1", "drawn-3"}
    three.lines.choose("housewrap")
    three.do("pick_product")
    assert three.place.picked == {"drawn-2"}


def test_the_list_of_products_offers_it_too(three: MainWindow) -> None:
    view = three.lines.list.list
    assert three.actions_by_name["pick_product"] in view.actions()
    assert view.contextMenuPolicy() is Qt.ContextMenuPolicy.ActionsContextMenu


def test_keys_go_from_piece_to_piece(three: MainWindow, qtbot) -> None:  # noqa: ANN001
    seen = []
    for key, shift in (("e", False), ("e", False), ("e", True), ("e", True)):
        keys = Qt.KeyboardModifier.ShiftModifier if shift else Qt.KeyboardModifier.NoModifier
        qtbot.keyClick(three, key, keys)
        seen += three.place.picked
    assert seen == ["drawn-1", "drawn-2", "drawn-1", "drawn-3"]


def test_what_is_picked_is_deleted_and_comes_back(three: MainWindow) -> None:
    three.place.pick(("drawn-1", "drawn-2"))
    three.do("delete")
    assert list(three.document.project.sections[0].by_name) == ["drawn-3"]
    assert three.document.undo_stack.undoText() == "Delete 2 pieces"
    three.do("undo")
    assert len(three.document.project.sections[0].pieces) == 3


def test_nothing_is_given_a_product_while_nothing_is_picked(three: MainWindow) -> None:
    before = three.document.project
    three.do("give_product")
    assert "Pick the lines first" in three.messages.words.text()
    assert three.document.project is before


def test_what_is_copied_is_put_in_beside_the_originals_and_picked(
    three: MainWindow,
    qtbot,  # noqa: ANN001
) -> None:
    three.place.pick(("drawn-1",))
    ctrl = Qt.KeyboardModifier.ControlModifier
    qtbot.keyClick(three.canvas, Qt.Key.Key_C, ctrl)
    qtbot.keyClick(three.canvas, Qt.Key.Key_V, ctrl)
    qtbot.keyClick(three.canvas, Qt.Key.Key_V, ctrl)
    section = three.document.project.sections[0]
    assert three.place.picked == {"copy-2"}
    assert [section.by_name[n].shape.points[0] for n in ("copy-1", "copy-2")] == [
        (150.0, -50.0),
        (200.0, -100.0),
    ]
    three.do("undo")
    assert "copy-2" not in three.document.project.sections[0].by_name


def test_what_is_cut_out_is_put_into_another_section_where_it_stood(three: MainWindow) -> None:
    three.place.pick(("drawn-2",))
    three.do("cut_picked")
    assert "drawn-2" not in three.document.project.sections[0].by_name
    three.parts.begin("ridge")
    three.do("paste")
    piece = three.document.project.sections[1].pieces[-1]
    assert (piece.product, piece.shape.points[0]) == ("housewrap", (200.0, 0.0))


def test_nothing_is_put_in_while_nothing_is_copied(three: MainWindow) -> None:
    before = three.document.project
    three.do("paste")
    assert "Nothing is copied yet" in three.messages.words.text()
    assert three.document.project is before


def test_products_are_found_by_keys_alone(sheet: MainWindow, qtbot: QtBot) -> None:
    window = sheet
    window.activateWindow()
    window.canvas.setFocus()
    window.docks[0].hide()
    qtbot.keyClick(window.canvas, Qt.Key.Key_F, Qt.KeyboardModifier.ControlModifier)
    search = window.lines.search
    assert search.isVisible()
    assert search.hasFocus()
    qtbot.keyClicks(search, "smart")
    qtbot.keyClick(search, Qt.Key.Key_Return)
    assert window.canvas.hasFocus()
    assert window.place.product == "smart-vapour-retarder"
