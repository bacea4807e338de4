"""Ways told again are the ways told anew, and those on which nothing changed are the very same."""

import numpy as np
import pytest
from hypothesis import given

from enclosure_app.model.limits import Tolerances
from enclosure_app.model.place import Line, Point
from enclosure_app.network.rain import courses
from enclosure_app.network.rain.courses import Told, tell
from enclosure_app.network.rain.edges import Spot
from enclosure_app.network.rain.runs import Ground
from enclosure_app.network.rain.surfaces import surfaces_of
from enclosure_app.network.rain.water import Node, Water
from tests.network.moving import CASES, Case, grounds
from tests.network.random_layers import profile

FRAME = ((-2000.0, -100.0), (2000.0, -100.0), (2000.0, 100_000.0), (-2000.0, 100_000.0))


def chain(count: int, *, bent: int | None = None) -> Water:
    """Return sheets that each end over the next, on the right of a wall; one may be bent."""
    shapes = {}
    for number in range(count):
        x, y = -number * 1.0, 60_000.0 - 200.0 * number
        middle: Point = (x + (3.0 if number == bent else 0.0), y - 120.0)
        shapes[f"S{number}"] = Line(((x, y), middle, (x - 0.1, y - 250.0)))
    right = lambda points: points[:, 0] > -1e6  # noqa: E731  everything is outside
    return Water(Ground(surfaces_of(shapes, FRAME), FRAME, Tolerances(), right, {}))


def top(water: Water) -> Spot:
    """Return a spot at the top of the first sheet's right side."""
    ground = water.ground
    right = np.flatnonzero(ground.wets & (ground.layer.surfaces.faces.normal[:, 0].repeat(2) > 0))
    return Spot(int(right[np.argmax(ground.start[right, 1])]), 0.0)


def changed(before: Water, after: Water) -> frozenset[Node]:
    nodes = set(before.steps) | set(after.steps)
    return frozenset(node for node in nodes if before.step(node) != after.step(node))


@pytest.mark.parametrize("bent", [0, 1, 40, 78, 79])
def test_a_long_way_is_followed_over_what_changed_and_goes_on_as_it_did(bent: int) -> None:
    before, after = chain(80), chain(80, bent=bent)
    last = tell(before, [top(before)])
    anew = tell(after, [top(after)])
    assert len(last.tellings[0].course.nodes) >= courses._LONG  # noqa: SLF001
    again = tell(after, [top(after)], last, changed(before, after))
    assert [t.course for t in again.tellings] == [t.course for t in anew.tellings]
    assert again.first == anew.first


def test_the_rest_of_a_long_way_is_taken_up_and_not_walked() -> None:
    before, after = chain(80), chain(80, bent=40)
    last = tell(before, [top(before)])
    again = tell(after, [top(after)], last, changed(before, after))
    head, tail = again.tellings[0].course.taken or (0, 0)
    assert head + tail > len(again.tellings[0].course.places) * 0.9
    old = last.tellings[0].course.places
    assert again.tellings[0].course.places[:head] == old[:head]
    assert again.tellings[0].course.places[-tail:] == old[-tail:]


def test_a_way_on_which_nothing_changed_is_the_very_same() -> None:
    water = chain(80)
    last = tell(water, [top(water)])
    again = tell(water, [top(water)], last)
    assert again.tellings[0].whole is last.tellings[0].whole


@profile(12)
@given(CASES)
def test_ways_after_a_move_are_told_as_anew(made: Case) -> None:
    _, fresh = grounds(made)
    work, whole = made.last.rain.work[0], made.whole.rain.work[0]
    if len(work.water.ground.start) != len(fresh.start):
        return
    nodes = set(work.water.steps) | set(whole.water.steps)
    other = frozenset(nodes)  # every node may have changed
    starts = [t.spot for t in whole.told.tellings if not t.before][::-1]
    again: Told = tell(whole.water, starts, work.told, other)
    anew = tell(whole.water, starts)
    assert [t.whole for t in again.tellings] == [t.whole for t in anew.tellings]
