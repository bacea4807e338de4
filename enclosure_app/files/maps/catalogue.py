"""The products that come with the program, from ``resources/products.toml``."""

import tomllib
from collections.abc import Mapping
from functools import cache
from types import MappingProxyType
from typing import Any

from enclosure_app.model.product import Bond, Control, Kind, Product
from enclosure_app.resources import resource

USUAL_KINDS: Mapping[Bond, Kind] = MappingProxyType(
    {
        Bond.ADHERED: Kind.SHEET,
        Bond.FLUID: Kind.FLUID,
        Bond.FASTENED: Kind.SHEET,
        Bond.LOOSE: Kind.SHEET,
        Bond.SEALANT: Kind.SEALANT,
        Bond.TAPE: Kind.TAPE,
        Bond.RIGID: Kind.BOARD,
    }
)
"""The family of a product whose description names none."""


@cache
def load_products() -> Mapping[str, Product]:
    """Return the products by key, in the order of the file; read once."""
    with resource("products.toml").open("rb") as file:
        tables = tomllib.load(file)["products"]
    return MappingProxyType({key: product_of(key, table) for key, table in tables.items()})


def product_of(key: str, table: Mapping[str, Any]) -> Product:
    """Make a product of a table that is known to be sound.

    Args:
        key: The product's key.
        table: Its fields; the drawing reader's map is checked before it comes here.

    Raises:
        KeyError: `name`, `controls` or `bond` is missing.
        ValueError: a word is not one of `Control`, `Bond` or `Kind`.
    """
    bond = Bond(table["bond"])
    words = {"controls", "bond", "kind"}
    return Product(
        key=key,
        controls=frozenset(map(Control, table["controls"])),
        bond=bond,
        kind=Kind(table["kind"]) if "kind" in table else USUAL_KINDS[bond],
        **{name: value for name, value in table.items() if name not in words},
    )
