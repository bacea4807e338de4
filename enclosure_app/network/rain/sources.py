"""Where rain routes start: landings that no drop from above comes past."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from math import inf

import numpy as np

from enclosure_app.geometry.surfaces.faces import Bools, Floats, Ints
from enclosure_app.network.rain.edges import Spot
from enclosure_app.network.rain.landing import Landed
from enclosure_app.network.rain.water import Node, Water

NONE = -1


@dataclass(frozen=True, slots=True, eq=False)
class Flow:
    """The nodes that drops come to, numbered, and where they go on from each.

    `onto` (n, 2) are the numbers of the next nodes, `NONE` where there is none (or no second one),
    and `station` (n, 2) how far up these the drop comes on to them, mm.
    """

    number: dict[Node, int]
    nodes: tuple[Node, ...]
    onto: Ints
    station: Floats


@dataclass(frozen=True, slots=True, eq=False)
class Landings:
    """Where rain lands: `run`, `station` and the number of the node, (k,) each."""

    run: Ints
    station: Floats
    node: Ints


def flow_of(
    water: Water, landed: Landed, last: Flow | None = None, changed: frozenset[Node] = frozenset()
) -> Flow:
    """Return the flow from where rain landed; `last` is as before but at the `changed` nodes."""
    number = dict(last.number) if last else {}
    nodes = list(last.nodes) if last else []
    todo = _stale(last, changed) if last else []
    todo += _numbered((water.node(spot) for spots in landed.values() for spot in spots),
                      number, nodes)  # fmt: skip
    rows: dict[int, tuple[Sequence[int], Sequence[float]]] = {}
    while todo:
        node = todo.pop()
        spots = water.step(node).spots if _exists(water, node) else ()
        onto = [water.node(spot) for spot in spots]
        todo += _numbered(onto, number, nodes)
        ways, stations = [number[each] for each in onto], [spot.station for spot in spots]
        more = 2 - len(onto)
        rows[number[node]] = ([*ways, *[NONE] * more], [*stations, *[inf] * more])
    return _with_rows((number, tuple(nodes)), rows, last)


def _numbered(found: Iterable[Node], number: dict[Node, int], nodes: list[Node]) -> list[Node]:
    """Number the nodes that are new, and return these."""
    new = []
    for node in found:
        if node not in number:
            number[node] = len(nodes)
            nodes.append(node)
            new.append(node)
    return new


def _stale(last: Flow, changed: frozenset[Node]) -> list[Node]:
    """Return the nodes that changed, and those from which drops come on to these."""
    stale = np.zeros(len(last.onto) + 1, dtype=bool)  # the last one for `NONE`
    stale[[last.number[node] for node in changed if node in last.number]] = True
    stale[:-1] |= stale[last.onto].any(axis=1)
    return [last.nodes[number] for number in np.flatnonzero(stale).tolist()]


def _exists(water: Water, node: Node) -> bool:
    there = node[1] <= len(water.ground.bars.get(node[0], ()))
    return there and bool(water.ground.wets[node[0]])


def _with_rows(
    numbered: tuple[dict[Node, int], tuple[Node, ...]],
    rows: Mapping[int, tuple[Sequence[int], Sequence[float]]],
    last: Flow | None,
) -> Flow:
    number, nodes = numbered
    onto, station = np.full((len(number), 2), NONE), np.full((len(number), 2), inf)
    if last is not None:
        onto[: len(last.onto)], station[: len(last.onto)] = last.onto, last.station
    if rows:
        which = np.fromiter(rows, dtype=np.intp, count=len(rows))
        onto[which] = [ways for ways, _ in rows.values()]
        station[which] = [stations for _, stations in rows.values()]
    return Flow(number, nodes, onto, station)


def landings_of(
    water: Water, flow: Flow, landed: Landed, last: tuple[Landings, Ints] | None = None
) -> Landings:
    """Return the landings as arrays; `last` are those before, and the runs that are asked anew."""
    spots = [spot for each in landed.values() for spot in each]
    fresh = Landings(
        np.array([spot.run for spot in spots], dtype=np.intp),
        np.array([spot.station for spot in spots], dtype=np.float64),
        np.array([flow.number[water.node(spot)] for spot in spots], dtype=np.intp),
    )
    if last is None:
        return fresh
    old, asked = last
    again = np.zeros(len(water.ground.wets), dtype=bool)
    again[asked] = True
    kept = ~again[old.run]
    return Landings(
        np.concatenate([old.run[kept], fresh.run]),
        np.concatenate([old.station[kept], fresh.station]),
        np.concatenate([old.node[kept], fresh.node]),
    )


def heads(water: Water, flow: Flow, landings: Landings) -> list[Spot]:
    """Return where routes start, lowest first."""
    slack = water.ground.tolerances.lap_reach
    entered = entered_at(flow, reached_from(flow, landings.node))
    first = entered[landings.node] > landings.station + slack
    past = reached_from(flow, landings.node[first])
    which = np.flatnonzero(first | ~past[landings.node])
    rows = zip(landings.run[which].tolist(), landings.station[which].tolist(), strict=True)
    places = {Spot(*row): water.ground.at(*row) for row in rows}
    return sorted(
        places, key=lambda spot: (places[spot][1], places[spot][0], spot.run, spot.station)
    )


def entered_at(flow: Flow, reached: Bools) -> Floats:
    """Return how far up each node drops come on to it from `reached` ones; infinite where they do not."""
    entered = np.full(len(flow.onto), inf)
    for way in (0, 1):
        from_here = np.flatnonzero(reached & (flow.onto[:, way] != NONE))
        np.minimum.at(entered, flow.onto[from_here, way], flow.station[from_here, way])
    return entered


def reached_from(flow: Flow, start: Ints) -> Bools:
    """Return every node that drops run over which are on one of `start`.

    Twice as many steps are looked ahead in each round, so that a long way takes few rounds.
    """
    reached = np.zeros(len(flow.onto), dtype=bool)
    reached[start] = True
    here = np.arange(len(flow.onto))
    first = np.where(flow.onto[:, 0] == NONE, here, flow.onto[:, 0])
    second = np.flatnonzero(flow.onto[:, 1] != NONE)
    while True:
        ahead = first
        while True:
            there = ahead[reached]
            if reached[there].all():
                break
            reached[there] = True
            ahead = ahead[ahead]
        spread = flow.onto[second[reached[second]], 1]
        if reached[spread].all():
            return reached
        reached[spread] = True
