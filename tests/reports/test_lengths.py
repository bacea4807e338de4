"""Lengths read as the trade writes them."""

import pytest

from enclosure_app.model.drawing import Units
from enclosure_app.reports.lengths import coordinate, length


@pytest.mark.parametrize(
    ("mm", "units", "words"),
    [
        (30.0, Units.MM, "30 mm"),
        (30.04, Units.M, "30 mm"),
        (1234.56, Units.CM, "1234.6 mm"),
        (0.0, Units.MM, "0 mm"),
        (25.4, Units.IN, '1"'),
        (152.4, Units.IN, '6"'),
        (6.35, Units.FT, '1/4"'),
        (30.0, Units.IN, '1 3/16"'),
        (304.8, Units.IN, "1'-0\""),
        (311.15, Units.FT, "1'-0 1/4\""),
        (0.0, Units.IN, '0"'),
    ],
)
def test_a_length_is_written_in_the_drawings_units(mm: float, units: Units, words: str) -> None:
    assert length(mm, units) == words


@pytest.mark.parametrize(
    ("mm", "units", "words"),
    [
        (1200.0, Units.MM, "1200"),
        (-0.001, Units.MM, "0"),
        (1200.0, Units.M, "1.2"),
        (30.48, Units.IN, "1.2"),
        (-304800.0, Units.IN, "-12000"),
    ],
)
def test_a_coordinate_is_what_the_drawing_itself_says(mm: float, units: Units, words: str) -> None:
    assert coordinate(mm, units) == words
