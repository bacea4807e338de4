"""Answers held against a project: followed to the drawing now, proposed once, taken over whole."""

from dataclasses import replace

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.files.replies.answers import answers_for, taken_over
from enclosure_app.files.replies.replies import Proposal
from enclosure_app.model.drawing import Units
from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Carried, Subject
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.standing.verdicts import history_of, verdicts_in
from tests.drawing import eave

NAME, GAP, SHORT = eave.section().name, eave.GAP.key, eave.SHORT.key
FOUND = tuple(replace(finding, section=NAME) for finding in eave.result().findings)
PROJECT = Project("Boathouse", Units.MM, (eave.section(),), "/site/boathouse.dxf", revision="b")
MENDED = Proposal(
    SHORT, State.MENDED, "Zoë", "2026-12-01T09:30:00+01:00", "Taped.", NAME, "boathouse.dxf", "b",
    note="It laps too little.\nMeasured 60 mm.",
)  # fmt: skip
MOVED = Carried(Subject("a", "Old name", "short-lap:1+2"), Subject("b", NAME, SHORT), id="1")


def asked(proposal: Proposal, project: Project = PROJECT) -> tuple[Proposal, ...]:
    return answers_for(project, FOUND, (proposal,))


def test_what_is_certain_is_proposed_as_it_is() -> None:
    assert asked(MENDED) == (MENDED,)


def test_what_is_taken_over_is_the_writers_and_is_not_proposed_again() -> None:
    after = taken_over(PROJECT, (MENDED,))
    decision = verdicts_in(after, NAME)[SHORT]
    assert (decision.state, decision.who, decision.when) == (State.MENDED, "Zoë", MENDED.when)
    assert (decision.remark, decision.about) == ("Taped.", "It laps too little.")
    assert decision.revision == "b"
    assert asked(MENDED, after) == ()
    assert asked(replace(MENDED, remark=""), after) == ()  # the same moment, said otherwise since
    timeless = taken_over(PROJECT, (replace(MENDED, when=""),))
    assert asked(replace(MENDED, when="", remark="Again."), timeless)
    other = replace(MENDED, who="Per")
    assert asked(other, after) == (other,)


def test_a_remark_is_taken_over_as_one_and_decides_nothing() -> None:
    remark = replace(MENDED, state=None, remark="Who ordered this?")
    after = taken_over(PROJECT, (remark,))
    assert verdicts_in(after, NAME) == {}
    (kept,) = history_of(after, SHORT, NAME)
    assert isinstance(kept, Remark)
    assert (kept.who, kept.remark, kept.when) == ("Zoë", "Who ordered this?", MENDED.when)
    assert asked(remark, after) == ()


def test_an_older_answer_does_not_come_back_over_a_later_verdict() -> None:
    later = Decision(SHORT, State.TO_BE_MENDED, "Ida", "2026-12-05T08:00:00+01:00", "", NAME)
    after = taken_over(PROJECT, (MENDED,))
    decided = replace(after, decisions=(*after.decisions, later))
    assert asked(MENDED, decided) == ()


def test_an_answer_to_an_earlier_revision_is_followed_to_the_finding_now() -> None:
    old = replace(MENDED, key="short-lap:1+2", section="Old name", revision="a")
    (followed,) = asked(old, replace(PROJECT, carried=(MOVED,)))
    assert (followed.key, followed.section, followed.revision) == (SHORT, NAME, "b")
    assert followed.sure


def test_where_nobody_can_tell_which_finding_it_is_now_a_person_looks() -> None:
    """The same key may name something else on the revised drawing."""
    (told,) = asked(replace(MENDED, revision="a"))
    assert told.doubt == "It answers another revision of the drawing."


def test_what_is_no_longer_found_or_of_another_drawing_is_in_doubt() -> None:
    (gone,) = answers_for(PROJECT, FOUND[:1], (MENDED,))
    assert gone.doubt == "What it is about is no longer found."
    (elsewhere,) = asked(replace(MENDED, section="Another wall"))
    assert not elsewhere.sure
    (other,) = asked(replace(MENDED, drawing="slip.dxf"))
    assert other.doubt == "It was written about the drawing slip.dxf."
    doubted = replace(MENDED, doubt="First.", drawing="slip.dxf")
    assert asked(doubted)[0].doubt == "First. It was written about the drawing slip.dxf."


def test_none_opens_only_what_was_decided() -> None:
    opened = replace(MENDED, state=State.OPEN, remark="")
    assert asked(opened) == ()
    (kept,) = asked(replace(opened, remark="Look again."))
    assert (kept.state, kept.remark) == (None, "Look again.")
    (wanted,) = asked(replace(opened, when=""), taken_over(PROJECT, (MENDED,)))
    assert wanted.state is State.OPEN


def test_a_note_about_nothing_is_kept_for_a_person_to_look_at() -> None:
    note = replace(MENDED, key="", section="", drawing="", state=None, doubt="About nothing.")
    assert asked(note) == (note,)


@pytest.mark.parametrize(
    ("change", "sentence"),
    [
        ({"key": ""}, "about a finding"),
        ({"state": State.NO_FAULT, "remark": ""}, "only for a reason"),
        ({"state": None, "remark": ""}, "remark is empty"),
    ],
)
def test_what_cannot_be_put_down_is_refused(change: dict[str, object], sentence: str) -> None:
    with pytest.raises(EnclosureError, match=sentence):
        taken_over(PROJECT, (replace(MENDED, **change),))
