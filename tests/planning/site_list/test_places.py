"""Places of the site list: how they are named, where they lie, and what they have in common."""

from math import inf, sqrt

import pytest

from enclosure_app.checker import check_section
from enclosure_app.model.product import Control
from enclosure_app.planning.site_list.places import (
    SitePlace,
    centre,
    drawn,
    joints_walked,
    lines_of,
    middle,
    said,
)
from enclosure_app.planning.site_list.questions import CLEAN, LAP_ORDER, PRESSED
from tests.faulty_wall import WALL
from tests.rules.junctions import US, box, run, section, wall_lap


def place(control: Control, *questions: str) -> SitePlace:
    asked = said([q for q in (CLEAN, PRESSED) if q.name in questions])
    return SitePlace("lap:a+b", "A over b", (control,), ("a", "b"), (0.0, 0.0), 5.0, asked)


def test_two_controls_at_one_place_ask_each_thing_once() -> None:
    water, air = (
        place(Control.WATER, "clean-and-dry"),
        place(Control.AIR, "clean-and-dry", "pressed-down"),
    )
    both = air.joined(water)
    assert both.controls == (Control.WATER, Control.AIR)
    assert [q.name for q in both.questions] == ["clean-and-dry", "pressed-down"]


def test_parts_are_named_by_height_in_a_section_that_hangs_sideways() -> None:
    upright = drawn(check_section(wall_lap(100), US), US)
    assert upright.part("low", (0.0, 45.0)) == "low.high"
    sideways = section(run("low", "felt", (0, -500), (0, 50)), gravity=(0.0, 1.0))
    turned = drawn(check_section(sideways, US), US)
    assert turned.part("low", (0.0, 45.0)) == "low.low"


def test_how_far_along_is_told_by_the_first_control_that_is_walked() -> None:
    wall = drawn(check_section(WALL, US), US)
    assert wall.along((Control.WATER,), (0.0, 0.0)) == pytest.approx(600, abs=15)
    unwalked = drawn(check_section(section(box("b", "brick", (0, 0), (9, 9))), US), US)
    assert unwalked.along((Control.WATER,), (0.0, 0.0)) == 0.0


def test_only_joints_that_the_pen_passes_are_on_the_way() -> None:
    result = check_section(WALL, US)
    water = result.layers[Control.WATER]
    assert {"roof", "w1"} in [{j.a, j.b} for j in joints_walked(water)]
    assert all({j.a, j.b} <= set(water.pieces) or j.on_trace for j in joints_walked(water))


def test_slope_is_rise_over_run_as_the_section_hangs() -> None:
    wall = drawn(check_section(wall_lap(100), US), US)
    assert wall.slope(((0.0, 0.0), (0.0, 9.0))) == inf
    assert wall.slope(((0.0, 0.0), (2.0, 1.0))) == pytest.approx(0.5)


def test_the_middle_of_a_line_is_half_way_along_it() -> None:
    assert middle(((0.0, 0.0), (10.0, 0.0), (10.0, 2.0))) == pytest.approx((6.0, 0.0))
    assert centre([(0.0, 0.0), (2.0, 4.0)]) == (1.0, 2.0)


def test_an_area_is_shown_by_its_whole_outline() -> None:
    known = drawn(check_section(section(box("b", "xps", (0, 0), (3, 4))), US), US)
    (line,) = lines_of(known, ("b",))
    assert line[0] == line[-1]
    assert sqrt((line[2][0]) ** 2 + (line[2][1]) ** 2) == pytest.approx(5)


def test_names_are_put_in_their_places() -> None:
    (told,) = said([LAP_ORDER], over="felt", under="the drip edge")
    assert told.text == "Does felt lie over the drip edge, so that water runs off over the joint?"
