"""Units of a drawing."""

import pytest

from enclosure_app.model.drawing import Units


@pytest.mark.parametrize(
    ("unit", "mm", "imperial"),
    [
        ("mm", 1.0, False),
        ("cm", 10.0, False),
        ("m", 1000.0, False),
        ("in", 25.4, True),  # exact: international yard and pound agreement, 1959
        ("ft", 304.8, True),  # twelve of those
    ],
)
def test_a_unit_is_so_many_millimetres(unit: str, mm: float, imperial: bool) -> None:
    assert (Units(unit).in_mm, Units(unit).imperial) == (mm, imperial)
