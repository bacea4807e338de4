"""What shows units, each with its reason in words."""

import pytest

from enclosure_app.files.dxf.raw import RawDimension, Tag
from enclosure_app.files.units.evidence import Evidence
from enclosure_app.files.units.shown import by_dimensions, by_elimination, by_thickness
from enclosure_app.model.drawing import Units


def dimension(measured: float, text: str) -> RawDimension:
    return RawDimension(Tag("DIMENSION", "1", "DIM"), measured, text, (0, 0), 1.0)


def test_a_dimension_says_what_it_measures_and_what_is_written() -> None:
    assert by_dimensions([dimension(47.244, "1200"), dimension(64, "5'-4\"")]) == (
        Units.IN,
        "its dimensions read as inches (47.244 is dimensioned 1200)",
    )


def test_dimensions_that_disagree_among_themselves_show_nothing() -> None:
    assert by_dimensions([dimension(1.2, "1200 mm"), dimension(64, "5'-4\"")]) is None
    assert by_dimensions([]) is None


@pytest.mark.parametrize(("least", "shown"), [(2, Units.IN), (3, None)])
def test_as_many_different_boards_have_to_agree_as_are_asked_for(
    least: int, shown: Units | None
) -> None:
    found = by_thickness([(0.5, 12.7), (0.625, 15.9), (0.5, 12.7)], least)
    assert (found and found[0]) is shown


def test_what_is_left_over_has_usual_letters_and_a_usual_extent() -> None:
    found = by_elimination(Evidence("a.dxf", heights=(22, 22, 30), extent=1540))
    assert found == (Units.MM, "only so are its texts (22 mm high) and its extent usual")
    assert by_elimination(Evidence("a.dxf", heights=(22, 22), extent=1540)) is None
    assert by_elimination(Evidence("a.dxf", heights=(3, 3, 3), extent=120)) is None  # mm or inches
