"""Lengths and coordinates in words, in the units that the drawing was drawn in."""

from fractions import Fraction

from enclosure_app.model.drawing import Units

_DECIMALS = {Units.MM: 1, Units.CM: 2, Units.M: 4, Units.IN: 3, Units.FT: 4}


def length(mm: float, units: Units) -> str:
    """Return a length as the trade writes it: mm for metric drawings, else feet and inches."""
    return _feet_and_inches(mm) if units.imperial else f"{_trimmed(mm, 1)} mm"


def coordinate(mm: float, units: Units) -> str:
    """Return one coordinate as the drawing program shows it, in the drawing's own units."""
    return _trimmed(mm / units.in_mm, _DECIMALS[units])


def _trimmed(value: float, decimals: int) -> str:
    text = f"{value:.{decimals}f}".rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text


def _feet_and_inches(mm: float) -> str:
    sixteenths = round(abs(mm) / 25.4 * 16)
    sign = "-" if mm < 0 and sixteenths else ""
    feet, rest = divmod(sixteenths, 12 * 16)
    whole, part = divmod(rest, 16)
    fraction = f"{Fraction(part, 16)}" if part else ""
    inches = f"{whole} {fraction}" if fraction and (whole or feet) else fraction or f"{whole}"
    return f"{sign}{feet}'-{inches}\"" if feet else f'{sign}{inches}"'
