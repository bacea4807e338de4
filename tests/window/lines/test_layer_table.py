"""The table of layers by mouse and keys: chosen, lit up, said to be something."""

from collections.abc import Callable

import pytest
from PySide6.QtCore import QPoint, Qt
from pytestqt.qtbot import QtBot

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.projects import read_project
from enclosure_app.model.layer import LayerRow, Role
from enclosure_app.model.product import Control
from enclosure_app.model.project import Project
from enclosure_app.resources import sample
from enclosure_app.window.canvas.ink.layer_preview import Lit
from enclosure_app.window.lines.layer_table import LayerTable

PROJECT = read_project(sample("parapet.dxf"))
LEFT, CTRL = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.ControlModifier
Click = Callable[..., None]


@pytest.fixture
def table(qtbot: QtBot) -> LayerTable:
    made = LayerTable()
    made.resize(300, 420)
    qtbot.addWidget(made)
    made.show()
    made.show_project(PROJECT)
    return made


def place(table: LayerTable, name: str) -> QPoint:
    row = [told.name for told in table.model.rows].index(name)
    index = table.model.index(row)
    table.list.scrollTo(index)
    return table.list.visualRect(index).center()


@pytest.fixture
def click(table: LayerTable, qtbot: QtBot) -> Click:
    def on(name: str, keys: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
        qtbot.mouseClick(table.list.viewport(), LEFT, keys, pos=place(table, name))

    return on


def test_a_click_lights_a_layer_up_as_what_it_is(
    table: LayerTable, click: Click, qtbot: QtBot
) -> None:
    with qtbot.waitSignal(table.lit) as lit:
        click("Wall sheet")
    assert lit.args == [(Lit(frozenset({"Wall sheet"}), (Control.WATER, Control.AIR)),)]
    assert (
        table.why.text()
        == "“wall sheet” in its name suggests self-adhered sheet, vapour-open: sure."
    )


def test_several_layers_light_up_each_as_what_it_is(
    table: LayerTable, click: Click, qtbot: QtBot
) -> None:
    click("Wall sheet")
    with qtbot.waitSignal(table.lit) as lit:
        click("Hatching", CTRL)
    assert set(lit.args[0]) == {
        Lit(frozenset({"Wall sheet"}), (Control.WATER, Control.AIR)),
        Lit(frozenset({"Hatching"}), role=Role.LINEWORK),
    }
    assert table.why.text() == "2 layers: 11 lines."


def test_a_product_is_shown_on_the_chosen_layers_before_it_is_taken(
    table: LayerTable, click: Click, qtbot: QtBot
) -> None:
    click("Hatching")
    with qtbot.waitSignal(table.lit) as lit:
        table.offer(load_products()["xps"])
    (shown,) = lit.args[0]
    assert shown.layers == {"Hatching"}
    assert Control.HEAT in shown.controls
    with qtbot.waitSignal(table.said) as said:
        qtbot.mouseClick(table.make, LEFT)
    assert said.args == [["Hatching"], "xps"]


def test_nothing_can_be_made_of_no_layer(table: LayerTable) -> None:
    assert not table.make.isVisible()
    assert table.why.text().startswith("Choose a row")


@pytest.mark.parametrize("key", [Qt.Key.Key_Return, Qt.Key.Key_F2])
def test_keys_open_the_menu_of_roles_and_take_one(
    table: LayerTable, click: Click, qtbot: QtBot, key: Qt.Key
) -> None:
    click("Hatching")
    qtbot.keyClick(table.list, key)
    qtbot.waitUntil(table.menu.isVisible)
    words = [action.text() for action in table.menu.actions() if action.text()]
    assert words == [
        "Frame of a section",
        "Break lines",
        "Notes",
        "Linework to snap to",
        "Ignored",
        "Pick all that is on it",
    ]
    with qtbot.waitSignal(table.said) as said:
        for _ in range(5):
            qtbot.keyClick(table.menu, Qt.Key.Key_Down)
        qtbot.keyClick(table.menu, Qt.Key.Key_Return)
    assert said.args == [["Hatching"], Role.IGNORE]


def test_the_menu_shows_a_role_on_the_drawing_before_it_is_taken(
    table: LayerTable, click: Click, qtbot: QtBot
) -> None:
    click("Wall sheet")
    qtbot.keyClick(table.list, Qt.Key.Key_Return)
    qtbot.waitUntil(table.menu.isVisible)
    assert table.menu.actions()[0].text() == "As named: Self-adhered sheet, vapour-open"
    qtbot.keyClick(table.menu, Qt.Key.Key_Down)
    with qtbot.waitSignal(table.lit) as lit:
        qtbot.keyClick(table.menu, Qt.Key.Key_Down)
    assert lit.args == [(Lit(frozenset({"Wall sheet"}), role=Role.FRAME),)]
    with qtbot.waitSignal(table.lit) as lit:
        qtbot.keyClick(table.menu, Qt.Key.Key_Escape)
    assert lit.args == [(Lit(frozenset({"Wall sheet"}), (Control.WATER, Control.AIR)),)]


def test_a_layer_is_found_by_typing_and_stays_chosen_when_others_come_back(
    table: LayerTable, click: Click, qtbot: QtBot
) -> None:
    qtbot.keyClicks(table.search, "wall sh")
    assert [told.name for told in table.model.rows] == ["Wall sheet"]
    click("Wall sheet")
    table.search.clear()
    assert table.chosen == ["Wall sheet"]


def test_what_was_chosen_stays_chosen_and_lights_up_as_what_it_is_now(
    table: LayerTable, click: Click, qtbot: QtBot
) -> None:
    click("Hatching")
    rows = (LayerRow("Hatching", role=Role.IGNORE), *PROJECT.layers)
    after = Project("", PROJECT.units, PROJECT.sections, layers=rows)
    with qtbot.waitSignal(table.lit) as lit:
        table.show_project(after)
    assert table.chosen == ["Hatching"]
    assert lit.args == [(Lit(frozenset({"Hatching"}), role=Role.IGNORE),)]


def test_all_that_is_on_chosen_layers_can_be_picked(
    table: LayerTable, click: Click, qtbot: QtBot
) -> None:
    click("Hatching")
    qtbot.keyClick(table.list, Qt.Key.Key_Return)
    qtbot.waitUntil(table.menu.isVisible)
    with qtbot.waitSignal(table.picked) as picked:
        qtbot.keyClick(table.menu, Qt.Key.Key_Up)
        qtbot.keyClick(table.menu, Qt.Key.Key_Return)
    assert picked.args == [["Hatching"]]


def test_rows_of_the_map_that_are_narrower_are_told(
    table: LayerTable, click: Click, qtbot: QtBot
) -> None:
    rows = (LayerRow("Hat*", product="felt", color=3), *PROJECT.layers)
    table.show_project(Project("", PROJECT.units, PROJECT.sections, layers=rows))
    click("Hatching")
    assert "The map says otherwise of some of its lines" in table.why.text()


def test_on_a_low_screen_the_help_goes_and_three_rows_are_seen(
    table: LayerTable, click: Click, qtbot: QtBot
) -> None:
    assert table.why.isVisible()
    table.resize(300, 60)  # as low as it can be
    assert not table.why.isVisible()
    third = table.list.visualRect(table.model.index(2))
    assert table.list.viewport().rect().contains(third)
    name = table.model.rows[0].name
    click(name)
    assert table.why.isVisible()  # what is said of a layer is no mere help
