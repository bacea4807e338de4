"""The list of products by mouse and keys."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.drawing import Units
from enclosure_app.model.edits import add_product
from enclosure_app.model.product import Bond, Control, Kind, Product
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section
from enclosure_app.window.products.product_list import ProductList

LEFT = Qt.MouseButton.LeftButton
OWN = Product("own", "Blue wrap", frozenset({Control.AIR}), Bond.ADHERED, Kind.SHEET, source="o")
SECTION = Section("s", ((0.0, 0.0), (9.0, 0.0), (9.0, 9.0)), (), load_products())
PROJECT = add_product(Project("", Units.MM, (SECTION,)), OWN)


@pytest.fixture
def products(qtbot: QtBot) -> ProductList:
    made = ProductList()
    made.resize(300, 420)
    qtbot.addWidget(made)
    made.show()
    made.show_products(PROJECT, PROJECT.sections[0], ())
    return made


def test_it_begins_with_a_product_that_controls_something(products: ProductList) -> None:
    assert products.product is not None
    assert products.product.controls


def test_typing_finds_and_arrows_choose(products: ProductList, qtbot: QtBot) -> None:
    qtbot.keyClicks(products.search, "felt")
    keys = [product.key for product in products.model.rows]
    products.choose(keys[0])
    with qtbot.waitSignal(products.chosen) as chosen:
        qtbot.keyClick(products.list, Qt.Key.Key_Down)
    assert chosen.args == [keys[1]]
    qtbot.keyClicks(products.search, "zzz")
    assert products.product is None
    assert "take one away" in products.told.text()
    assert not products.change.isEnabled()


def test_the_chosen_product_tells_its_figures_and_their_source(products: ProductList) -> None:
    products.choose("felt")
    assert products.told.text().startswith("57.2 ng · ")
    assert products.told.text().endswith("(unconfirmed)")
    assert products.told.toolTip() == products.told.text()


def test_only_the_offices_own_can_be_removed(products: ProductList, qtbot: QtBot) -> None:
    products.choose("felt")
    assert not products.remove.isEnabled()
    products.choose("own")
    with qtbot.waitSignal(products.removed) as removed:
        qtbot.mouseClick(products.remove, LEFT)
    assert removed.args == ["own"]


def test_the_form_is_asked_for_empty_or_with_the_chosen_product(
    products: ProductList, qtbot: QtBot
) -> None:
    products.choose("own")
    with qtbot.waitSignal(products.form) as form:
        qtbot.mouseClick(products.change, LEFT)
    assert form.args == [OWN]
    with qtbot.waitSignal(products.form) as form:
        qtbot.mouseClick(products.add, LEFT)
    assert form.args == [None]


def test_giving_is_offered_only_while_something_is_picked(
    products: ProductList, qtbot: QtBot
) -> None:
    assert not products.give.isVisible()
    products.show_picked(3)
    assert products.give.text() == "Give it to what is picked (3)"
    with qtbot.waitSignal(products.given):
        qtbot.mouseClick(products.give, LEFT)
    products.show_picked(0)
    assert not products.give.isVisible()


def test_what_is_chosen_stays_chosen_as_the_list_changes(products: ProductList) -> None:
    products.choose("own")
    changed = add_product(PROJECT, replace(OWN, name="Green wrap"))
    products.show_products(changed, changed.sections[0], ("felt",))
    assert products.product is not None
    assert products.product.name == "Green wrap"
