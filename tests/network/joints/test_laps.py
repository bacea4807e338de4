"""Which sheet is outside, and which one goes on uphill, on textbook laps."""

from itertools import product
from math import inf

import pytest

from enclosure_app.model.place import Line, Point
from enclosure_app.model.section import Piece, Section
from enclosure_app.network.joints.laps import Lap
from tests.network.sections import section, sheet, water

WALL_LOW, WALL_UP = ((0, -500), (0, 100)), ((-10, 40), (-10, 500))
ROOF_LOW = ((-500, -250), (100, 50))
ROOF_UP = ((-4, 8), (500, 260))
CASES = {
    "wall": ([WALL_LOW, WALL_UP], (-250, 0), (250, 0), "up"),
    "wall, reversed": ([WALL_LOW, ((10, 40), (10, 500))], (-250, 0), (250, 0), "low"),
    "roof": ([ROOF_LOW, ROOF_UP], (0, 300), (0, -300), "up"),
    "roof, reversed": (
        [((-500, -242), (100, 58)), ((0, 0), (500, 250))],
        (0, 300),
        (0, -300),
        "low",
    ),
    "fold over an edge": (
        [((0, -500), (0, 100), (100, 100)), ((-5, 50), (-5, 105), (500, 105))],
        (-250, 300),
        (250, -300),
        "up",
    ),
    "overhanging wall": (
        [((-100, -500), (20, 100)), ((-2, 42), (90, 502))],
        (-300, 0),
        (300, 0),
        "up",
    ),
}


def only_lap(drawn: Section) -> Lap:
    (lap,) = water(drawn).laps
    return lap


def mirrored(point: Point) -> Point:
    return (-point[0], point[1])


@pytest.mark.parametrize("case", CASES)
@pytest.mark.parametrize(
    ("low_back", "up_back", "swapped", "mirror"), list(product((False, True), repeat=4))
)
def test_the_outer_and_the_upper_sheet_do_not_depend_on_how_it_was_drawn(
    case: str, low_back: bool, up_back: bool, swapped: bool, mirror: bool
) -> None:
    """Drawing direction of either sheet, order of drawing, and mirroring change nothing."""
    (low, up), outside, inside, outer = CASES[case]
    turn = mirrored if mirror else lambda point: point
    pieces = [
        sheet("low", *map(turn, low[::-1] if low_back else low)),
        sheet("up", *map(turn, up[::-1] if up_back else up)),
    ]
    lap = only_lap(
        section(
            *(pieces[::-1] if swapped else pieces),
            outside=[turn(outside)],
            inside=[turn(inside)],
        )
    )
    assert lap.outer.name == outer
    assert lap.upper is not None
    assert lap.upper.name == "up"
    for side in (lap.outer, lap.inner):
        assert side.run[0][1] < side.run[-1][1]


def test_a_wall_lap_has_its_length_distance_and_outward_side() -> None:
    lap = only_lap(section(sheet("low", *WALL_LOW), sheet("up", *WALL_UP)))
    assert (lap.length, lap.distance, lap.slope) == (60, 10, inf)
    assert lap.outward == (-1, 0)
    assert lap.at == (-5, 70)
    assert (lap.outer.beyond_upper, lap.outer.beyond_lower) == (400, 0)
    assert (lap.inner.beyond_upper, lap.inner.beyond_lower) == (0, 540)
    assert lap.inner.run == ((0, 40), (0, 100))
    assert lap.is_joint
    assert not lap.underside


def test_a_roof_lap_has_the_roofs_slope() -> None:
    lap = only_lap(
        section(
            sheet("low", *ROOF_LOW), sheet("up", *ROOF_UP), outside=[(0, 300)], inside=[(0, -300)]
        )
    )
    assert lap.slope == pytest.approx(0.5)
    assert lap.outward == pytest.approx((-0.4472, 0.8944), abs=1e-3)
    assert lap.distance == pytest.approx(8.944, abs=1e-3)


def test_under_a_soffit_the_outward_side_faces_down() -> None:
    low, up = ((-500, 0), (60, 0)), ((0, -8), (500, -8))
    lap = only_lap(
        section(sheet("a", *low), sheet("b", *up), outside=[(0, -300)], inside=[(0, 300)])
    )
    assert lap.underside
    assert lap.outward == (0, -1)
    assert lap.outer.name == "b"
    assert lap.slope == 0


def test_in_a_plan_the_outer_sheet_is_told_as_well() -> None:
    lap = only_lap(section(sheet("low", *WALL_LOW), sheet("up", *WALL_UP), gravity=None))
    assert lap.outer.name == "up"


def test_sheets_on_top_of_each_other_do_not_show_which_is_outside() -> None:
    lap = only_lap(section(sheet("a", (0, -500), (0, 100)), sheet("b", (0.1, 40), (0.1, 500))))
    assert lap.outward is None


def test_a_short_hem_beyond_the_lap_is_no_sheet_that_goes_on() -> None:
    """The lower sheet ends 10 mm above the upper one's fold: still the lower sheet."""
    up = sheet("up", (-10, 40), (-10, 92), (-60, 92), (-60, 500))
    lap = only_lap(section(sheet("low", (0, -500), (0, 100)), up))
    assert lap.upper is not None
    assert lap.upper.name == "up"


def test_a_patch_over_a_joint_goes_on_in_neither_direction() -> None:
    pieces = [sheet("a", (0, -500), (0, 0)), sheet("b", (0, 0), (0, 500))]
    patch = sheet("patch", (-5, -50), (-5, 60))
    laps = {
        frozenset((lap.outer.name, lap.inner.name)): lap
        for lap in water(section(*pieces, patch)).laps
    }
    over_a, over_b = laps[frozenset(("patch", "a"))], laps[frozenset(("patch", "b"))]
    assert over_a.outer.name == over_b.outer.name == "patch"
    assert (over_a.length, over_b.length) == (50, 60)
    assert over_a.upper is not None
    assert over_a.upper.name == "patch"
    assert over_b.upper is not None
    assert over_b.upper.name == "b"


def test_two_sheets_all_the_way_are_no_joint() -> None:
    lap = only_lap(section(sheet("a", (0, -500), (0, 500)), sheet("b", (-8, -500), (-8, 500))))
    assert lap.upper is None
    assert not lap.is_joint
    assert lap.outer.name == "b"


def test_a_lap_of_a_sheet_and_a_board_is_not_told_here() -> None:
    """Boards have no ends to go on: only sheets lap in the roofer's sense."""
    board = Piece("board", "sheathing", Line(((-500, -400), (-480, -400))))
    assert water(section(sheet("a", (0, -500), (0, 500)), board)).laps == ()
