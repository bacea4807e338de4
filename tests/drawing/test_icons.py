"""The glyphs as pictures for the table."""

import pytest

from enclosure_app.drawing.icons import HEIGHT, WIDTH, icon
from enclosure_app.drawing.marks import Label, Stroke, points_of
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.section.glyphs import GLYPHS
from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.product import Control

THEME = load_theme()


@pytest.mark.parametrize("rule", sorted(GLYPHS))
def test_a_picture_stays_in_its_cell_and_has_no_words(rule: str) -> None:
    cell = Box(-WIDTH / 2 - 1, -HEIGHT / 2 - 3, WIDTH / 2 + 1, HEIGHT / 2 + 3)
    marks = list(icon(rule, Control.AIR, (0.0, 0.0), THEME))
    assert not [m for m in marks if isinstance(m, Label)]
    assert all(cell.holds(p) for m in marks for p in points_of(m))


def test_pictures_of_different_faults_differ() -> None:
    seen = {tuple(icon(rule, Control.WATER, (0.0, 0.0), THEME)) for rule in GLYPHS}
    assert len(seen) >= len(GLYPHS) - 1  # two rules may share the ruler


def test_the_sheets_have_the_line_of_their_control() -> None:
    for control in Control:
        strokes = [m for m in icon("gap", control, (0.0, 0.0), THEME) if isinstance(m, Stroke)]
        assert THEME.control(control) in {m.pen for m in strokes}


def test_a_reversed_lap_is_drawn_with_the_upper_sheet_inside() -> None:
    pen = THEME.control(Control.WATER)
    upper, lower = (
        m.points
        for m in icon("reverse-lap", None, (0.0, 0.0), THEME)
        if isinstance(m, Stroke) and m.pen == pen
    )
    assert max(y for _, y in upper) > max(y for _, y in lower)
    assert upper[0][0] < lower[0][0]  # inside is on the left


def test_a_rule_without_a_glyph_has_no_picture() -> None:
    assert list(icon("own-rule", None, (0.0, 0.0), THEME)) == []
