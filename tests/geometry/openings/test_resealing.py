"""What is said to be closed still is closed; what is torn open is never said to be."""

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
import pytest
import shapely
from hypothesis import assume, given
from hypothesis import strategies as st

from enclosure_app.geometry.openings.resealing import Core, Rooms, still_closed
from enclosure_app.geometry.openings.widest_way import MarkError, way_and_rooms
from enclosure_app.model.place import Line
from tests.network.random_layers import RandomLayer, layers, profile, solid

FRAME = ((0.0, 0.0), (400.0, 0.0), (400.0, 300.0), (0.0, 300.0))
MARKS = ([(200.0, 280.0)], [(200.0, 20.0)])
TOUCH = 2.0
Points = Sequence[tuple[float, float]]
LOW = ((0.0, 150.0), (220.0, 150.0))
HIGH = ((180.0, 153.0), (400.0, 153.0))


def lines(*runs: Points) -> list[shapely.LineString]:
    return [shapely.LineString(run) for run in runs]


def closed(*runs: Points, bridge: bool = True) -> Rooms:
    bridges = [((200.0, 150.0), (200.0, 153.0))] if bridge else []
    way, rooms = way_and_rooms(FRAME, lines(*runs), bridges, MARKS, TOUCH)
    assert way.width == 0
    assert rooms is not None
    return rooms


def core(low: tuple[float, float], high: tuple[float, float], *runs: Points) -> Core:
    return Core(np.array([low, high]), lines(*runs), [((200.0, 150.0), (200.0, 153.0))])


def test_two_lapped_sheets_stay_closed_while_one_bends() -> None:
    bent = ((0.0, 150.0), (100.0, 170.0), (220.0, 150.0))
    assert still_closed(closed(LOW, HIGH), [core((-20, 130), (240, 190), bent, HIGH)])


def test_a_bend_is_told_by_what_lies_near_alone() -> None:
    other = ((0.0, 60.0), (400.0, 60.0))
    rooms = closed(LOW, HIGH, other)
    bent = ((0.0, 150.0), (100.0, 158.0), (220.0, 150.0))
    assert still_closed(rooms, [core((-20, 130), (240, 190), bent, HIGH)])


def test_a_sheet_that_is_taken_away_opens_the_layer() -> None:
    assert not still_closed(closed(LOW, HIGH), [core((-20, 130), (240, 190), HIGH)])


@pytest.mark.parametrize(("end", "is_closed"), [(398.5, True), (395.0, False)])
def test_an_end_that_leaves_the_frame_by_more_than_touches_opens_it(
    end: float, is_closed: bool
) -> None:
    shorter = ((180.0, 153.0), (end, 153.0))
    told = still_closed(closed(LOW, HIGH), [core((160, 130), (420, 180), LOW, shorter)])
    assert told is is_closed


def test_nothing_is_known_where_a_mark_stands_in_the_core() -> None:
    assert not still_closed(closed(LOW, HIGH), [core((100, 10), (300, 200), LOW, HIGH)])


def test_two_cores_are_judged_together() -> None:
    """Each wall is opened in one place only: one alone lets nobody through, both do."""
    far = ((0.0, 80.0), (400.0, 80.0))
    rooms = closed(LOW, HIGH, far)
    left = Core(np.array([(-20, 130), (240, 190)]), lines(HIGH, far), [])
    right = Core(
        np.array([(250, 60), (330, 100)]), lines(((0, 80), (260, 80)), ((320, 80), (400, 80))), []
    )
    assert still_closed(rooms, [left])
    assert still_closed(rooms, [right])
    assert not still_closed(rooms, [left, right])


@profile(80)
@given(layers(), st.integers(0, 2**32 - 1))
def test_what_is_said_to_be_closed_still_has_no_way_through(layer: RandomLayer, seed: int) -> None:
    solids, marks = layer.solids, ([layer.outside], [layer.inside])
    try:
        _, rooms = way_and_rooms(layer.frame, solids, [], marks, TOUCH)
    except MarkError:
        return
    assume(rooms is not None)
    assert rooms is not None
    chance = np.random.default_rng(seed)
    number = int(chance.integers(len(layer.shapes)))
    shape = layer.shapes[number]
    assume(isinstance(shape, Line))
    assert isinstance(shape, Line)
    points = list(shape.points)
    at = int(chance.integers(len(points)))
    step = chance.uniform(-1, 1, 2) * chance.choice([2.0, 10.0, 60.0])
    points[at] = (points[at][0] + float(step[0]), points[at][1] + float(step[1]))
    moved = solid(replace(shape, points=tuple(points)))
    changed = [*solids[:number], moved, *solids[number + 1 :]]
    bounds = shapely.bounds(np.array([solids[number], moved], dtype=object)).reshape(-1, 2, 2)
    box = np.array([bounds[:, 0].min(axis=0) - 10.0, bounds[:, 1].max(axis=0) + 10.0])
    near = [each for each in changed if shapely.distance(each, shapely.box(*box.ravel())) < 50.0]
    if still_closed(rooms, [Core(box, near, [])]):
        assert way_and_rooms(layer.frame, changed, [], marks, TOUCH)[0].width == 0
