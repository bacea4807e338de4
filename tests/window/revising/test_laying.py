"""Laid over without a widget: read by the project's layers, checked, compared; nothing is lost."""

from dataclasses import replace
from pathlib import Path

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.files.projects import read_project
from enclosure_app.model.drawing import Units
from enclosure_app.model.said.carried import Subject
from enclosure_app.model.said.decision import State
from enclosure_app.model.standing.verdicts import verdicts_in
from enclosure_app.model.standing.whereabouts import homeless
from enclosure_app.planning.revision import Fate
from enclosure_app.progress import Progress
from enclosure_app.window.apart.orders import Order
from enclosure_app.window.revising.laying import (
    Laid,
    is_revision_of,
    laid_over,
    order_for,
    read_revised,
    with_choices,
)
from tests.planning.revision.walls import GAP, WALL, project
from tests.window.revising.walls_laid import WHEN, decided, laid

SUBJECT = Subject("", "Wall", GAP)


def test_what_is_not_sure_waits_until_a_person_says_which_one_it_is() -> None:
    shown = laid()
    match, _ = shown.revision.of(Fate.NOT_SURE)  # of the air layer, and of the water layer
    assert match.old is not None
    assert match.old.key == GAP
    (asked,) = match.asked
    assert [*homeless(with_choices(shown, {}, ("", "")))] == [SUBJECT]
    after = with_choices(shown, {SUBJECT: (asked.section, asked.key)}, ("Jon", WHEN))
    assert homeless(after) == {}
    assert verdicts_in(after, "Wall")[asked.key].state is State.TO_BE_MENDED


def test_what_a_person_calls_gone_is_asked_about_no_more_and_stays_in_the_history() -> None:
    after = with_choices(laid(), {SUBJECT: ("Wall", "")}, ("Jon", WHEN))
    assert homeless(after) == {}
    assert verdicts_in(after, "Wall") == {}
    assert after.decisions == decided().decisions


def test_nobody_says_something_without_a_name() -> None:
    with pytest.raises(EnclosureError, match="Type your name"):
        with_choices(laid(), {SUBJECT: ("Wall", "")}, (" ", WHEN))


def test_a_section_that_is_not_found_again_is_named() -> None:
    other = replace(WALL, name="Eave", pieces=WALL.pieces[:1])
    assert laid_over(decided(), project(other)).missing in ((), ("Wall",))
    empty: Laid = laid_over(decided(), project())
    assert empty.missing == ("Wall",)
    assert [*homeless(empty.revision.project)] == [SUBJECT]


def test_a_drawing_is_read_by_what_the_project_says_of_its_layers() -> None:
    from enclosure_app.resources import sample  # noqa: PLC0415

    before = read_project(sample("eave-flush.dxf"))
    order = order_for(before, (Path("b.dxf"),))
    assert order.wish.layer_map is not None
    assert order.wish.layer_map.rows == before.layers
    assert order_for(decided(), (Path("b.dxf"),)).wish.layer_map is None


def test_a_drawing_that_does_not_say_its_units_has_those_of_the_project() -> None:
    orders: list[Order] = []

    def read(order: Order, _: Progress) -> object:
        orders.append(order)
        if order.wish.units is None:
            raise EnclosureError("b.dxf: say so with --units.")
        return decided()

    assert read_revised(decided(), (Path("b.dxf"),), read, Progress()) == decided()
    assert [order.wish.units for order in orders] == [None, Units.MM]


def test_any_other_refusal_is_told() -> None:
    def read(*_: object) -> object:
        raise EnclosureError("b.dxf is no drawing.")

    with pytest.raises(EnclosureError, match="no drawing"):
        read_revised(decided(), (Path("b.dxf"),), read, Progress())


@pytest.mark.parametrize(
    "name", ["wall.dxf", "WALL.DXF", "wall-rev2.dxf", "wall_Rev-B.dxf", "wall_b.dxf",
             "wall 2026-04-01.dxf", "wall_20260401.dxf"],
)  # fmt: skip
def test_a_later_issue_is_known_by_its_name(name: str) -> None:
    assert is_revision_of(Path(name), decided())


@pytest.mark.parametrize("name", ["wall-2.dxf", "roof.dxf", "wall-base.dxf", "wall.json"])
def test_another_drawing_is_not_taken_for_one(name: str) -> None:
    assert not is_revision_of(Path(name), decided())


def test_where_nothing_was_said_nothing_is_asked() -> None:
    assert not is_revision_of(Path("wall.dxf"), replace(decided(), decisions=()))
    assert not is_revision_of(Path("wall.dxf"), replace(decided(), source=""))
