"""The layer map: what the layers of an office's drawings mean (design.md, 5.1)."""

import re
from collections.abc import Collection, Mapping
from dataclasses import dataclass, field
from fnmatch import translate
from pathlib import Path
from types import MappingProxyType
from typing import Any

from enclosure_app.files.dxf.raw import Tag
from enclosure_app.files.maps import tables as wants
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.products import own_products
from enclosure_app.files.maps.rule_book import books, limit_units
from enclosure_app.files.maps.tables import Check, Complaints, meant
from enclosure_app.files.maps.toml_lines import read_toml
from enclosure_app.language import say
from enclosure_app.model.finding import Severity
from enclosure_app.model.layer import LayerRow, Role
from enclosure_app.model.product import Product


@dataclass(frozen=True, slots=True)
class LayerMap:
    """The rows in order, and every product that they may name (the catalogue's and its own).

    `limits` are figures put in place of the rule book's (mm, or the unit of that figure),
    `severities` levels by rule name.
    """

    rows: tuple[LayerRow, ...]
    products: Mapping[str, Product]
    limits: Mapping[str, float] = field(default_factory=lambda: MappingProxyType({}))
    book: str | None = None
    severities: Mapping[str, Severity] = field(default_factory=lambda: MappingProxyType({}))
    _tests: tuple["_RowTest", ...] = field(init=False, repr=False, compare=False)
    _handles: frozenset[str] = field(init=False, repr=False, compare=False)
    _known: dict[tuple[str, str, int, str], LayerRow | None] = field(
        init=False, repr=False, compare=False, default_factory=dict
    )

    def __post_init__(self) -> None:
        """Compile the patterns."""
        object.__setattr__(self, "_tests", tuple(map(_RowTest.of, self.rows)))
        handles = (handle for test in self._tests for handle in test.handles)
        object.__setattr__(self, "_handles", frozenset(handles))

    def row_for(self, tag: Tag) -> LayerRow | None:
        """Return the first row that is for the entity, None where it is plain linework."""
        if self._handles:
            named = self._handles.intersection(_handles_of(tag.handle))
            if named:
                return self._first(tag, named)
        key = (tag.layer, tag.linetype, tag.color, tag.block)
        if key not in self._known:
            self._known[key] = self._first(tag, frozenset())
        return self._known[key]

    def _first(self, tag: Tag, named: frozenset[str]) -> LayerRow | None:
        return next((test.row for test in self._tests if test.holds(tag, named)), None)


@dataclass(frozen=True, slots=True)
class _RowTest:
    """A row with its patterns compiled."""

    row: LayerRow
    layer: re.Pattern[str]
    linetype: re.Pattern[str]
    block: re.Pattern[str]
    handles: frozenset[str]

    @classmethod
    def of(cls, row: LayerRow) -> "_RowTest":
        patterns = (row.match, row.linetype or "*", row.block or "*")
        layer, linetype, block = (re.compile(translate(one.casefold())) for one in patterns)
        return cls(row, layer, linetype, block, frozenset(map(str.upper, row.handles)))

    def holds(self, tag: Tag, named: frozenset[str]) -> bool:
        return bool(
            self.layer.match(tag.layer.casefold())
            and self.row.color in (None, tag.color)
            and self.linetype.match(tag.linetype.casefold())
            and self.block.match(tag.block.casefold())
            and (not self.handles or self.handles & named)
        )


def _handles_of(handle: str) -> set[str]:
    """The handle itself and those of the blocks that it came in: ``2F/3A#2`` is in ``2F``."""
    handle = handle.upper()
    cuts = [at for at, char in enumerate(handle) if char in "/#"]
    return {handle, *(handle[:cut] for cut in cuts)}


def load_layer_map(path: Path, rules: Collection[str] = ()) -> LayerMap:
    """Read a layer map.

    Args:
        path: The TOML file.
        rules: The names of the rules there are; empty leaves names in ``[severity]`` unchecked.

    Raises:
        EnclosureError: the file cannot be read or is not TOML.
        ListedError: its tables hold errors; one sentence for each, with its line.
    """
    tables, lines = read_toml(path)
    complaints = Complaints(path.name, lines)
    complaints.fields((), tables, _top_level())
    products = {**load_products()}
    own = tables.get("products", {})
    own = own if isinstance(own, dict) else {}
    products.update(own_products(own, complaints))
    rows = _rows(tables.get("layers", []), [*dict.fromkeys([*products, *own])], complaints)
    limits = _limits(tables.get("limits", {}), complaints)
    severities = _severities(tables.get("severity", {}), rules, complaints)
    complaints.raise_if_any()
    return LayerMap(
        rows=rows,
        products=MappingProxyType(products),
        limits=MappingProxyType(limits),
        book=tables.get("book"),
        severities=MappingProxyType(severities),
    )


def _top_level() -> dict[str, Check]:
    return {
        "products": _table,
        "layers": _tables,
        "limits": _table,
        "severity": _table,
        "book": wants.one_of(books()),
    }


def _table(value: object) -> str:
    return "" if isinstance(value, dict) else say("must be a table in brackets of its own.")


def _tables(value: object) -> str:
    sound = isinstance(value, list) and all(isinstance(row, dict) for row in value)
    return "" if sound else say("must be written as [[layers]], once for each row.")


_ROW: Mapping[str, Check] = MappingProxyType(
    {
        "match": wants.text,
        "product": wants.text,
        "role": wants.one_of([*Role]),
        "linetype": wants.text,
        "color": wants.aci,
        "block": wants.text,
        "handles": wants.texts,
    }
)


def _rows(
    tables: object, products: Collection[str], complaints: Complaints
) -> tuple[LayerRow, ...]:
    """The sound rows; `products` holds the keys there are, unsound products of the map too."""
    if not isinstance(tables, list) or _tables(tables):
        return ()
    rows = []
    for number, table in enumerate(tables):
        path = ("layers", number)
        sound = complaints.fields(path, table, _ROW)
        if wrong := _amiss(table):
            complaints.say(path, wrong)
        elif sound and table.get("product") not in (None, *products):
            key = table["product"]
            complaints.say(
                (*path, "product"),
                say("unknown product '{key}'{hint}", key=key, hint=meant(key, products)),
            )
        elif sound:
            rows.append(_row(table))
    return tuple(rows)


def _amiss(table: Mapping[str, Any]) -> str:
    """What is wrong with the fields that a row has, taken together."""
    if not set(table) <= set(_ROW):
        return ""  # a misspelt key has been said, and is what lacks
    narrowing = {"match", "linetype", "color", "block", "handles"}
    if not narrowing.intersection(table):
        return say("[[layers]] needs 'match', a pattern for the names of layers.")
    if "product" in table and "role" in table:
        return say("[[layers]] has both 'product' and 'role'; keep one of them.")
    if "product" not in table and "role" not in table:
        return say("[[layers]] has neither 'product' nor 'role'; say what the layer is.")
    return ""


def _row(table: Mapping[str, Any]) -> LayerRow:
    given = {**table, "handles": tuple(table.get("handles", ()))}
    return LayerRow(**{"match": "*", **given})


def _limits(table: object, complaints: Complaints) -> dict[str, float]:
    by_unit = {"mm": wants.number, "slope": wants.slope, "setting": wants.setting}
    checks = {name: by_unit[unit] for name, unit in limit_units().items()}
    if not isinstance(table, dict) or not complaints.fields(("limits",), table, checks):
        return {}
    return {name: float(value) for name, value in table.items()}


def _severities(
    table: object, rules: Collection[str], complaints: Complaints
) -> dict[str, Severity]:
    if not isinstance(table, dict):
        return {}
    checks = dict.fromkeys(rules or table, wants.one_of([*Severity]))
    sound = complaints.fields(("severity",), table, checks)
    return {rule: Severity(level) for rule, level in table.items()} if sound else {}
