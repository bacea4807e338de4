"""Lengths as they are written on a sheet."""

import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.drawing.lengths import format_length
from enclosure_app.model.drawing import Units


@pytest.mark.parametrize(
    ("mm", "units", "text"),
    [
        (0.0, Units.MM, "0 mm"),
        (30.4, Units.MM, "30 mm"),
        (0.3, Units.MM, "<1 mm"),
        (12345.0, Units.MM, "12\u202f345 mm"),
        (30.0, Units.CM, "3.0 cm"),
        (30.0, Units.M, "0.030 m"),
        (-30.0, Units.MM, "−30 mm"),
        (0.0, Units.IN, '0"'),
        (0.5, Units.IN, '<1/16"'),
        (25.4, Units.IN, '1"'),
        (25.4 * 4.5, Units.IN, '4 1/2"'),
        (25.4 * 3 / 16, Units.IN, '3/16"'),
        (25.4 * 36, Units.IN, "3' 0\""),
        (25.4 * 40.5, Units.IN, "3' 4 1/2\""),
        (25.4 * 36.25, Units.FT, "3' 1/4\""),
        (25.4 * 11.99, Units.FT, "1' 0\""),
    ],
)
def test_a_length_is_written_in_the_units_of_the_drawing(
    mm: float, units: Units, text: str
) -> None:
    assert format_length(mm, units) == text


@given(st.integers(1, 20_000))
def test_sixteenths_of_an_inch_survive_being_written(sixteenths: int) -> None:
    """What is written adds up to what was meant, with the fraction in lowest terms."""
    text = format_length(sixteenths * 25.4 / 16, Units.IN)
    found = re.fullmatch(r"(?:(\d+)' )?(?:(\d+)(?: |(?=\")))?(?:(\d+)/(\d+))?\"", text)
    assert found is not None, text
    feet, whole, top, bottom = (int(part or 0) for part in found.groups())
    part = Fraction(top, bottom) if bottom else Fraction(0)
    assert (12 * feet + whole + part) * 16 == sixteenths
    assert bottom == part.denominator or not bottom
