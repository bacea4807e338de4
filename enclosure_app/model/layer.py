"""What the layers of a drawing are said to be: one row for each saying, the first that holds wins."""

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from enum import StrEnum
from fnmatch import fnmatchcase

_SPECIAL = re.compile(r"([*?\[])")


class Role(StrEnum):
    """What a layer is that holds no product.

    `LINEWORK` is what a layer is that nothing is said of; it is said only where a later row, or a
    guess from the name, would make something else of it.
    """

    FRAME = "frame"
    BREAK = "break"
    NOTE = "note"
    IGNORE = "ignore"
    LINEWORK = "linework"

    @property
    def shown(self) -> bool:
        """Whether its lines are shown as linework, to be snapped to."""
        return self in (Role.NOTE, Role.LINEWORK)


@dataclass(frozen=True, slots=True)
class LayerRow:
    """One row: which entities it is for, and the `product` or `role` that it gives them.

    `match`, `linetype` and `block` are shell-style patterns, case ignored. A handle stands for
    the entity that has it, and for everything that came in with a block of that handle.
    """

    match: str
    product: str | None = None
    role: str | None = None
    linetype: str | None = None
    color: int | None = None
    block: str | None = None
    handles: tuple[str, ...] = ()

    @property
    def narrowed(self) -> bool:
        """Whether it is for some of a layer's entities only."""
        return bool(self.linetype or self.color is not None or self.block or self.handles)

    def named_for(self, layer: str) -> bool:
        """Whether its pattern is for a layer of this name."""
        return fnmatchcase(layer.casefold(), self.match.casefold())


def exactly(name: str) -> str:
    """Return the pattern that is for a layer of this very name."""
    return _SPECIAL.sub(r"[\1]", name)


def row_of(rows: Sequence[LayerRow], layer: str) -> LayerRow | None:
    """Return the first row that is for all of a layer, None where nothing is said of it."""
    return next((row for row in rows if not row.narrowed and row.named_for(layer)), None)


def narrower_rows(rows: Sequence[LayerRow], layer: str) -> tuple[LayerRow, ...]:
    """Return the rows that say something else of some of a layer's lines, in their order."""
    whole = row_of(rows, layer)
    before = rows[: rows.index(whole)] if whole else rows
    return tuple(row for row in before if row.narrowed and row.named_for(layer))


def rows_saying(
    rows: Sequence[LayerRow],
    layers: Iterable[str],
    *,
    product: str | None = None,
    role: str | None = None,
) -> tuple[LayerRow, ...]:
    """Return rows that say what layers are; what narrower rows say of some lines stands.

    Args:
        rows: What was said before.
        layers: The names of the layers.
        product: The product's key, or
        role: the role. `Role.LINEWORK` takes back what was said, and is written down only where
            another row would say something else.
    """
    for layer in layers:
        rows = _saying(rows, LayerRow(exactly(layer), product, role), layer)
    return tuple(rows)


def _saying(rows: Sequence[LayerRow], new: LayerRow, layer: str) -> Sequence[LayerRow]:
    at = next((i for i, row in enumerate(rows) if row == row_of(rows, layer)), len(rows))
    left = [*rows]
    if at < len(left) and left[at].match.casefold() == new.match.casefold():
        left.pop(at)
    if new.role == Role.LINEWORK and row_of(left, layer) is None:
        bare = narrower_rows(left, layer) == narrower_rows(rows, layer)
        if bare:  # else narrower rows that the old one kept from this layer would get at it
            return left
    return [*left[:at], new, *left[at:]]
