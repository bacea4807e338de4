"""Which products a project file holds, and the whole list that a section has again afterwards."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from types import MappingProxyType

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.product import Product
from enclosure_app.model.section import Section

Products = Mapping[str, Product]


def kept(sections: Sequence[Section]) -> tuple[Products, list[Products]]:
    """Return the products to be kept: those of all sections, and those of each one alone.

    Kept is what a piece is made of, and what is not, or not so, in the program's own list. An
    unused product of the program's list need not be kept.
    """
    used = {piece.product for section in sections for piece in section.pieces}
    usual = load_products()
    needed = [
        {
            key: product
            for key, product in section.products.items()
            if key in used or usual.get(key) != product
        }
        for section in sections
    ]
    first = needed[0] if needed else {}
    shared = {
        key: product
        for key, product in first.items()
        if all(products.get(key) == product for products in needed)
    }
    own = [{k: p for k, p in products.items() if k not in shared} for products in needed]
    return shared, list(own)


def products_in(sections: Iterable[Section], shared: Products) -> tuple[Section, ...]:
    """Return sections that know the program's products, the shared ones, and then their own.

    Sections without products of their own share one list.
    """
    common = MappingProxyType({**load_products(), **shared})
    return tuple(
        replace(
            section,
            products=MappingProxyType({**common, **section.products})
            if section.products
            else common,
        )
        for section in sections
    )
