"""Dates as PDF writes them."""

from contextlib import suppress
from datetime import date, datetime

from pikepdf.models.metadata import encode_pdf_date


def pdf_date(when: str) -> str:
    """Return an ISO date or moment as PDF writes it, "" where it is none."""
    with suppress(ValueError):
        return f"D:{date.fromisoformat(when):%Y%m%d}"
    with suppress(ValueError):
        return encode_pdf_date(datetime.fromisoformat(when))
    return ""
