"""The trace against the opening and against a raster: what the program stands on."""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import pi

import networkx as nx
import numpy as np
import pytest
import shapely
from hypothesis import assume, given
from hypothesis import strategies as st

from enclosure_app.geometry.runs.polyline import stretch
from enclosure_app.model.limits import Tolerances
from enclosure_app.model.place import Line, Point, Shape
from enclosure_app.model.product import Control
from enclosure_app.model.section import Piece, Section
from enclosure_app.network.fabric.fabric import Fabric, weave
from enclosure_app.network.fabric.links import links_of
from enclosure_app.network.opening import Opening, find_opening
from enclosure_app.network.trace import Trace, find_trace
from tests.network.random_layers import (
    HEIGHT,
    WIDTH,
    RandomLayer,
    clearance,
    layers,
    profile,
    solid,
)
from tests.network.sections import PRODUCTS

TOLERANCES = Tolerances()
TOUCH = TOLERANCES.touch
PIXEL = 5.0
AGREE = 0.1  # mm


@dataclass(frozen=True)
class Both:
    """What the two roads say of one layer; no trace where both marks lie in one open space."""

    fabric: Fabric
    trace: Trace | None
    opening: Opening


def judged(layer: RandomLayer) -> Both:
    """Trace a random layer of loose sheets, and prove it from the other side."""
    pieces = tuple(Piece(f"p{n}", "loose", shape) for n, shape in enumerate(layer.shapes))
    fabric = weave(Section("random", layer.frame, pieces, PRODUCTS), Control.AIR, TOLERANCES)
    opening = find_opening(
        layer.frame,
        layer.shapes,
        links_of(fabric, TOUCH).bridges(),
        [layer.outside],
        [layer.inside],
        TOUCH,
    )
    links = links_of(fabric, TOUCH)
    loose = np.zeros(len(links), dtype=bool)
    trace = find_trace(fabric, links, (layer.outside, layer.inside), TOUCH, loose)
    return Both(fabric, trace, opening)


_shares = st.lists(st.integers(8, 60), min_size=2, max_size=6)
_apart = st.sampled_from([0, 0, 3, 5, 8, 10, 14, 16, 25])
_further = st.sampled_from([-60, -25, -9, -3, 0, 15, 40, 80])


def _broken_up(draw: st.DrawFn, run: np.ndarray) -> list[Shape]:
    """Lay sheets along a run, a little apart, lapping or falling short of each other."""
    cuts = np.cumsum([0, *draw(_shares)])
    total = float(np.hypot(*(run[1:] - run[:-1]).T).sum())
    width = float(draw(st.sampled_from([0, 0, 0, 4])))
    shapes: list[Shape] = []
    for start, end in pairwise((cuts / cuts[-1] * total).tolist()):
        shift, further = (0.0, float(draw(_apart))), draw(_further)
        reached = min(end + further, total)
        if reached > start + 1:
            points = stretch(run, start, reached) + shift
            points = points if draw(st.booleans()) else points[::-1]
            shapes.append(Line(tuple((float(x), float(y)) for x, y in points), width))
    return shapes


@st.composite
def lapping_run(draw: st.DrawFn) -> list[Shape]:
    """Sheets along a wiggling line from side to side."""
    number, level = draw(st.integers(2, 7)), draw(st.integers(140, 260))
    heights = draw(st.lists(st.integers(-60, 60), min_size=number + 1, max_size=number + 1))
    x = np.linspace(draw(st.sampled_from([-20, 0, 15])), WIDTH, number + 1)
    return _broken_up(draw, np.column_stack([x, level + np.array(heights, dtype=float)]))


@st.composite
def lapping_round(draw: st.DrawFn) -> list[Shape]:
    """Sheets round a building, whose inside is below the middle of the frame."""
    number, rx, ry = (
        draw(st.integers(4, 12)),
        draw(st.integers(90, 200)),
        draw(st.integers(70, 130)),
    )
    turn = 2 * pi * np.arange(number + 1) / number + draw(st.integers(0, 6))
    run = np.column_stack([WIDTH / 2 + rx * np.cos(turn), 140 + ry * np.sin(turn)])
    return _broken_up(draw, run)


@st.composite
def lapping_layers(draw: st.DrawFn) -> RandomLayer:
    """A random layer with sheets lapping, its marks placed anew."""
    base = draw(layers())
    far = -float(base.frame[0][1])
    own = draw(st.one_of(lapping_run(), lapping_round()))
    if draw(st.booleans()):
        own = own + draw(lapping_run())
    kept = base.shapes if draw(st.booleans()) else ()
    shapes = (*(_moved(shape, far) for shape in own), *kept)
    x, y = np.meshgrid(np.arange(7, WIDTH, 23.0), np.arange(5, HEIGHT, 17.0))
    places = np.column_stack([x.ravel() + far, y.ravel() - far])
    room = clearance(base.frame, [solid(shape) for shape in shapes], places)
    marks = []
    for side in (y.ravel() > HEIGHT * 0.6, y.ravel() < HEIGHT * 0.4):
        best = int(np.argmax(np.where(side, room, -1)))
        marks.append((float(places[best, 0]), float(places[best, 1])))
    least = min(float(room[np.argmin(np.hypot(*(places - mark).T))]) for mark in marks)
    return RandomLayer(base.frame, shapes, marks[0], marks[1], least)


def _moved(shape: Shape, far: float) -> Shape:
    assert isinstance(shape, Line)
    return Line(tuple((x + far, y - far) for x, y in shape.points), shape.width)


def agrees(layer: RandomLayer) -> None:
    """Assert that trace and opening say the same of a layer."""
    assume(2 * layer.room > 1)
    both = judged(layer)
    if both.trace is None:
        assert both.opening.narrowest is None
        return
    assume(2 * layer.room > max(both.opening.width, TOUCH) * 1.01)
    assert both.trace.bottleneck == pytest.approx(both.opening.width, abs=AGREE)


@profile(40)
@given(layers())
def test_the_bottleneck_is_as_wide_as_the_opening(layer: RandomLayer) -> None:
    agrees(layer)


@profile(40)
@given(lapping_layers())
def test_the_bottleneck_is_as_wide_as_the_opening_where_sheets_lap(layer: RandomLayer) -> None:
    agrees(layer)


def widest_on_raster(layer: RandomLayer, bridges: Sequence[tuple[Point, Point]]) -> float:
    """Return how wide a disc gets from mark to mark in steps of a pixel, never over a bridge."""
    x, y = np.meshgrid(np.arange(0, WIDTH + 1, PIXEL), np.arange(0, HEIGHT + 1, PIXEL))
    cells = np.column_stack([x.ravel(), y.ravel()]) + np.min(layer.frame, axis=0)
    room = clearance(layer.frame, layer.solids, cells)
    number = np.arange(len(cells)).reshape(x.shape)
    moves = np.concatenate(
        [
            np.column_stack([number[:, :-1].ravel(), number[:, 1:].ravel()]),
            np.column_stack([number[:-1].ravel(), number[1:].ravel()]),
        ]
    )
    drawn = shapely.union_all(shapely.linestrings(np.array(bridges).reshape(-1, 2, 2)))
    moves = moves[~shapely.intersects(drawn, shapely.linestrings(cells[moves]))]
    grid = nx.Graph()
    grid.add_weighted_edges_from(
        (int(a), int(b), -float(min(room[a], room[b])))
        for a, b in moves
        if min(room[a], room[b]) > 0
    )
    start, goal = (
        int(np.argmin(np.hypot(*(cells - mark).T))) for mark in (layer.outside, layer.inside)
    )
    if start not in grid or goal not in grid or not nx.has_path(grid, start, goal):
        return 0.0
    way = nx.shortest_path(nx.minimum_spanning_tree(grid), start, goal)
    return 2 * float(room[way].min())


@profile(5)
@given(lapping_layers())
def test_the_bottleneck_agrees_with_a_raster(layer: RandomLayer) -> None:
    both = judged(layer)
    assume(both.trace is not None)
    assert both.trace is not None
    assume(2 * layer.room > max(both.opening.width, TOUCH) * 1.01)
    raster = widest_on_raster(layer, links_of(both.fabric, TOUCH).bridges())
    if both.trace.bottleneck:
        assert both.trace.bottleneck == pytest.approx(raster, abs=1.5 * PIXEL)
    else:
        assert raster < TOUCH + 1.5 * PIXEL


def test_a_sheet_beyond_the_frame_does_not_widen_the_opening() -> None:
    """By hand: the end of b stands 51.86 mm from the frame's left edge, the other end 41.2."""
    frame = ((40.0, 0.0), (600.0, 30.0), (540.0, 400.0), (300.0, 330.0), (0.0, 400.0))
    beyond = Line(((21.72266953053784, 102.98248941393194), (0.0, 99.0)))
    b = Line(((540.075, 141.996), (300.0, 154.0), (80.739063, 113.802162)))
    left_edge = shapely.LineString([frame[-1], frame[0]])
    by_hand = shapely.distance(left_edge, shapely.Point(b.points[-1]))
    assert by_hand == pytest.approx(51.8606, abs=1e-3)
    both = judged(RandomLayer(frame, (beyond, b), (145.0, 243.0), (306.0, 90.0), 63.6))
    assert both.trace is not None
    assert both.trace.bottleneck == pytest.approx(by_hand, abs=1e-3)
    assert both.opening.width == pytest.approx(by_hand, abs=1e-3)


def test_sheets_drawn_on_top_of_each_other_are_judged() -> None:
    """A run that was drawn twice, once whole and once in short pieces, with one gap left."""
    frame = ((0.0, 0.0), (WIDTH, 0.0), (WIDTH, HEIGHT), (0.0, HEIGHT))
    places = [(15.0, 131.0), (112.5, 131.0), (210.0, 135.0), (307.5, 105.0), (405.0, 131.0)]
    places += [(502.5, 131.0), (600.0, 131.0)]
    shapes = (
        Line((*places[:3], (231.037679302244, 128.52686790700184))),
        Line(tuple(places[3:])),
        Line(tuple(places[:3])),
        *(Line(pair) for pair in pairwise(places[2:])),
    )
    both = judged(RandomLayer(frame, shapes, (283.0, 260.0), (191.0, 73.0), 61.17))
    assert both.trace is not None
    assert both.trace.bottleneck == pytest.approx(both.opening.width, abs=AGREE)
