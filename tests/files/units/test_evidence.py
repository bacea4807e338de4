"""What is usual for a section, in each of the units it may be drawn in."""

import pytest

from enclosure_app.files.units.evidence import (
    Evidence,
    has_odd_letters,
    has_usual_extent,
    is_too_small_a_room,
    is_usual,
    lies_in,
)
from enclosure_app.model.drawing import Units


def test_how_large_a_drawing_is_depends_on_its_unit() -> None:
    drawn = Evidence("a.dxf", extent=96.0, heights=(3.0, 1.0, 2.0))
    assert drawn.across(Units.IN) == pytest.approx(2438.4)
    assert drawn.letters(Units.IN) == pytest.approx(50.8)  # the middle one
    assert Evidence("a.dxf", heights=(3.0, 2.0)).letters(Units.IN) is None  # too few to say


@pytest.mark.parametrize(
    ("unit", "usual"), [(Units.IN, True), (Units.MM, False), (Units.M, False), (Units.FT, True)]
)
def test_a_section_is_between_a_foot_and_a_house_across(unit: Units, usual: bool) -> None:
    drawn = Evidence("a.dxf", extent=96.0)
    assert has_usual_extent(drawn, unit) is usual
    assert is_usual(drawn, unit) is usual


def test_several_sections_on_one_sheet_are_usual_if_their_letters_are() -> None:
    sheet = Evidence("a.dxf", extent=250_000.0, heights=(50.0,) * 3)
    assert not has_usual_extent(sheet, Units.MM)
    assert is_usual(sheet, Units.MM)


def test_letters_as_high_as_a_door_are_odd_whatever_the_extent() -> None:
    drawn = Evidence("a.dxf", extent=2000.0, heights=(25.0,) * 3)
    assert has_odd_letters(drawn, Units.FT)
    assert not has_odd_letters(drawn, Units.MM)
    assert not is_usual(drawn, Units.FT)


def test_both_bounds_are_still_usual() -> None:
    assert lies_in(300.0, (300.0, 500.0))
    assert lies_in(500.0, (300.0, 500.0))
    assert not lies_in(500.1, (300.0, 500.0))


def test_a_room_with_furniture_is_high_enough_to_stand_in() -> None:
    room = Evidence("a.dxf", extent=72.0, furniture="Furniture", drawn_high=50.0)
    assert is_too_small_a_room(room, Units.IN)
    assert not is_usual(room, Units.IN)
    assert is_usual(room, Units.FT)
    assert is_usual(Evidence("a.dxf", extent=72.0, drawn_high=50.0), Units.IN)  # a detail


def test_a_detail_beside_a_room_on_one_sheet_is_usual() -> None:
    assert is_usual(Evidence("a.dxf", extent=40.0, furniture="FURN", drawn_high=300.0), Units.IN)
