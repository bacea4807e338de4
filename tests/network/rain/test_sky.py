"""Which places rain gets to.

That claddings leak is design.md's; the places follow from the drawn coordinates: a ledge that
stands out by w shades a wall down to w / tan(30 degrees) = 1.732 w below its edge, and 2 mm of sky,
measured across the rain, are drafting slop: 4 mm more down the wall.
"""

from collections.abc import Mapping
from math import radians, sin, tan

import numpy as np
import pytest

from enclosure_app.model.limits import Tolerances
from enclosure_app.model.place import Area, Line, Point, Shape
from enclosure_app.network.rain.landing import landings
from enclosure_app.network.rain.runs import Ground
from enclosure_app.network.rain.sky import Sky
from enclosure_app.network.rain.surfaces import surfaces_of

FRAME = ((-500.0, -100.0), (1500.0, -100.0), (1500.0, 3000.0), (-500.0, 3000.0))
WALL = Line(((0.0, 2900.0), (0.0, 0.0)))  # the outside is on its right
EAVE = Line(((0.0, 2950.0), (600.0, 2900.0)))
SLOP = Tolerances().touch


def shade(angle: float) -> float:
    """Return down to where the eave shades the wall."""
    return 2900 - 600 / tan(radians(angle)) - SLOP / sin(radians(angle))


def board(left: float, low: float, right: float, high: float) -> Area:
    return Area(((left, low), (right, low), (right, high), (left, high)))


def sky(
    walls: Mapping[str, Shape],
    leaky: str = "",
    openings: str = "",
    *,
    angle: float = 30.0,
    **layer: Shape,
) -> Sky:
    """Return the sky over a layer; names are parted by spaces."""
    drawn = surfaces_of(layer), surfaces_of(walls)
    names = frozenset(leaky.split()), frozenset(openings.split())
    return Sky(*drawn, *names, FRAME, angle)


def wet_heights(
    walls: Mapping[str, Shape],
    leaky: str = "",
    openings: str = "",
    *,
    angle: float = 30.0,
    **layer: Shape,
) -> list[float]:
    """Return at which heights rain lands on the wall `S`."""
    layer = {"S": WALL, **layer}
    ground = Ground(surfaces_of(layer), FRAME, Tolerances(), lambda points: points[:, 0] > 0, {})
    over = sky(walls, leaky, openings, angle=angle, **layer)
    return [
        ground.at(spot.run, spot.station)[1]
        for spot in landings(ground, over)
        if ground.name(spot.run // 2) == "S"
    ]


def gets_wet(over: Sky, place: Point, normal: Point = (1.0, 0.0)) -> bool:
    return bool(over.wets(np.array([place]), np.array([normal]))[0])


def test_a_wall_under_the_open_sky_is_wet_from_its_top() -> None:
    assert wet_heights({}) == [2900]


@pytest.mark.parametrize("angle", [15.0, 30.0, 45.0])
def test_an_eave_shades_the_wall_down_to_the_driving_angle(angle: float) -> None:
    (height,) = wet_heights({"eave": EAVE}, angle=angle)
    assert height == pytest.approx(shade(angle), abs=1.1)


def test_an_eave_of_the_layer_shades_as_one_of_wood_does() -> None:
    (height,) = wet_heights({}, E=EAVE)
    assert height == pytest.approx(shade(30), abs=1.1)


def test_a_wall_under_a_wide_eave_stays_dry() -> None:
    roof = Line(((0.0, 2950.0), (1400.0, 2800.0)))
    assert wet_heights({"eave": roof}, angle=20.0) == []


def test_rain_gets_to_the_wall_behind_a_cladding_that_the_eave_shades() -> None:
    siding = board(30, 0, 50, 2500)
    (height,) = wet_heights({"eave": EAVE, "siding": siding}, "siding")
    assert height == pytest.approx(2500, abs=1.5)


@pytest.mark.parametrize("leaky", ["", "eave"])
def test_a_piece_that_does_not_leak_keeps_the_wall_behind_it_dry(leaky: str) -> None:
    siding = board(30, -100, 50, 2900)
    assert wet_heights({"eave": EAVE, "siding": siding}, leaky) == []


def test_a_leaky_piece_further_off_than_a_cladding_stands_is_none() -> None:
    """A fascia 590 off the wall leaks on to nothing."""
    (height,) = wet_heights({"eave": EAVE, "fascia": board(590, 2700, 600, 2899)}, "fascia")
    assert height < shade(30)


def test_a_sloping_deck_is_no_cladding_of_the_wall_below_it() -> None:
    deck = Line(((0.0, 2950.0), (300.0, 2700.0)))
    over = sky({"deck": deck}, "deck", S=WALL)
    assert not gets_wet(over, (0.25, 2850))


def test_what_a_membrane_covers_is_not_wetted_by_the_cladding_in_front() -> None:
    sheet, siding = Line(((60.0, 2900.0), (60.0, 0.0))), board(100, 0, 120, 2900)
    over = sky({"siding": siding, "eave": EAVE}, "siding", S=WALL, T=sheet)
    assert not gets_wet(over, (0.25, 2000))
    assert gets_wet(over, (60.25, 2000))


def test_a_coping_leaks_on_to_the_top_of_the_wall() -> None:
    coping = Line(((-200.0, 1020.0), (-200.0, 1050.0), (400.0, 1040.0), (400.0, 1010.0)))
    place, up = (100.0, 1000.25), (0.0, 1.0)
    assert gets_wet(sky({}, "C", C=coping), place, up)
    assert not gets_wet(sky({}, C=coping), place, up)


def test_a_window_leaks_on_to_what_is_right_below_it() -> None:
    window = board(-50, 1000, 600, 2000)
    over = sky({}, openings="W", S=WALL, W=window)
    assert gets_wet(over, (0.25, 990))
    assert not gets_wet(over, (0.25, 700))


def test_rain_falls_in_between_two_walls_at_the_angles_left_open() -> None:
    """A roof right overhead and a shield leave a slot from 16 to 24 degrees off the vertical."""
    roof, shield = Line(((-100.0, 1500.0), (143.0, 1500.0))), board(225, 1500, 600, 1501)
    assert gets_wet(sky({"roof": roof, "shield": shield}), (0.25, 1000))
    wider = Line(((-100.0, 1500.0), (226.0, 1500.0)))
    assert not gets_wet(sky({"roof": wider, "shield": shield}), (0.25, 1000))


def slotted(width: float) -> dict[str, Shape]:
    """Return a roof at 2950 right over the wall, with a slot that begins 400 off it."""
    return {
        "near": Line(((-100.0, 2950.0), (400.0, 2950.0))),
        "far": Line(((400.0 + width, 2950.0), (1500.0, 2950.0))),
    }


@pytest.mark.parametrize("width", [3.0, 10.0, 40.0])
def test_a_narrow_slot_wets_the_wall_from_where_rain_gets_through_it(width: float) -> None:
    """At 30 degrees the ray past the slot's nearer rim meets the wall 400 / tan(30 deg) below it."""
    (height,) = wet_heights(slotted(width))
    low = 2950 - 400 / tan(radians(30))
    assert height == pytest.approx(low - SLOP / sin(radians(30)), abs=1.1)


@pytest.mark.parametrize(("width", "wet"), [(1.9, False), (2.5, True)])
def test_a_slit_of_drawing_slop_lets_no_rain_through(width: float, wet: bool) -> None:
    over = sky(slotted(width), S=WALL)
    places = np.array([(0.25, float(y)) for y in range(1000, 2200, 7)])
    assert over.wets(places, np.array([(1.0, 0.0)] * len(places))).any() == wet


def test_rain_that_only_grazes_a_wall_wets_nothing_through_a_slot() -> None:
    """The slot begins 30 off the wall, 1000 above: it is seen at 1.7 degrees; at 300 above at 5.7."""
    roof = {
        "over": Line(((-100.0, 2000.0), (30.0, 2000.0))),
        "far": Line(((33.0, 2000.0), (1500.0, 2000.0))),
    }
    assert not gets_wet(sky(roof, S=WALL), (0.25, 1000))
    assert gets_wet(sky(roof, S=WALL), (0.25, 1700))


def test_nothing_is_asked_of_no_places() -> None:
    assert sky({}).wets(np.zeros((0, 2)), np.zeros((0, 2))).tolist() == []
