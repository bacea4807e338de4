"""The list of layers: searched, and told to whoever cannot see it."""

from PySide6.QtCore import QModelIndex, Qt
from pytestqt.qtbot import QtBot

from enclosure_app.files.framing.layers_said import said
from enclosure_app.files.projects import read_project
from enclosure_app.model.layer import rows_saying
from enclosure_app.resources import sample
from enclosure_app.window.lines.layers_model import LAYER, LayersModel

PROJECT = read_project(sample("parapet.dxf"))


def shown() -> LayersModel:
    model = LayersModel()
    model.show(PROJECT)
    return model


def test_layers_are_found_by_their_names_and_by_what_they_are(qtbot: QtBot) -> None:
    model = shown()
    model.seek("wall")
    assert [told.name for told in model.rows] == ["Wall sheet"]
    model.seek("timber FRAM")
    assert [told.name for told in model.rows] == ["Timber cut"]
    model.seek("")
    assert model.rowCount() == model.total > 10
    assert model.rowCount(model.index(0)) == 0


def test_a_row_tells_all_of_its_layer(qtbot: QtBot) -> None:
    model = shown()
    model.seek("plywood")
    index = model.index(0)
    assert index.data() == "Plywood"
    assert index.data(LAYER) is model.rows[0]
    assert index.data(Qt.ItemDataRole.AccessibleTextRole) == "Plywood: Plywood, as named, sure"
    tip = index.data(Qt.ItemDataRole.ToolTipRole)
    assert tip.startswith("Plywood · 2 lines · Plywood\n“plywood” in its name")
    assert model.data(QModelIndex()) is None


def test_a_row_that_changes_stays_where_it_is(qtbot: QtBot) -> None:
    model = shown()
    order = [told.name for told in model.rows]
    after = said(PROJECT, rows_saying(PROJECT.layers, ["Plywood"], product="osb")).project
    with qtbot.waitSignal(model.dataChanged), qtbot.assertNotEmitted(model.modelReset):
        model.show(after)
    assert [told.name for told in model.rows] == order
    assert model.rows[order.index("Plywood")].meant == "osb"


def test_nothing_changed_says_nothing(qtbot: QtBot) -> None:
    model = shown()
    with qtbot.assertNotEmitted(model.dataChanged), qtbot.assertNotEmitted(model.modelReset):
        model.show(PROJECT)
