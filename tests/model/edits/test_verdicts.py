"""What people say is only ever added to, and each saying is named, placed and dated."""

from dataclasses import replace

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.model import edits
from enclosure_app.model.drawing import Units
from enclosure_app.model.edits.said import with_photographs
from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Subject
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.standing.verdicts import history_of, verdicts_in
from enclosure_app.model.standing.whereabouts import homeless

PROJECT = Project("House", Units.MM, (), id="p")
FIRST = Decision("gap:a", State.TO_BE_MENDED, "Ida", "2026-03-02T08:15:00+00:00", "Tape it.")
SECOND = Decision("gap:a", State.MENDED, "Jon", "2026-03-09T14:40:00+02:00")
PICTURE = Photograph(b"jpeg", (4, 3), "IMG_1.jpg")


def test_decisions_are_kept_in_the_order_they_were_made_each_after_the_last() -> None:
    after = edits.set_decision(edits.set_decision(PROJECT, FIRST), SECOND)
    first, second = after.decisions
    assert replace(first, id="") == FIRST
    assert replace(second, id="", after=()) == SECOND
    assert second.after == (first.id,)
    assert verdicts_in(after, "Eave") == {"gap:a": second}
    assert edits.set_decision(edits.set_decision(PROJECT, FIRST), SECOND) == after


def test_a_decision_about_another_finding_takes_the_place_of_none() -> None:
    eave = replace(FIRST, section="Eave")
    after = edits.set_decision(edits.set_decision(PROJECT, eave), replace(eave, section="Ridge"))
    after = edits.set_decision(after, replace(eave, key="gap:b"))
    assert [each.after for each in after.decisions] == [(), (), ()]


def test_the_very_same_words_twice_are_two_decisions_and_a_copy_gets_a_name_of_its_own() -> None:
    once = edits.set_decision(PROJECT, FIRST)
    twice = edits.set_decision(once, once.decisions[0])
    assert len({each.id for each in twice.decisions}) == 2


def test_a_decision_is_about_a_finding() -> None:
    with pytest.raises(EnclosureError, match="A decision is about a finding: pick one"):
        edits.set_decision(PROJECT, Decision("", State.MENDED))


@pytest.mark.parametrize("state", [State.ACCEPTED, State.NO_FAULT])
def test_what_was_found_may_stand_only_for_a_reason(state: State) -> None:
    with pytest.raises(EnclosureError, match="only for a reason: type why"):
        edits.set_decision(PROJECT, Decision("gap:a", state, "Ida", remark="  "))
    after = edits.set_decision(PROJECT, Decision("gap:a", state, "Ida", remark="Behind glass."))
    assert verdicts_in(after, "")["gap:a"].state is state


def test_a_photograph_is_kept_once_however_often_it_is_shown() -> None:
    again = Photograph(b"jpeg", (4, 3), "copy.jpg")
    project = edits.set_decision(PROJECT, FIRST, [PICTURE, again])
    project = edits.add_remark(project, Remark("gap:a", "Ida"), [again])
    assert dict(project.photographs) == {PICTURE.key: PICTURE}
    assert project.decisions[0].photographs == project.remarks[0].photographs == (PICTURE.key,)
    assert with_photographs(project, [again]) is project


def test_a_photograph_that_nobody_took_in_is_refused() -> None:
    with pytest.raises(EnclosureError, match="A photograph is not in the project: take it"):
        edits.set_decision(PROJECT, replace(FIRST, photographs=("abc",)))


def test_a_remark_alone_leaves_the_verdict() -> None:
    decided = edits.set_decision(PROJECT, FIRST)
    told = edits.add_remark(decided, Remark("gap:a", "Jon", remark="Behind the gutter."))
    assert verdicts_in(told, "") == verdicts_in(decided, "")
    assert told.decisions == decided.decisions
    assert {each.remark for each in history_of(told, "gap:a", "")} == {
        "Tape it.",
        "Behind the gutter.",
    }
    assert edits.add_remark(told, told.remarks[0]) is told


@pytest.mark.parametrize(
    ("remark", "why"),
    [(Remark("", remark="x"), "pick one"), (Remark("gap:a", remark=" "), "is empty: type some")],
)
def test_a_remark_is_about_a_finding_and_says_something(remark: Remark, why: str) -> None:
    with pytest.raises(EnclosureError, match=why):
        edits.add_remark(PROJECT, remark)


def test_a_person_says_which_finding_it_is_now_and_may_say_otherwise_later() -> None:
    project = replace(edits.set_decision(PROJECT, replace(FIRST, section="Eave")), revision="B")
    earlier = Subject("", "Eave", "gap:a")
    assert {*homeless(project)} == {earlier}
    told = edits.say_where(project, earlier, ("Eave", "gap:7"), (" Ida ", "2026-03-20T08:00:00Z"))
    assert homeless(told) == {}
    assert verdicts_in(told, "Eave")["gap:7"].remark == "Tape it."
    gone = edits.say_where(told, earlier, ("Eave", ""), ("Ida", "2026-03-20T09:00:00Z"))
    assert verdicts_in(gone, "Eave") == homeless(gone) == {}
    assert len(gone.carried) == 2
    with pytest.raises(EnclosureError, match="Type your name"):
        edits.say_where(project, earlier, ("Eave", "gap:7"), (" ", ""))
