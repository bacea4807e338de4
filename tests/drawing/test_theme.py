"""The look: states differ by shape and pattern, not by colour alone."""

import re
from itertools import combinations
from pathlib import Path

import pytest

from enclosure_app.drawing.section.flags import flag_shape
from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.finding import Severity
from enclosure_app.model.product import Control

SHOWN = (Severity.FAULT, Severity.DOUBT, Severity.REMARK)
PACKAGE = Path(__file__).parents[2] / "enclosure_app"
ISO_WIDTHS = {0.13, 0.18, 0.25, 0.35, 0.5, 0.7}  # ISO 128-2


def linear(colour: str) -> list[float]:
    parts = (int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5))
    return [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts]


def luminance(colour: str) -> float:
    """Relative luminance as in the W3C's Web Content Accessibility Guidelines 2.1."""
    r, g, b = linear(colour)
    return 0.2126 * r + 0.7152 * g + 0.0722 * b


def lightness(colour: str) -> float:
    """CIE 1976 L*."""
    y = luminance(colour)
    return 116 * y ** (1 / 3) - 16 if y > 0.008856 else 903.3 * y


def contrast(a: str, b: str) -> float:
    high, low = sorted((luminance(a), luminance(b)), reverse=True)
    return (high + 0.05) / (low + 0.05)


@pytest.mark.parametrize(("a", "b"), [*combinations(Control, 2)])
def test_controls_differ_by_pattern_and_in_grey(a: Control, b: Control) -> None:
    theme = load_theme()
    assert theme.control(a).dash != theme.control(b).dash
    assert abs(lightness(theme.control(a).colour) - lightness(theme.control(b).colour)) > 3


def test_the_hues_of_controls_are_those_of_okabe_and_ito() -> None:
    """Okabe and Ito (2008): blue, vermilion, bluish green, orange."""
    hues = [load_theme().control(c).colour for c in Control]
    assert hues == ["#0072b2", "#d55e00", "#009e73", "#e69f00"]


@pytest.mark.parametrize(("a", "b"), [*combinations(SHOWN, 2)])
def test_severities_differ_by_shape_and_weight_and_never_by_hue(a: Severity, b: Severity) -> None:
    theme = load_theme()
    assert len(flag_shape(a, (0, 0))) != len(flag_shape(b, (0, 0)))
    assert theme.severity(a).width != theme.severity(b).width
    assert theme.severity(a).colour == theme.severity(b).colour


def test_a_fault_is_the_heaviest() -> None:
    widths = [load_theme().severity(s).width for s in SHOWN]
    assert widths == sorted(widths, reverse=True)


def test_figures_on_flags_can_be_read_on_their_ground() -> None:
    theme = load_theme()
    assert contrast(theme.ink, theme.flag) > 7
    assert contrast(theme.quiet, theme.paper) > 4.5
    for severity in SHOWN:
        assert contrast(theme.severity(severity).colour, theme.flag) > 7


def test_names_on_ribbons_can_be_read_on_every_tint() -> None:
    theme = load_theme()
    for tints in theme.tints.values():
        assert len(set(tints)) == 3
        for tint in tints:
            assert contrast(theme.ink, tint) > 7


def test_the_office_s_own_linework_is_thinner_and_paler_than_any_layer() -> None:
    theme = load_theme()
    for control in Control:
        assert theme.pen("office").width < theme.control(control).width
        assert (
            lightness(theme.pen("office").colour) > lightness(theme.control(control).colour) - 0.5
        )


def test_lines_have_iso_weights() -> None:
    for role, pen in load_theme().pens.items():
        assert pen.width in ISO_WIDTHS, role


def test_every_control_and_severity_has_a_pen_and_every_control_its_tints() -> None:
    theme = load_theme()
    assert {c.value for c in Control} <= set(theme.pens)
    assert {c.value for c in Control} == set(theme.tints)
    assert theme.severity(Severity.OFF) == theme.severity(Severity.REMARK)


def test_nothing_that_composes_marks_names_a_colour() -> None:
    """Colours stand in the theme file only; what lies below is held to it by the house rules."""
    for path in (PACKAGE / "drawing").rglob("*.py"):
        code = path.read_text(encoding="utf-8")
        assert not re.search(r"[\"']#[0-9a-fA-F]{3,8}[\"']", code), path
