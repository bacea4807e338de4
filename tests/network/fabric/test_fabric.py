"""One control's pieces as numbers."""

import numpy as np
import pytest

from enclosure_app.model.place import Area
from enclosure_app.model.product import Control
from enclosure_app.model.section import Break
from enclosure_app.network.fabric.fabric import break_strip, weave
from tests.network.sections import FRAME, PLAIN, area, box, section, sheet, woven

LOW = sheet("low", (0, 0), (0, 100))


def lapped(*apart: float, between: tuple[float, float] | None = None) -> list[float]:
    """Return the distances of the laps of a sheet with others 40 mm over its upper end."""
    boards = [box("board", (between[0], -50), (between[1], 300))] if between else []
    others = [sheet(f"up{n}", (x, 60), (x, 200)) for n, x in enumerate(apart)]
    return [run.distance for run in woven(LOW, *others, *boards).runs]


@pytest.mark.parametrize("apart", [0, 3, 10, 15])
def test_sheets_drawn_apart_up_to_the_reach_lap(apart: float) -> None:
    assert lapped(apart) == [apart]


def test_sheets_drawn_sixteen_apart_do_not_lap() -> None:
    assert lapped(16) == []


def test_a_half_inch_board_between_two_sheets_parts_them() -> None:
    assert lapped(13, between=(0.25, 12.75)) == []


def test_a_board_behind_both_sheets_does_not_part_them() -> None:
    assert lapped(10, between=(12, 24.5)) == [10]


def test_sheets_cast_into_one_slab_still_lap() -> None:
    assert lapped(10, between=(-100, 100)) == [10]


def test_owners_are_the_pieces_then_breaks_then_the_frame() -> None:
    strip = Break(near=((-20, 0), (20, 0)), far=((-20, 40), (20, 40)))
    drawn = section(LOW, box("slab", (50, 0), (60, 9), "concrete"), breaks=[strip])
    fabric = weave(drawn, Control.AIR, PLAIN)
    assert fabric.names == ("low", "slab", "break 1", "")
    assert fabric.frame == 3
    assert fabric.solids[2].bounds == (-20, 0, 20, 40)
    assert fabric.solids[3].bounds == (-500, -500, 500, 500)


def test_pieces_of_other_controls_are_left_out() -> None:
    assert woven(LOW, box("stud", (50, 0), (60, 9), "framing")).names == ("low", "")


def test_a_break_drawn_crosswise_is_still_a_strip() -> None:
    straight = Break(near=((0, 0), (20, 0)), far=((0, 40), (20, 40)))
    crosswise = Break(near=((0, 0), (20, 0)), far=((20, 40), (0, 40)))
    assert break_strip(straight) == break_strip(crosswise)
    assert break_strip(straight) == Area(((0, 0), (20, 0), (20, 40), (0, 40)))


def test_the_axis_of_a_sheet_drawn_with_a_width_is_its_middle() -> None:
    fabric = woven(sheet("a", (0, 0), (0, 100), width=6))
    assert fabric.axes.points_of(0).tolist() == [[0, 0], [0, 100]]
    assert fabric.half.tolist() == [3]
    assert fabric.solids[0].bounds == (-3, 0, 3, 100)


def test_samples_are_matched_across_the_lap_whichever_way_the_sheets_were_drawn() -> None:
    """Place by place the two sides are as far apart as the lap is wide."""
    up, down = ((5, 60), (5, 200)), ((5, 200), (5, 60))
    for points, opposed in ((up, False), (down, True)):
        fabric = woven(LOW, sheet("up", *points))
        of_a, of_b, back = fabric.samples((0.0, 0.5, 1.0), np.arange(len(fabric.runs)))
        assert of_a.tolist() == [[[0, 60], [0, 80], [0, 100]]]
        assert of_b.tolist() == [[[5, 60], [5, 80], [5, 100]]]
        assert back.tolist() == [opposed]


def test_the_two_sides_of_a_lap_come_as_polylines_with_their_corners() -> None:
    inner = sheet("inner", (0, 0), (0, 100), (100, 100))
    outer = sheet("outer", (-5, 50), (-5, 105), (80, 105))
    ((of_a,), (of_b,)) = woven(inner, outer).run_lines(np.array([0]))
    assert of_a == ((0, 50), (0, 100), (80, 100))
    assert of_b == ((-5, 50), (-5, 105), (80, 105))


def test_sheets_with_a_flashings_leg_between_lap_all_along_and_meet_above_it() -> None:
    """The upper sheet overlaps the lower one by 90; the leg reaches up between them by 50."""
    lower = sheet("lower", (200, -20), (0, -20), (0, 100))
    leg = sheet("leg", (-4, 60), (-4, -10), (-60, -30))
    fabric = woven(lower, leg, sheet("upper", (-8, 10), (-8, 300)))
    lengths = dict(zip([(run.a, run.b) for run in fabric.runs], fabric.lengths(), strict=True))
    assert lengths == {(0, 1): 70, (0, 2): 90, (1, 2): 50}
    (row,) = fabric.table[(fabric.table[:, 0] == 0) & (fabric.table[:, 3] == 2)]
    along_lower, along_upper = row[6:].tolist()
    assert along_lower - (200 + 20) == pytest.approx(80)  # in the middle between 60 and 100
    assert along_upper + 10 == pytest.approx(80)


def test_the_frame_is_no_sheet_to_lap() -> None:
    (x, y), (u, v) = FRAME[0], FRAME[2]
    assert woven(sheet("a", (x + 5, y), (x + 5, v))).runs == ()
    assert u > x


def test_an_area_with_a_hole_has_an_axis_for_each_of_its_rings() -> None:
    outer = ((0.0, 0.0), (100.0, 0.0), (100.0, 100.0), (0.0, 100.0))
    hole = ((20.0, 20.0), (80.0, 20.0), (80.0, 80.0), (20.0, 80.0))
    fabric = woven(area("a", *outer, of="concrete", holes=[hole]))
    assert fabric.axes.length.tolist() == [400, 240]
    assert [fabric.axis_owner(rim) for rim in (0, 1)] == [0, 0]
