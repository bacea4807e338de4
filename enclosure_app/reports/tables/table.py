"""Tables of what was found and of what to look at, as values: whoever writes them decides how."""

from dataclasses import dataclass
from datetime import UTC, datetime

from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Point
from enclosure_app.model.said.moment import instant

Value = str | float | int | datetime | None
_DECIMALS = {Units.MM: 1, Units.CM: 2, Units.M: 4, Units.IN: 3, Units.FT: 4}


@dataclass(frozen=True, slots=True)
class Column:
    """One column: its head, with the unit where it holds lengths, and how many letters wide it is.

    `decimals` is how many are shown of a number; None where it holds no lengths.
    """

    head: str
    width: int
    decimals: int | None = None


@dataclass(frozen=True, slots=True)
class Table:
    """A table with a name; every row has a value for each column. Moments are in UTC."""

    name: str
    columns: tuple[Column, ...]
    rows: tuple[tuple[Value, ...], ...]


def length_column(head: str, units: Units) -> Column:
    """Return a column of lengths, with their unit in its head."""
    return Column(f"{head} ({units.value})", 12, _DECIMALS[units])


def length(mm: float | None, units: Units) -> float | None:
    """Return a length in units, to what a drawing in these can be read to."""
    return None if mm is None else round(mm / units.in_mm, _DECIMALS[units]) + 0.0


def place_columns(units: Units) -> tuple[Column, Column]:
    """Return the columns of a place in the drawing."""
    return length_column("x", units), length_column("y", units)


def place_cells(at: Point, units: Units) -> tuple[Value, ...]:
    """Return a place, in mm, as the cells for these columns."""
    return tuple(length(mm, units) for mm in at)


def moment_value(when: str) -> Value:
    """Return a moment as an instant in UTC; words that are none stay words."""
    at = instant(when)
    return at if at > datetime.min.replace(tzinfo=UTC) else when or None
