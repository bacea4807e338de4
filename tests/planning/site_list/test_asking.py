"""Which questions a product is asked: its family decides, then its bond; none that does not fit."""

import pytest

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.product import Bond, Kind
from enclosure_app.planning.site_list.asking import of_product

PRODUCTS = load_products()


def asked(product: str) -> list[str]:
    return [question.name for question in of_product(PRODUCTS[product])]


@pytest.mark.parametrize(
    ("product", "names"),
    [
        ("self-adhered-sheet", ["clean-and-dry", "pressed-down", "flat-edge"]),
        ("sealant", ["clean-and-dry", "backing", "tooled", "bead-size"]),
        ("sill-gasket", ["clean-and-dry", "squeezed"]),
        ("housewrap", ["fasteners", "caps", "no-tears"]),
        ("underlayment", ["fasteners", "caps", "no-tears"]),
        ("head-flashing", ["fall", "end-dam", "drip", "lengths"]),
        ("drip-edge", ["drip", "lengths", "edge-fixed"]),
        ("sill-pan", ["fall", "back-dam", "end-dam", "dry-before-covered"]),
        ("slab-vapour-retarder", ["no-tears"]),
        ("bituminous-roofing", ["clean-and-dry", "seam", "flat-edge"]),
        ("single-ply-roofing-fastened", ["clean-and-dry", "seam", "flat-edge", "fasteners"]),
        ("closed-cell-foam", ["foam-full"]),
        ("mineral-wool", ["tight-butt"]),
    ],
)
def test_the_family_and_the_bond_decide_what_to_look_at(product: str, names: list[str]) -> None:
    assert asked(product) == names


def test_every_product_that_is_bonded_is_asked_something_once() -> None:
    for product in PRODUCTS.values():
        names = asked(product.key)
        assert names or product.bond is Bond.RIGID, product.key
        assert len(set(names)) == len(names)


def test_no_roof_is_asked_for_studs_and_no_wall_for_its_deck() -> None:
    for product in PRODUCTS.values():
        texts = " ".join(question.text for question in of_product(product))
        roof = product.kind in (Kind.ROOFING, Kind.UNDERLAYMENT, Kind.EAVE_MEMBRANE)
        assert ("studs" if roof else "deck") not in texts, product.key


def test_gaskets_are_never_asked_to_be_tooled() -> None:
    gaskets = [p for p in PRODUCTS.values() if p.kind is Kind.GASKET]
    assert gaskets
    assert all("tooled" not in asked(p.key) for p in gaskets)
