"""Saying what layers are, by mouse and keys: one step each, hand-made work stays."""

from collections.abc import Callable, Iterator

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.edits import set_product
from enclosure_app.model.layer import LayerRow, Role, row_of
from enclosure_app.model.product import Bond, Control, Kind, Product
from enclosure_app.resources import sample
from enclosure_app.window.commands.layers import rows_meaning
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.settings import Settings

Opened = Callable[..., MainWindow]
OWN = Product("own", "Blue wrap", frozenset({Control.AIR}), Bond.ADHERED, Kind.SHEET, source="o")


@pytest.fixture
def parapet(window: MainWindow) -> MainWindow:
    """Return a window on a drawing whose layers are guessed by their names."""
    window.filing.open(sample("parapet.dxf"))
    return window


def products_on(window: MainWindow, layer: str) -> set[str]:
    sections = window.document.project.sections
    return {p.product for section in sections for p in section.pieces if p.layer == layer}


def test_layers_are_made_a_product_as_one_step(parapet: MainWindow) -> None:
    before = parapet.document.project
    parapet.commands.layers.say_layers(["Wall sheet", "Vapour sheet"], "felt")
    assert products_on(parapet, "Wall sheet") == products_on(parapet, "Vapour sheet") == {"felt"}
    assert parapet.document.undo_stack.undoText() == "Make 2 layers Asphalt felt on the wall"
    assert parapet.lines.lately[0] == "felt"
    parapet.do("undo")
    assert parapet.document.project is before


def test_what_a_name_suggests_is_taken_again(parapet: MainWindow) -> None:
    before = parapet.document.project
    parapet.commands.layers.say_layers(["Wall sheet"], Role.IGNORE)
    assert products_on(parapet, "Wall sheet") == set()
    parapet.commands.layers.say_layers(["Wall sheet"], "")
    assert products_on(parapet, "Wall sheet") == {"self-adhered-permeable"}
    shapes = {p.name: p.shape for p in parapet.document.project.sections[0].pieces}
    assert shapes == {p.name: p.shape for p in before.sections[0].pieces}


def test_pieces_given_by_hand_stay_and_it_is_said(parapet: MainWindow) -> None:
    project = parapet.document.project
    name = next(p.name for p in project.sections[0].pieces if p.layer == "Wall sheet")
    parapet.document.apply("by hand", set_product(project, 0, [name], "housewrap"))
    parapet.commands.layers.say_layers(["Wall sheet"], "felt")
    assert products_on(parapet, "Wall sheet") == {"housewrap"}
    assert parapet.messages.words.text() == (
        "One piece stays what it is, because it was given its product by hand."
    )


def test_a_layer_that_cannot_be_a_frame_is_refused_in_one_sentence(parapet: MainWindow) -> None:
    before = parapet.document.project
    parapet.commands.layers.say_layers(["Vapour sheet"], Role.FRAME)
    assert "No outline on layer “Vapour sheet” closes" in parapet.messages.words.text()
    assert parapet.document.project is before


def test_an_own_product_is_added_changed_and_removed_each_undoable(parapet: MainWindow) -> None:
    layers = parapet.commands.layers
    layers.put_product(OWN)
    assert parapet.document.project.sections[0].products["own"] == OWN
    assert parapet.document.undo_stack.undoText() == "Add Blue wrap"
    parapet.commands.layers.say_layers(["Wall sheet"], "own")
    layers.drop_product("own")
    assert "“Blue wrap”" in parapet.messages.words.text()
    parapet.do("undo")
    layers.drop_product("own")
    assert "own" not in parapet.document.project.sections[0].products
    parapet.do("undo")
    parapet.do("undo")
    assert parapet.document.project.sections[0].products.get("own") is None


def test_a_changed_product_of_the_program_is_put_back(parapet: MainWindow) -> None:
    changed = Product("felt", "Our felt", frozenset(), Bond.LOOSE, Kind.SHEET, source="o")
    parapet.commands.layers.put_product(changed)
    assert parapet.document.undo_stack.undoText() == "Change Our felt"
    parapet.commands.layers.drop_product("felt")
    assert parapet.document.project.sections[0].products["felt"] == load_products()["felt"]


def test_rows_of_a_map_that_are_narrower_stand(parapet: MainWindow) -> None:
    narrow = LayerRow("Wall*", role=Role.NOTE, color=3)
    project = parapet.document.project
    project = type(project)(
        project.title, project.units, project.sections, layers=(narrow, *project.layers)
    )
    rows = rows_meaning(project, ["Wall sheet"], "felt")
    assert rows[0] == narrow
    row = row_of(rows, "Wall sheet")
    assert row is not None
    assert row.product == "felt"


@pytest.fixture
def busy(qtbot: QtBot, settings: Settings) -> Iterator[MainWindow]:
    """Return a window whose long work is done beside it."""
    shown = MainWindow(settings)
    qtbot.addWidget(shown)
    shown.show()
    shown.filing.open(sample("parapet.dxf"))
    qtbot.waitUntil(lambda: bool(shown.document.project.sections), timeout=20_000)
    yield shown
    shown.commands.files.leaving = True
    shown.close()


def test_sayings_in_quick_turn_are_each_done_and_an_edit_between_is_not_lost(
    busy: MainWindow, qtbot: QtBot
) -> None:
    layers = busy.commands.layers
    layers.say_layers(["Wall sheet"], "felt")
    layers.say_layers(["Vapour sheet"], "housewrap")
    project = busy.document.project
    name = next(p.name for p in project.sections[0].pieces if p.layer == "Plywood")
    busy.document.apply("between", set_product(project, 0, [name], "osb"))
    qtbot.waitUntil(lambda: products_on(busy, "Vapour sheet") == {"housewrap"}, timeout=10_000)
    assert products_on(busy, "Wall sheet") == {"felt"}
    assert busy.document.project.sections[0].by_name[name].product == "osb"
    assert busy.document.undo_stack.count() == 3


def test_what_was_said_of_one_drawing_is_not_said_of_the_next(
    busy: MainWindow, qtbot: QtBot
) -> None:
    busy.commands.layers.say_layers(["Wall sheet"], "felt")
    busy.filing.new_sheet()
    qtbot.waitUntil(lambda: not busy.working.jobs, timeout=10_000)
    assert busy.document.undo_stack.count() == 0
    assert busy.document.project.layers == ()


def test_the_mouse_makes_chosen_layers_a_product(parapet: MainWindow, qtbot: QtBot) -> None:
    table, left = parapet.lines.table, Qt.MouseButton.LeftButton
    rows = [told.name for told in table.model.rows]
    view = table.list
    for name, keys in (
        ("Vapour sheet", Qt.KeyboardModifier.NoModifier),
        ("Wall sheet", Qt.KeyboardModifier.ControlModifier),
    ):
        index = table.model.index(rows.index(name))
        view.scrollTo(index)
        at = view.visualRect(index).center()
        qtbot.mouseClick(view.viewport(), left, keys, pos=at)
    parapet.lines.list.search.setFocus()
    qtbot.keyClicks(parapet.lines.list.search, "housewrap")
    parapet.lines.choose("housewrap")
    assert table.make.toolTip() == "Make 2 layers Housewrap, fastened"
    qtbot.mouseClick(table.make, left)
    assert products_on(parapet, "Wall sheet") == {"housewrap"}
    assert table.chosen == ["Vapour sheet", "Wall sheet"]
