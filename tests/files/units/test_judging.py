"""Units are judged by what the drawing shows, and asked for where that is not enough."""

import pickle

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.files.dxf.raw import RawDimension, Tag
from enclosure_app.files.units.evidence import Evidence
from enclosure_app.files.units.judging import UnitsError, judge_units, likely_units, told_units
from enclosure_app.model.drawing import NoteLevel, Units


def dimension(measured: float, text: str, factor: float = 1.0) -> RawDimension:
    return RawDimension(Tag("DIMENSION", "1", "DIM"), measured, text, (0, 0), factor)


@pytest.mark.parametrize(
    ("code", "extent", "units"),
    [
        (1, 96, Units.IN),
        (2, 9, Units.FT),
        (4, 2600, Units.MM),
        (5, 260, Units.CM),
        (6, 3, Units.M),
    ],
)
def test_the_header_is_taken_where_the_extent_is_usual(
    code: int, extent: float, units: Units
) -> None:
    assert judge_units(Evidence("a.dxf", insunits=code, extent=extent)) == (units, ())


@pytest.mark.parametrize(
    ("measured", "text", "units"),
    [
        (64, "5'-4\"", Units.IN),
        (1625.6, "5'-4\"", Units.MM),
        (5.3333, "5'-4\"", Units.FT),
        (47.244, "1200", Units.IN),
        (1.2, "1200", Units.M),
        (120, "1200", Units.CM),
        (1200, "1.200", Units.MM),
        (1.2, "1200 mm", Units.M),
    ],
)
def test_dimensions_tell_the_units_of_a_file_without(
    measured: float, text: str, units: Units
) -> None:
    found, notes = judge_units(
        Evidence("a.dxf", dimensions=(dimension(measured, text),), extent=2500 / units.in_mm)
    )
    assert found is units
    assert notes[0].level is NoteLevel.GUESSED
    assert text in notes[0].text


def test_whole_numbers_of_three_digits_are_millimetres() -> None:
    dimensions = (dimension(1200, "1200"), dimension(350, "350"), dimension(90, "90"))
    units, _ = judge_units(Evidence("a.dxf", dimensions=dimensions, extent=1500))
    assert units is Units.MM


def test_millimetres_whose_header_says_inches_are_read_by_their_dimensions() -> None:
    """The extent is no section's in inches, so the file is wrong rather than the dimensions."""
    dimensions = (dimension(1200, "1200"), dimension(2750, "2750"))
    units, notes = judge_units(Evidence("a.dxf", insunits=1, dimensions=dimensions, extent=3000))
    assert units is Units.MM
    assert notes[0].text == (
        "The file says inches, but is read in millimetres: its dimensions read as millimetres "
        "(2750), and the section would be 76.2 m across."
    )


def test_a_header_and_dimensions_that_disagree_are_put_to_the_person() -> None:
    dimensions = (dimension(1200, "1200"), dimension(900, "900"))
    with pytest.raises(EnclosureError) as caught:
        judge_units(Evidence("eave.dxf", insunits=1, dimensions=dimensions, extent=2000))
    assert str(caught.value) == (
        "eave.dxf says inches, but its dimensions read as millimetres (1200): "
        "say which with --units mm or --units in."
    )


def test_a_default_header_on_a_drawing_of_thousands_is_put_to_the_person() -> None:
    """Nothing shows which others they are, so none is named before the others."""
    with pytest.raises(EnclosureError) as caught:
        judge_units(Evidence("a.dxf", insunits=6, extent=3000))
    assert str(caught.value) == (
        "a.dxf says metres, but the section would be 3000 m across: say which it is with --units "
        "mm, cm, m, in or ft."
    )


def test_letters_as_high_as_a_door_contradict_the_header() -> None:
    with pytest.raises(EnclosureError, match="its texts would be 635 mm high"):
        judge_units(Evidence("a.dxf", insunits=1, heights=(25, 25, 25), extent=2000))


@pytest.mark.parametrize("extent", [96.0, 2600.0, 0.8])
def test_a_file_without_units_and_without_evidence_is_a_question(extent: float) -> None:
    with pytest.raises(EnclosureError, match=r"a\.dxf does not say in which units .* --units"):
        judge_units(Evidence("a.dxf", metric=True, extent=extent))


def test_known_thicknesses_tell_the_units() -> None:
    """Half-inch and 5/8 inch boards drawn in inches."""
    pairs = ((0.5, 12.7), (0.625, 15.9), (0.5, 12.7), (3.5, 89))
    units, notes = judge_units(Evidence("a.dxf", thicknesses=pairs, extent=100))
    assert units is Units.IN
    assert "as thick as its products" in notes[0].text


def test_one_thickness_alone_tells_nothing() -> None:
    with pytest.raises(EnclosureError, match="--units"):
        judge_units(Evidence("a.dxf", thicknesses=((0.5, 12.7), (0.5, 12.7)), extent=100))


def test_letters_extent_and_the_system_of_measures_tell_together() -> None:
    evidence = Evidence("a.dxf", metric=False, heights=(3, 3, 4), extent=120)
    assert judge_units(evidence)[0] is Units.IN


def test_letters_and_extent_tell_where_only_one_unit_fits_both() -> None:
    units, notes = judge_units(Evidence("a.dxf", heights=(22, 22, 30), extent=1540))
    assert units is Units.MM
    assert notes[0].text == (
        "The file names no units; read in millimetres: only so are its texts (22 mm high) and its "
        "extent usual."
    )
    with pytest.raises(EnclosureError, match="--units"):
        judge_units(Evidence("a.dxf", heights=(3, 3, 3), extent=120))


def test_a_default_header_against_letters_and_extent_is_overruled() -> None:
    """Millimetres in a file whose program wrote metres by default."""
    evidence = Evidence("a.dxf", insunits=6, heights=(22, 22, 30), extent=1540)
    units, notes = judge_units(evidence)
    assert units is Units.MM
    assert notes[0].text == (
        "The file says metres, but is read in millimetres: only so are its texts (22 mm high) and "
        "its extent usual, and the section would be 1540 m across and its texts would be 22000 mm "
        "high."
    )


def test_dimensions_with_a_scale_say_nothing_of_their_unit() -> None:
    """A detail drawn at twice its size whose dimensions are halved gives no unit away."""
    with pytest.raises(EnclosureError, match="--units"):
        judge_units(Evidence("a.dxf", dimensions=(dimension(100, "50", 0.5),), extent=900))


def test_being_told_is_noted_only_against_the_file() -> None:
    assert told_units(Units.MM, Evidence("a.dxf", insunits=4)) == ()
    (note,) = told_units(Units.MM, Evidence("a.dxf", insunits=1))
    assert note.text == "The file says inches; it is read in millimetres, as told."


def test_what_a_drawing_shows_goes_with_the_question() -> None:
    evidence = Evidence("a.dxf", extent=96.0, high=94.0)
    with pytest.raises(UnitsError) as caught:
        judge_units(evidence)
    again = pickle.loads(pickle.dumps(caught.value))  # noqa: S301  made here
    assert again.evidence == evidence
    assert str(again) == str(caught.value)


@pytest.mark.parametrize(
    ("evidence", "likely"),
    [
        (Evidence("a", extent=96.0), Units.IN),  # 2.4 m high, not 96 mm
        (Evidence("a", extent=2600.0), Units.MM),
        (Evidence("a", extent=2.6), Units.M),
        (Evidence("a", extent=9.0, metric=False), Units.FT),
        (Evidence("a", extent=120.0, metric=True), Units.IN),  # centimetres are rarer than that
        (Evidence("a", extent=3000.0, metric=False), Units.MM),  # 76 m would be no section
        (Evidence("a", extent=40.0, metric=True), Units.M),
        (Evidence("a", extent=40.0, metric=False), Units.FT),
        (Evidence("a", extent=96.0, dimensions=(dimension(64, "1600 mm"),)), Units.IN),
        (Evidence("a", extent=2600.0, insunits=6), Units.MM),
        (Evidence("a", extent=5.0, insunits=2), Units.FT),
    ],
)
def test_the_likeliest_units_come_first(evidence: Evidence, likely: Units) -> None:
    ranked = likely_units(evidence)
    assert ranked[0] is likely
    assert sorted(ranked) == sorted(Units)


def test_furniture_in_a_room_of_half_a_mans_height_is_asked_about() -> None:
    """The header of a plan of a house says inches, as the program that wrote it always does."""
    room = Evidence("a.dxf", insunits=1, extent=72, furniture="Chairs | FURN", drawn_high=50)
    with pytest.raises(UnitsError, match=r"says inches, but what it draws with furniture \(layer"):
        judge_units(room)
    assert likely_units(room)[0] is Units.FT


def test_dimensions_are_believed_before_furniture() -> None:
    shown = (dimension(64, "5'-4\""),)
    toy = Evidence("a.dxf", insunits=1, extent=72, furniture="F", drawn_high=50, dimensions=shown)
    assert judge_units(toy) == (Units.IN, ())
