"""What Draw in the menu does, but for the tools."""

import pytest
from PySide6.QtCore import Qt

from enclosure_app.window.main_window import MainWindow


def test_a_section_becomes_a_plan_and_hangs_again(sheet: MainWindow) -> None:
    sheet.do("is_plan")
    assert sheet.document.project.sections[0].gravity is None
    assert sheet.document.undo_stack.undoText() == "Make it a plan"
    sheet.do("undo")
    assert sheet.document.project.sections[0].gravity == (0.0, -1.0)
    sheet.checking.check_now()
    assert sheet.actions_by_name["hangs_down"].isChecked()


def test_what_is_so_already_is_no_step(sheet: MainWindow) -> None:
    sheet.do("hangs_down")
    assert not sheet.document.undo_stack.canUndo()


def test_the_grid_and_the_angles_are_switched_by_keys(sheet: MainWindow, qtbot) -> None:  # noqa: ANN001
    qtbot.keyClick(sheet, "g", Qt.KeyboardModifier.ShiftModifier)
    qtbot.keyClick(sheet, "l")
    assert sheet.place.aids.grid_shown
    assert sheet.place.aids.kept
    qtbot.keyClick(sheet, "l")
    assert not sheet.place.aids.kept


def test_catching_is_switched_off(sheet: MainWindow, qtbot) -> None:  # noqa: ANN001
    sheet.canvas.catching = True
    qtbot.keyClick(sheet, "c")
    assert not sheet.canvas.catching


def test_spacing_and_distances_are_typed_in_place(sheet: MainWindow, qtbot) -> None:  # noqa: ANN001
    sheet.do("set_aids")
    for name, text in (("grid", "1 in"), ("beside", "5"), ("step", "30"), ("bead", "8")):
        field = sheet.views.sizes.fields[name]
        field.selectAll()
        qtbot.keyClicks(field, text)
    qtbot.keyClick(sheet.views.sizes.fields["bead"], Qt.Key.Key_Return)
    aids = sheet.place.aids
    assert (aids.grid, aids.beside, aids.step, aids.bead) == pytest.approx((25.4, 5.0, 30.0, 8.0))


def test_the_next_window_helps_as_this_one_did(sheet: MainWindow, settings, qtbot) -> None:  # noqa: ANN001
    sheet.do("grid_shown")
    sheet.place.aid(beside=5.0)
    other = MainWindow(settings)
    qtbot.addWidget(other)
    assert other.place.aids == sheet.place.aids
    assert other.actions_by_name["grid_shown"].isChecked()
    other.close()
