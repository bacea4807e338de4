"""The trace is the way with the least lift: by hand, and against every simple round there is."""

from collections.abc import Iterator
from itertools import combinations, pairwise, product
from math import dist

import networkx as nx
import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.model.limits import Tolerances
from enclosure_app.model.place import Point, Points
from enclosure_app.model.section import Piece
from enclosure_app.network.fabric.links import links_of
from enclosure_app.network.trace import Trace, find_trace
from tests.network.random_layers import profile
from tests.network.sections import FRAME, area, ring, sheet, woven

TOUCH = 2.0
APART = Tolerances(lap_reach=0.0)
OUTSIDE, INSIDE = (-250.0, 0.0), (250.0, 0.0)


def trace(
    *pieces: Piece,
    tolerances: Tolerances = APART,
    marks: tuple[Point, Point] = (OUTSIDE, INSIDE),
) -> Trace:
    fabric = woven(*pieces, tolerances=tolerances)
    links = links_of(fabric, tolerances.touch)
    found = find_trace(fabric, links, marks, tolerances.touch, np.zeros(len(links), dtype=bool))
    assert found is not None
    return found


def lifts(found: Trace) -> list[float]:
    numbers = found.round.numbers.tolist()
    return sorted(lift for lift in found.round.links.lift[numbers].tolist() if lift > 0)


def test_a_sheet_from_frame_to_frame_is_followed_without_a_lift() -> None:
    found = trace(sheet("a", (0, -500), (0, 500)))
    assert (found.round.lift, found.bottleneck) == (0, 0)


def test_a_gap_is_one_lift_as_wide_as_itself() -> None:
    found = trace(sheet("a", (0, -500), (0, -10)), sheet("b", (0, 20), (0, 500)))
    assert lifts(found) == [30]
    assert found.bottleneck == 30


def test_a_gap_of_the_touching_distance_is_none() -> None:
    found = trace(sheet("a", (0, -500), (0, 0)), sheet("b", (0, 2), (0, 500)))
    assert lifts(found) == []


def test_a_sheet_that_stops_short_is_lifted_to_the_frame() -> None:
    found = trace(sheet("a", (0, -500), (0, 460)))
    assert lifts(found) == [40]


def test_the_least_total_is_taken_even_where_its_largest_lift_is_larger() -> None:
    """One lift of 50 against two of 30: the trace takes the one, the bottleneck goes by the two."""
    straight = [sheet("a", (0, -500), (0, -25)), sheet("b", (0, 25), (0, 500))]
    assert lifts(trace(*straight)) == [50]
    found = trace(*straight, sheet("c", (-30, -25), (-30, 25)))
    assert lifts(found) == [50]
    assert found.bottleneck == 30


def test_a_closed_sheet_round_the_inside_mark_is_a_trace_by_itself() -> None:
    found = trace(ring("a", (200, -50), (300, -50), (300, 50), (200, 50)))
    assert len(found.round.numbers) == 0
    assert (found.round.lift, found.bottleneck) == (0, 0)


def test_a_round_that_never_meets_the_frame_has_only_its_own_gap() -> None:
    found = trace(sheet("a", (200, 0), (200, 50), (300, 50), (300, -50), (200, -50), (200, -7)))
    assert lifts(found) == [7]


def test_an_area_is_gone_round_either_way_at_no_lift() -> None:
    slab = area("a", (-20, -500), (20, -500), (20, 0), (-20, 0), of="concrete")
    found = trace(slab, sheet("b", (10, 12), (10, 500)))
    assert lifts(found) == [12]


def test_an_island_helps_over_a_gap_only_where_it_stands_in_it() -> None:
    pair = [sheet("a", (0, -500), (0, -40)), sheet("b", (0, 40), (0, 500))]
    beside = ring("c", (100, -5), (110, -5), (110, 5), (100, 5))
    between = ring("d", (-5, -5), (5, -5), (5, 5), (-5, 5))
    assert lifts(trace(*pair, beside)) == [80]
    assert lifts(trace(*pair, between)) == [35, 35]


def test_marks_in_one_open_space_have_no_trace() -> None:
    """A person put both marks on one side: nothing comes between them."""
    fabric = woven(sheet("a", (-500, -300), (0, -200), (500, -300)))
    links = links_of(fabric, TOUCH)
    loose = np.zeros(len(links), dtype=bool)
    assert find_trace(fabric, links, ((0, 100), (0, 0)), TOUCH, loose) is None


def test_no_piece_no_trace() -> None:
    fabric = woven()
    links = links_of(fabric, TOUCH)
    assert find_trace(fabric, links, (OUTSIDE, INSIDE), TOUCH, np.zeros(0, dtype=bool)) is None


def test_sealed_joints_and_few_pieces_are_preferred_among_equals() -> None:
    """Two ways without a lift: through a coated piece, or through two loose ones."""
    ends = [sheet("a", (0, -500), (0, -100)), sheet("b", (0, 100), (0, 500))]
    coated = sheet("c", (0, -100), (-40, 0), (0, 100), of="coating")
    loose = [sheet("d", (0, -100), (40, 0)), sheet("e", (40, 0), (0, 100))]
    fabric = woven(*ends, *loose, coated)
    links = links_of(fabric, TOUCH)
    owners = [fabric.rims.owner[fabric.rims.rim[side]] for side in (links.a, links.b)]
    sealed = np.isin(owners, [4]).any(axis=0)
    found = find_trace(fabric, links, (OUTSIDE, INSIDE), TOUCH, sealed)
    assert found is not None
    used = {fabric.names[owner[number]] for number in found.round.numbers for owner in owners}
    assert used == {"a", "b", "c", ""}


# --- against every round ------------------------------------------------------------------------

Place = tuple[int, float]  # segment of a piece, share of it


class Everything:
    """Every chord between straight-sided pieces, and every simple round over them."""

    def __init__(self, lines: list[tuple[Points, bool]], marks: tuple[Point, Point]) -> None:
        self.marks = marks
        self.lines = [(*points, points[0]) if closed else points for points, closed in lines]
        self.closed = [closed for _, closed in lines]
        self.chords = {
            pair: self._chords(*(self.lines[n] for n in pair))
            for pair in combinations(range(len(lines)), 2)
        }

    @staticmethod
    def _chords(one: Points, other: Points) -> list[tuple[Point, Point]]:
        found = set()
        for a, b in product(pairwise(one), pairwise(other)):
            if shapely.LineString(a).intersects(shapely.LineString(b)):
                at = shapely.intersection(shapely.LineString(a), shapely.LineString(b)).coords[0]
                found.add((at, at))
                continue
            for ends in ([(p, b) for p in a], [(p, a) for p in b]):
                for point, wall in ends:
                    foot = shapely.shortest_line(shapely.Point(point), shapely.LineString(wall))
                    there = foot.coords[1]
                    found.add((point, there) if wall == b else (there, point))
        return sorted(found)

    def crossed(self, run: list[Point]) -> bool:
        """Whether a polyline crosses the straight way between the marks an odd number of times."""
        (ax, ay), (bx, by) = self.marks

        def left(p: Point, q: Point, r: Point) -> bool:
            return (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]) > 0

        odd = False
        for p, q in pairwise(run):
            apart = left((ax, ay), (bx, by), p) != left((ax, ay), (bx, by), q)
            odd ^= apart and left(p, q, (ax, ay)) != left(p, q, (bx, by))
        return odd

    def between(self, piece: int, start: Point, end: Point) -> set[bool]:
        """Return the parities of the ways along a piece from one place on it to another."""
        line = shapely.LineString(self.lines[piece])
        at = sorted(line.project(shapely.Point(place)) for place in (start, end))
        swapped = line.project(shapely.Point(start)) > line.project(shapely.Point(end))
        run = [self._at(line, at[0]), *self._corners(piece, at), self._at(line, at[1])]
        first, last = (end, start) if swapped else (start, end)
        parity = self.crossed([first, *run, last])
        if not self.closed[piece]:
            return {parity}
        return {parity, parity ^ self.crossed(list(self.lines[piece]))}

    @staticmethod
    def _at(line: shapely.LineString, at: float) -> Point:
        point = line.interpolate(at)
        return point.x, point.y

    def _corners(self, piece: int, at: list[float]) -> list[Point]:
        gone, corners = 0.0, []
        for a, b in pairwise(self.lines[piece]):
            gone += dist(a, b)
            if at[0] < gone < at[1]:
                corners.append(b)
        return corners

    def rounds(self) -> Iterator[list[float]]:
        """Yield the lifts of every simple round that separates the marks."""
        for piece, closed in enumerate(self.closed):
            if closed and self.crossed(list(self.lines[piece])):
                yield [0.0]
        graph = nx.complete_graph(len(self.lines))
        for nodes in [*(list(edge) for edge in graph.edges), *nx.simple_cycles(graph)]:
            yield from self._through(nodes)

    def _through(self, nodes: list[int]) -> Iterator[list[float]]:
        """Try every choice of chords between pieces that follow each other."""
        pairs = list(pairwise([*nodes, nodes[0]]))
        choices = [
            self.chords[pair]
            if pair in self.chords
            else [c[::-1] for c in self.chords[pair[::-1]]]
            for pair in pairs
        ]
        ways: dict[tuple[Point, Point, Point], set[bool]] = {}
        odd = [{chord: self.crossed(list(chord)) for chord in choice} for choice in choices]
        for chords in product(*choices):
            parities = {sum(o[c] for o, c in zip(odd, chords, strict=True)) % 2 == 1}
            for place, node in enumerate(nodes):
                ends = (chords[place - 1][1], chords[place][0])
                key = (node, *ends)
                if key not in ways:
                    ways[key] = self.between(node, *ends)
                parities = {a ^ b for a in parities for b in ways[key]}
            if True in parities:
                yield [dist(*chord) for chord in chords]


def tiny_layer(seed: int) -> list[tuple[Points, bool]]:
    """Return two or three straight or bent sheets, or a ring, in general position."""
    random = np.random.default_rng(seed)
    lines: list[tuple[Points, bool]] = []
    for _ in range(random.integers(2, 4)):
        closed = bool(random.random() < 0.2)
        number = 3 if closed else int(random.integers(2, 4))
        middle = random.uniform((-150, -400), (150, 400))
        points = middle + random.uniform(-1, 1, (number, 2)) * (120, 260)
        lines.append((tuple((float(x), float(y)) for x, y in points), closed))
    return lines


@profile(8)
@given(st.integers(0, 10**9))
def test_no_simple_round_has_less_lift(seed: int) -> None:
    lines = tiny_layer(seed)
    marks = ((-311.7, 3.1), (305.3, -4.9))
    pieces = [
        ring(str(n), *points) if closed else sheet(str(n), *points)
        for n, (points, closed) in enumerate(lines)
    ]
    every = [
        [lift if lift > TOUCH else 0.0 for lift in lifts]
        for lifts in Everything([*lines, (FRAME, True)], marks).rounds()
    ]
    found = trace(*pieces, marks=marks)
    assert found.round.lift == pytest.approx(min(map(sum, every)), abs=1e-6)
    assert found.bottleneck == pytest.approx(min(map(max, every)), abs=1e-6)
