"""The products that a layer map adds to the catalogue, or changes in it."""

from collections.abc import Mapping
from types import MappingProxyType
from typing import Any

from enclosure_app.files.maps import tables as wants
from enclosure_app.files.maps.catalogue import load_products, product_of
from enclosure_app.files.maps.tables import Check, Complaints
from enclosure_app.language import say
from enclosure_app.model.product import Bond, Control, Kind, Product

FIGURES = ("min_lap_mm", "thickness_mm", "permeance_ng", "sd_m", "conductivity")
"""The fields of a product that are figures, each of which may be unknown."""

_FIELDS: Mapping[str, Check] = MappingProxyType(
    {
        "name": wants.text,
        "controls": wants.some_of([*Control]),
        "bond": wants.one_of([*Bond]),
        "kind": wants.one_of([*Kind]),
        "drawn": wants.one_of(["line", "area", "either"]),
        "min_lap_mm": wants.number,
        "thickness_mm": wants.positive,
        "permeance_ng": wants.number,
        "sd_m": wants.number,
        "conductivity": wants.positive,
        "source": wants.text,
        "confirmed": wants.flag,
        "unknown": wants.some_of(FIGURES),
    }
)
_NEEDED = ("name", "controls", "bond")


def own_products(tables: object, complaints: Complaints) -> dict[str, Product]:
    """Return the products of the table ``[products]``; what is wrong goes to `complaints`.

    A key of the catalogue keeps what the table does not name, but for the figures that it calls
    `unknown`. A figure that the map gives is the office's own and counts as confirmed; so does
    the product, once no figure of it is left from the catalogue.
    """
    if not isinstance(tables, dict):
        return {}
    products = {}
    for key, table in tables.items():
        path = ("products", key)
        base = load_products().get(key)
        sound = complaints.fields(path, table, _FIELDS)
        if isinstance(table, dict) and (wrong := _amiss(table, base)):
            complaints.say(path, f"{wants.title(path)} {wrong}")
        elif sound:
            products[key] = product_of(key, _completed(table, base, complaints.file))
    return products


def _amiss(table: Mapping[str, Any], base: Product | None) -> str:
    """What is wrong with the fields that a product has, taken together."""
    if "permeance_ng" in table and "sd_m" in table:
        return say("has both 'permeance_ng' and 'sd_m'; keep one of them.")
    unknown = table.get("unknown")
    if both := [name for name in table if isinstance(unknown, list) and name in unknown]:
        return say("gives '{key}' and calls it unknown; keep one of them.", key=both[0])
    misspelt = not set(table) <= set(_FIELDS)
    lacking = [f"'{name}'" for name in _NEEDED if name not in table]
    if base is None and lacking and not misspelt:
        return say(
            "is not in the catalogue, so it needs {keys} as well.", keys=" and ".join(lacking)
        )
    return ""


def _completed(table: Mapping[str, Any], base: Product | None, file: str) -> dict[str, Any]:
    """The fields of the product: those of the table, then those of the catalogue."""
    unknown = dict.fromkeys(table.get("unknown", ()))
    table = {name: value for name, value in table.items() if name != "unknown"}
    kept = {**(_kept(table, base) if base else {}), **unknown}
    left = [name for name in FIGURES if kept.get(name) is not None]
    given = [name for name in FIGURES if name in table]
    if base and not given:
        origin = {"source": base.source, "confirmed": base.confirmed}
    elif base and left:
        origin = {
            "source": say("{file}; other figures: {source}", file=file, source=base.source),
            "confirmed": False,
        }
    else:
        origin = {"source": file, "confirmed": True}
    return {**kept, **origin, **table}


def _kept(table: Mapping[str, Any], base: Product) -> dict[str, Any]:
    """What the catalogue says and the table does not."""
    names = set(_FIELDS) - set(table) - {"unknown"}
    if "permeance_ng" in table or "sd_m" in table:
        names -= {"permeance_ng", "sd_m"}  # two measures of one thing
    return {name: getattr(base, name) for name in names}
