"""Sizes as a form asks for them."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.errors import EnclosureError
from enclosure_app.model.drawing import Units
from enclosure_app.planning.parts import PARTS, sizes_of
from enclosure_app.window.typed.typed_size import Asked, range_words, read_size, written_size

OVERHANG = Asked("overhang", "Overhang past the cladding", 300.0, 120.0, 900.0)
PITCH = Asked("pitch", "Pitch of the roof", 0.5, 0.25, 1.2, "slope")
ANGLE = Asked("step", "Angles", 15.0, 1.0, 90.0, "degrees")


@pytest.mark.parametrize(
    ("asked", "units", "text"),
    [
        (OVERHANG, Units.MM, "300 mm"),
        (OVERHANG, Units.M, "0.300 m"),
        (OVERHANG, Units.FT, '11 13/16"'),
        (PITCH, Units.MM, "26.6°"),
        (PITCH, Units.IN, "6 in 12"),
        (ANGLE, Units.MM, "15°"),
    ],
)
def test_a_size_is_written_as_the_trade_writes_it(asked: Asked, units: Units, text: str) -> None:
    assert written_size(asked, asked.value, units) == text


@pytest.mark.parametrize(
    ("asked", "units", "text", "value"),
    [
        (OVERHANG, Units.MM, "450", 450.0),
        (OVERHANG, Units.FT, "1' 6\"", 457.2),
        (OVERHANG, Units.FT, "18", 457.2),
        (PITCH, Units.MM, "8 in 12", 8 / 12),
        (PITCH, Units.IN, "45°", 1.0),
        (ANGLE, Units.MM, "22.5", 22.5),
    ],
)
def test_a_size_is_read(asked: Asked, units: Units, text: str, value: float) -> None:
    assert read_size(asked, text, units) == pytest.approx(value)


def test_a_size_out_of_its_range_is_told_in_the_units_of_the_drawing() -> None:
    with pytest.raises(EnclosureError) as told:
        read_size(OVERHANG, "4'", Units.FT)
    assert str(told.value) == (
        'Overhang past the cladding is 4\' 0": choose between 4 3/4" and 2\' 11 7/16".'
    )
    assert range_words(PITCH, Units.IN) == "Between 3 in 12 and 14.4 in 12"


@given(st.data(), st.sampled_from(Units))
def test_what_was_not_changed_stays_the_very_same(data: st.DataObject, units: Units) -> None:
    """A size of 140 mm is written as 5 1/2" and must not become 139.7 mm by being looked at."""
    part = data.draw(st.sampled_from(PARTS))
    size = data.draw(st.sampled_from(sizes_of(part.parameters)))
    value = data.draw(st.floats(size.low, size.high))
    asked = Asked(size.name, size.words, value, size.low, size.high, size.unit)
    assert read_size(asked, written_size(asked, value, units), units) == value
