"""Lengths as an office writes them."""

from fractions import Fraction


def written(mm: float, unit_mm: float) -> str:
    """Return a length in millimetres, metres, or feet and inches to the nearest eighth."""
    if unit_mm == 1.0:
        return f"{mm:.0f}"
    if unit_mm == 1000.0:
        return f"{mm / 1000:.3f}"
    eighths = round(mm / 25.4 * 8)
    feet, rest = divmod(eighths, 96)
    whole, part = divmod(rest, 8)
    inches = f"{whole} {Fraction(part, 8)}" if part and whole else f"{Fraction(rest, 8)}"
    return f"{feet}'-{inches}\"" if feet else f'{inches}"'
