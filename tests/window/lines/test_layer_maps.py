"""Layer maps over an open drawing: used, saved, and offered for the office's next one."""

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QPushButton
from pytestqt.qtbot import QtBot

from enclosure_app.files.maps.layer_map import load_layer_map
from enclosure_app.files.projects import Wish, read_project
from enclosure_app.model.edits import set_product
from enclosure_app.model.layer import LayerRow, Role
from enclosure_app.model.product import Bond, Kind, Product
from enclosure_app.resources import sample
from enclosure_app.window.lines.layer_maps import is_guessed
from enclosure_app.window.main_window import MainWindow

Opened = Callable[..., MainWindow]
OFFICE = "layers-second-office.toml"  # the map of roof-to-wall.dxf


def answers(window: MainWindow) -> list[QPushButton]:
    held = window.messages.answers
    widgets = [held.itemAt(i).widget() for i in range(held.count())]
    return [widget for widget in widgets if isinstance(widget, QPushButton)]


def test_a_map_is_used_on_what_is_open_as_one_step(window: MainWindow) -> None:
    path = sample("roof-to-wall.dxf")
    window.filing.open(path)
    before = window.document.project
    assert is_guessed(before)
    window.maps.use(sample("layers.toml"))
    layer_map = load_layer_map(sample("layers.toml"))
    after = window.document.project
    read_so = read_project(path, Wish(layer_map))
    assert after.layers == layer_map.rows
    assert {p.name: p.product for s in after.sections for p in s.pieces} == {
        p.name: p.product for s in read_so.sections for p in s.pieces
    }
    assert window.document.undo_stack.undoText() == "Use layers.toml"
    assert "“layers.toml” is used." in window.messages.words.text()
    window.do("undo")
    assert window.document.project is before


def test_what_was_done_by_hand_stays_when_a_map_is_used(window: MainWindow) -> None:
    window.filing.open(sample("parapet.dxf"))
    project = window.document.project
    name = project.sections[0].pieces[0].name
    by_hand = set_product(project, 0, [name], "felt")
    said = replace(by_hand, layers=(*by_hand.layers, LayerRow("Hatching", role=Role.IGNORE)))
    window.document.apply("by hand", said)
    window.maps.use(sample("layers-second-office.toml"))
    after = window.document.project
    assert after.sections[0].by_name[name].product == "felt"
    known = load_layer_map(sample(OFFICE))
    assert after.layers[: len(known.rows)] == known.rows


def test_what_is_said_is_saved_with_the_offices_products_and_offered_for_the_next_drawing(
    window: MainWindow, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    window.filing.open(sample("ridge.dxf"))
    assert answers(window) == []
    own = Product("own", "Blue wrap", frozenset(), Bond.LOOSE, Kind.SHEET, source="office")
    window.commands.layers.put_product(own)
    layer = window.lines.table.model.rows[0].name
    window.commands.layers.say_layers([layer], "own")
    kept = tmp_path / "office.toml"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(kept), ""))
    window.do("save_layer_map")
    assert "“office.toml” is saved" in window.messages.words.text()
    assert "one product of your own" in window.messages.words.text()
    saved = load_layer_map(kept)
    assert saved.products["own"] == own
    assert saved.rows == window.document.project.layers

    window.document.undo_stack.setClean()
    window.filing.open(sample("ridge-faulty.dxf"))
    assert "“office.toml” was the last layer map." in window.messages.words.text()
    (use,) = answers(window)
    qtbot.mouseClick(use, Qt.MouseButton.LeftButton)
    assert window.document.project.layers == saved.rows
    pieces = window.document.project.sections[0].pieces
    assert {p.product for p in pieces if p.layer == layer} == {"own"}


def test_a_map_that_knows_none_of_the_layers_is_not_offered(
    window: MainWindow, tmp_path: Path
) -> None:
    strange = tmp_path / "strange.toml"
    strange.write_text('[[layers]]\nmatch = "XYZ"\nrole = "note"\n', encoding="utf-8")
    window.settings.layer_map = strange
    window.filing.open(sample("ridge.dxf"))
    assert not window.messages.isVisible()


def test_a_map_is_not_offered_where_one_was_used_already(opened: Opened) -> None:
    window = opened()
    window.settings.layer_map = sample(OFFICE)
    opened("ridge.dxf")
    assert answers(window) == []


def test_every_mistake_in_a_map_is_told_and_nothing_changes(
    window: MainWindow, tmp_path: Path
) -> None:
    window.filing.open(sample("ridge.dxf"))
    before = window.document.project
    bad = tmp_path / "bad.toml"
    bad.write_text('[[layers]]\nmatch = "A"\nproduct = "felts"\n', encoding="utf-8")
    window.maps.use(bad)
    assert "did you mean 'felt'?" in window.messages.words.text()
    assert window.document.project is before


def test_a_folder_that_refuses_is_told(opened: Opened, tmp_path: Path) -> None:
    window = opened()
    window.maps.save(tmp_path / "no" / "map.toml")
    assert window.messages.isVisible()
    assert window.settings.layer_map is None


def test_without_layers_there_is_nothing_to_use_a_map_on(window: MainWindow) -> None:
    window.filing.new_sheet()
    window.maps.use(sample(OFFICE))
    assert "open one first" in window.messages.words.text()
