"""Where surfaces run side by side, cross, touch, and what a falling drop meets first."""

import numpy as np
import pytest

from enclosure_app.geometry.surfaces.faces import faces, ring_of_line
from enclosure_app.geometry.surfaces.falling import Drops, Surfaces, floor_below

Line = list[tuple[float, float]]


def surfaces(*lines: Line) -> Surfaces:
    return Surfaces(faces((i, ring_of_line(line), 0.0) for i, line in enumerate(lines)))


def fall(
    ground: Surfaces, start: tuple[float, float], *, skip: int = -1
) -> tuple[int, list[float]]:
    drops = Drops(np.array([start]), np.array([1.0]), np.array([-9e3]), np.array([skip]))
    edge, place = ground.fall(drops, 15.0)
    return (-1 if edge[0] < 0 else int(ground.faces.owner[edge[0]])), place[0].tolist()


ROOF: Line = [(-100.0, 10.0), (100.0, -10.0)]


def test_a_drop_lands_on_the_first_surface_below() -> None:
    ground = surfaces(ROOF, [(-100.0, -500.0), (100.0, -500.0)])
    assert fall(ground, (50, 700)) == (0, pytest.approx([50, -5]))


@pytest.mark.parametrize("depth", [1.0, 63.9, 64.1, 500.0, 8000.0])
def test_how_deep_it_falls_does_not_matter(depth: float) -> None:
    assert fall(surfaces([(-9.0, 0.0), (9.0, 0.0)]), (0, depth)) == (0, pytest.approx([0, 0]))


def test_it_falls_past_what_is_skipped() -> None:
    ground = surfaces(ROOF, [(-100.0, -500.0), (100.0, -500.0)])
    assert fall(ground, (50, 700), skip=0) == (1, pytest.approx([50, -500]))


def test_it_leaves_where_nothing_is_below() -> None:
    assert fall(surfaces(ROOF), (150, 700))[0] == -1


def test_it_clings_to_a_steep_face_it_comes_past() -> None:
    assert fall(surfaces([(10.0, 200.0), (10.0, -200.0)]), (0, 700)) == (0, [10, 200])


def test_it_does_not_cling_to_a_face_out_of_reach() -> None:
    assert fall(surfaces([(15.5, 200.0), (15.5, -200.0)]), (0, 700))[0] == -1


def test_of_two_faces_it_clings_to_the_nearer_one() -> None:
    ground = surfaces([(10.0, 200.0), (10.0, -200.0)], [(-4.0, 200.0), (-4.0, -200.0)])
    assert fall(ground, (0, 100)) == (1, [-4, 100])


def test_sheets_run_beside_each_other_over_their_common_length() -> None:
    ground = surfaces([(0.0, 100.0), (0.0, 0.0)], [(6.0, 130.0), (6.0, 60.0)])
    right = int(np.flatnonzero((ground.faces.normal[:, 0] > 0) & (ground.faces.owner == 0))[0])
    pairs = ground.beside(np.array([right]), 15.0)
    assert set(ground.faces.owner[pairs.f].tolist()) == {1}
    assert pairs.apart.tolist() == pytest.approx([6, 6])
    assert (pairs.high - pairs.low).tolist() == pytest.approx([40, 40])


@pytest.mark.parametrize(
    "other",
    [
        [(16.0, 130.0), (16.0, 0.0)],
        [(6.0, 130.0), (6.0, 97.0)],
        [(6.0, 50.0), (60.0, 50.0)],
        [(6.0, 200.0), (6.0, 130.0)],
    ],
    ids=["out of reach", "no longer than far", "square on", "past the end"],
)
def test_these_do_not_run_beside_each_other(other: Line) -> None:
    ground = surfaces([(0.0, 100.0), (0.0, 0.0)], other)
    assert len(ground.beside(np.flatnonzero(ground.faces.owner == 0), 15.0).e) == 0


def test_a_leg_bars_the_way_down_a_sheet_where_their_lines_cross() -> None:
    ground = surfaces([(0.0, 100.0), (0.0, 0.0)], [(1.5, 49.5), (40.0, 36.666667)])
    right = int(np.flatnonzero((ground.faces.normal[:, 0] > 0) & (ground.faces.owner == 0))[0])
    against = 2 * right + int(ground.faces.a[right, 1] < ground.faces.b[right, 1])
    down = np.array([against])
    bars = ground.bars(down, np.array([[0.0, 100.0]]), np.array([[0.0, 0.0]]), np.array([2.0]))
    assert ground.faces.owner[bars.f].tolist() == [1]
    assert ground.faces.normal[bars.f, 1].tolist() == pytest.approx([0.9487], abs=1e-3)
    assert bars.station.tolist() == pytest.approx([50.5])


def test_places_that_touch_are_found_within_reach() -> None:
    ground = surfaces(ROOF)
    place, edge = ground.touching(np.array([[0.0, 1.5], [0.0, 3.0]]), np.array([2.0, 2.0]))
    assert place.tolist() == [0, 0]
    assert sorted(edge.tolist()) == [0, 1]


def test_a_fall_ends_at_the_frame() -> None:
    frame = ((0.0, 0.0), (100.0, 0.0), (100.0, 80.0), (50.0, 40.0), (0.0, 80.0))
    points = np.array([[25.0, 30.0], [50.0, 60.0], [150.0, 10.0]])
    assert floor_below(frame, points).tolist() == [0.0, 60.0, 10.0]


def test_the_first_of_several_faces_on_a_way_is_met() -> None:
    ground = surfaces([(0.0, 30.0), (9.0, 30.0)], [(0.0, 10.0), (9.0, 20.0)])
    edge, share = ground.first_met(
        np.array([[4.5, 0.0], [4.5, 20.0], [20.0, 0.0]]),
        np.array([[4.5, 60.0], [4.5, 40.0], [20.0, 60.0]]),
    )
    assert ground.faces.owner[edge[:2]].tolist() == [1, 0]
    assert edge[2] == -1
    assert share.tolist() == [0.25, 0.5, np.inf]
