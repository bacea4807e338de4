"""Dates and moments as PDF writes them (ISO 32000-1, 7.9.4)."""

import pytest

from enclosure_app.reports.pdf.dates import pdf_date


@pytest.mark.parametrize(
    ("when", "written"),
    [
        ("2026-03-02", "D:20260302"),
        ("2026-03-02T10:15:00+02:00", "D:20260302101500+02'00"),
        ("2026-03-02T10:15:00Z", "D:20260302101500+00'00"),
        ("", ""),
        ("in spring", ""),
    ],
)
def test_dates_are_written_as_pdf_wants_them(when: str, written: str) -> None:
    assert pdf_date(when) == written
