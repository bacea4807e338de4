"""How deep water stands, known by hand."""

from collections.abc import Callable, Mapping

import numpy as np
import pytest

from enclosure_app.geometry.surfaces.faces import Bools, Floats
from enclosure_app.model.limits import Tolerances
from enclosure_app.model.place import Line, Point, Points, Shape
from enclosure_app.network.rain.rain import Rain, find_routes

FRAME = ((-500.0, -100.0), (500.0, -100.0), (500.0, 1000.0), (-500.0, 1000.0))


def line(*points: Point) -> Line:
    return Line(points)


def above(*surface: Point) -> Callable[[Floats], Bools]:
    """Return whether points lie above a surface told from left to right, and not beside it."""
    x, y = np.array(surface, dtype=float).T

    def outside(points: Floats) -> Bools:
        return np.asarray(points[:, 1] > np.interp(points[:, 0], x, y, left=1e4, right=1e4))

    return outside


def rain(pieces: Mapping[str, Shape], surface: Points) -> Rain:
    return find_routes(pieces, above(*surface), FRAME, Tolerances())


VALLEY = ((-600.0, 650.0), (0.0, 500.0), (600.0, 800.0))


@pytest.mark.parametrize(
    "pieces",
    [
        {"V": line((-400, 600), (0, 500), (400, 700))},
        {"V": line((-400, 600), (0, 500)), "W": line((400, 700), (0, 500))},
        {"V": line((-400, 600), (-0.5, 500.125)), "W": line((400, 700), (0, 500))},
    ],
    ids=["one piece", "two pieces that meet", "two pieces 0.5 mm apart"],
)
def test_a_valley_holds_water_up_to_its_lower_side(pieces: dict[str, Shape]) -> None:
    (pond,) = rain(pieces, VALLEY).ponds
    assert pond.place == pytest.approx((0, 500), abs=0.6)
    assert pond.depth == pytest.approx(100, abs=0.2)
    assert np.ravel(pond.extent) == pytest.approx([-400, 600, 200, 600], abs=0.2)
    assert set(pond.pieces) == set(pieces)
    assert pond.bounded


def test_a_valley_that_the_drawing_cuts_off_holds_at_least_what_is_drawn() -> None:
    (pond,) = rain({"V": line((-500, 625), (0, 500), (500, 750))}, VALLEY).ponds
    assert (pond.depth, pond.bounded) == (pytest.approx(125), False)


def test_a_level_roof_between_parapets_fills_to_the_lower_one() -> None:
    pieces: dict[str, Shape] = {
        "V": line((-400, 600), (-400, 500), (0, 500)),
        "W": line((0, 500), (400, 500), (400, 650)),
    }
    (pond,) = rain(pieces, ((-399.9, 500), (399.9, 500))).ponds
    assert pond.depth == pytest.approx(100)
    assert pond.extent == ((-400, 600), (400, 600))
    assert set(pond.pieces) == {"V", "W"}


def test_a_level_roof_that_goes_on_beyond_the_drawing_is_no_pond() -> None:
    found = rain({"V": line((-400, 600), (-400, 500), (500, 500))}, ((-399.9, 500), (500, 500)))
    assert found.ponds == ()
    (route,) = [r for r in found.routes if r.points[0] == (-400, 600)]
    assert route.points[-1] == (500, 500)


def test_a_leg_that_rises_from_a_wall_holds_what_stands_up_to_its_outer_end() -> None:
    pieces: dict[str, Shape] = {"S": line((0, 1000), (0, 0)), "F": line((0, 500), (100, 520))}
    (pond,) = rain(pieces, ((0, -200), (500, -200))).ponds
    assert pond.place == pytest.approx((0, 500))
    assert pond.depth == pytest.approx(20)
    assert np.ravel(pond.extent) == pytest.approx([0, 520, 100, 520])


def test_a_dip_no_deeper_than_drafting_slop_runs_over() -> None:
    roof = ((-300.0, 600.0), (0.0, 500.0), (20.0, 501.5), (300.0, 400.0))
    found = rain({"R": line(*roof)}, roof)
    assert found.ponds == ()
    (route,) = [r for r in found.routes if r.points[0] == (-300, 600)]
    assert route.points[-2:] == ((300, 400), (300, -100))


def test_a_step_up_on_to_a_sheet_that_is_only_drawn_apart_holds_no_water() -> None:
    pieces: dict[str, Shape] = {
        "M": line((-300, 500), (0, 500)),
        "T": line((-100, 501), (-40, 501), (-36, 505), (60, 505)),
        "E": line((-30, 504), (300, 504)),
    }
    found = find_routes(
        pieces,
        above((-300, 500), (-100, 500), (-40, 501), (-36, 505), (60, 505), (300, 504)),
        FRAME,
        Tolerances(),
        glued=frozenset({"T"}),
    )
    assert found.ponds == ()
