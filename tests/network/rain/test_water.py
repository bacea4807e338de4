"""A drop followed from stretch to stretch: tapes, drains, forks, and ways that join."""

from collections.abc import Callable

import numpy as np
import pytest

from enclosure_app.geometry.surfaces.faces import Bools, Floats
from enclosure_app.model.limits import Tolerances
from enclosure_app.model.place import Area, Line, Point, Shape
from enclosure_app.model.report import RouteEnd
from enclosure_app.network.rain.edges import Spot
from enclosure_app.network.rain.rain import Rain, find_routes
from enclosure_app.network.rain.runs import Ground
from enclosure_app.network.rain.surfaces import surfaces_of
from enclosure_app.network.rain.water import Water

FRAME = ((-500.0, -100.0), (500.0, -100.0), (500.0, 1000.0), (-500.0, 1000.0))


def line(*points: Point) -> Line:
    return Line(points)


def board(left: float, bottom: float, right: float, top: float) -> Area:
    return Area(((left, bottom), (right, bottom), (right, top), (left, top)))


def right_of(*trace: Point) -> Callable[[Floats], Bools]:
    """Return whether points lie to the right of a trace told from the bottom up."""
    x, y = np.array(trace, dtype=float).T

    def outside(points: Floats) -> Bools:
        return np.asarray(points[:, 0] > np.interp(points[:, 1], y, x))

    return outside


REVERSED: dict[str, Shape] = {"U": line((0, 1000), (0, 450)), "L": line((5, 500), (5, 0))}
TAPED: dict[str, Shape] = {
    "U": line((4.6, 1000), (4.6, 250)),
    "L": line((0.8, 300), (0.8, 0)),
    "T": line((5.4, 310), (5.4, 249), (1.6, 245), (1.6, 190)),
}


def rain(pieces: dict[str, Shape], *trace: Point, glued: str = "") -> Rain:
    return find_routes(
        pieces,
        right_of(*trace),
        FRAME,
        Tolerances(),
        glued=frozenset(glued),
    )


def test_water_runs_over_a_tape_and_not_behind_it() -> None:
    trace = ((0.8, 189), (1.6, 190), (1.6, 245), (5.4, 249), (5.4, 310), (4.6, 311))
    (route,) = rain(TAPED, *trace, glued="T").routes
    assert (route.end, route.pieces) == (RouteEnd.OUTSIDE, ("U", "T", "L"))
    assert route.points[:3] == ((4.6, 1000), pytest.approx((4.6, 310)), pytest.approx((5.4, 310)))


def test_the_entry_names_the_sheet_that_is_left_and_the_one_it_goes_behind() -> None:
    (entry,) = rain(REVERSED, (5, 475), (0, 475.1)).entries
    assert (entry.place, entry.piece, entry.into) == ((0, 450), "U", "L")


def test_a_drop_that_stands_inside_the_layer_is_a_wet_route_and_no_pond() -> None:
    pieces = {**REVERSED, "L": line((5, 500), (5, 100), (-300, 100), (-300, 200))}
    found = rain(pieces, (5, 475), (0, 475.1))
    (route,) = [r for r in found.routes if r.points[0] == (0, 1000)]
    assert (route.end, route.pieces) == (RouteEnd.INSIDE, ("U", "L"))
    assert route.points[-1] == pytest.approx((-300, 100))
    assert found.ponds == ()


def test_each_way_of_a_drop_that_spreads_is_told_from_its_landing() -> None:
    pieces: dict[str, Shape] = {"U": line((10, 1000), (10, 700)), "B": board(-20, 0, 30, 500)}
    found = rain(pieces, (30, 499), (10, 501))
    ways = {(r.points[0], r.points[-1], r.end) for r in found.routes}
    assert ways >= {
        ((10, 1000), (30, -100), RouteEnd.OUTSIDE),
        ((10, 1000), (-20, -100), RouteEnd.INSIDE),
    }


@pytest.mark.parametrize("more", [0, 1])
def test_a_way_that_joins_another_is_told_only_so_far(more: int) -> None:
    sheets = {f"S{i}": line((-i, 1000 - 200 * i), (-i, 750 - 200 * i)) for i in range(4)}
    water = Water(Ground(surfaces_of(sheets), FRAME, Tolerances(), right_of((0, 0), (0, 1)), {}))
    right = water.ground.layer.surfaces.faces.normal[:, 0] > 0
    runs = [r for r in np.flatnonzero(water.ground.wets).tolist() if right[r // 2]]
    top = max(runs, key=lambda run: float(water.ground.start[run, 1]))
    whole = water.follow(Spot(top, 0.0), {}, 9)
    assert [water.ground.name(run // 2) for run, _ in whole.nodes] == ["S0", "S1", "S2", "S3"]
    known = dict.fromkeys(whole.nodes[1:], 7)
    joined = water.follow(Spot(top, 0.0), known, more)
    assert joined.joins == 7
    assert joined.nodes == whole.nodes[: 2 + more]
