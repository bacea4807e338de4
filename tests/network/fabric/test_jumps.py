"""Jumps over what links do not join: none is missed that is the shortest of its clusters and turn."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.geometry.rims.parity import Flips, Way, flips_along
from enclosure_app.model.limits import Tolerances
from enclosure_app.model.product import Control
from enclosure_app.model.section import Piece, Section
from enclosure_app.network.fabric import jumps as looked_for
from enclosure_app.network.fabric.clusters import Clusters
from enclosure_app.network.fabric.fabric import Fabric, weave
from enclosure_app.network.fabric.jumps import Jumps, jumps_of
from enclosure_app.network.fabric.links import Links, links_of
from tests.network.random_layers import RandomLayer, layers, profile
from tests.network.sections import PRODUCTS, area, box, sheet, woven

TOUCH = 2.0
LOW = sheet("a", (0, 0), (0, 100))
Key = tuple[int, int, bool]


def names(fabric: Fabric, jumps: Links) -> list[tuple[str, ...]]:
    """Return the names of what each jump leads between."""
    owner = fabric.rims.owner[fabric.rims.rim]
    pairs = zip(owner[jumps.a].tolist(), owner[jumps.b].tolist(), strict=True)
    return [tuple(sorted((fabric.names[a], fabric.names[b]))) for a, b in pairs]


def joined(fabric: Fabric, flips: Flips) -> Clusters:
    """Return the clusters that links alone join."""
    links, rim = links_of(fabric, TOUCH), fabric.rims.rim
    clusters = Clusters(len(fabric.rims.owner))
    rows = zip(rim[links.a].tolist(), rim[links.b].tolist(), links.turns(flips), strict=True)
    clusters.join_all((a, b, bool(turn)) for a, b, turn in rows)
    return clusters


def shortest(fabric: Fabric, flips: Flips, clusters: Clusters, reach: float) -> dict[Key, float]:
    """Return the length of the shortest of all chords, for each two clusters and turn."""
    cluster, parity = clusters.table()
    jumps = jumps_of(fabric, TOUCH, reach)
    turns = jumps.turns(flips)
    found: dict[Key, float] = {}
    for number, lift in enumerate(jumps.lift.tolist()):
        a, b = (int(fabric.rims.rim[side[number]]) for side in (jumps.a, jumps.b))
        low, high = sorted((int(cluster[a]), int(cluster[b])))
        key = low, high, bool(turns[number] ^ parity[a] ^ parity[b])
        if low != high or key[2]:
            found[key] = min(lift, found.get(key, np.inf))
    return found


def by_key(found: Jumps, jumps: Links, clusters: Clusters) -> dict[Key, float]:
    """Return the length of each jump that was looked for, by its two clusters and turn."""
    cluster, parity = clusters.table()
    rim = found.fabric.rims.rim
    told: dict[Key, float] = {}
    for a, b, turn, lift in zip(
        rim[jumps.a].tolist(),
        rim[jumps.b].tolist(),
        jumps.turns(found.flips),
        jumps.lift,
        strict=True,
    ):
        low, high = sorted((int(cluster[a]), int(cluster[b])))
        key = low, high, bool(turn ^ parity[a] ^ parity[b])
        assert key not in told
        told[key] = float(lift)
    return told


def test_jumps_are_longer_than_touching_and_no_longer_than_the_reach() -> None:
    fabric = woven(LOW, sheet("b", (0, 130), (0, 200)), sheet("c", (0, 201), (0, 300)))
    jumps = jumps_of(fabric, TOUCH, 30.0)
    assert set(names(fabric, jumps)) == {("a", "b")}
    assert set(jumps.lift.tolist()) == {30}
    assert names(fabric, jumps_of(fabric, TOUCH, 29.9)) == []


def test_between_two_clusters_one_jump_is_found_for_each_side_of_the_mark() -> None:
    """A mark between two boards that face each other, 40 mm apart on one side and 50 on the other."""
    fabric = woven(
        box("a", (-100, -100), (100, -20), of="glass"),
        area("b", (-100, 20), (0, 20), (0, 30), (100, 30), (100, 100), (-100, 100), of="glass"),
    )
    flips = flips_along(fabric.rims, Way(np.array([5.0, 5.0]), np.array([6.0, 300.0])))
    found = Jumps.between(fabric, flips, joined(fabric, flips)).within(TOUCH, 60.0)
    assert names(fabric, found) == [("a", "b")] * 2
    assert sorted(found.turns(flips).tolist()) == [False, True]
    assert found.lift.tolist() == [40.0, 50.0]


@pytest.mark.parametrize("size", [2, 16])
@profile(12)
@given(layer=layers(), reach=st.sampled_from([10.0, 60.0, 400.0, 5000.0]))
def test_no_shorter_jump_is_missed_however_segments_are_grouped(
    layer: RandomLayer, reach: float, size: int
) -> None:
    pieces = tuple(Piece(f"p{n}", "loose", shape) for n, shape in enumerate(layer.shapes))
    fabric = weave(Section("random", layer.frame, pieces, PRODUCTS), Control.AIR, Tolerances())
    marks = np.asarray(layer.outside, dtype=float), np.asarray(layer.inside, dtype=float)
    flips = flips_along(fabric.rims, Way(*marks))
    clusters = joined(fabric, flips)
    if clusters.separating:
        return
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(looked_for, "GROUP", size)
        found = Jumps.between(fabric, flips, clusters)
        jumps = found.within(TOUCH, reach)
    assert (np.diff(jumps.lift) > -1e-6).all()
    expected = shortest(fabric, flips, clusters, reach)
    assert by_key(found, jumps, clusters) == pytest.approx(expected, abs=1e-6)


def test_of_all_pairs_of_a_long_row_few_are_measured() -> None:
    posts = [
        box(f"p{n}", (20.0 * n, -50), (20.0 * n + 10, 50), of="glass") for n in range(-20, 20)
    ]
    fabric = woven(*posts)
    flips = flips_along(fabric.rims, Way(np.array([-5.0, 0.0]), np.array([-5.0, 300.0])))
    near = Jumps.between(fabric, flips, joined(fabric, flips)).near
    every = len(fabric.rims.start) ** 2 / 2
    assert len(near.pairs(2000.0)[0]) < every / 3
