"""Reads and writes the figures of a product as people type them: ``4 in``, ``2 perm``, ``sd 0.2``."""

import re

from enclosure_app.errors import EnclosureError
from enclosure_app.language import say, written
from enclosure_app.model.drawing import Units
from enclosure_app.model.product import Product
from enclosure_app.window.typed.typed_length import read_length

PERM = 57.2135
"""ng/(Pa·s·m²) in one US perm (NIST SP 811, appendix B, perm at 0 °C; from memory)."""
BTU_INCH = 0.1442279
"""W/(m·K) in one Btu·in/(h·ft²·°F) (NIST SP 811, appendix B; from memory)."""

_AMOUNT = re.compile(r"(sd)?\s*=?\s*(\d+(?:[.,]\d*)?|[.,]\d+)\s*(.*)", re.IGNORECASE)
_NG = ("ng", "ng/(pa·s·m²)", "ng/(pa s m2)", "ng/pa·s·m²")
_PERMS = ("perm", "perms", "us perm", "us perms")
_BTU = ("btu", "btu·in/(h·ft²·°f)", "btu in/(h ft2 f)", "btu in")


def read_thickness(text: str, units: Units, what: str) -> float | None:
    """Return a typed length in mm, None for nothing; a bare number is mm, or inches.

    Raises:
        EnclosureError: it is no length.
    """
    if not text.strip():
        return None
    try:
        return read_length(text, Units.IN if units.imperial else Units.MM)
    except EnclosureError:
        example = '1/2"' if units.imperial else "12.5 mm"
        raise EnclosureError(
            say(
                "{what}: “{text}” is no length; type it as in {example}.",
                what=what,
                text=text,
                example=example,
            )
        ) from None


def read_vapour(text: str) -> tuple[float | None, float | None]:
    """Return the permeance (ng/(Pa·s·m²)) and the sd (m) that are typed; at most one is there.

    Raises:
        EnclosureError: it is neither, or does not say which.
    """
    if not text.strip():
        return None, None
    match = _AMOUNT.fullmatch(text.strip())
    if match:
        amount, unit = float(match[2].replace(",", ".")), match[3].strip().casefold()
        if match[1] and unit in ("", "m"):
            return None, amount
        if not match[1] and unit in _PERMS:
            return amount * PERM, None
        if not match[1] and unit in _NG:
            return amount, None
    raise EnclosureError(
        say(
            "Vapour: “{text}” has no unit that is known; type “2 perm”, “57 ng” or “sd 0.2 m”.",
            text=text,
        )
    )


def read_conductivity(text: str) -> float | None:
    """Return a typed conductivity, W/(m·K), None for nothing.

    Raises:
        EnclosureError: it is none.
    """
    if not text.strip():
        return None
    match = _AMOUNT.fullmatch(text.strip())
    if match and not match[1]:
        amount, unit = float(match[2].replace(",", ".")), match[3].strip().casefold()
        if unit in ("", "w", "w/mk", "w/(m·k)", "w/(m k)"):
            return amount
        if unit in _BTU:
            return amount * BTU_INCH
    raise EnclosureError(
        say(
            "Conductivity: “{text}” is none; type it in W/(m·K), as in 0.035, or as in 0.24 Btu.",
            text=text,
        )
    )


def thickness_text(mm: float | None, units: Units) -> str:
    """Return a thickness as it would be typed, "" for none."""
    if mm is None:
        return ""
    return f"{_plain(mm / 25.4)} in" if units.imperial else f"{_plain(mm)} mm"


def vapour_text(product: Product, units: Units, digits: int = 6) -> str:
    """Return how open a product is to vapour, as it would be typed, "" where nobody says so."""
    if product.sd_m is not None:
        return f"sd {_plain(product.sd_m, digits)} m"
    if product.permeance_ng is None:
        return ""
    if units.imperial:
        return f"{_plain(product.permeance_ng / PERM, digits)} perm"
    return f"{_plain(product.permeance_ng, digits)} ng"


def conductivity_text(product: Product) -> str:
    """Return a conductivity as it would be typed, "" for none."""
    return "" if product.conductivity is None else f"{_plain(product.conductivity)} W/(m·K)"


def _plain(number: float, digits: int = 6) -> str:
    """Return the first figures of a number, never with an exponent."""
    text = f"{number:.{digits}g}"
    number = float(text)
    return written(f"{number:.12f}".rstrip("0").rstrip(".") if "e" in text else text)
