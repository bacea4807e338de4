"""Where routes start, told from arrays of nodes as it would be by walking from node to node."""

from math import inf

import numpy as np
from hypothesis import assume, given
from hypothesis import strategies as st

from enclosure_app.network.rain.edges import Spot
from enclosure_app.network.rain.sources import (
    NONE,
    Flow,
    Landings,
    entered_at,
    flow_of,
    heads,
    landings_of,
    reached_from,
)
from enclosure_app.network.rain.water import Node, Water
from tests.network.moving import CASES, Case, grounds
from tests.network.random_layers import profile


@st.composite
def flows(draw: st.DrawFn) -> Flow:
    count = draw(st.integers(1, 30))
    ways = st.one_of(st.just(NONE), st.integers(0, count - 1))
    onto = np.array(draw(st.lists(st.tuples(ways, ways), min_size=count, max_size=count)))
    onto[onto[:, 0] == NONE, 1] = NONE
    station = np.where(onto == NONE, inf, draw(st.integers(0, 9)) + onto * 1.5)
    nodes = tuple((n, 0) for n in range(count))
    return Flow(dict(zip(nodes, range(count), strict=True)), nodes, onto, station)


@profile(120)
@given(flows(), st.lists(st.integers(0, 29), max_size=4))
def test_what_is_reached_is_what_walking_comes_to(flow: Flow, starts: list[int]) -> None:
    start = [each for each in starts if each < len(flow.nodes)]
    seen, todo = set(start), list(start)
    while todo:
        new = {each for each in flow.onto[todo.pop()].tolist() if each != NONE} - seen
        seen |= new
        todo += new
    found = reached_from(flow, np.array(start, dtype=np.intp))
    assert set(np.flatnonzero(found).tolist()) == seen


@profile(60)
@given(flows())
def test_a_node_is_entered_where_the_highest_of_those_reached_comes_on_to_it(flow: Flow) -> None:
    reached = np.arange(len(flow.nodes)) % 2 == 0
    found = entered_at(flow, reached)
    for node in range(len(flow.nodes)):
        rows = zip(flow.onto[reached].ravel(), flow.station[reached].ravel(), strict=True)
        assert found[node] == min((at for onto, at in rows if onto == node), default=inf)


def by_walking(water: Water, landed: list[Spot]) -> set[Spot]:
    """Return the heads as they would be told spot by spot."""

    def reached(spots: list[Spot]) -> set[Node]:
        todo = [water.node(spot) for spot in spots]
        seen = set(todo)
        while todo:
            new = {water.node(spot) for spot in water.step(todo.pop()).spots} - seen
            seen |= new
            todo += new
        return seen

    entered: dict[Node, float] = {}
    for node in reached(landed):
        for spot in water.step(node).spots:
            to = water.node(spot)
            entered[to] = min(entered.get(to, inf), spot.station)
    slack = water.ground.tolerances.lap_reach
    first = [s for s in landed if entered.get(water.node(s), inf) > s.station + slack]
    past = reached(first)
    return {*first, *(spot for spot in landed if water.node(spot) not in past)}


@profile(12)
@given(CASES)
def test_heads_are_told_as_by_walking_and_lowest_first(made: Case) -> None:
    assume(made.whole.rain and made.whole.rain.work)
    work = made.whole.rain.work[0]
    landings = zip(work.landings.run.tolist(), work.landings.station.tolist(), strict=True)
    found = heads(work.water, work.flow, work.landings)
    assert set(found) == by_walking(work.water, [Spot(*each) for each in landings])
    heights = [work.water.ground.at(spot.run, spot.station)[1] for spot in found]
    assert heights == sorted(heights)


@profile(12)
@given(CASES)
def test_landings_that_are_not_asked_again_are_kept(made: Case) -> None:
    again, _ = grounds(made)
    water = Water(again.ground, made.last.rain.work[0].water.drains)
    runs = [0, 2, 4]
    landed = {run: (Spot(run, 0.0),) for run in runs if water.ground.wets[run]}
    flow = flow_of(water, landed)
    first = landings_of(water, flow, landed)
    asked = np.array(runs[:1])
    fewer = {run: spots for run, spots in landed.items() if run == 0}
    kept = landings_of(water, flow, fewer, (first, asked))
    assert sorted(kept.run.tolist()) == sorted(first.run.tolist())
    gone: Landings = landings_of(water, flow, {}, (first, asked))
    assert sorted(gone.run.tolist()) == sorted(set(landed) - {0})
