"""The window's colours: read by day and by night, and seen where the keys are."""

from dataclasses import astuple

import pytest
from PySide6.QtGui import QColor, QPalette
from PySide6.QtWidgets import QApplication

from enclosure_app.window.dress import DAY, NIGHT, Colours, dress, style_sheet


def contrast(one: str, other: str) -> float:
    """Return the contrast ratio of two colours (WCAG 2.2, 1.4.3: relative luminance)."""
    bright, dark = sorted((_luminance(QColor(one)), _luminance(QColor(other))), reverse=True)
    return (bright + 0.05) / (dark + 0.05)


def _luminance(colour: QColor) -> float:
    parts = (colour.redF(), colour.greenF(), colour.blueF())
    linear = [p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts]
    return float(0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2])


@pytest.mark.parametrize("colours", [DAY, NIGHT], ids=["day", "night"])
def test_every_ink_can_be_read_on_every_ground(colours: Colours) -> None:
    """At least 4.5 to 1 for text (WCAG 2.2, success criterion 1.4.3, level AA)."""
    grounds = (colours.ground, colours.panel, colours.raised, colours.soft)
    pairs = [(ink, ground) for ink in (colours.ink, colours.quiet) for ground in grounds]
    pairs += [(colours.on_accent, colours.accent), (colours.ink, colours.warn)]
    pairs += [(colours.accent, ground) for ground in (colours.panel, colours.raised)]
    assert [pair for pair in pairs if contrast(*pair) < 4.5] == []


@pytest.mark.parametrize("colours", [DAY, NIGHT], ids=["day", "night"])
def test_where_the_keys_are_is_seen(colours: Colours) -> None:
    """The border of what has the keys stands out from its ground by 3 to 1 (WCAG 2.2, 1.4.11)."""
    sheet = style_sheet(colours)
    for widget in ("QPushButton", "QToolButton", "QComboBox", "QLineEdit", "QListView"):
        assert f"{widget}:focus" in sheet
    assert contrast(colours.accent, colours.panel) >= 3


def test_no_colour_of_the_day_is_left_at_night(qapp: QApplication) -> None:
    dress(qapp, dark=True)
    try:
        assert qapp.palette().color(QPalette.ColorRole.Window).name() == NIGHT.panel
        only_by_day = set(astuple(DAY)) - set(astuple(NIGHT))
        assert [colour for colour in only_by_day if colour in qapp.styleSheet()] == []
    finally:
        dress(qapp, dark=False)
    assert qapp.palette().color(QPalette.ColorRole.Window).name() == DAY.panel
