"""The order in which sheets go on: over at a lap means later."""

from collections import deque
from collections.abc import Iterable
from dataclasses import dataclass

import networkx as nx


@dataclass(frozen=True, slots=True)
class Order:
    """The sheets in the order of building.

    `sequence` is empty where the laps contradict each other; `cycles` then holds the sheets that
    each lie under the next one, and the last under the first. A cycle starts with the sheet that
    was named first.
    """

    sequence: tuple[str, ...] = ()
    cycles: tuple[tuple[str, ...], ...] = ()


def building_order(laps: Iterable[tuple[str, str]]) -> Order:
    """Return the order in which sheets go on.

    Args:
        laps: pairs (under, over). A sheet that laps itself says nothing about the order.

    Sheets that may go on in any order keep the order in which they were named.
    """
    graph: nx.DiGraph[str] = nx.DiGraph()
    graph.add_edges_from(pair for pair in laps if pair[0] != pair[1])
    rank = {name: place for place, name in enumerate(graph)}
    cycles = _smallest_cycles(graph, rank)
    if cycles:
        return Order(cycles=cycles)
    return Order(tuple(nx.lexicographical_topological_sort(graph, key=rank.__getitem__)))


def _smallest_cycles(
    graph: "nx.DiGraph[str]", rank: dict[str, int]
) -> tuple[tuple[str, ...], ...]:
    """Return the shortest cycle through each lap that lies on one, every cycle once."""
    found: dict[tuple[str, ...], None] = {}
    for knot in nx.strongly_connected_components(graph):
        if len(knot) < 2:
            continue
        part = graph.subgraph(knot)
        for under, over in part.edges:
            found[_turned(_way(part, over, under), rank)] = None
    return tuple(sorted(found, key=lambda cycle: (len(cycle), [rank[name] for name in cycle])))


def _way(graph: "nx.DiGraph[str]", start: str, goal: str) -> list[str]:
    """Return the shortest way from `start` to `goal`, the same one every time."""
    came: dict[str, str] = {start: start}
    queue = deque([start])
    while goal not in came:
        here = queue.popleft()
        for there in graph.successors(here):
            if there not in came:
                came[there] = here
                queue.append(there)
    way = [goal]
    while way[-1] != start:
        way.append(came[way[-1]])
    return way[::-1]


def _turned(cycle: list[str], rank: dict[str, int]) -> tuple[str, ...]:
    """Return the cycle turned so that the sheet named first comes first."""
    first = min(range(len(cycle)), key=lambda i: rank[cycle[i]])
    return tuple(cycle[first:] + cycle[:first])
