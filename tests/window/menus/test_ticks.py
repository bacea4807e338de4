"""The menus tick what is so: the tool in hand, the control in view, which way is down."""

from collections.abc import Callable
from functools import partial

from pytestqt.qtbot import QtBot

from enclosure_app.model.edits import set_gravity
from enclosure_app.window.main_window import MainWindow

Opened = Callable[..., MainWindow]


def ticked(window: MainWindow, *names: str) -> list[str]:
    return [name for name in names if window.actions_by_name[name].isChecked()]


def hangs(window: MainWindow, name: str) -> bool:
    return ticked(window, *HANGING) == [name]


LONG = 20_000  # ms: a busy machine checks late
TOOLS = ("tool_select", "tool_trace", "tool_sheet", "tool_measure")
HANGING = ("hangs_down", "is_plan", "hangs_askew")


def test_the_tool_in_hand_is_ticked_and_no_other(opened: Opened) -> None:
    window = opened()
    assert ticked(window, *TOOLS) == ["tool_select"]
    window.do("tool_measure")
    assert ticked(window, *TOOLS) == ["tool_measure"]


def test_a_part_that_hangs_from_the_mouse_is_no_tool_of_the_bar(opened: Opened) -> None:
    window = opened()
    window.ticks.show_tool("place_part")
    assert ticked(window, *TOOLS) == []
    window.do("tool_select")
    assert ticked(window, *TOOLS) == ["tool_select"]


def test_the_control_that_a_list_shows_alone_is_ticked_in_the_menu(
    opened: Opened, qtbot: QtBot
) -> None:
    window = opened()
    names = ("only_all", "only_water", "only_air")
    assert ticked(window, *names) == ["only_all"]
    window.do("only_air")
    qtbot.waitUntil(lambda: ticked(window, *names) == ["only_air"], timeout=LONG)


def test_which_way_is_down_follows_the_section(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    qtbot.waitUntil(lambda: ticked(window, *HANGING) == ["hangs_down"], timeout=LONG)
    project = window.document.project
    for gravity, name in ((None, "is_plan"), ((1.0, -1.0), "hangs_askew")):
        window.document.apply("Turn", set_gravity(project, 0, gravity))
        window.checking.check_now()
        as_said = partial(hangs, window, name)
        qtbot.waitUntil(as_said, timeout=LONG)
