"""Where rain lands."""

from enclosure_app.model.limits import Tolerances
from enclosure_app.model.place import Area, Line, Point, Shape
from enclosure_app.network.rain.landing import landings
from enclosure_app.network.rain.runs import Ground
from enclosure_app.network.rain.surfaces import surfaces_of

FRAME = ((-500.0, -100.0), (500.0, -100.0), (500.0, 1000.0), (-500.0, 1000.0))


def line(*points: Point) -> Line:
    return Line(points)


def wetted(**pieces: Shape) -> list[tuple[str, Point, Point]]:
    """Names, places and free sides of all landings; right of x = 0 is outside."""
    ground = Ground(surfaces_of(pieces), FRAME, Tolerances(), lambda points: points[:, 0] > 0, {})
    return [
        (
            ground.name(spot.run // 2),
            ground.at(spot.run, spot.station),
            tuple(ground.normals[spot.run // 2]),
        )
        for spot in landings(ground)
    ]


def wet(**pieces: Shape) -> set[tuple[str, float, float]]:
    """Names and places of all landings."""
    return {(name, round(x, 3) + 0.0, round(y, 3) + 0.0) for name, (x, y), _ in wetted(**pieces)}


def test_rain_lands_at_the_top_of_the_outer_face_only() -> None:
    assert wet(S=line((0, 900), (0, 0))) == {("S", 0, 900)}


def test_no_rain_lands_on_a_face_that_looks_down() -> None:
    soffit = Area(((10, 500), (100, 500), (100, 520), (10, 520)))
    assert {y for _, _, y in wet(B=soffit)} == {520}


def test_a_sheet_is_wetted_from_where_the_upper_one_ends() -> None:
    assert wet(U=line((5, 900), (5, 400)), L=line((0, 500), (0, 0))) == {
        ("U", 5, 900),
        ("L", 0, 400),
    }


def test_below_a_leg_the_sheet_is_wetted_anew() -> None:
    found = wet(S=line((0, 900), (0, 0)), F=line((0, 500), (100, 480)))
    assert found == {("S", 0, 900), ("S", 0, 500), ("F", 0, 500)}


def test_a_stub_right_under_a_leg_is_wetted_where_it_reaches_out_of_the_corner() -> None:
    """At 0.2 of fall nothing within 15 mm of the stub is open but its last 3 mm."""
    leg = line((0, 500), (100, 480))
    assert wet(T=line((0, 500), (0, 494)), F=leg) == {("T", 0, 500), ("F", 0, 500)}
    assert wet(T=line((0, 500), (0, 497.5)), F=leg) == {("F", 0, 500)}


def test_the_inner_side_of_a_drip_leg_stays_dry() -> None:
    sides = [side for _, _, side in wetted(F=line((20, 500), (100, 480), (100, 440)))]
    assert (1, 0) in sides
    assert (-1, 0) not in sides


def test_a_pocket_behind_a_tape_stays_dry() -> None:
    found = wet(
        U=line((5, 900), (5, 250)),
        L=line((1, 300), (1, 0)),
        T=line((6, 310), (6, 249), (2, 245), (2, 190)),
    )
    assert ("T", 6, 249) not in found


def test_a_sliver_that_a_bead_leaves_bare_at_the_top_does_not_hide_what_is_below_the_bead() -> (
    None
):
    found = wet(S=line((0, 900), (0, 0)), B=Area(((0, 880), (6, 880), (6, 899), (0, 899))))
    assert {place for place in found if place[0] == "S"} == {("S", 0, 880)}


def test_between_two_patches_rain_lands_once_on_a_stretch() -> None:
    """The drop that lands above runs on behind the patches."""
    found = wet(S=line((0, 900), (0, 0)), P=line((5, 800), (5, 600)), Q=line((5, 400), (5, 200)))
    assert {place for place in found if place[0] == "S"} == {("S", 0, 900)}
