"""The tools, and which of them is in hand."""

import pytest
from PySide6.QtCore import Qt

from enclosure_app.model.product import Control
from enclosure_app.window.canvas.toolbox import TOOLS
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.menus.action_table import TABLE


def test_every_tool_of_the_menus_is_in_the_box() -> None:
    rows = [row.name.removeprefix("tool_") for row in TABLE if row.choice == "tool"]
    assert [name for name in rows if name not in TOOLS] == []


@pytest.mark.parametrize("row", [r for r in TABLE if r.choice == "tool"], ids=lambda r: r.name)
def test_a_key_takes_each_tool_in_hand(sheet: MainWindow, row, qtbot) -> None:  # noqa: ANN001
    sheet.toolbox.take("measure" if row.name != "tool_measure" else "select")
    (keys,) = row.keys
    shift = Qt.KeyboardModifier.ShiftModifier if "+" in keys else Qt.KeyboardModifier.NoModifier
    qtbot.keyClick(sheet, keys[-1].lower(), shift)
    assert f"tool_{sheet.toolbox.name}" == row.name
    assert sheet.actions_by_name[row.name].isChecked()


def test_a_tool_that_is_done_gives_way_to_picking(sheet: MainWindow) -> None:
    sheet.do("tool_inside")
    sheet.canvas.tool.done.emit()
    assert sheet.toolbox.name == "select"


def test_what_was_begun_in_another_section_is_given_up(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.parts.begin("ridge")
    sheet.do("tool_sheet")
    hand.click((0.0, 0.0))
    sheet.place.show_only(Control.AIR)
    assert sheet.canvas.tool.anchor is not None
    sheet.place.turn_to(0)
    assert sheet.canvas.tool.anchor is None
    assert sheet.toolbox.name == "sheet"
