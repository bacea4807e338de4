"""Open air on the outer side of a layer, and the rain in it, with one outside mark or several.

Every route and every side was worked out by hand from the drawn coordinates: that a drop runs
downhill, and is behind what it came through, is common practice, no source.
"""

import numpy as np
import pytest

from enclosure_app.model.place import Point
from enclosure_app.model.report import RouteEnd
from enclosure_app.model.section import Piece, Section
from enclosure_app.network.airs import Air
from enclosure_app.network.layer import Layer
from enclosure_app.rules.wet_route import check as wet_routes
from tests.network.sections import asked, box, section, sheet, water
from tests.rules.junctions import US

FRAME = ((0.0, 0.0), (1000.0, 0.0), (1000.0, 1000.0), (0.0, 1000.0))
ABOVE, BELOW, ROOM = (800.0, 800.0), (800.0, 200.0), (100.0, 500.0)
HIGH = sheet("high", (515, 620), (515, 1000))
ROOF = sheet("porch", (1000, 585), (510, 590), (510, 700))
THROUGH = (
    sheet("high", (505, 620), (505, 1000)),
    ROOF,
)  # the sheet above ends behind the roof's leg
MID = sheet("mid", (505, 220), (505, 690))
BOARDS = box("boards", (535, 100), (550, 560))  # a cladding, which leaks, under the porch roof
LOW = {True: sheet("low", (500, 0), (500, 320)), False: sheet("low", (510, 0), (510, 320))}


def porch(*pieces: Piece, outside: tuple[Point, ...] = (ABOVE, BELOW)) -> Section:
    """Return a wall with a porch roof to the edge of the drawing, the room on the left."""
    return section(*pieces, frame=FRAME, inside=(ROOM,), outside=outside)


def holds(air: Air, *places: Point) -> list[bool]:
    return air.holds(np.array(places)).tolist()


def ends(drawn: Section) -> dict[tuple[str, ...], RouteEnd]:
    """Return how each route ends, by the pieces that it runs on."""
    rain = asked(drawn).rain
    assert rain is not None
    return {route.pieces: route.end for route in rain.routes}


def places(drawn: Section) -> list[Point]:
    return [finding.at for finding in wet_routes(asked(drawn), US)]


def airs(layer: Layer) -> list[Point]:
    return [air.mark for air in layer.airs]


def test_a_roof_to_the_edge_of_the_drawing_parts_two_airs() -> None:
    above, below = water(porch(LOW[True], MID, ROOF, HIGH)).airs
    assert (above.mark, below.mark) == (ABOVE, BELOW)
    assert holds(above, ABOVE, BELOW, ROOM) == [True, False, False]
    assert holds(below, ABOVE, BELOW, ROOM) == [False, True, False]


def test_what_lies_in_any_air_is_outside() -> None:
    layer = water(porch(LOW[True], MID, ROOF, HIGH))
    assert layer.is_outside(np.array([ABOVE, BELOW, ROOM])).tolist() == [True, True, False]


def test_two_marks_on_one_side_of_a_wall_lie_in_one_air() -> None:
    wall = (LOW[True], sheet("up", (505, 220), (505, 1000)))
    assert airs(water(porch(*wall))) == [ABOVE]
    assert ends(porch(*wall)) == ends(porch(*wall, outside=(ABOVE,)))
    assert ends(porch(*wall)) == {("up", "low"): RouteEnd.OUTSIDE}


def test_a_roof_that_ends_in_the_air_has_one_air_round_it() -> None:
    """Open air goes round its edge, so that no trace runs along it."""
    canopy = sheet("canopy", (800, 585), (510, 590), (510, 700))
    assert airs(water(porch(LOW[True], MID, canopy, HIGH))) == [ABOVE]


@pytest.mark.parametrize("shingled", [True, False])
@pytest.mark.parametrize("marks", [(ABOVE, BELOW), (BELOW, ABOVE)])
def test_rain_is_told_above_and_below_the_porch_roof(
    shingled: bool, marks: tuple[Point, ...]
) -> None:
    """Below it, the drop runs off the middle sheet over the lower one, or in behind that."""
    drawn = porch(LOW[shingled], MID, ROOF, HIGH, BOARDS, outside=marks)
    found = ends(drawn)
    assert found["high", "porch"] is RouteEnd.OUTSIDE
    assert found["mid", "low"] is (RouteEnd.OUTSIDE if shingled else RouteEnd.INSIDE)
    assert places(drawn) == ([] if shingled else [pytest.approx((505, 220))])


@pytest.mark.parametrize("marks", [(ABOVE, BELOW), (BELOW, ABOVE)])
def test_what_comes_through_the_roof_is_behind_it_though_it_ends_in_the_air_below(
    marks: tuple[Point, ...],
) -> None:
    drawn = porch(LOW[True], sheet("mid", (500, 220), (500, 690)), *THROUGH, outside=marks)
    assert places(drawn) == [pytest.approx((505, 620))]


def test_a_reversed_lap_below_counts_with_the_mark_below_alone() -> None:
    drawn = porch(LOW[False], MID, ROOF, HIGH, BOARDS, outside=(BELOW,))
    assert places(drawn) == [pytest.approx((505, 220))]


def test_a_place_that_two_airs_hold_is_rained_on_in_the_first() -> None:
    one = water(porch(LOW[True], MID, ROOF, HIGH)).airs[0]
    other = Air(one.mark, one.curves, before=(one,))
    assert one.is_first_to_hold(np.array([ABOVE, BELOW])).tolist() == [True, False]
    assert other.is_first_to_hold(np.array([ABOVE, BELOW])).tolist() == [False, False]


def test_a_room_behind_another_trace_is_outside_for_no_mark() -> None:
    """A shed before the house: its own wall and the house's keep the air from the two rooms."""
    house, shed = sheet("house", (300, 0), (300, 1000)), sheet("shed", (600, 0), (600, 1000))
    drawn = section(
        house, shed, frame=FRAME, inside=((100, 500), (450, 500)), outside=((800, 500),)
    )
    (air,) = water(drawn).airs
    assert holds(air, (800, 500), (450, 500), (100, 500)) == [True, False, False]
    assert ends(drawn) == {("shed",): RouteEnd.OUTSIDE}


def test_under_an_upper_roof_the_lower_one_takes_its_rain_and_the_walls() -> None:
    """The upper roof's edge drips on to the lower one, which runs to the edge of the drawing."""
    upper = sheet("upper", (0, 960), (580, 930), (580, 900))
    wall = sheet("wall", (515, 620), (515, 932))
    drawn = section(upper, wall, ROOF, LOW[True], MID, BOARDS, frame=FRAME, inside=(ROOM,),
                    outside=(ABOVE, BELOW))  # fmt: skip
    found = ends(drawn)
    assert found["upper", "porch"] is RouteEnd.OUTSIDE
    assert found["wall", "porch"] is RouteEnd.OUTSIDE
    assert found["mid", "low"] is RouteEnd.OUTSIDE
    assert places(drawn) == []


@pytest.mark.parametrize("shingled", [True, False])
def test_the_foot_of_a_dormer_hands_its_rain_to_the_roof(shingled: bool) -> None:
    """Roof to both sides of the dormer's front wall: its sheet comes down over the roof's leg or behind it."""
    x = 425 if shingled else 415
    front = sheet("front", (x, 640), (x, 800), (0, 830))
    main = sheet("main", (1000, 310), (420, 600), (420, 720))
    drawn = section(front, main, frame=FRAME, inside=(ROOM,), outside=(ABOVE,))
    assert ends(drawn)["front", "main"] is (RouteEnd.OUTSIDE if shingled else RouteEnd.INSIDE)
    assert len(places(drawn)) == (not shingled)
