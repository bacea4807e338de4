"""Edits of the list of products: the office's own ones are added, changed and removed."""

import re
import unicodedata
from collections.abc import Collection
from dataclasses import replace
from types import MappingProxyType

from enclosure_app.errors import EnclosureError
from enclosure_app.language import say, say_count
from enclosure_app.model.product import Product
from enclosure_app.model.project import Project


def new_key(name: str, taken: Collection[str]) -> str:
    """Return a key for a product of this name that no other has: ``Blue wrap`` is ``blue-wrap``."""
    letters = unicodedata.normalize("NFKD", name.casefold())
    stem = "-".join(re.findall(r"[a-z0-9]+", letters)) or "product"
    key, number = stem, 1
    while key in taken:
        number += 1
        key = f"{stem}-{number}"
    return key


def remove_product(project: Project, key: str, usual: Product | None = None) -> Project:
    """Take a product out of the list, or put back the one that the program has under its key.

    Args:
        project: The project.
        key: The product's key.
        usual: The program's own product of that key, None where it has none.

    Raises:
        EnclosureError: pieces are made of it, or layers said to be, and nothing takes its place.
    """
    if usual is None:
        _must_be_unused(project, key)
    lists = {id(section.products): section.products for section in project.sections}
    kept = {
        number: MappingProxyType(
            {k: usual if k == key and usual else p for k, p in held.items() if k != key or usual}
        )
        for number, held in lists.items()
    }
    sections = tuple(replace(s, products=kept[id(s.products)]) for s in project.sections)
    return replace(project, sections=sections)


def _must_be_unused(project: Project, key: str) -> None:
    pieces = sum(p.product == key for section in project.sections for p in section.pieces)
    layers = [row.match for row in project.layers if row.product == key]
    name = next((s.products[key].name for s in project.sections if key in s.products), key)
    if pieces:
        raise EnclosureError(
            say_count(
                pieces,
                "One piece is made of “{name}”: give it another product before you remove this one.",
                "{count} pieces are made of “{name}”: give them another product before you remove "
                "this one.",
                name=name,
            )
        )
    if layers:
        raise EnclosureError(
            say(
                "Layer “{layer}” is said to be “{name}”: say something else of it before you "
                "remove this product.",
                layer=layers[0],
                name=name,
            )
        )
