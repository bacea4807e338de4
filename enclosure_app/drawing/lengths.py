"""Writes lengths as the drawing's readers write them: millimetres, or feet and inches."""

from math import gcd

from enclosure_app.language import written
from enclosure_app.model.drawing import Units

_SIXTEENTHS = 16
_NARROW = "\u202f"  # the space between thousands (ISO 80000-1)


def format_length(mm: float, units: Units) -> str:
    """Return `mm` in words of `units`, such as ``30 mm``, ``0.030 m`` or ``3' 4 1/2"``.

    Feet and inches are rounded to the nearest 1/16 inch. What is not nothing but would round
    to nothing is written as less than the smallest step.
    """
    sign = "−" if mm < 0 else ""
    if units.imperial:
        return sign + _feet_and_inches(abs(mm))
    return sign + _metric(abs(mm), units)


def _metric(mm: float, units: Units) -> str:
    decimals = {Units.MM: 0, Units.CM: 1, Units.M: 3}[units]
    step = 10.0**-decimals
    value = mm / units.in_mm
    if 0 < value < step / 2:
        return written(f"<{step:.{decimals}f} {units.value}")
    whole, point, rest = f"{value:,.{decimals}f}".partition(".")
    return f"{whole.replace(',', _NARROW)}{written(point)}{rest} {units.value}"


def _feet_and_inches(mm: float) -> str:
    sixteenths = round(mm / 25.4 * _SIXTEENTHS)
    if sixteenths == 0:
        return '<1/16"' if mm > 0 else '0"'
    feet, rest = divmod(sixteenths, 12 * _SIXTEENTHS)
    whole, part = divmod(rest, _SIXTEENTHS)
    return " ".join(filter(None, (f"{feet}'" if feet else "", _inches(whole, part, bool(feet)))))


def _inches(whole: int, part: int, after_feet: bool) -> str:
    shared = gcd(part, _SIXTEENTHS)
    fraction = f"{part // shared}/{_SIXTEENTHS // shared}" if part else ""
    number = str(whole) if whole or (after_feet and not part) or not part else ""
    return " ".join(filter(None, (number, fraction))) + '"'
