"""Where the roof sits on the wall."""

import pytest

from enclosure_app.model.place import Area, Line
from enclosure_app.planning.parts.assembly import DECK, Roof, Wall
from enclosure_app.planning.parts.parameters import RoofSizes
from enclosure_app.planning.parts.roof_edge import LAP, begun, seat_of


@pytest.mark.parametrize("pitch", [0.0, 0.3, 1.0])
def test_the_rafters_underside_meets_the_seat_at_the_studs_inner_face(pitch: float) -> None:
    wall, roof = Wall(RoofSizes()), Roof(RoofSizes(), pitch)
    under = roof.at(wall.studs, -DECK - roof.sizes.rafters)
    assert under == (wall.studs, seat_of(wall, roof))


def test_the_roofs_sheet_laps_over_the_walls_on_the_outside() -> None:
    wall, roof = Wall(RoofSizes()), Roof(RoofSizes(), 0.5)
    pieces = {p.name: p.shape for p in begun("x", wall, roof, wall.face - 300).pieces}
    lower, upper = pieces["self-adhered-sheet-1"], pieces["self-adhered-underlayment-1"]
    assert isinstance(lower, Line)
    assert isinstance(upper, Line)
    assert upper.points[-1][0] < lower.points[-1][0]
    assert lower.points[-1][1] - upper.points[-1][1] == pytest.approx(LAP)


def test_the_insulation_of_wall_and_roof_meets_along_the_slope() -> None:
    wall, roof = Wall(RoofSizes()), Roof(RoofSizes(), 0.5)
    pieces = {p.name: p.shape for p in begun("x", wall, roof, wall.face - 300).pieces}
    board, wool = pieces["pir-1"], pieces["mineral-wool-1"]
    assert isinstance(board, Area)
    assert isinstance(wool, Area)
    assert board.outer[0] == wool.outer[-1]
