"""The proof that a layer is closed, taken up after a move."""

from dataclasses import replace

import pytest
from hypothesis import given

from enclosure_app.model.place import Line
from enclosure_app.model.product import Control
from enclosure_app.model.section import Section
from enclosure_app.network.layer import Layer, trace_layer
from enclosure_app.network.opening_again import FEW, Proof, closed_again
from tests.benchmarks.walls import wall_of_sheets
from tests.network.moving import CASES, PLAIN, Case
from tests.network.random_layers import profile


def traced(section: Section) -> Layer:
    return trace_layer(section, Control.AIR, PLAIN)


def shifted(section: Section, by: float, *numbers: int) -> Section:
    """Return the section with the upper ends of some sheets moved sideways."""
    pieces = list(section.pieces)
    for number in numbers:
        shape = pieces[number].shape
        assert isinstance(shape, Line)
        *points, (x, y) = shape.points
        moved = replace(shape, points=(*points, (x + by, y)))
        pieces[number] = replace(pieces[number], shape=moved)
    return replace(section, pieces=tuple(pieces))


WALL = wall_of_sheets(24, gap=False)


@pytest.fixture(scope="module")
def proof() -> Proof:
    work = traced(WALL).work
    assert work is not None
    return work.proof


def again(last: Proof, section: Section) -> Proof | None:
    work = traced(section).work
    assert work is not None
    return closed_again(last, work.proof.drawn, PLAIN.touch)


def test_a_wall_in_which_one_sheet_bends_is_closed_by_the_same_opening(proof: Proof) -> None:
    found = again(proof, shifted(WALL, 1.0, 10))
    assert found is not None
    assert found.opening is proof.opening
    assert found.opening.width == 0


def test_a_second_change_is_judged_from_the_same_base(proof: Proof) -> None:
    once = again(proof, shifted(WALL, 1.0, 10))
    assert once is not None
    twice = again(once, shifted(WALL, 1.0, 10, 20))
    assert twice is not None
    assert twice.base is proof.base
    assert again(twice, WALL) is not None


def test_a_sheet_that_leaves_its_lap_is_not_told_to_be_closed(proof: Proof) -> None:
    assert again(proof, shifted(WALL, -90.0, 10)) is None


def test_with_many_places_changed_the_layer_is_proved_as_a_whole(proof: Proof) -> None:
    places = range(2, 2 + 5 * FEW, 5)
    assert again(proof, shifted(WALL, 1.0, *list(places)[:FEW])) is not None
    assert again(proof, shifted(WALL, 1.0, *places, 22)) is None


def test_an_open_layer_is_proved_as_a_whole() -> None:
    work = traced(wall_of_sheets(12, gap=True)).work
    assert work is not None
    assert work.proof.opening.width > 0
    assert closed_again(work.proof, work.proof.drawn, PLAIN.touch) is None


@profile(15)
@given(CASES)
def test_what_is_told_to_be_closed_has_no_opening(made: Case) -> None:
    for control in (Control.WATER, Control.AIR):
        last, whole = made.last.layers[control], made.whole.layers[control]
        if last.work is None or whole.work is None:
            continue
        if len(last.work.proof.drawn.solids) != len(whole.work.proof.drawn.solids):
            continue
        if closed_again(last.work.proof, whole.work.proof.drawn, PLAIN.touch) is not None:
            assert whole.opening is not None
            assert whole.opening.width == 0
