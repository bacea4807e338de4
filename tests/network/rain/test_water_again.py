"""What drops do after a move is what they do on a ground that is made anew."""

import numpy as np
from hypothesis import given

from enclosure_app.network.rain.water import Water
from enclosure_app.network.rain.water_again import WaterAgain, falls_of, water_again
from tests.network.moving import CASES, Case, grounds
from tests.network.random_layers import profile


def waters(made: Case) -> tuple[WaterAgain, Water]:
    again, _ = grounds(made)
    work = made.last.rain.work[0]
    return water_again(work.water, work.falls, again), made.whole.rain.work[0].water


@profile(12)
@given(CASES)
def test_drops_leave_edges_and_go_on_as_on_a_ground_made_anew(made: Case) -> None:
    again, fresh = waters(made)
    assert again.water.offs == fresh.offs
    for node, step in fresh.steps.items():
        assert again.water.step(node) == step
    assert sorted(again.falls.runs.tolist()) == sorted(fresh.offs)


@profile(12)
@given(CASES)
def test_every_node_that_changed_is_told(made: Case) -> None:
    again, fresh = waters(made)
    last = made.last.rain.work[0].water
    for node, step in last.steps.items():
        if node not in again.changed:
            assert fresh.step(node) == step
            assert again.water.steps[node] is step or again.water.steps[node] == step


@profile(8)
@given(CASES)
def test_a_fall_is_told_from_its_edge_to_where_it_ends(made: Case) -> None:
    water = made.last.rain.work[0].water if made.last.rain and made.last.rain.work else None
    if water is None:
        return
    falls = falls_of(water.ground, water.offs)
    for run, (x, top, low) in zip(falls.runs.tolist(), falls.paths.tolist(), strict=True):
        off = water.offs[run]
        assert (x, top) == off.edge
        ends = [water.ground.at(spot.run, spot.station)[1] for spot in off.spots]
        assert all(low <= end for end in ends)
        assert off.leaves is None or low <= off.leaves[1]
        assert np.isfinite(low) or not off.spots
