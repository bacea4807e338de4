"""Answers held against a project: followed to the drawing now, proposed once, taken over whole."""

from dataclasses import replace

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.files.replies.answers import Outcome, answers_for, held_against, taken_over
from enclosure_app.files.replies.proposal import Proposal
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


def outcome(proposal: Proposal, project: Project = PROJECT) -> tuple[Outcome, str]:
    (held,) = held_against(project, FOUND, (proposal,))
    return held.outcome, held.proposal.doubt


def test_each_answer_comes_to_something_in_the_project() -> None:
    after = taken_over(PROJECT, (MENDED,))
    assert outcome(MENDED) == (Outcome.MATCHES, "")
    assert outcome(MENDED, after) == (Outcome.SAID, "")
    assert outcome(replace(MENDED, state=State.OPEN, remark="")) == (Outcome.NOTHING, "")
    assert outcome(replace(MENDED, doubt="Why.")) == (Outcome.UNSURE, "Why.")
    assert outcome(replace(MENDED, drawing="slip.dxf"))[0] is Outcome.UNSURE
    assert outcome(replace(MENDED, revision="a"))[0] is Outcome.CHANGED
    assert outcome(replace(MENDED, key="gap:gone"))[0] is Outcome.CHANGED


@pytest.mark.parametrize(
    ("then", "same"), [(eave.SHORT.measured, True), (None, True), (eave.SHORT.measured + 9, False)]
)
def test_a_finding_that_was_measured_otherwise_when_it_was_issued_is_looked_at(
    then: float | None, same: bool
) -> None:
    told = outcome(replace(MENDED, measured=then))
    sentence = "It was measured otherwise then: look whether the answer still holds."
    assert told == ((Outcome.MATCHES, "") if same else (Outcome.CHANGED, sentence))


def test_an_answer_does_not_take_the_place_of_a_verdict_that_was_given_after_it() -> None:
    """Ida looked again after Zoë had written; the answer came back last of all."""
    later = Decision(SHORT, State.TO_BE_MENDED, "Ida", "2026-12-05T08:00:00+01:00", "", NAME)
    decided = replace(PROJECT, decisions=(replace(later, revision="b", id="1"),))
    assert outcome(MENDED, decided) == (Outcome.CHANGED, "Ida decided since: To be mended.")
    agreed = replace(MENDED, state=State.TO_BE_MENDED)
    assert outcome(agreed, decided) == (Outcome.MATCHES, "")
    after = replace(MENDED, when="2026-12-06T08:00:00+01:00")
    assert outcome(after, decided) == (Outcome.MATCHES, "")
    remark = replace(MENDED, state=None)
    assert outcome(remark, decided) == (Outcome.MATCHES, "")


def test_a_note_that_is_gone_decides_nothing_and_cannot_be_taken_over() -> None:
    lost = replace(
        MENDED, state=None, who="", when="", remark="", doubt="The note is gone.", lost=True
    )
    assert outcome(lost) == (Outcome.UNSURE, "The note is gone.")
    with pytest.raises(EnclosureError, match="remark is empty"):
        taken_over(PROJECT, (lost,))


def test_a_section_of_another_file_of_the_project_may_be_named_by_that_or_by_the_first() -> None:
    """A PDF that was issued before sections knew their file names the project's first one."""
    section = replace(eave.section(), file="plans/slip.dxf")
    several = replace(PROJECT, sections=(section,))
    assert outcome(replace(MENDED, drawing="slip.dxf"), several)[0] is Outcome.MATCHES
    assert outcome(MENDED, several)[0] is Outcome.MATCHES
    assert outcome(replace(MENDED, drawing="barn.dxf"), several)[0] is Outcome.UNSURE
