"""Lengths and units as the texts of a drawing write them, and as they are called."""

import re
from collections.abc import Mapping
from types import MappingProxyType

from enclosure_app.language import say
from enclosure_app.model.drawing import Units

NAMES: Mapping[Units, str] = MappingProxyType(
    {
        Units.MM: "millimetres",
        Units.CM: "centimetres",
        Units.M: "metres",
        Units.IN: "inches",
        Units.FT: "feet",
    }
)


def called(units: Units) -> str:
    """Return the name of a unit, in the plural."""
    return say(NAMES[units])


def length_written(text: str) -> tuple[float, Units | None] | None:
    """Return the number that a dimension's text writes and its unit, None where it writes none.

    Feet and inches (``5'-4 1/2"``) come in inches; a bare number has no unit.
    """
    plain = _FRACTIONS.sub(lambda m: _GLYPHS[m.group()], text.strip())
    match = _FEET.fullmatch(plain)
    if match and (match["feet"] or match["mark"]):
        inches = float(match["feet"] or 0) * 12 + _mixed(match["inches"] or "")
        return inches, Units.IN
    match = _PLAIN.fullmatch(plain)
    if not match:
        return None
    unit = match["unit"]
    return float(match["number"].replace(",", ".")), Units(unit.lower()) if unit else None


def _mixed(text: str) -> float:
    """Return the value of ``4``, ``1/2`` or ``4 1/2``."""
    halves = (part.partition("/") for part in text.replace("-", " ").split())
    return sum(float(over) / float(under or 1) for over, _, under in halves)


_GLYPHS = {
    "½": " 1/2",
    "¼": " 1/4",
    "¾": " 3/4",
    "⅛": " 1/8",
    "⅜": " 3/8",
    "⅝": " 5/8",
    "⅞": " 7/8",
}
_FRACTIONS = re.compile("[" + "".join(_GLYPHS) + "]")
_FEET = re.compile(
    r"(?:(?P<feet>\d+(?:\.\d+)?)\s*(?:'|′|ft)\s*-?\s*)?"
    r"(?:(?P<inches>\d+(?:\.\d+)?(?:[\s-]+\d+/\d+)?|\s*\d+/\d+)\s*(?P<mark>\"|''|″|in)?)?",
    re.I,
)
_PLAIN = re.compile(r"(?P<number>\d+(?:[.,]\d+)?)\s*(?P<unit>mm|cm|m)?", re.I)
