"""The values of tables: lengths in units, moments in UTC."""

from datetime import UTC, datetime

import pytest

from enclosure_app.model.drawing import Units
from enclosure_app.reports.tables.table import length, length_column, moment_value


@pytest.mark.parametrize(
    ("mm", "units", "value"),
    [
        (30.0, Units.MM, 30.0),
        (30.04, Units.MM, 30.0),
        (30.0, Units.M, 0.03),
        (25.4 * 4.5, Units.IN, 4.5),
        (304.8, Units.FT, 1.0),
        (-0.0, Units.MM, 0.0),
        (None, Units.MM, None),
    ],
)
def test_lengths_are_numbers_in_the_drawings_units(
    mm: float | None, units: Units, value: float | None
) -> None:
    assert length(mm, units) == value


def test_the_unit_stands_in_the_head() -> None:
    assert length_column("Measured", Units.IN).head == "Measured (in)"


def test_moments_are_given_in_utc() -> None:
    assert moment_value("2026-03-02T10:15:00+02:00") == datetime(2026, 3, 2, 8, 15, tzinfo=UTC)
    assert moment_value("last week") == "last week"
    assert moment_value("") is None
