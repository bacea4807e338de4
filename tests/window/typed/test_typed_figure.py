"""Figures as they are typed: what is written reads back as the same figure."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.errors import EnclosureError
from enclosure_app.files.maps.rule_book import books, load_limits
from enclosure_app.model.drawing import Units
from enclosure_app.model.limits import Limit
from enclosure_app.window.typed.typed_figure import read_figure, written_figure

LAP = Limit("wall-lap", 50.8, "x")
SLOPE = Limit("level-slope", 1 / 48, "x", unit="slope")
CHOICE = Limit("eave-wall-line", 1, "x", unit="setting")


@pytest.mark.parametrize("units", list(Units))
@pytest.mark.parametrize("book", list(books()))
def test_every_figure_of_every_book_reads_back(book: str, units: Units) -> None:
    for limit in load_limits(book).figures.values():
        text = written_figure(limit.value, limit.unit, units)
        assert read_figure(text, limit, units) == pytest.approx(limit.value, rel=1e-5), limit.name


@given(st.floats(0.1, 3000.0), st.sampled_from(Units))
def test_a_length_reads_back(mm: float, units: Units) -> None:
    text = written_figure(mm, "mm", units)
    assert read_figure(text, LAP, units) == pytest.approx(mm, rel=1e-4)


@pytest.mark.parametrize(
    ("limit", "text", "units", "value"),
    [
        (LAP, "60", Units.MM, 60.0),
        (LAP, "6 cm", Units.MM, 60.0),
        (LAP, '2 1/2"', Units.MM, 63.5),
        (LAP, "2", Units.IN, 50.8),
        (SLOPE, "3:12", Units.MM, 0.25),
        (SLOPE, "2 %", Units.MM, 0.02),
        (SLOPE, "45°", Units.IN, 1.0),
        (SLOPE, "0", Units.IN, 0.0),
        (CHOICE, "Yes", Units.MM, 1.0),
        (CHOICE, "no", Units.MM, 0.0),
    ],
)
def test_what_builders_type_is_read(limit: Limit, text: str, units: Units, value: float) -> None:
    assert read_figure(text, limit, units) == pytest.approx(value)


@pytest.mark.parametrize(
    ("limit", "text", "said"),
    [
        (LAP, "wide", "no length"),
        (SLOPE, "steep", "no slope"),
        (SLOPE, "95°", "no slope"),
        (SLOPE, "3:0", "no slope"),
        (CHOICE, "perhaps", "neither yes nor no"),
    ],
)
def test_what_is_none_is_refused_in_a_sentence(limit: Limit, text: str, said: str) -> None:
    with pytest.raises(EnclosureError, match=said):
        read_figure(text, limit, Units.MM)


@pytest.mark.parametrize(
    ("value", "unit", "units", "text"),
    [
        (50.8, "mm", Units.MM, "50.8 mm"),
        (50.8, "mm", Units.IN, '2"'),
        (1 / 48, "slope", Units.MM, "1:48"),
        (1 / 48, "slope", Units.IN, "0.25:12"),
        (4 / 12, "slope", Units.FT, "4:12"),
        (1.0, "setting", Units.MM, "yes"),
    ],
)
def test_figures_are_written_as_they_are_read(
    value: float, unit: str, units: Units, text: str
) -> None:
    assert written_figure(value, unit, units) == text
