"""A check that takes up the last one says the very same as one that knows of none."""

from dataclasses import fields, replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.checker import Check, check, check_section, few_moved
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.model.place import Line
from enclosure_app.model.product import Control
from enclosure_app.model.report import Continuity, SectionResult
from enclosure_app.model.section import Section
from tests.benchmarks.walls import wall_of_sheets
from tests.network.random_layers import profile
from tests.random_edits import EDITS, Edit, and_a_porch, edited

LIMITS = load_limits()


def assert_same(again: SectionResult, whole: SectionResult) -> None:
    """Compare part by part, so that a difference says where it is."""
    for control, layer in whole.layers.items():
        for field in fields(layer):
            assert getattr(again.layers[control], field.name) == getattr(layer, field.name)
    for name in ("rain", "order", "findings"):
        assert getattr(again, name) == getattr(whole, name)
    assert again == whole


@profile(40)
@given(st.sampled_from(range(len(and_a_porch()))), st.lists(EDITS, min_size=1, max_size=4))
def test_a_check_after_a_change_says_what_a_whole_one_says(number: int, edits: list[Edit]) -> None:
    section = and_a_porch()[number]
    last = check(section, LIMITS)
    for edit in edits:
        section = edited(section, edit)
        last = check(section, LIMITS, last)
        assert_same(last.result, check_section(section, LIMITS))


@profile(25)
@given(st.lists(EDITS, min_size=1, max_size=4), st.booleans())
def test_so_it_does_where_a_wall_opens_and_closes(edits: list[Edit], gap: bool) -> None:
    section = wall_of_sheets(14, gap=gap)
    last = check(section, LIMITS)
    for edit in edits:
        moved = edited(section, (edit[0] % 15, *edit[1:]))
        last = check(moved, LIMITS, last)
        assert_same(last.result, check_section(moved, LIMITS))
        last = check(section, LIMITS, last)
        assert_same(last.result, check_section(section, LIMITS))


def moved(section: Section, number: int, by: float) -> Section:
    piece = section.pieces[number]
    assert isinstance(piece.shape, Line)
    *points, (x, y) = piece.shape.points
    shape = replace(piece.shape, points=(*points, (x + by, y)))
    pieces = list(section.pieces)
    pieces[number] = replace(piece, shape=shape)
    return replace(section, pieces=tuple(pieces))


@pytest.fixture(scope="module")
def wall() -> Check:
    return check(wall_of_sheets(30, gap=False), LIMITS)


def test_what_nothing_moved_near_is_the_very_same_object(wall: Check) -> None:
    section = moved(wall.result.section, 10, 1.0)
    again = check(section, LIMITS, wall).result
    before, after = (result.layers[Control.WATER] for result in (wall.result, again))
    changed = [
        n for n, (old, new) in enumerate(zip(before.joints, after.joints, strict=True))
        if old is not new
    ]  # fmt: skip
    assert changed
    assert set(changed) <= {8, 9, 10, 11}
    walked = zip(before.walk, after.walk, strict=True)
    assert {n for n, (old, new) in enumerate(walked) if old is not new} <= {9, 10, 11}


def test_a_closed_layer_that_is_torn_open_is_found_open_and_closed_again(wall: Check) -> None:
    torn = moved(wall.result.section, 10, -90.0)
    again = check(torn, LIMITS, wall)
    assert again.result.layers[Control.AIR].continuity is Continuity.BROKEN
    assert again.result.layers[Control.AIR].opening == pytest.approx(
        again.result.layers[Control.AIR].bottleneck, abs=0.01
    )
    mended = check(wall.result.section, LIMITS, again).result
    assert mended.layers[Control.AIR].continuity is Continuity.CONTINUOUS
    assert mended == wall.result


def test_few_moved_pieces_are_told_from_other_changes(wall: Check) -> None:
    section = wall.result.section
    assert few_moved(wall, moved(section, 3, 5.0), LIMITS)
    assert few_moved(wall, replace(section, strokes=()), LIMITS)
    assert not few_moved(wall, replace(section, pieces=section.pieces[1:]), LIMITS)
    assert not few_moved(wall, replace(section, gravity=None), LIMITS)
    assert not few_moved(wall, section, replace(LIMITS))
