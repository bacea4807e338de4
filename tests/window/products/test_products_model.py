"""The list of products: order, search, what is told of each."""

from dataclasses import replace

from PySide6.QtCore import QModelIndex, Qt
from pytestqt.qtbot import QtBot

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.product import Bond, Control, Kind, Product
from enclosure_app.window.products.products_model import PRODUCT, ProductsModel, is_own

OWN = Product("own", "Blue wrap", frozenset({Control.AIR}), Bond.ADHERED, Kind.SHEET, source="o")
PRODUCTS = {**load_products(), "own": OWN}


def shown(**more: object) -> ProductsModel:
    model = ProductsModel()
    model.show(PRODUCTS, **{"used": frozenset(), **more})
    return model


def keys(model: ProductsModel) -> list[str]:
    return [product.key for product in model.rows]


def test_what_was_given_lately_comes_first_then_what_is_in_use_then_the_offices_own(
    qtbot: QtBot,
) -> None:
    model = shown(used=frozenset({"osb", "felt"}), lately=("xps", "felt"))
    assert keys(model)[:4] == ["xps", "felt", "osb", "own"]
    assert set(keys(model)) == set(PRODUCTS)


def test_products_are_found_by_name_family_bond_and_what_they_control(qtbot: QtBot) -> None:
    model = shown()
    model.seek("water fastened sheet")
    assert "housewrap" in keys(model)
    for product in model.rows:
        assert Control.WATER in product.controls
        assert product.bond is Bond.FASTENED
    model.seek("BLUE")
    assert keys(model) == ["own"]
    assert len(model.every) == len(PRODUCTS)
    assert model.place_of("own") == 0
    assert model.place_of("felt") == -1


def test_a_row_tells_all_of_its_product(qtbot: QtBot) -> None:
    model = shown(lately=("felt",))
    index = model.index(0)
    assert index.data() == "Asphalt felt on the wall"
    assert index.data(PRODUCT) is PRODUCTS["felt"]
    tip = index.data(Qt.ItemDataRole.ToolTipRole)
    assert tip.startswith("water · fastened, 0.8 mm · 57.2 ng")
    assert tip.endswith("(unconfirmed)")
    assert model.data(QModelIndex()) is None
    assert model.rowCount(index) == 0


def test_own_is_what_the_program_does_not_have_or_has_otherwise() -> None:
    felt = load_products()["felt"]
    assert is_own(OWN)
    assert is_own(replace(felt, min_lap_mm=100.0))
    assert not is_own(felt)
