"""The words for the two sides stand at their marks, and clear of the words of findings."""

from dataclasses import replace
from itertools import combinations

import numpy as np
import pytest

from enclosure_app.drawing.marks import Anchor, Label
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.section.side_words import label_box, side_words
from enclosure_app.drawing.section.sides import Sides, Walk
from enclosure_app.drawing.section.ways import Way
from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.place import Point
from enclosure_app.model.product import Control

THEME = load_theme()
FRAME = Box(0.0, 0.0, 120.0, 100.0)
WALL = Walk(Way(np.array([(60.0, 0.0), (60.0, 100.0)])), outside_left=True)
SIDES = Sides({Control.WATER: WALL}, ((90.0, 50.0),), ((30.0, 50.0),), (0.0, 1.0))


def words(*labels: Label, sides: Sides = SIDES) -> dict[str, Label]:
    return {label.text: label for label in side_words(FRAME, sides, THEME, map(label_box, labels))}


def text(at: Point, anchor: Anchor = Anchor.MIDDLE, words: str = "30 mm") -> Label:
    return Label(words, at, THEME.small, THEME.ink, anchor, bold=True)


def apart(one: Label, other: Label) -> bool:
    a, b = label_box(one), label_box(other)
    return a.right <= b.left or b.right <= a.left or a.top <= b.bottom or b.top <= a.bottom


def test_a_word_stands_about_its_mark() -> None:
    for word, (x, y) in (("INSIDE", (90, 50)), ("OUTSIDE", (30, 50))):
        assert label_box(words()[word]).centre == pytest.approx((x, y))


@pytest.mark.parametrize("anchor", Anchor)
@pytest.mark.parametrize("at", [(30.0, 50.0), (24.0, 48.5), (36.0, 51.0)])
def test_a_word_is_moved_clear_of_the_words_of_a_finding_and_no_further_than_it_must(
    at: Point, anchor: Anchor
) -> None:
    label = text(at, anchor)
    moved = words(label)["OUTSIDE"]
    assert apart(moved, label)
    x, y = label_box(moved).centre
    assert abs(x - 30) <= 7
    assert abs(y - 50) <= 7
    assert words(label)["INSIDE"] == words()["INSIDE"]


def test_what_is_beside_a_word_does_not_move_it() -> None:
    assert words(text((30.0, 60.0))) == words()


def test_a_word_never_leaves_its_side_of_a_layer() -> None:
    """So much is written on its side that no place is free: it stays at its mark.

    Beyond the layer there would be room.
    """
    close = replace(SIDES, outside=((57.0, 50.0),))
    crowd = [
        text((x, y), words="reversed lap") for x in range(30, 52, 4) for y in range(30, 70, 2)
    ]
    assert words(*crowd, sides=close) == words(sides=close)


def test_words_of_several_marks_stand_clear_of_one_another() -> None:
    several = replace(SIDES, outside=((30.0, 50.0), (31.0, 50.5), (30.0, 51.0)))
    found = list(side_words(FRAME, several, THEME, ()))
    assert len(found) == 4
    assert all(apart(one, other) for one, other in combinations(found, 2))


def test_a_word_stays_within_the_frame() -> None:
    corner = replace(SIDES, outside=((1.0, 99.0),))
    for label in (
        words(sides=corner)["OUTSIDE"],
        words(text((8.0, 96.0)), sides=corner)["OUTSIDE"],
    ):
        box = label_box(label)
        assert FRAME.holds((box.left, box.bottom))
        assert FRAME.holds((box.right, box.top))
