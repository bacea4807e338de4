"""Writes a layer map, so that the office's next drawing is read as this one was."""

import json
import re
from collections.abc import Iterator, Mapping
from pathlib import Path

from enclosure_app.files.atomic import write_atomically
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.layer_map import LayerMap
from enclosure_app.files.maps.products import FIGURES
from enclosure_app.model.layer import LayerRow
from enclosure_app.model.product import Control, Product
from enclosure_app.model.project import Project

ABOUT = "# A layer map: what each layer means. The first row that is for a line holds."

_BARE = re.compile(r"[A-Za-z0-9_-]+")
_CONTROL = re.compile(r"[\x7f-\x9f\ufffe\uffff]")


def map_of(project: Project) -> LayerMap:
    """Return what a project says of its drawing's layers, with its products and own figures."""
    products = {**load_products()}
    for section in project.sections:
        products.update(section.products)
    return LayerMap(
        project.layers,
        products,
        limits=project.figures,
        book=project.book or None,
        severities=project.severities,
    )


def save_layer_map(layer_map: LayerMap, path: Path) -> None:
    """Write a layer map, whole or not at all; `load_layer_map` gives the same one back.

    Raises:
        EnclosureError: the folder or the disk refuses.
    """
    write_atomically(path, map_text(layer_map).encode("utf-8", "replace"))


def map_text(layer_map: LayerMap) -> str:
    """Return a layer map as TOML. Of the products, it holds those that the program lacks."""
    blocks = [[ABOUT]]
    if layer_map.book:
        blocks.append([_line("book", layer_map.book)])
    blocks += [
        [f"[products.{_key(key)}]", *_product(product)]
        for key, product in layer_map.products.items()
        if load_products().get(key) != product
    ]
    blocks += [["[[layers]]", *_row(row)] for row in layer_map.rows]
    blocks += _table("limits", layer_map.limits)
    blocks += _table("severity", layer_map.severities)
    return "\n\n".join("\n".join(block) for block in blocks) + "\n"


def _product(product: Product) -> Iterator[str]:
    yield _line("name", product.name)
    yield _line("controls", [str(each) for each in Control if each in product.controls])
    yield _line("bond", str(product.bond))
    yield _line("kind", str(product.kind))
    yield _line("drawn", product.drawn)
    for name in FIGURES:
        if getattr(product, name) is not None:
            yield _line(name, getattr(product, name))
    if unknown := _unknown(product):
        yield _line("unknown", unknown)
    if product.source:
        yield _line("source", product.source)
    yield _line("confirmed", product.confirmed)


def _unknown(product: Product) -> list[str]:
    """Return the figures that reading would take from the catalogue, though the product has none."""
    base = load_products().get(product.key)
    measured = product.permeance_ng is not None or product.sd_m is not None
    return [
        name
        for name in FIGURES
        if base is not None
        and getattr(product, name) is None
        and getattr(base, name) is not None
        and not (measured and name in ("permeance_ng", "sd_m"))
    ]


def _row(row: LayerRow) -> Iterator[str]:
    yield _line("match", row.match)
    for name in ("linetype", "color", "block", "handles", "product", "role"):
        value = getattr(row, name)
        if value is not None and value != ():
            yield _line(name, list(value) if name == "handles" else value)


def _table(name: str, values: Mapping[str, object]) -> list[list[str]]:
    lines = [_line(key, value) for key, value in values.items()]
    return [[f"[{name}]", *lines]] if lines else []


def _line(key: str, value: object) -> str:
    return f"{_key(key)} = {_value(value)}"


def _key(key: str) -> str:
    return key if _BARE.fullmatch(key) else _text(key)


def _value(value: object) -> str:
    if isinstance(value, bool):
        return str(value).lower()
    if isinstance(value, str):
        return _text(str(value))
    if isinstance(value, list):
        return f"[{', '.join(map(_value, value))}]"
    return repr(value)


def _text(text: str) -> str:
    """Return a basic string of TOML 1.0, whose escapes are those of JSON."""
    return _CONTROL.sub(
        lambda match: f"\\u{ord(match[0]):04x}", json.dumps(text, ensure_ascii=False)
    )
