"""The band of a ribbon in its box."""

import pytest

from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.ribbon.band import BAND, HEIGHT, Ribbon
from enclosure_app.drawing.ribbon.unrolled import unrolled
from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.drawing import Units
from tests.drawing import eave

LAID = unrolled(eave.WATER)
RIBBON = Ribbon(
    eave.result(), eave.WATER, LAID, Box(20, 50, 220, 50 + HEIGHT), Units.MM, load_theme()
)


def test_the_walk_runs_from_the_left_edge_to_the_right_one() -> None:
    assert RIBBON.x(0.0) == 20.0
    assert RIBBON.x(LAID.length) == pytest.approx(220.0)
    assert RIBBON.x(LAID.length / 4) == pytest.approx(70.0)


def test_the_band_lies_in_its_box_with_room_for_words_above_and_ticks_below() -> None:
    assert RIBBON.top - RIBBON.bottom == pytest.approx(BAND)
    assert RIBBON.box.top - RIBBON.top > 6.0
    assert RIBBON.bottom - RIBBON.box.bottom > 10.0


def test_blocks_and_lines_fill_the_band() -> None:
    ring = RIBBON.block(0.0, LAID.length / 2)
    assert {y for _, y in ring} == {RIBBON.bottom, RIBBON.top}
    line = RIBBON.across(LAID.length, load_theme().pen("tick"))
    assert [x for x, _ in line.points] == pytest.approx([220.0, 220.0])
