"""What is typed of a product, and the product that it makes."""

from dataclasses import replace

import pytest

from enclosure_app.errors import ListedError
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.drawing import Units
from enclosure_app.model.product import Bond, Control, Kind, Product
from enclosure_app.window.products.product_fields import Fields, fields_of, product_made

TYPED = Fields(
    name="  Blue   wrap ",
    controls=frozenset({Control.WATER, Control.AIR}),
    bond=Bond.ADHERED,
    min_lap="75",
    thickness="0.6 mm",
    vapour="sd 0.1",
    conductivity="0.2",
    source="maker's sheet of 2025",
    confirmed=True,
)


def test_every_field_comes_into_the_product() -> None:
    assert product_made(TYPED, "blue-wrap", Units.MM) == Product(
        "blue-wrap",
        "Blue wrap",
        frozenset({Control.WATER, Control.AIR}),
        Bond.ADHERED,
        Kind.SHEET,
        "line",
        75.0,
        0.6,
        None,
        0.1,
        0.2,
        "maker's sheet of 2025",
        confirmed=True,
    )


def test_each_thing_that_cannot_be_is_told_in_one_sentence() -> None:
    bad = Fields(thickness="0", vapour="2", conductivity="R5", min_lap="x", confirmed=True)
    with pytest.raises(ListedError) as caught:
        product_made(bad, "k", Units.MM)
    begins = ["The product needs", "Least lap", "Vapour", "Conductivity", "Thickness", "Say in"]
    told = [sentence[: len(b)] for sentence, b in zip(caught.value.sentences, begins, strict=True)]
    assert told == begins


def test_figures_without_a_source_are_the_offices_own_and_not_confirmed() -> None:
    made = product_made(replace(TYPED, source=" ", confirmed=False), "k", Units.MM)
    assert (made.source, made.confirmed) == ("the office's own", False)


@pytest.mark.parametrize("units", [Units.MM, Units.IN])
def test_a_product_that_is_only_looked_at_in_the_form_stays_what_it_is(units: Units) -> None:
    for product in load_products().values():
        fields = fields_of(product, units)
        assert product_made(fields, product.key, units, before=product) == product


def test_only_the_figure_that_is_typed_anew_changes() -> None:
    felt = load_products()["felt"]
    fields = replace(fields_of(felt, Units.IN), min_lap="4 in")
    changed = product_made(fields, "felt", Units.IN, before=felt)
    assert changed == replace(felt, min_lap_mm=pytest.approx(101.6))
