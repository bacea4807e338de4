"""Reads lengths and angles as builders type them: ``1200``, ``1.2 m``, ``3' 4 1/2"``, ``900 at 45``."""

import re
from dataclasses import dataclass

from enclosure_app.errors import EnclosureError
from enclosure_app.model.drawing import Units

_NUMBER = r"(?:\d+(?:[.,]\d*)?|[.,]\d+)"
_FRACTION = r"(?:(\d+)\s*/\s*(\d+))"
_METRIC = re.compile(rf"({_NUMBER})\s*(mm|cm|m|in|ft)?", re.IGNORECASE)
_FEET = re.compile(
    rf"(?:({_NUMBER})\s*(?:'|ft)\s*)?"  # feet, then inches: 4, 4 1/2 or 1/2
    rf"(?:(?:({_NUMBER})(?:\s+{_FRACTION})?|{_FRACTION})\s*(?:\"|in)?)?"
)
_AT = re.compile(r"\s*(?:\bat\b|@|∠)\s*")
_PLAIN = str.maketrans({"′": "'", "’": "'", "″": '"', "”": '"', "−": "-", "⁄": "/"})


@dataclass(frozen=True, slots=True)
class Typed:
    """What was typed: a length in mm, an angle in degrees anticlockwise from the right, or both."""

    length: float | None
    angle: float | None = None


def read_typed(text: str, units: Units) -> Typed:
    """Read a length, a length ``at`` an angle, or ``at`` and an angle alone.

    Raises:
        EnclosureError: it is none of these.
    """
    length, *angle = _AT.split(text.translate(_PLAIN).strip(), maxsplit=1)
    return Typed(
        read_length(length, units) if length else None,
        _angle(angle[0], text) if angle else None,
    )


def read_length(text: str, units: Units) -> float:
    """Return a typed length in mm; a bare number is in `units`.

    Raises:
        EnclosureError: it is no length.
    """
    plain = text.translate(_PLAIN).strip()
    if metric := _METRIC.fullmatch(plain):
        unit = Units(metric[2].lower()) if metric[2] else units
        return _number(metric[1]) * unit.in_mm
    feet = _FEET.fullmatch(plain)
    if plain and feet:
        over, under = feet[3] or feet[5] or "0", feet[4] or feet[6] or "1"
        if int(under):
            inches = _number(feet[2]) + int(over) / int(under)
            return (_number(feet[1]) * 12 + inches) * 25.4
    example = "3' 4 1/2\"" if units.imperial else "1200"
    raise EnclosureError(f"“{text}” is no length: type it as in {example} or {example} at 45.")


def _angle(text: str, whole: str) -> float:
    try:
        return float(text.strip().rstrip("°").replace(",", "."))
    except ValueError:
        raise EnclosureError(
            f"“{whole}” has no angle after “at”: type degrees, as in 1200 at 45."
        ) from None


def _number(text: str | None) -> float:
    return float(text.replace(",", ".")) if text else 0.0
