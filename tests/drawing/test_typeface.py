"""Widths of texts, without Qt."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.drawing.typeface import em, font_files, shorten, text_width, wrap

words = st.text(st.sampled_from("aWi 1½Жλ漢"), max_size=60)


def test_all_figures_are_equally_wide() -> None:
    """Tabular figures, so that numbers stand below each other."""
    for bold in (False, True):
        assert len({text_width(figure, 2.5, bold=bold) for figure in "0123456789"}) == 1


def test_the_typeface_has_the_letters_of_three_scripts_and_fractions() -> None:
    """A letter that is missing would be taken to be a full em wide."""
    for letter in "aßłøçЖяѓλΩήÅñ½¼¾⅛⅜⅝⅞°′″×–…“”":
        assert text_width(letter, 2.5) < em(2.5), letter


def test_a_letter_of_another_script_is_an_em_wide() -> None:
    assert text_width("漢字", 2.5) == pytest.approx(2 * em(2.5))


def test_size_is_the_height_of_capitals() -> None:
    """1456 of 2048 units in the font's own table."""
    assert em(1.8) == pytest.approx(1.8 * 2048 / 1456)


@given(words)
def test_no_line_is_wider_than_its_room_and_no_letter_is_lost(text: str) -> None:
    lines = wrap(text, 2.5, 12.0)
    assert all(text_width(line, 2.5) <= 12.0 for line in lines)
    assert "".join(lines).replace(" ", "") == "".join(text.split())


@given(words)
def test_a_shortened_text_fits(text: str) -> None:
    short = shorten(text, 2.5, 12.0)
    assert text_width(short, 2.5) <= 12.0
    assert short == " ".join(text.split()) or short.endswith("…")


def test_words_stay_whole_where_they_fit() -> None:
    assert wrap("water runs in behind", 2.5, 16.0) == ("water runs", "in behind")


def test_the_fonts_are_shipped_with_their_licence() -> None:
    for path in font_files():
        assert path.is_file()
        assert "Apache License" in (path.parent / "LICENCE.txt").read_text(encoding="utf-8")
