"""A product in the list: hue and word of what it controls, the office's own marked by a word."""

from dataclasses import replace

from PySide6.QtGui import QColor, QImage
from PySide6.QtWidgets import QListView
from pytestqt.qtbot import QtBot

from enclosure_app.drawing.theme import load_theme
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.product import Control, Product
from enclosure_app.window.products.product_delegate import ProductDelegate
from enclosure_app.window.products.products_model import ProductsModel

FELT = load_products()["felt"]


def view(qtbot: QtBot, *products: Product) -> QListView:
    made = QListView()
    model = ProductsModel(made)
    model.show({product.key: product for product in products}, frozenset())
    made.setModel(model)
    made.setItemDelegate(ProductDelegate(made))
    made.resize(280, 160)
    qtbot.addWidget(made)
    made.show()
    return made


def picture(shown: QListView, at: int) -> QImage:
    box = shown.visualRect(shown.model().index(at, 0))
    whole = shown.viewport().grab().toImage().convertToFormat(QImage.Format.Format_RGB32)
    return whole.copy(box)


def colours(image: QImage) -> set[str]:
    return {
        image.pixelColor(x, y).name() for x in range(image.width()) for y in range(image.height())
    }


def test_what_it_controls_is_shown_in_hue_and_nothing_else(qtbot: QtBot) -> None:
    theme = load_theme()
    pixels = colours(picture(view(qtbot, FELT), 0))
    shown = {c for c in Control if QColor(theme.control(c).colour).name() in pixels}
    assert shown == {Control.WATER}


def test_an_own_product_looks_different_from_the_programs(qtbot: QtBot) -> None:
    program = picture(view(qtbot, FELT), 0)
    own = picture(view(qtbot, replace(FELT, source="the office's own")), 0)
    assert program.size() == own.size()
    right = program.width() // 2
    assert own.copy(0, 0, right, own.height()) == program.copy(0, 0, right, own.height())
    assert own != program


def test_a_long_name_ends_before_the_mark_and_the_edge(qtbot: QtBot) -> None:
    long = replace(FELT, name="Sheet " * 40)
    shown = view(qtbot, long)
    image = picture(shown, 0)
    ground = image.pixelColor(2, 1).name()
    assert {image.pixelColor(image.width() - 2, y).name() for y in range(image.height())} == {
        ground
    }
    assert image.width() <= shown.viewport().width()
