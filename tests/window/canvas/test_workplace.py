"""What a gesture works with."""

from pytestqt.qtbot import QtBot

from enclosure_app.model.edits import add_piece, remove_pieces
from enclosure_app.model.place import Line
from enclosure_app.window.main_window import MainWindow


def test_aids_are_no_step_to_undo(sheet: MainWindow, qtbot: QtBot) -> None:
    with qtbot.waitSignal(sheet.place.aided):
        sheet.place.aid(beside=5.0)
    assert sheet.place.aids.beside == 5.0
    assert not sheet.document.undo_stack.canUndo()


def test_what_is_gone_is_picked_no_longer(sheet: MainWindow) -> None:
    project = add_piece(sheet.document.project, 0, "felt", Line(((0.0, 0.0), (0.0, 500.0))))
    sheet.document.apply("Draw", project)
    sheet.place.pick(("drawn-1",))
    sheet.document.apply("Delete", remove_pieces(project, 0, ("drawn-1",)))
    assert sheet.place.picked == frozenset()


def test_the_result_of_the_section_in_view_is_at_hand(sheet: MainWindow) -> None:
    sheet.checking.check_now()
    assert sheet.place.result is sheet.result
