"""Where pieces meet: touching, lapping, cast in."""

import numpy as np
import pytest

from enclosure_app.model.section import Piece
from enclosure_app.network.fabric.fabric import Fabric
from enclosure_app.network.fabric.links import TOUCHES, Links, links_of
from tests.network.sections import area, box, sheet, woven

TOUCH = 2.0


def pairs(fabric: Fabric, links: Links, *, lapped: bool | None = None) -> set[tuple[str, ...]]:
    """Return the names of what is linked, by laps only, by touching only, or both."""
    owner_a, owner_b = (fabric.rims.owner[fabric.rims.rim[side]] for side in (links.a, links.b))
    kept = np.ones(len(links), dtype=bool)
    if lapped is not None:
        kept = (links.run != TOUCHES) == lapped
    return {
        tuple(sorted((fabric.names[a], fabric.names[b])))
        for a, b, keep in zip(owner_a, owner_b, kept, strict=True)
        if keep and a != b
    }


def linked(*pieces: Piece, lapped: bool | None = None) -> set[tuple[str, ...]]:
    fabric = woven(*pieces)
    return pairs(fabric, links_of(fabric, TOUCH), lapped=lapped)


LOW = sheet("a", (0, 0), (0, 100))


@pytest.mark.parametrize(("gap", "meets"), [(0, True), (1.9, True), (2, True), (2.1, False)])
def test_sheets_end_to_end_meet_up_to_the_touching_distance(gap: float, meets: bool) -> None:
    found = linked(LOW, sheet("b", (0, 100 + gap), (0, 200)))
    assert found == ({("a", "b")} if meets else set())


@pytest.mark.parametrize(("apart", "meets"), [(3, True), (10, True), (15, True), (16, False)])
def test_sheets_lap_up_to_the_reach(apart: float, meets: bool) -> None:
    found = linked(LOW, sheet("b", (apart, 50), (apart, 200)), lapped=True)
    assert found == ({("a", "b")} if meets else set())


def test_sheets_with_a_half_inch_board_between_do_not_meet() -> None:
    board = box("board", (0.5, -100), (13, 300))
    assert linked(LOW, sheet("b", (13.5, 50), (13.5, 200)), board) == set()


def test_a_sheet_in_concrete_meets_it() -> None:
    slab = box("slab", (-50, -50), (50, 150), "concrete")
    assert linked(LOW, slab) == {("a", "slab")}


def test_a_sheet_that_ends_in_concrete_meets_it() -> None:
    assert linked(LOW, box("slab", (-50, 90), (50, 150), "concrete")) == {("a", "slab")}


def test_a_sheet_in_the_hole_of_an_area_does_not_meet_it() -> None:
    hole = ((-40.0, -40.0), (40.0, -40.0), (40.0, 140.0), (-40.0, 140.0))
    outer = ((-60.0, -60.0), (60.0, -60.0), (60.0, 160.0), (-60.0, 160.0))
    assert linked(LOW, area("slab", *outer, of="concrete", holes=[hole])) == set()


def test_sheets_drawn_with_a_width_meet_end_to_end() -> None:
    low = sheet("a", (0, 0), (0, 100), width=4)
    assert linked(low, sheet("b", (0, 101.5), (0, 200), width=4)) == {("a", "b")}
    assert linked(low, sheet("b", (0, 103), (0, 200), width=4)) == set()


def test_sheets_drawn_with_a_width_lap_by_their_faces() -> None:
    """Axes 20 apart, faces 14: within the reach; drawn bare they would be too far."""
    low, up = ((0, 0), (0, 100)), ((20, 50), (20, 200))
    wide = [sheet("a", *low, width=6), sheet("b", *up, width=6)]
    assert linked(*wide, lapped=True) == {("a", "b")}
    assert linked(sheet("a", *low), sheet("b", *up), lapped=True) == set()


def test_a_bead_between_two_sheets_meets_both() -> None:
    bead = box("bead", (0.5, 110), (9.5, 118), "bead")
    found = linked(sheet("a", (0, 0), (0, 130)), sheet("b", (10, 100), (10, 200)), bead)
    assert {("a", "bead"), ("b", "bead")} <= found


def test_a_sheet_meets_the_frame_it_is_cut_by() -> None:
    assert linked(sheet("a", (0, -500), (0, 0))) == {("", "a")}


def test_links_lift_nothing_and_lie_on_both_pieces() -> None:
    fabric = woven(LOW, sheet("b", (10, 50), (10, 200)))
    links = links_of(fabric, TOUCH)
    lap = links.take(links.run != TOUCHES)
    assert lap.lift.tolist() == [0]
    assert lap.at_a.tolist() == [[0, 75]]
    assert lap.at_b.tolist() == [[10, 75]]
    assert (links.lift == 0).all()


def test_a_bridge_runs_across_the_middle_of_each_lap() -> None:
    assert links_of(woven(LOW, sheet("b", (10, 50), (10, 200))), TOUCH).bridges() == [
        ((0, 75), (10, 75))
    ]


def test_a_bridge_between_sheets_drawn_with_a_width_ends_on_their_faces() -> None:
    wide = woven(sheet("a", (0, 0), (0, 100), width=4), sheet("b", (10, 50), (10, 200), width=4))
    (((ax, ay), (bx, by)),) = links_of(wide, TOUCH).bridges()
    assert (ay, by) == (75, 75)
    assert abs(ax) == 2
    assert abs(bx - 10) == 2
