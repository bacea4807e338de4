"""The form of a product, typed by hand."""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.product import Bond, Control, Kind
from enclosure_app.window.products.product_form import ProductForm

LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def form(qtbot: QtBot) -> ProductForm:
    made = ProductForm()
    made.resize(300, 700)
    qtbot.addWidget(made)
    made.show()
    return made


def test_a_new_product_is_typed_and_kept(form: ProductForm, qtbot: QtBot) -> None:
    form.begin(None, ["blue-wrap"], imperial=True)
    qtbot.keyClicks(form.name, "Blue wrap")
    for control in (Control.WATER, Control.AIR):
        qtbot.mouseClick(form.controls[control], LEFT)
    form.bond.setFocus()
    qtbot.keyClicks(form.bond, "adh")
    qtbot.keyClicks(form.thickness, "0.6 mm")
    qtbot.keyClicks(form.min_lap, "4")
    qtbot.keyClicks(form.vapour, "54 perm")
    qtbot.keyClicks(form.source, "maker's sheet")
    qtbot.mouseClick(form.confirmed, LEFT, pos=form.confirmed.rect().center() / 4)
    with qtbot.waitSignal(form.made) as made:
        qtbot.mouseClick(form.keep, LEFT)
    (product,) = made.args
    assert (product.key, product.name) == ("blue-wrap-2", "Blue wrap")
    assert product.controls == {Control.WATER, Control.AIR}
    assert (product.bond, product.kind) == (Bond.ADHERED, Kind.SHEET)
    assert (product.thickness_mm, product.min_lap_mm) == (0.6, pytest.approx(101.6))
    assert product.permeance_ng == pytest.approx(54 * 57.2135)
    assert (product.source, product.confirmed) == ("maker's sheet", True)


def test_what_cannot_be_is_said_in_place_and_nothing_is_lost(
    form: ProductForm, qtbot: QtBot
) -> None:
    form.begin(None, [], imperial=False)
    qtbot.keyClicks(form.vapour, "2")
    with qtbot.assertNotEmitted(form.made):
        qtbot.mouseClick(form.keep, LEFT)
    assert form.wrong.isVisible()
    assert form.wrong.text().splitlines() == [
        "The product needs a name: type how the office calls it.",
        "Vapour: “2” has no unit that is known; type “2 perm”, “57 ng” or “sd 0.2 m”.",
    ]
    assert form.vapour.text() == "2"
    qtbot.keyClicks(form.name, "Wrap")
    qtbot.keyClicks(form.vapour, " perm")
    with qtbot.waitSignal(form.made):
        qtbot.keyClick(form.vapour, Qt.Key.Key_Return)


def test_a_product_that_is_changed_keeps_its_key_and_what_nobody_touched(
    form: ProductForm, qtbot: QtBot
) -> None:
    felt = load_products()["felt"]
    form.begin(felt, [*load_products()], imperial=True)
    assert form.title.text() == "Change Asphalt felt on the wall"
    assert form.thickness.text() == "0.0314961 in"
    form.min_lap.setFocus()
    qtbot.keyClicks(form.min_lap, '4"')
    with qtbot.waitSignal(form.made) as made:
        qtbot.keyClick(form.min_lap, Qt.Key.Key_Return)
    (product,) = made.args
    assert product.key == "felt"
    assert product.min_lap_mm == pytest.approx(101.6)
    assert (product.thickness_mm, product.permeance_ng) == (felt.thickness_mm, felt.permeance_ng)


def test_escape_and_leave_it_change_nothing(form: ProductForm, qtbot: QtBot) -> None:
    form.begin(None, [], imperial=False)
    with qtbot.waitSignal(form.left), qtbot.assertNotEmitted(form.made):
        qtbot.keyClick(form.name, Qt.Key.Key_Escape)
    with qtbot.waitSignal(form.left):
        qtbot.mouseClick(form.leave, LEFT)


def test_the_form_begins_empty_again_after_another_product(form: ProductForm) -> None:
    form.begin(load_products()["felt"], [], imperial=False)
    form.begin(None, [], imperial=False)
    assert form.name.text() == form.source.text() == form.thickness.text() == ""
    assert not any(tick.isChecked() for tick in form.controls.values())
    assert form.thickness.placeholderText() == "mm"
