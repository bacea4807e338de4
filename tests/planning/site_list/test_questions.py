"""The questions of the site list: every bond has its own, and each is told apart by its name."""

import pytest

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.product import Bond, Kind
from enclosure_app.planning.site_list.questions import PRACTICE, QUESTIONS, of_product

PRODUCTS = load_products()


@pytest.mark.parametrize(
    ("product", "first", "also"),
    [
        ("self-adhered-sheet", "clean-and-dry", "flat-edge"),
        ("seam-tape", "clean-and-dry", "tape-ends"),
        ("sealant", "clean-and-dry", "bead-size"),
        ("sill-gasket", "clean-and-dry", "squeezed"),
        ("housewrap", "fasteners", "caps"),
        ("fluid-permeable", "clean-and-dry", "wet-thickness"),
        ("head-flashing", "fall", "end-dam"),
        ("drip-edge", "fall", "drip"),
        ("sill-pan", "fall", "back-dam"),
        ("slab-vapour-retarder", "no-tears", "no-tears"),
    ],
)
def test_the_family_and_the_bond_decide_what_to_look_at(
    product: str, first: str, also: str
) -> None:
    names = [question.name for question in of_product(PRODUCTS[product])]
    assert names[0] == first
    assert also in names


def test_every_bond_is_known() -> None:
    for product in PRODUCTS.values():
        asked = of_product(product)
        assert asked or product.bond is Bond.RIGID, product.key
        assert len({q.name for q in asked}) == len(asked)


def test_gaskets_are_never_asked_to_be_tooled() -> None:
    gaskets = [p for p in PRODUCTS.values() if p.kind is Kind.GASKET]
    assert gaskets
    assert all("tooled" not in [q.name for q in of_product(p)] for p in gaskets)


def test_a_name_stands_for_one_thing() -> None:
    texts: dict[str, set[str]] = {}
    for question in QUESTIONS:
        texts.setdefault(question.name, set()).add(question.text)
    several = {name for name, said in texts.items() if len(said) > 1}
    assert several == {"lap-order"}  # which of three ways it is asked depends on the drawing
    assert {question.source for question in QUESTIONS} == {PRACTICE}
