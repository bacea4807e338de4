"""The bar of tools."""

from PySide6.QtWidgets import QToolButton

from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.menus.action_table import TABLE


def groups(window: MainWindow) -> dict[str, QToolButton]:
    buttons = [b for b in window.tools.findChildren(QToolButton) if b.menu()]
    return {button.accessibleName(): button for button in buttons}


def test_every_tool_has_a_button_or_stands_in_a_menu_of_one(sheet: MainWindow) -> None:
    reached = set(sheet.tools.actions())
    for button in groups(sheet).values():
        reached |= set(button.menu().actions())
    of_the_picture = ("tool_scale", "tool_lay")  # in the strip that a picture brings with it
    tools = [r.name for r in TABLE if r.choice == "tool" and r.name not in of_the_picture]
    assert [name for name in tools if sheet.actions_by_name[name] not in reached] == []


def test_a_menus_button_bears_the_name_of_the_tool_in_hand(sheet: MainWindow) -> None:
    change, mark = groups(sheet)["Change"], groups(sheet)["Mark"]
    sheet.do("tool_flip")
    assert (change.text(), change.isChecked()) == ("Flip  ▾", True)
    assert (mark.text(), mark.isChecked()) == ("Mark  ▾", False)
    sheet.do("tool_frame")
    assert (change.text(), mark.text()) == ("Change  ▾", "Frame  ▾")


def test_all_of_it_fits_into_a_small_window(sheet: MainWindow) -> None:
    assert sheet.width() == 1366
    assert sheet.tools.sizeHint().width() <= sheet.width()


def test_undo_is_down_until_there_is_something_to_undo(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    undo = next(b for b in sheet.tools.findChildren(QToolButton) if b.text() == "Undo")
    assert not undo.isEnabled()
    sheet.do("tool_inside")
    hand.click((500.0, 500.0))
    assert undo.isEnabled()
    undo.click()
    assert sheet.document.project.sections[0].inside == ()
