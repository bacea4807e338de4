"""The left-hand panel: layers, products and the form of one work together."""

from collections.abc import Callable

import pytest
from PySide6.QtCore import QEvent, QPoint, Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from enclosure_app.model.edits import add_piece
from enclosure_app.model.layer import Role
from enclosure_app.model.place import Line
from enclosure_app.resources import sample
from enclosure_app.window.apart.working import Working
from enclosure_app.window.canvas.ink.layer_preview import Lit
from enclosure_app.window.main_window import MainWindow

LEFT = Qt.MouseButton.LeftButton
Opened = Callable[..., MainWindow]


@pytest.fixture
def parapet(window: MainWindow) -> MainWindow:
    window.filing.open(sample("parapet.dxf"))
    return window


def choose_layer(window: MainWindow, qtbot: QtBot, name: str) -> None:
    table = window.lines.table
    index = table.model.index([told.name for told in table.model.rows].index(name))
    table.list.scrollTo(index)
    at = table.list.visualRect(index).center()
    qtbot.mouseClick(table.list.viewport(), LEFT, pos=at)


def test_an_empty_sheet_says_how_to_begin(window: MainWindow) -> None:
    window.filing.new_sheet()
    assert window.lines.no_layers.isVisible()
    assert not window.lines.table.isVisible()


@pytest.fixture
def drawn(window: MainWindow) -> MainWindow:
    """Return a window on a sheet without layers, with two sheets of felt and one of housewrap."""
    window.filing.new_sheet()
    project = window.document.project
    for product, x in (("felt", 300.0), ("felt", 500.0), ("housewrap", 700.0)):
        project = add_piece(project, 0, product, Line(((x, 300.0), (x, 900.0))))
    window.document.apply("Draw", project)
    return window


def row_at(window: MainWindow, product: str) -> QPoint:
    table = window.lines.table
    rows = [told.drawn for told in table.model.rows]
    return table.list.visualRect(table.model.index(rows.index(product))).center()


def test_what_is_drawn_on_a_sheet_without_layers_is_listed_by_product(drawn: MainWindow) -> None:
    table = drawn.lines.table
    assert table.isVisible()
    assert not drawn.lines.no_layers.isVisible()
    assert [(told.drawn, told.lines) for told in table.model.rows] == [
        ("felt", 2),
        ("housewrap", 1),
    ]


def test_it_lights_up_under_the_mouse_and_goes_out_after_it(
    drawn: MainWindow, qtbot: QtBot
) -> None:
    view = drawn.lines.table.list
    view.entered.emit(view.indexAt(row_at(drawn, "felt")))  # the screenless platform has no hover
    (lit,) = drawn.canvas.overlay.lit
    assert lit == Lit(controls=lit.controls, drawn=frozenset({"felt"}))
    assert lit.controls
    QApplication.sendEvent(view.viewport(), QEvent(QEvent.Type.Leave))
    assert drawn.canvas.overlay.lit == ()


def test_all_that_was_drawn_of_a_product_is_made_another_as_one_step(
    drawn: MainWindow, qtbot: QtBot
) -> None:
    before, table = drawn.document.project, drawn.lines.table
    qtbot.mouseClick(table.list.viewport(), LEFT, pos=row_at(drawn, "felt"))
    assert table.why.text() == "2 pieces drawn here."
    drawn.lines.choose("underlayment")
    qtbot.mouseClick(table.make, LEFT)
    pieces = drawn.document.project.sections[0].pieces
    assert [piece.product for piece in pieces] == ["underlayment", "underlayment", "housewrap"]
    assert table.chosen_drawn == ["underlayment"], "what was chosen stays chosen as what it is now"
    drawn.do("undo")
    assert drawn.document.project is before


def test_all_that_was_drawn_of_a_product_is_picked(drawn: MainWindow, qtbot: QtBot) -> None:
    table = drawn.lines.table
    qtbot.mouseClick(table.list.viewport(), LEFT, pos=row_at(drawn, "felt"))
    table.menu.aboutToShow.emit()
    (pick,) = table.menu.actions()
    pick.trigger()
    assert drawn.place.picked == {"drawn-1", "drawn-2"}


def test_a_chosen_layer_lights_up_on_the_drawing(parapet: MainWindow, qtbot: QtBot) -> None:
    choose_layer(parapet, qtbot, "Wall sheet")
    (lit,) = parapet.canvas.overlay.lit
    assert lit.layers == {"Wall sheet"}
    assert len(lit.controls) == 2


def test_a_product_that_is_pointed_at_is_shown_on_the_chosen_layer(
    parapet: MainWindow, qtbot: QtBot
) -> None:
    choose_layer(parapet, qtbot, "Hatching")
    products = parapet.lines.list
    products.search.setText("felt")
    index = products.model.index(products.model.place_of("felt"))
    at = products.list.visualRect(index).center()
    other = products.model.index((index.row() + 1) % products.model.rowCount())
    products.list.setCurrentIndex(other)
    qtbot.mouseClick(products.list.viewport(), LEFT, pos=at)
    (lit,) = parapet.canvas.overlay.lit
    assert lit == Lit(frozenset({"Hatching"}), (*lit.controls,))
    assert [control.value for control in lit.controls] == ["water"]
    assert all(p.layer != "Hatching" for p in parapet.document.project.sections[0].pieces)
    qtbot.mouseClick(parapet.lines.table.make, LEFT)
    made = [p for p in parapet.document.project.sections[0].pieces if p.layer == "Hatching"]
    assert {piece.product for piece in made} == {"felt"}
    parapet.do("undo")
    assert parapet.lines.table.told[0].meant == Role.LINEWORK


def test_the_form_stands_in_the_place_of_the_lists_and_the_new_product_is_chosen(
    parapet: MainWindow, qtbot: QtBot
) -> None:
    lines = parapet.lines
    qtbot.mouseClick(lines.list.add, LEFT)
    assert lines.pages.currentWidget() is lines.form
    qtbot.keyClicks(lines.form.name, "Blue wrap")
    qtbot.keyClick(lines.form.name, Qt.Key.Key_Return)
    assert lines.pages.currentIndex() == 0
    assert lines.product is not None
    assert lines.product.key == "blue-wrap"
    assert parapet.place.product == "blue-wrap"
    assert lines.list.model.rows[0].key == "blue-wrap"
    parapet.do("undo")
    assert "blue-wrap" not in parapet.document.project.sections[0].products


def test_what_was_given_lately_stands_first(parapet: MainWindow) -> None:
    for key in ("felt", "osb", "felt"):
        parapet.commands.layers.say_layers(["Hatching"], key)
    assert parapet.lines.lately == ["felt", "osb"]
    assert [p.key for p in parapet.lines.list.model.rows[:2]] == ["felt", "osb"]


def test_what_is_picked_counts_as_given_lately(parapet: MainWindow, qtbot: QtBot) -> None:
    section = parapet.document.project.sections[0]
    parapet.place.pick((section.pieces[0].name,))
    parapet.lines.choose("osb")
    qtbot.mouseClick(parapet.lines.list.give, LEFT)
    assert parapet.lines.lately[0] == "osb"


def test_another_drawing_shows_its_own_layers(parapet: MainWindow) -> None:
    first = {told.name for told in parapet.lines.table.model.rows}
    parapet.filing.open(sample("ridge.dxf"))
    assert {told.name for told in parapet.lines.table.model.rows} != first
    assert parapet.lines.table.chosen == []


def test_a_line_that_is_picked_tells_its_layer(parapet: MainWindow) -> None:
    section = parapet.document.project.sections[0]
    line = next(stroke for stroke in section.strokes if stroke.layer == "Hatching")
    piece = next(piece for piece in section.pieces if piece.layer == "Wall sheet")
    parapet.place.pick((piece.name,), (line.handle,))
    assert parapet.place.picked_layers == {"Hatching", "Wall sheet"}
    assert parapet.lines.table.why.text() == "What is picked is on Hatching, Wall sheet."
    parapet.place.pick(())
    assert parapet.lines.table.why.text().startswith("Choose a row")


def test_what_was_given_lately_stands_first_in_the_next_window_too(
    parapet: MainWindow, qtbot: QtBot
) -> None:
    parapet.commands.layers.say_layers(["Hatching"], "felt")
    parapet.commands.files.leaving = True
    parapet.close()
    again = MainWindow(parapet.settings, Working(apart=False))
    qtbot.addWidget(again)
    again.filing.open(sample("ridge.dxf"))
    assert again.lines.list.model.rows[0].key == "felt"
    again.commands.files.leaving = True
    again.close()
