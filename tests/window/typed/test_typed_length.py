"""Lengths and angles as builders type them."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.drawing.lengths import format_length
from enclosure_app.errors import EnclosureError
from enclosure_app.model.drawing import Units
from enclosure_app.window.typed.typed_length import (
    Typed,
    read_angle,
    read_length,
    read_pitch,
    read_signed,
    read_typed,
)


@pytest.mark.parametrize(
    ("text", "units", "mm"),
    [
        ("1200", Units.MM, 1200.0),
        ("1200 mm", Units.IN, 1200.0),
        ("1.2 m", Units.MM, 1200.0),
        ("1,2m", Units.MM, 1200.0),
        ("40", Units.IN, 1016.0),
        ("3.5", Units.FT, 1066.8),
        ("3' 4 1/2\"", Units.MM, 1028.7),
        ("3′ 4 1/2″", Units.IN, 1028.7),
        ("3'", Units.IN, 914.4),
        ("3' 4", Units.IN, 1016.0),
        ("4 1/2", Units.IN, 114.3),
        ('1/2"', Units.IN, 12.7),
        ("2 ft", Units.MM, 609.6),
    ],
)  # fmt: skip
def test_a_length_is_read(text: str, units: Units, mm: float) -> None:
    assert read_length(text, units) == pytest.approx(mm)


@pytest.mark.parametrize("text", ["", "a", "1/0", "3'4'5", "--", "1200 x", "4 1/"])
def test_what_is_no_length_is_told_with_an_example(text: str) -> None:
    with pytest.raises(EnclosureError, match="is no length: type it as in"):
        read_length(text, Units.MM)


@pytest.mark.parametrize(
    ("text", "typed"),
    [
        ("1200 at 45", Typed(1200.0, 45.0)),
        ("1200@90°", Typed(1200.0, 90.0)),
        ("at 30", Typed(None, 30.0)),
        ("at -22,5", Typed(None, -22.5)),
        ("85", Typed(85.0)),
        ("400; 1200", Typed(None, place=(400.0, 1200.0))),
        ("-4 1/2 in; 3'", Typed(None, place=(-114.3, 914.4))),
    ],
)
def test_an_angle_may_come_after_at(text: str, typed: Typed) -> None:
    assert read_typed(text, Units.MM) == typed


def test_an_angle_that_is_none_is_told() -> None:
    with pytest.raises(EnclosureError, match="has no angle after"):
        read_typed("1200 at up", Units.MM)


def test_a_place_needs_both_coordinates() -> None:
    with pytest.raises(EnclosureError, match="is no length"):
        read_typed("400;", Units.MM)


def test_a_coordinate_may_lie_below_zero() -> None:
    assert read_signed("−1 1/2", Units.IN) == pytest.approx(-38.1)


@pytest.mark.parametrize("text", ["", "up", "nan", "inf"])
def test_what_is_no_angle_is_told(text: str) -> None:
    with pytest.raises(EnclosureError, match="is no angle: type degrees"):
        read_angle(text)


@pytest.mark.parametrize(
    ("text", "pitch"),
    [
        ("6 in 12", 0.5),
        ("6:12", 0.5),
        ("1/2", 0.5),
        ("4,5 in 12", 0.375),
        ("50 %", 0.5),
        ("45°", 1.0),
        ("26.565051177", 0.5),
        ("0", 0.0),
    ],
)
def test_a_pitch_is_read(text: str, pitch: float) -> None:
    assert read_pitch(text) == pytest.approx(pitch)


@pytest.mark.parametrize("text", ["", "steep", "6 in 0", "90", "-10"])
def test_what_is_no_pitch_is_told_with_an_example(text: str) -> None:
    with pytest.raises(EnclosureError, match="is no pitch: type it as in 6 in 12"):
        read_pitch(text)


@given(st.integers(1, 200_000))
def test_what_is_written_in_feet_and_inches_is_read_again(sixteenths: int) -> None:
    mm = sixteenths * 25.4 / 16
    assert read_length(format_length(mm, Units.FT), Units.FT) == pytest.approx(mm)
