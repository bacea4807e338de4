"""A fabric that is woven again is the one that is woven anew."""

import numpy as np
from hypothesis import given

from enclosure_app.model.product import Control
from enclosure_app.model.section import Section
from enclosure_app.network.fabric.bodies import bodies_of
from enclosure_app.network.fabric.fabric import Fabric, weave
from enclosure_app.network.fabric.reweaving import Moved, reweave
from tests.network.moving import CASES, PLAIN, Case
from tests.network.random_layers import profile
from tests.network.sections import area, section, sheet

LOW, HIGH = sheet("low", (0, 0), (0, 100)), sheet("high", (-10, 40), (-10, 300))
NOWHERE = np.zeros((0, 2, 2))


def rewoven(
    last: Section, now: Section, *names: str, areas: np.ndarray = NOWHERE
) -> Fabric | None:
    fabric = weave(last, Control.AIR, PLAIN)
    return reweave(fabric, now, Moved(frozenset(names), areas), PLAIN, bodies_of(now))


@profile(12)
@given(CASES)
def test_it_is_the_same_as_woven_anew(made: Case) -> None:
    extents = [
        np.array(shape.outer) for name in made.names for each in (made.last.section, made.section)
        for shape in [each.by_name[name].shape] if hasattr(shape, "outer")
    ]  # fmt: skip
    boxes = np.array([(each.min(axis=0), each.max(axis=0)) for each in extents])
    moved = Moved(made.names, boxes.reshape(-1, 2, 2))
    for control in (Control.WATER, Control.AIR):
        last, fresh = made.last.layers[control].fabric, made.whole.layers[control].fabric
        again = reweave(last, made.section, moved, PLAIN, bodies_of(made.section))
        if again is None:
            assert len(last.rims.start) != len(fresh.rims.start)
            continue
        assert (again.runs, again.beside.runs) == (fresh.runs, fresh.beside.runs)
        assert again.beside.parts == fresh.beside.parts
        for name in ("start", "end", "along", "length", "ring", "owner"):
            assert np.array_equal(getattr(again.rims, name), getattr(fresh.rims, name))
        for name in ("clear", "rims", "hides"):
            assert np.array_equal(getattr(again.beside, name), getattr(fresh.beside, name))
        assert np.array_equal(again.table, fresh.table)


def test_sheets_that_come_to_lap_are_a_run_and_the_others_stay_the_same_objects() -> None:
    pair = sheet("a", (200, 0), (200, 100)), sheet("b", (205, 40), (205, 300))
    apart = sheet("high", (-40, 40), (-40, 300))
    before = section(LOW, apart, *pair)
    last = weave(before, Control.AIR, PLAIN)
    now = section(LOW, HIGH, *pair)
    again = reweave(last, now, Moved(frozenset({"high"}), NOWHERE), PLAIN, bodies_of(now))
    assert again is not None
    assert [(run.a, run.b) for run in again.runs] == [(0, 1), (2, 3)]
    assert again.runs[1] is last.runs[0]


def test_a_board_that_comes_between_two_sheets_parts_them() -> None:
    def board(x: float) -> tuple[tuple[float, float], ...]:
        return ((x, -50), (x + 4, -50), (x + 4, 350), (x, 350))

    before = section(LOW, HIGH, area("board", *board(60.0)))
    now = section(LOW, HIGH, area("board", *board(-7.0)))
    boxes = np.array([[(x, -50.0), (x + 4, 350.0)] for x in (60.0, -7.0)])
    parted = rewoven(before, now, "board", areas=boxes)
    joined = rewoven(now, before, "board", areas=boxes)
    assert parted is not None
    assert joined is not None
    assert (parted.runs, len(joined.runs)) == ((), 1)


def test_another_number_of_segments_is_woven_anew() -> None:
    longer = sheet("high", (-10, 40), (-10, 200), (-20, 300))
    assert rewoven(section(LOW, HIGH), section(LOW, longer), "high") is None
