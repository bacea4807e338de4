"""The trace: the way of a pen along a control layer that separates two marks with the least lift.

A separating curve crosses the straight way between the marks an odd number of times. So the trace
is a shortest odd round in the graph of rims; with two nodes for each rim, one for each parity, it is
a shortest path from one node of a rim to its other node. Links cost nothing, a jump costs its
length; among equals the pen prefers sealed joints and few pieces. Jumps are searched for only as
far as needed: the reach grows until the marks are separated, and then once more up to the total
that was found, since a longer jump could not be part of anything shorter.
"""

from dataclasses import dataclass, replace

import networkx as nx
import numpy as np

from enclosure_app.geometry.rims.parity import Flips, Way, flips_along
from enclosure_app.geometry.rims.rims import Bools, Floats, Ints
from enclosure_app.model.place import Point
from enclosure_app.network.fabric.clusters import Clusters
from enclosure_app.network.fabric.fabric import Fabric
from enclosure_app.network.fabric.jumps import Jumps
from enclosure_app.network.fabric.links import TOUCHES, Links
from enclosure_app.progress import go_on, gone_through

UNSEALED = 1e-4  # mm of lift that an unsealed joint counts for among equal traces
STEP = 1e-7  # mm of lift that one more piece counts for
FIRST_REACH = 8.0  # mm


@dataclass(frozen=True, slots=True)
class Round:
    """A separating round: at each step, which link is taken and whether from its b to its a side."""

    links: Links
    numbers: Ints
    swapped: Bools
    rim: int  # the rim that the round starts and ends on

    @property
    def lift(self) -> float:
        """The total lift, mm."""
        return float(sum(self.links.lift[self.numbers].tolist()))


@dataclass(frozen=True, slots=True, eq=False)
class Ways:
    """The links as a pen sees them: the two rims, the turn and the cost of each, (k,) every one.

    `start` are rims of which every odd round must use at least one; `around` says that a single
    ring separates the marks.
    """

    a: Ints
    b: Ints
    turns: Bools
    cost: Floats
    start: Ints
    around: bool

    def are_like(self, other: "Ways") -> bool:
        """Whether the clusters and the shortest round are the same by both."""
        return self.around == other.around and all(
            np.array_equal(getattr(self, name), getattr(other, name))
            for name in ("a", "b", "turns", "cost", "start")
        )


@dataclass(frozen=True, slots=True, eq=False)
class Graph:
    """One key for each way between two rims, its cost, and the link that it takes (`best`)."""

    keys: Ints
    cost: Floats
    best: Ints


@dataclass(frozen=True, slots=True, eq=False)
class Search:
    """How a round was found: the links as ways, the clusters that they join, the graph, the nodes."""

    ways: Ways
    clusters: Clusters
    graph: Graph | None = None
    nodes: Ints | None = None


@dataclass(frozen=True, slots=True)
class Trace:
    """The least-lift round for one pair of marks, and the smallest largest lift of any round.

    `search` tells how far links alone lead, and `jumped` with jumps, where these are needed.
    """

    round: Round
    search: Search
    bottleneck: float
    outside: Point
    inside: Point
    jumped: Search | None = None


def find_trace(  # noqa: PLR0913, PLR0917  # the layer, the marks, and what was found the last time
    fabric: Fabric,
    links: Links,
    marks: tuple[Point, Point],
    touch: float,
    sealed: Bools,
    last: Trace | None = None,
) -> Trace | None:
    """Return the trace between (outside, inside) marks.

    None where the layer has no piece, or none that comes between the marks.

    Args:
        fabric: the layer.
        links: its links, from `links.links_of`.
        marks: the outside and the inside mark.
        touch: what still counts as touching, mm.
        sealed: (k,) whether each link is sealed by the products themselves.
        last: the trace between these marks in a fabric with the same rims, some of them elsewhere.
    """
    if not fabric.pieces:
        return None
    start, end = (np.asarray(mark, dtype=np.float64) for mark in marks)
    flips = flips_along(fabric.rims, Way(start, end))
    ways = _ways(links, flips, sealed)
    linked = _linked(ways, len(fabric.rims.owner), last.search if last else None)
    if linked.clusters.separating:
        return Trace(*_shortest(links, flips, linked), 0.0, *marks)
    between = Jumps.between(fabric, flips, linked.clusters)
    least = _least_jumps(between, linked.clusters, touch)
    if least is None:
        return None
    jumps, bottleneck, reach = least
    known = linked, last.jumped if last else None
    best, jumped = _with_jumps((links, jumps), flips, sealed, known)
    longer = between.within(touch, best.lift) if best.lift > reach else jumps
    if len(longer) > len(jumps):
        best, jumped = _with_jumps((links, longer), flips, sealed, known)
    return Trace(best, linked, bottleneck, *marks, jumped)


def _with_jumps(
    both: tuple[Links, Links], flips: Flips, sealed: Bools, known: tuple[Search, Search | None]
) -> tuple[Round, Search]:
    costly = np.concatenate([sealed, np.ones(len(both[1]), dtype=bool)])
    every = _joined(*both)
    ways, (linked, last) = _ways(every, flips, costly), known
    if last is not None and ways.are_like(last.ways):
        return _shortest(every, flips, replace(last, ways=ways))
    return _shortest(every, flips, Search(ways, linked.clusters))


def _ways(links: Links, flips: Flips, sealed: Bools) -> Ways:
    rims = flips.rims
    cost = links.lift + UNSEALED * ~sealed + STEP + STEP / 10 * (links.run == TOUCHES)
    return Ways(
        rims.rim[links.a],
        rims.rim[links.b],
        links.turns(flips),
        cost,
        _crossing_rims(links, flips),
        bool(flips.whole.any()),
    )


def _linked(ways: Ways, number: int, known: Search | None) -> Search:
    """Return the clusters that links join among `number` rims, or what was found by the same links."""
    if known is not None and ways.are_like(known.ways):
        return replace(known, ways=ways)
    clusters = Clusters(number)
    clusters.separating = ways.around
    ends, turn = np.divmod(np.unique(_keys(ways.a, ways.b, ways.turns, number)), 2)
    a, b = np.divmod(ends, max(number, 1))
    clusters.join_all(zip(a.tolist(), b.tolist(), (turn == 1).tolist(), strict=True))
    return Search(ways, clusters)


def _keys(a: Ints, b: Ints, turns: Bools, number: int) -> Ints:
    """Return one key for each pair of rims (of `number`) and turn, in the order of these."""
    return np.asarray((a * max(number, 1) + b) * 2 + turns)


def _least_jumps(
    between: Jumps, clusters: Clusters, touch: float
) -> tuple[Links, float, float] | None:
    """Grow the reach until jumps separate the marks; return them, the largest one needed, the reach.

    None where nothing separates them: no piece comes between the marks at all.
    """
    far = float(np.hypot(*np.ptp(between.fabric.rims.start, axis=0))) + FIRST_REACH
    reach = FIRST_REACH
    while True:
        go_on()
        jumps = between.within(touch, reach)
        bottleneck = _largest_needed(jumps, between.flips, clusters)
        if bottleneck is not None:
            return jumps, bottleneck, reach
        if reach > far:
            return None
        reach *= 3


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


def _shortest(links: Links, flips: Flips, search: Search) -> tuple[Round, Search]:
    """Return the shortest odd round: a shortest path between the two nodes of one rim."""
    whole, number = np.flatnonzero(flips.whole), len(flips.rims.owner)
    if len(whole):
        none = np.zeros(0, dtype=np.intp)
        return Round(links, none, none.astype(bool), int(whole[0])), search
    graph, nodes = search.graph, search.nodes
    if graph is None or nodes is None:
        graph = _graph(search.ways, number)
        nodes = _nodes(graph, search.ways.start, number)
    found = replace(search, graph=graph, nodes=nodes)
    return _round(links, flips, graph, nodes), found


def _graph(ways: Ways, number: int) -> Graph:
    """Return the cheapest way of each turn between each pair of rims."""
    useful = (ways.a != ways.b) | ways.turns
    low, high = np.minimum(ways.a, ways.b), np.maximum(ways.a, ways.b)
    order = np.flatnonzero(useful)[np.argsort(ways.cost[useful], kind="stable")]
    keys, first = np.unique(_keys(low, high, ways.turns, number)[order], return_index=True)
    best = order[first]
    return Graph(keys, ways.cost[best], best)


def _nodes(graph: Graph, start: Ints, number: int) -> Ints:
    """Return the nodes of the shortest odd round among `number` rims; node = 2 * rim + parity."""
    ends, turn = np.divmod(graph.keys, 2)
    a, b = np.divmod(ends, max(number, 1))
    ways = zip(a.tolist(), b.tolist(), turn.tolist(), graph.cost.tolist(), strict=True)
    sheets: nx.Graph[int] = nx.Graph()
    sheets.add_weighted_edges_from(
        (2 * a + side, 2 * b + (side ^ turn), cost) for a, b, turn, cost in ways for side in (0, 1)
    )
    paths = (_path_home(sheets, rim) for rim in gone_through(start.tolist(), 0.0, 0.0, 1))
    found = [each for each in paths if each is not None]
    if not found:
        raise ArithmeticError("The rims separate the marks, but no round was found.")
    return np.array(min(found, key=lambda each: each[0])[1], dtype=np.intp)


def _round(links: Links, flips: Flips, graph: Graph, nodes: Ints) -> Round:
    start, end = nodes[:-1] // 2, nodes[1:] // 2
    turn = (nodes[:-1] ^ nodes[1:]) & 1 == 1
    keys = _keys(np.minimum(start, end), np.maximum(start, end), turn, len(flips.rims.owner))
    numbers = graph.best[np.searchsorted(graph.keys, keys)]
    swapped = flips.rims.rim[links.a[numbers]] != start
    return Round(links, numbers, swapped, int(nodes[0]) // 2)


def _crossing_rims(links: Links, flips: Flips) -> Ints:
    """Return rims of which every odd round must use at least one."""
    rims = flips.rims
    own = rims.rim[flips.way.crossed(rims.start, rims.end)]
    by_links = rims.rim[links.a[flips.way.crossed(links.at_a, links.at_b)]]
    return np.unique(np.concatenate([own, by_links]))


def _path_home(graph: "nx.Graph[int]", rim: int) -> tuple[float, list[int]] | None:
    if 2 * rim not in graph or 2 * rim + 1 not in graph:
        return None
    try:
        length, nodes = nx.bidirectional_dijkstra(graph, 2 * rim, 2 * rim + 1)
    except nx.NetworkXNoPath:
        return None
    return float(length), list(nodes)
