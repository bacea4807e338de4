"""The shipped typeface as Qt sees it."""

import pytest
from PySide6.QtGui import QFontInfo, QFontMetricsF

from enclosure_app.drawing.typeface import FAMILY, text_width
from enclosure_app.reports.pdf.fonts import font

pytestmark = pytest.mark.usefixtures("qapp")

DOTS = 1200 / 25.4


@pytest.mark.parametrize("bold", [False, True])
def test_the_shipped_font_is_used_and_not_a_substitute(bold: bool) -> None:
    info = QFontInfo(font(2.5, DOTS, bold=bold))
    assert info.family() == FAMILY
    assert info.bold() is bold


@pytest.mark.parametrize(
    "text", ["What was found", '12 3/8"', "Стена у карниза", "Τοίχος", "0123456789"]
)
@pytest.mark.parametrize("bold", [False, True])
def test_texts_are_as_wide_as_the_sheet_was_composed_for(text: str, bold: bool) -> None:
    """Composing measures without Qt; kerning may make a text a little narrower, never wider by much."""
    painted = QFontMetricsF(font(2.5, DOTS, bold=bold)).horizontalAdvance(text) / DOTS
    measured = text_width(text, 2.5, bold=bold)
    assert painted == pytest.approx(measured, rel=0.05)
    assert painted <= measured * 1.005


def test_capitals_are_as_high_as_they_should_be() -> None:
    assert QFontMetricsF(font(2.5, DOTS, bold=False)).capHeight() / DOTS == pytest.approx(
        2.5, abs=0.03
    )
