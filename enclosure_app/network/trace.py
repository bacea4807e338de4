"""The trace: the way of a pen along a control layer that separates two marks with the least lift.

A separating curve crosses the straight way between the marks an odd number of times. So the trace
is a shortest odd round in the graph of rims; with two nodes for each rim, one for each parity, it is
a shortest path from one node of a rim to its other node. Links cost nothing, a jump costs its
length; among equals the pen prefers sealed joints and few pieces. Jumps are searched for only as
far as needed: the reach grows until the marks are separated, and then once more up to the total
that was found, since a longer jump could not be part of anything shorter.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

import networkx as nx
import numpy as np

from enclosure_app.geometry.parity import Flips, Way, flips_along
from enclosure_app.geometry.rims import Bools
from enclosure_app.model.place import Point
from enclosure_app.network.clusters import Clusters
from enclosure_app.network.fabric import Fabric
from enclosure_app.network.links import TOUCHES, Links, jumps_of

UNSEALED = 1e-4  # mm of lift that an unsealed joint counts for among equal traces
STEP = 1e-7  # mm of lift that one more piece counts for
FIRST_REACH = 8.0  # mm


@dataclass(frozen=True, slots=True)
class Round:
    """A separating round: at each step, which link is taken and whether from its b to its a side."""

    links: Links
    steps: tuple[tuple[int, bool], ...]
    rim: int  # the rim that the round starts and ends on

    @property
    def lift(self) -> float:
        """The total lift, mm."""
        return float(sum(self.links.lift[number] for number, _ in self.steps))


@dataclass(frozen=True, slots=True)
class Trace:
    """The least-lift round for one pair of marks, and the smallest largest lift of any round."""

    round: Round
    bottleneck: float
    outside: Point
    inside: Point


def find_trace(
    fabric: Fabric, links: Links, marks: tuple[Point, Point], touch: float, sealed: Bools
) -> Trace | None:
    """Return the trace between (outside, inside) marks.

    None where the layer has no piece, or none that comes between the marks.

    Args:
        fabric: the layer.
        links: its links, from `links.links_of`.
        marks: the outside and the inside mark.
        touch: what still counts as touching, mm.
        sealed: (k,) whether each link is sealed by the products themselves.
    """
    if not fabric.pieces:
        return None
    start, end = (np.asarray(mark, dtype=np.float64) for mark in marks)
    flips = flips_along(fabric.rims, Way(start, end))
    clusters = _linked(fabric, links, flips)
    if clusters.separating:
        return Trace(_shortest(links, flips, sealed), 0.0, *marks)
    least = _least_jumps(fabric, flips, clusters, touch)
    if least is None:
        return None
    jumps, bottleneck = least
    best = _with_jumps(links, jumps, flips, sealed)
    longer = _jumps_within(fabric, flips, clusters, (touch, best.lift))
    if len(longer) > len(jumps):
        best = _with_jumps(links, longer, flips, sealed)
    return Trace(best, bottleneck, *marks)


def _with_jumps(links: Links, jumps: Links, flips: Flips, sealed: Bools) -> Round:
    costly = np.concatenate([sealed, np.ones(len(jumps), dtype=bool)])
    return _shortest(_joined(links, jumps), flips, costly)


def _linked(fabric: Fabric, links: Links, flips: Flips) -> Clusters:
    rims = fabric.rims
    clusters = Clusters(len(rims.owner))
    clusters.separating = bool(flips.whole.any())
    turns = links.turns(flips)
    pairs = np.unique(np.column_stack([rims.rim[links.a], rims.rim[links.b], turns]), axis=0)
    clusters.join_all((int(a), int(b), bool(turn)) for a, b, turn in pairs)
    return clusters


def _least_jumps(
    fabric: Fabric, flips: Flips, clusters: Clusters, touch: float
) -> tuple[Links, float] | None:
    """Grow the reach until jumps separate the marks; return them and the largest one needed.

    None where nothing separates them: no piece comes between the marks at all.
    """
    far = float(np.hypot(*np.ptp(fabric.rims.start, axis=0))) + FIRST_REACH
    reach = FIRST_REACH
    while True:
        jumps = _jumps_within(fabric, flips, clusters, (touch, reach))
        bottleneck = _largest_needed(jumps, flips, clusters)
        if bottleneck is not None:
            return jumps, bottleneck
        if reach > far:
            return None
        reach *= 3


def _jumps_within(
    fabric: Fabric, flips: Flips, clusters: Clusters, reach: tuple[float, float]
) -> Links:
    """Return the shortest jump of each turn between each pair of clusters, shortest first."""
    jumps = jumps_of(fabric, *reach)
    cluster, parity = clusters.table()
    rim_a, rim_b = fabric.rims.rim[jumps.a], fabric.rims.rim[jumps.b]
    low, high = np.sort([cluster[rim_a], cluster[rim_b]], axis=0)
    turn = jumps.turns(flips) ^ parity[rim_a] ^ parity[rim_b]
    useful = (low != high) | turn
    key = np.column_stack([low, high, turn])[useful]
    jumps = jumps.take(useful)
    order = np.argsort(np.round(jumps.lift, 7), kind="stable")
    _, first = np.unique(key[order], axis=0, return_index=True)
    return jumps.take(order[np.sort(first)])


def _largest_needed(jumps: Links, flips: Flips, clusters: Clusters) -> float | None:
    """Add jumps, shortest first, until the marks are separated; return the last one's lift."""
    grown = clusters.copy()
    rim = flips.rims.rim
    pairs = zip(rim[jumps.a].tolist(), rim[jumps.b].tolist(), jumps.turns(flips), strict=True)
    for (a, b, turn), lift in zip(pairs, jumps.lift.tolist(), strict=True):
        if grown.join(a, b, turn=bool(turn)):
            return float(lift)
    return None


def _joined(links: Links, jumps: Links) -> Links:
    names = Links.__slots__
    return Links(*(np.concatenate([getattr(links, name), getattr(jumps, name)]) for name in names))


def _shortest(links: Links, flips: Flips, sealed: Bools) -> Round:
    """Return the shortest odd round: a shortest path between the two nodes of one rim."""
    whole = np.flatnonzero(flips.whole)
    if len(whole):
        return Round(links, (), int(whole[0]))
    turns = links.turns(flips)
    ways = _cheapest_ways(links, flips, turns, sealed)
    graph = _two_sheets(ways)
    paths = (_path_home(graph, rim) for rim in _crossing_rims(links, flips))
    found = [each for each in paths if each is not None]
    if not found:
        raise ArithmeticError("The rims separate the marks, but no round was found.")
    _, nodes = min(found, key=lambda each: each[0])
    steps = tuple(_step(links, flips, ways, pair) for pair in pairwise(nodes))
    return Round(links, steps, nodes[0] // 2)


Ways = dict[tuple[int, int, bool], tuple[int, float]]  # rim, rim, turn -> link, cost


def _cheapest_ways(links: Links, flips: Flips, turns: Bools, sealed: Bools) -> Ways:
    rim_a, rim_b = flips.rims.rim[links.a], flips.rims.rim[links.b]
    cost = links.lift + UNSEALED * ~sealed + STEP + STEP / 10 * (links.run == TOUCHES)
    useful = (rim_a != rim_b) | turns
    low, high = np.minimum(rim_a, rim_b), np.maximum(rim_a, rim_b)
    order = np.flatnonzero(useful)[np.argsort(cost[useful], kind="stable")]
    key = np.column_stack([low, high, turns])[order]
    _, first = np.unique(key, axis=0, return_index=True)
    best = order[first]
    names = zip(low[best].tolist(), high[best].tolist(), turns[best].tolist(), strict=True)
    return dict(zip(names, zip(best.tolist(), cost[best].tolist(), strict=True), strict=True))


def _two_sheets(ways: Ways) -> "nx.Graph[int]":
    """Build the graph with two nodes for each rim; node = 2 * rim + parity."""
    graph: nx.Graph[int] = nx.Graph()
    graph.add_weighted_edges_from(
        (2 * a + side, 2 * b + (side ^ turn), cost)
        for (a, b, turn), (_, cost) in ways.items()
        for side in (0, 1)
    )
    return graph


def _crossing_rims(links: Links, flips: Flips) -> Iterator[int]:
    """Yield rims of which every odd round must use at least one."""
    rims = flips.rims
    own = rims.rim[flips.way.crossed(rims.start, rims.end)]
    by_links = rims.rim[links.a[flips.way.crossed(links.at_a, links.at_b)]]
    yield from np.unique(np.concatenate([own, by_links])).tolist()


def _path_home(graph: "nx.Graph[int]", rim: int) -> tuple[float, list[int]] | None:
    if 2 * rim not in graph or 2 * rim + 1 not in graph:
        return None
    try:
        length, nodes = nx.bidirectional_dijkstra(graph, 2 * rim, 2 * rim + 1)
    except nx.NetworkXNoPath:
        return None
    return float(length), list(nodes)


def _step(links: Links, flips: Flips, ways: Ways, pair: tuple[int, int]) -> tuple[int, bool]:
    start, end = pair[0] // 2, pair[1] // 2
    turn = bool((pair[0] ^ pair[1]) & 1)
    number, _ = ways[min(start, end), max(start, end), turn]
    return number, bool(flips.rims.rim[links.a[number]] != start)
