"""Lengths as dimensions write them.

The feet-and-inches notations are common practice, no source; 1 in = 25.4 mm exactly (NIST SP 811).
"""

import pytest

from enclosure_app.files.units.written import NAMES, called, length_written
from enclosure_app.model.drawing import Units


@pytest.mark.parametrize(
    ("text", "number", "unit"),
    [
        ("5'-4\"", 64, Units.IN),
        ("5'", 60, Units.IN),
        ("5'-4 1/2\"", 64.5, Units.IN),
        ("5' - 4½\"", 64.5, Units.IN),
        ('3 1/2"', 3.5, Units.IN),
        ('1/2"', 0.5, Units.IN),
        ("1200", 1200, None),
        ("1,20", 1.2, None),
        ("1200 mm", 1200, Units.MM),
        ("1.2 m", 1.2, Units.M),
        ("12.5cm", 12.5, Units.CM),
    ],
)
def test_what_a_dimension_writes_is_read(text: str, number: float, unit: Units | None) -> None:
    assert length_written(text) == (pytest.approx(number), unit)


@pytest.mark.parametrize("text", ["", "varies", "EQ", "3 @ 400", "see A/5", "'"])
def test_words_are_no_lengths(text: str) -> None:
    assert length_written(text) is None


def test_every_unit_has_a_name() -> None:
    assert {called(unit) for unit in Units} == set(NAMES.values())
    assert called(Units.FT) == "feet"
