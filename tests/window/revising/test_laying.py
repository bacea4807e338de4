"""Laid over without a widget: read by the project's layers, checked, compared; nothing is lost."""

from dataclasses import replace
from pathlib import Path

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.files.projects import read_project
from enclosure_app.model.drawing import Units
from enclosure_app.model.layer import LayerRow
from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Subject
from enclosure_app.model.said.decision import State
from enclosure_app.model.section import Stroke
from enclosure_app.model.standing.verdicts import verdicts_in
from enclosure_app.model.standing.whereabouts import homeless
from enclosure_app.planning.revision import Fate, TakenPlace
from enclosure_app.progress import Progress
from enclosure_app.window.apart.orders import Order
from enclosure_app.window.revising.laying import (
    About,
    Laid,
    is_named_as_revision,
    laid_over,
    order_for,
    read_revised,
    with_answers,
)
from tests.planning.revision.test_sections import EAVE
from tests.planning.revision.walls import GAP, WALL, project, wall
from tests.window.revising.walls_laid import WHEN, WIDER, decided, laid

SUBJECT = About(Subject("", "Wall", GAP))


def test_what_is_not_sure_waits_until_a_person_says_which_one_it_is() -> None:
    shown = laid()
    match, _ = shown.revision.of(Fate.NOT_SURE)  # of the air layer, and of the water layer
    assert match.old is not None
    assert match.old.key == GAP
    (asked,) = match.asked
    assert [*homeless(with_answers(shown.revision.project, {}, ("", "")))] == [SUBJECT.earlier]
    after = with_answers(
        shown.revision.project, {SUBJECT: (asked.section, asked.key)}, ("Jon", WHEN)
    )
    assert homeless(after) == {}
    assert verdicts_in(after, "Wall")[asked.key].state is State.TO_BE_MENDED


def test_what_a_person_calls_gone_is_asked_about_no_more_and_stays_in_the_history() -> None:
    after = with_answers(laid().revision.project, {SUBJECT: ("Wall", "")}, ("Jon", WHEN))
    assert homeless(after) == {}
    assert verdicts_in(after, "Wall") == {}
    assert after.decisions == decided().decisions


def test_nobody_says_something_without_a_name() -> None:
    with pytest.raises(EnclosureError, match="Type your name"):
        with_answers(laid().revision.project, {SUBJECT: ("Wall", "")}, (" ", WHEN))


def test_a_section_that_is_not_found_again_is_named() -> None:
    other = replace(WALL, name="Eave", pieces=WALL.pieces[:1])
    assert laid_over(decided(), project(other)).missing in ((), ("Wall",))
    empty: Laid = laid_over(decided(), project())
    assert empty.missing == ("Wall",)
    assert [*homeless(empty.revision.project)] == [SUBJECT.earlier]


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


def test_where_lines_are_numbered_anew_what_was_said_of_single_ones_is_said_again() -> None:
    names, anew = ["1", "2", "3"], ["A", "B", "C"]
    runs = [((9.0 * n, 0.0), (9.0 * n, 400.0 + 50.0 * n)) for n in range(3)]

    def drawn(handles: list[str]) -> Project:
        pairs = zip(runs, handles, strict=True)
        taken = tuple(Stroke(run, "A", name) for run, name in pairs)
        return replace(project(replace(WALL, pieces=(), taken=taken)), layers=rows)

    rows = (LayerRow("A", "osb", handles=("1",)), LayerRow("A", "pir", handles=("2", "3")))
    orders: list[Order] = []

    def read(order: Order, _: Progress) -> Project:
        orders.append(order)
        assert order.wish.layer_map is not None
        return replace(drawn(anew[: 3 - lost]), layers=order.wish.layer_map.rows)

    lost = 0
    runs_before = [*runs]
    done = read_revised(drawn(names), (Path("b.dxf"),), read, Progress())
    assert [row.handles for row in done.layers] == [("A",), ("B", "C")]
    assert len(orders) == 2
    assert done.notes == ()
    assert laid_over(drawn(names), done).revision.project.layers == done.layers
    before, lost = drawn(names), 1
    runs[:] = runs_before[:2]
    fewer = read_revised(before, (Path("b.dxf"),), read, Progress())
    assert [row.handles for row in fewer.layers] == [("A",), ("B",)]
    assert "not surely found again: 1" in fewer.notes[-1].text


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
    assert is_named_as_revision(Path(name), decided())


@pytest.mark.parametrize("name", ["wall-2.dxf", "roof.dxf", "wall-base.dxf", "wall.json"])
def test_another_drawing_is_not_taken_for_one(name: str) -> None:
    assert not is_named_as_revision(Path(name), decided())


def test_where_nothing_was_said_nothing_is_asked() -> None:
    assert not is_named_as_revision(Path("wall.dxf"), replace(decided(), decisions=()))
    assert not is_named_as_revision(Path("wall.dxf"), replace(decided(), source=""))


def several() -> Project:
    """A wall and an eave on two drawings; something was said of the wall."""
    eave = replace(EAVE, pieces=tuple(replace(p, handles=(p.name,)) for p in EAVE.pieces))
    walls = tuple(replace(each, file="wall.dxf") for each in decided().sections)
    return replace(decided(), sections=(*walls, replace(eave, name="eave", file="eave.dxf")))


def test_one_of_several_drawings_takes_the_place_of_its_own_earlier_issue() -> None:
    before = several()
    done = laid_over(before, replace(project(wall(WIDER)), source="/office/wall-B.dxf"))
    assert (done.files, done.kept) == (("wall.dxf", "eave.dxf"), {"eave"})
    assert done.place == TakenPlace("wall.dxf", sure=True)
    assert done.missing == ()
    assert [each.name for each in done.revision.project.sections] == ["Wall", "eave"]


def test_a_person_may_know_better_whose_place_it_takes_and_what_stays() -> None:
    before, later = several(), replace(project(wall(WIDER)), source="/office/wall-B.dxf")
    beside = laid_over(before, later, "")
    assert beside.kept == {"Wall", "eave"}
    assert len(beside.revision.project.sections) == 3
    wrong = laid_over(before, later, "eave.dxf")
    assert wrong.missing == ("eave",)
    stays = laid_over(before, later, "eave.dxf", wrong.kept | {"eave"})
    assert stays.missing == ()
    assert {*homeless(stays.revision.project)} == set()


def test_a_project_of_one_drawing_asks_nothing_of_the_kind() -> None:
    assert (laid().files, laid().place, laid().kept) == ((), None, frozenset())
