"""What a drop does at a lower edge."""

import numpy as np
import pytest

from enclosure_app.model.limits import Tolerances
from enclosure_app.model.place import Line, Point, Shape
from enclosure_app.network.rain.edges import Off, lower_edges, offs
from enclosure_app.network.rain.runs import Ground
from enclosure_app.network.rain.surfaces import surfaces_of

FRAME = ((-500.0, -100.0), (500.0, -100.0), (500.0, 1000.0), (-500.0, 1000.0))


def line(*points: Point) -> Line:
    return Line(points)


def off(edge: Point, *, side: float = 1.0, **pieces: Shape) -> tuple[Ground, Off]:
    """What becomes of a drop that hangs at the `edge` of U, on the face that looks to `side`."""
    ground = Ground(surfaces_of(pieces), FRAME, Tolerances(), lambda points: points[:, 0] > 0, {})
    found = offs(ground, lower_edges(ground))
    (one,) = [
        told
        for run, told in found.items()
        if ground.name(run // 2) == "U"
        and np.allclose(ground.end[run], edge)
        and ground.normals[run // 2][0] * side > 0
    ]
    return ground, one


def landed(ground: Ground, told: Off) -> list[tuple[str, Point]]:
    return [(ground.name(s.run // 2), ground.at(s.run, s.station)) for s in told.spots]


UPPER = line((0, 900), (0, 400))


def test_a_drop_falls_straight_down_to_the_next_surface() -> None:
    ground, told = off((0, 400), U=UPPER, R=line((-100, 250), (100, 150)))
    assert landed(ground, told) == [("R", pytest.approx((0, 200)))]
    assert told.drips


def test_it_spreads_both_ways_on_a_level_surface() -> None:
    ground, told = off((0, 400), U=UPPER, R=line((-100, 200), (100, 200)))
    assert [ground.heading[s.run, 0] for s in told.spots] == [1, -1]
    assert landed(ground, told) == [("R", pytest.approx((0, 200)))] * 2


def test_it_leaves_at_the_frame_where_nothing_is_below() -> None:
    _, told = off((0, 400), U=UPPER)
    assert (told.spots, told.leaves, told.drips) == ((), (0, -100), True)


def test_a_sheet_cut_at_the_frame_drips_nowhere() -> None:
    _, told = off((0, -100), U=line((0, 900), (0, -100)))
    assert (told.leaves, told.drips) == ((0, -100), False)


def test_it_clings_to_the_lower_sheet_of_a_shingle_lap() -> None:
    ground, told = off((0, 400), U=UPPER, L=line((-8, 500), (-8, 0)))
    assert landed(ground, told) == [("L", pytest.approx((-8, 400)))]
    assert ground.normals[told.spots[0].run // 2][0] == 1
    assert not told.drips


def test_it_goes_in_behind_the_lower_sheet_of_a_reversed_lap() -> None:
    ground, told = off((0, 400), U=UPPER, L=line((8, 500), (8, 0)))
    assert landed(ground, told) == [("L", pytest.approx((8, 400)))]
    assert ground.normals[told.spots[0].run // 2][0] == -1


def test_it_falls_past_a_sheet_out_of_reach() -> None:
    _, told = off((0, 400), U=UPPER, L=line((-17, 500), (-17, 0)))
    assert told.leaves == (0, -100)


def test_it_goes_on_along_a_piece_that_touches_the_edge() -> None:
    ground, told = off((0, 400), U=UPPER, F=line((0, 400), (50, 380)))
    assert landed(ground, told) == [("F", pytest.approx((0, 400)))]


def test_a_piece_that_rises_from_the_edge_dams_it_up() -> None:
    ground, told = off((0, 400), U=line((-300, 500), (0, 400)), F=line((0, 400), (0, 450)))
    assert told.rises is not None
    assert ground.name(told.rises.run // 2) == "F"


def test_it_clings_round_a_step_back_that_is_no_wider_than_a_lap() -> None:
    ground, told = off((5, 300), U=line((5, 900), (5, 300), (0, 286), (0, 0)))
    assert landed(ground, told) == [("U", pytest.approx((0, 286)))]


def test_it_lets_go_where_the_surface_turns_under() -> None:
    _, told = off((60, 300), U=line((60, 900), (60, 300), (0, 286), (0, 0)))
    assert told.leaves == (60, -100)
