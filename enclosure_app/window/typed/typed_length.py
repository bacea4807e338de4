"""Reads what builders type: ``1200``, ``1.2 m``, ``3' 4 1/2"``, ``900 at 45``, ``400; 1200``, ``6 in 12``.

A place is its two coordinates with a semicolon between, since lengths have commas and spaces.
"""

import re
from dataclasses import dataclass
from math import isfinite, radians, tan

from enclosure_app.errors import EnclosureError
from enclosure_app.language import say
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Point

_NUMBER = r"(?:\d+(?:[.,]\d*)?|[.,]\d+)"
_FRACTION = r"(?:(\d+)\s*/\s*(\d+))"
_METRIC = re.compile(rf"({_NUMBER})\s*(mm|cm|m|in|ft)?", re.IGNORECASE)
_FEET = re.compile(
    rf"(?:({_NUMBER})\s*(?:'|ft)\s*)?"  # feet, then inches: 4, 4 1/2 or 1/2
    rf"(?:(?:({_NUMBER})(?:\s+{_FRACTION})?|{_FRACTION})\s*(?:\"|in)?)?"
)
_PITCH = re.compile(rf"({_NUMBER})\s*(?:in|:|/)\s*({_NUMBER})")
_PERCENT = re.compile(rf"({_NUMBER})\s*%")
_AT = re.compile(r"\s*(?:\bat\b|@|∠)\s*")
_PLAIN = str.maketrans({"′": "'", "’": "'", "″": '"', "”": '"', "−": "-", "⁄": "/"})


@dataclass(frozen=True, slots=True)
class Typed:
    """What was typed: a place (mm), or a length in mm and an angle in degrees, or one of the two.

    Angles are anticlockwise from the right.
    """

    length: float | None
    angle: float | None = None
    place: Point | None = None


def read_typed(text: str, units: Units) -> Typed:
    """Read a length, a length ``at`` an angle, ``at`` and an angle alone, or a place ``x; y``.

    Raises:
        EnclosureError: it is none of these.
    """
    across, semicolon, up = text.strip().removeprefix("(").removesuffix(")").partition(";")
    if semicolon:
        return Typed(None, place=(read_signed(across, units), read_signed(up, units)))
    length, *angle = _AT.split(text.translate(_PLAIN).strip(), maxsplit=1)
    return Typed(
        read_length(length, units) if length else None,
        _angle(angle[0], text) if angle else None,
    )


def read_signed(text: str, units: Units) -> float:
    """Return a typed coordinate in mm, which may be below zero.

    Raises:
        EnclosureError: it is none.
    """
    plain = text.translate(_PLAIN).strip()
    back = plain.startswith("-")
    return read_length(plain[1:] if back else plain, units) * (-1 if back else 1)


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
    told = say(
        "“{text}” is no length: type it as in {example} or {example} at 45.",
        text=text,
        example=example,
    )
    raise EnclosureError(told)


def read_angle(text: str) -> float:
    """Return a typed angle in degrees.

    Raises:
        EnclosureError: it is none.
    """
    try:
        return _degrees(text)
    except ValueError:
        raise EnclosureError(
            say("“{text}” is no angle: type degrees, as in 22.5.", text=text)
        ) from None


def read_pitch(text: str) -> float:
    """Return a typed pitch as rise over run: ``6 in 12``, ``6:12``, ``1/2``, ``26.6°``, ``50 %``.

    A bare number is degrees.

    Raises:
        EnclosureError: it is none.
    """
    plain = text.translate(_PLAIN).strip()
    if found := _PITCH.fullmatch(plain):
        run = _number(found[2])
        if run > 0:
            return _number(found[1]) / run
    if found := _PERCENT.fullmatch(plain):
        return _number(found[1]) / 100
    try:
        angle = _degrees(plain)
    except ValueError:
        angle = 90.0
    if 0 <= angle < 90:
        return tan(radians(angle))
    raise EnclosureError(say("“{text}” is no pitch: type it as in 6 in 12, or 26.6°.", text=text))


def _angle(text: str, whole: str) -> float:
    try:
        return _degrees(text)
    except ValueError:
        told = say("“{text}” has no angle after “at”: type degrees, as in 1200 at 45.", text=whole)
        raise EnclosureError(told) from None


def _degrees(text: str) -> float:
    degrees = float(text.translate(_PLAIN).strip().rstrip("°").replace(",", "."))
    if not isfinite(degrees):
        raise ValueError(text)
    return degrees


def _number(text: str | None) -> float:
    return float(text.replace(",", ".")) if text else 0.0
