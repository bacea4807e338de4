"""The two pictures of a rule: they stay in their boxes, and say by shape and word which is which."""

from dataclasses import replace

import pytest

from enclosure_app.checker import check_section
from enclosure_app.drawing.marks import Label, Stroke, points_of
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.rule_examples import EXAMPLES, example_sections
from enclosure_app.drawing.rule_pictures import Pair, picture_height, picture_marks
from enclosure_app.drawing.section.glyphs import GLYPHS
from enclosure_app.drawing.theme import load_theme
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.model.drawing import Units

THEME = load_theme()


def pair(rule: str) -> Pair:
    drawn, mended = (
        check_section(section, load_limits())
        for section in example_sections(rule, load_products())
    )
    return Pair(rule, drawn, mended)


@pytest.mark.parametrize("width", [50.0, 72.0, 110.0])
@pytest.mark.parametrize("rule", EXAMPLES)
def test_everything_stays_in_the_space_it_says(rule: str, width: float) -> None:
    made = pair(rule)
    space = Box(0.0, 0.0, width, picture_height(made, width))
    for mark in picture_marks(made, width, Units.MM, THEME):
        assert all(space.holds(point, 0.5) for point in points_of(mark)), mark


@pytest.mark.parametrize("rule", EXAMPLES)
def test_the_fault_is_drawn_with_its_glyph_in_the_first_picture_only(rule: str) -> None:
    made = pair(rule)
    keys = {finding.key for finding in made.drawn.findings if finding.rule == rule}
    assert rule in GLYPHS
    marks = [m for m in picture_marks(made, 110.0, Units.MM, THEME) if m.source in keys]
    assert marks
    assert all(x < 56.0 for mark in marks for x, _ in points_of(mark))


def test_which_is_which_is_told_by_a_cross_a_tick_and_words() -> None:
    marks = list(picture_marks(pair("gap"), 110.0, Units.MM, THEME))
    words = [mark.text for mark in marks if isinstance(mark, Label)]
    assert words.index("As drawn") < words.index("As it should be")
    assert words.count("outside") == words.count("inside") == 2
    assert len([m for m in marks if isinstance(m, Stroke) and m.source == "wrong"]) == 2
    assert len([m for m in marks if isinstance(m, Stroke) and m.source == "sound"]) == 1


def test_where_there_is_little_room_one_stands_under_the_other() -> None:
    made = pair("short-lap")
    assert picture_height(made, 50.0) > 2 * picture_height(made, 102.0)


def test_lengths_are_in_the_units_of_the_drawing() -> None:
    marks = picture_marks(pair("short-lap"), 110.0, Units.IN, THEME)
    assert 'of 2"' in [mark.text for mark in marks if isinstance(mark, Label)]


def test_what_the_fault_brings_is_not_drawn_as_a_fault_of_its_own() -> None:
    made = pair("reverse-lap")
    wet = next(f for f in made.drawn.findings if f.rule == "wet-route")
    marks = list(picture_marks(made, 110.0, Units.MM, THEME))
    assert wet.key not in {mark.source for mark in marks}
    alone = replace(made.drawn, findings=(wet,))
    told = list(
        picture_marks(replace(made, rule="wet-route", drawn=alone), 110.0, Units.MM, THEME)
    )
    assert wet.key in {mark.source for mark in told}
