"""Where a roof turns up a wall; the outside is above and to the left."""

import pytest

from enclosure_app.model.place import Point
from enclosure_app.model.section import Piece, Section
from enclosure_app.network.details.upturns import Upturn, upturns
from tests.network.sections import asked, section, sheet

WALL = sheet("w", (92, 150), (92, 500))


def corner(*pieces: Piece, **how: object) -> Section:
    """A wall sheet above on the right, and what is asked about below it."""
    marks = {"outside": [(-200.0, 250.0)], "inside": [(300.0, -200.0)]}
    return section(*pieces, WALL, **{**marks, **how})


def found(*pieces: Piece, **how: object) -> list[Upturn]:
    return upturns(asked(corner(*pieces, **how)))


def roofing(*points: Point, of: str = "roofing") -> Piece:
    return sheet("r", *points, of=of)


def test_a_level_roof_turned_up_a_wall_has_its_height() -> None:
    (upturn,) = found(roofing((-500, 0), (100, 0), (100, 203.2)))
    assert (upturn.piece, upturn.fold, upturn.top) == ("r", (100, 0), (100, 203.2))
    assert upturn.height == pytest.approx(203.2)
    assert upturn.slope == 0
    assert upturn.leg == ((100, 0), (100, 203.2))


def test_the_drawing_direction_does_not_matter() -> None:
    there = found(roofing((-500, 0), (100, 0), (100, 203.2)))
    back = found(roofing((100, 203.2), (100, 0), (-500, 0)))
    assert [(u.fold, u.top) for u in there] == [(u.fold, u.top) for u in back]


def test_mirrored_it_is_the_same() -> None:
    marks = {"outside": [(200.0, 250.0)], "inside": [(-300.0, -200.0)]}
    drawn = section(
        roofing((500, 0), (-100, 0), (-100, 203.2)), sheet("w", (-92, 150), (-92, 500)), **marks
    )
    (upturn,) = upturns(asked(drawn))
    assert (upturn.fold, upturn.top) == ((-100, 0), (-100, 203.2))


def test_a_sloping_roof_tells_its_slope() -> None:
    (upturn,) = found(roofing((-500, -200), (100, 0), (100, 160), of="underlayment"))
    assert upturn.slope == pytest.approx(4 / 12)
    assert upturn.height == 160


def test_a_cant_in_the_corner_is_part_of_the_roof() -> None:
    """Over a 45 degree cant strip the leg starts at the top of the cant."""
    assert found(roofing((-500, 0), (50, 0), (100, 50), (100, 250))) == []
    (upturn,) = found(roofing((-500, 0), (50, 0), (100, 40), (100, 250)))
    assert upturn.fold == (100, 40)


def test_of_two_sheets_turned_up_at_one_fold_the_highest_counts() -> None:
    low = roofing((-500, 0), (100, 0), (100, 160))
    high = sheet("f", (-50, 8), (94, 8), (94, 230), of="flashing")
    (upturn,) = found(low, high)
    assert (upturn.piece, upturn.height) == ("f", 222)


def test_a_flashing_that_laps_no_roof_is_no_upturn() -> None:
    """A head flashing on a wall has the same shape."""
    flashing = sheet("f", (20, 8), (84, 8), (84, 230), of="flashing")
    assert found(sheet("v", (92, -500), (92, 160)), flashing) == []


def test_a_short_hem_is_no_roof() -> None:
    assert found(roofing((80, 0), (100, 0), (100, 203))) == []


def test_a_leg_that_turns_down_is_no_upturn() -> None:
    assert found(roofing((-500, 0), (100, 0), (100, -203))) == []


def test_a_leg_towards_the_inside_is_no_upturn() -> None:
    """The back of a sill: the corner between roof and leg is indoors."""
    turned = {"outside": [(300.0, -200.0)], "inside": [(-200.0, 250.0)]}
    assert found(roofing((-500, 0), (100, 0), (100, 203)), **turned) == []


def test_a_parapet_turns_up_on_both_sides_of_its_roof() -> None:
    drawn = section(
        roofing((-300, 180), (-300, 0), (300, 0), (300, 210)),
        sheet("l", (-292, 150), (-292, 300), (-400, 300), (-400, -500), of="coating"),
        sheet("w", (292, 150), (292, 300), (400, 300), (400, -500), of="coating"),
        outside=[(0, 200)],
        inside=[(0, -200)],
    )
    assert {(u.fold, u.height) for u in upturns(asked(drawn))} == {
        ((-300, 0), 180),
        ((300, 0), 210),
    }


def test_a_plan_and_a_section_without_marks_have_none() -> None:
    piece = roofing((-500, 0), (100, 0), (100, 203))
    assert found(piece, gravity=None) == []
    assert found(piece, inside=()) == []
