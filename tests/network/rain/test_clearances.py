"""How far a drop falls clear of the wall, known by hand."""

from math import inf

import numpy as np
import pytest

from enclosure_app.model.limits import Tolerances
from enclosure_app.model.place import Area, Line, Point, Shape
from enclosure_app.network.rain.clearances import clearances
from enclosure_app.network.rain.rain import Drip, find_routes
from enclosure_app.network.rain.surfaces import surfaces_of

FRAME = ((-500.0, -100.0), (500.0, -100.0), (500.0, 1000.0), (-500.0, 1000.0))
SHEET = Line(((0, 1000), (0, 0)))


def line(*points: Point) -> Line:
    return Line(points)


def board(left: float, bottom: float, right: float, top: float) -> Area:
    return Area(((left, bottom), (right, bottom), (right, top), (left, top)))


def drips(flashing: Line, walls: dict[str, Shape] | None = None) -> list[Drip]:
    found = find_routes(
        {"S": SHEET, "F": flashing},
        lambda points: points[:, 0] > 0,
        FRAME,
        Tolerances(),
        walls=walls or {},
    )
    return [drip for drip in found.drips if drip.piece == "F"]


def test_a_drip_knows_its_direction_and_how_clear_of_the_wall_it_falls() -> None:
    (drip,) = drips(line((0, 510), (60, 500), (60, 470)))
    assert drip.point == (60, 470)
    assert drip.direction == pytest.approx((0, -1))
    assert drip.turns_down
    assert drip.clear == pytest.approx(60)


def test_cladding_in_front_of_the_layer_is_the_wall_that_counts() -> None:
    (drip,) = drips(line((0, 510), (60, 500), (60, 470)), {"C": board(20, 0, 55, 460)})
    assert drip.clear == pytest.approx(5)


def test_a_flat_edge_does_not_turn_down() -> None:
    (drip,) = drips(line((0, 500), (5, 499)))
    assert not drip.turns_down
    assert drip.clear == pytest.approx(5)


def test_an_edge_that_lies_on_the_sheet_below_is_a_lap_and_no_drip() -> None:
    assert drips(line((0, 510), (10, 500), (10, 450))) == []


@pytest.mark.parametrize(
    ("wall", "clear"),
    [
        (board(-50, -500, 20, 100), 10),
        (board(45, -500, 90, 100), 15),
        (board(-50, -500, 20, -300), inf),
        (board(-200, -500, -80, 100), inf),
        (board(-50, 10, 20, 100), inf),
    ],
    ids=["behind", "in front", "too far down", "too far off", "above the edge"],
)
def test_the_nearest_wall_face_beneath_counts(wall: Area, clear: float) -> None:
    surfaces = surfaces_of({"W": wall}).surfaces
    found = clearances(surfaces, np.array([[30.0, 0.0]]), np.array([-inf]))
    assert found == pytest.approx([clear])


def test_what_lies_under_the_ledge_that_the_drop_lands_on_is_hidden() -> None:
    surfaces = surfaces_of({"W": board(-50, -500, 20, -40)}).surfaces
    assert clearances(surfaces, np.array([[30.0, 0.0]]), np.array([-20.0])) == [inf]


def test_a_slope_beneath_is_no_wall() -> None:
    surfaces = surfaces_of({"R": line((-100, -10), (100, -60))}).surfaces
    assert clearances(surfaces, np.array([[30.0, 0.0]]), np.array([-inf])) == [inf]
