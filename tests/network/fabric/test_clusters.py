"""Rims joined with parity."""

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.network.fabric.clusters import Clusters


def test_a_round_of_even_parity_does_not_separate() -> None:
    clusters = Clusters(3)
    assert not clusters.join(0, 1, turn=True)
    assert not clusters.join(1, 2, turn=True)
    assert not clusters.join(2, 0, turn=False)
    assert not clusters.separating


def test_a_round_of_odd_parity_separates() -> None:
    clusters = Clusters(3)
    clusters.join_all([(0, 1, True), (1, 2, True)])
    assert clusters.join(2, 0, turn=True)
    assert clusters.separating


def test_a_rim_joined_to_itself_over_the_way_separates() -> None:
    clusters = Clusters(1)
    assert not clusters.join(0, 0, turn=False)
    assert clusters.join(0, 0, turn=True)


def test_a_copy_goes_on_by_itself() -> None:
    clusters = Clusters(2)
    twin = clusters.copy()
    twin.join(0, 1, turn=False)
    twin.join(0, 1, turn=True)
    assert twin.separating
    assert not clusters.separating
    assert clusters.table()[0].tolist() == [0, 1]


def test_the_table_tells_clusters_and_sides() -> None:
    clusters = Clusters(4)
    clusters.join_all([(0, 2, True), (2, 3, True)])
    cluster, parity = clusters.table()
    assert cluster[0] == cluster[2] == cluster[3] != cluster[1]
    assert [bool(parity[0] ^ parity[n]) for n in (2, 3)] == [True, False]


@given(st.lists(st.tuples(st.integers(0, 7), st.integers(0, 7), st.booleans()), max_size=20))
def test_it_separates_exactly_when_the_rims_cannot_be_given_sides(
    links: list[tuple[int, int, bool]],
) -> None:
    """Against brute force: some choice of sides for eight rims fits all links, or none does."""
    clusters = Clusters(8)
    clusters.join_all(links)
    sides = (np.arange(256)[:, None] >> np.arange(8)) & 1
    fits = np.ones(256, dtype=bool)
    for a, b, turn in links:
        fits &= (sides[:, a] ^ sides[:, b]) == turn
    assert clusters.separating == (not fits.any())
