"""A revised drawing laid over an earlier one: what was said stays with its finding, or is asked."""

from dataclasses import replace

from enclosure_app.model import edits
from enclosure_app.model.place import Line
from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Subject
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.section import Section
from enclosure_app.model.standing.questions import open_questions
from enclosure_app.model.standing.sign_offs import signed
from enclosure_app.model.standing.verdicts import history_of, verdicts_in
from enclosure_app.model.standing.whereabouts import Whereabouts, homeless
from enclosure_app.planning.revision import Fate, FindingMatch, Revision
from enclosure_app.planning.revision.comparing import GONE
from tests.planning.revision.test_sections import EAVE, elsewhere
from tests.planning.revision.walls import (
    GAP,
    HIGH,
    LOW,
    MIDDLE,
    WALL,
    WIDE,
    found_in,
    laid_over,
    line,
    project,
    wall,
)  # fmt: skip

WHEN = "2026-03-02T10:15:00+02:00"


def decided(key: str = GAP, section: Section = WALL) -> Project:
    said = Decision(key, State.ACCEPTED, "Ida", WHEN, "Behind glass.", section.name, "A gap.")
    return edits.set_decision(project(section), said)


def revised(before: Project, *sections: Section, revision: str = "B") -> Revision:
    return laid_over(before, replace(before, sections=sections, revision=revision))


def fate_of(revision: Revision, key: str) -> FindingMatch:
    return next(m for s in revision.sections for m in s.findings if m.old and m.old.key == key)


def test_a_plain_new_issue_keeps_everything() -> None:
    after = revised(decided(), WALL)
    assert {m.fate for s in after.sections for m in s.findings} == {Fate.STILL_THERE}
    assert verdicts_in(after.project, "Wall")[GAP].remark == "Behind glass."
    assert homeless(after.project) == {}


def test_under_new_numbers_at_another_place_the_verdict_stays_with_its_finding() -> None:
    """Every handle is another one, and one of them is the old name of another finding's piece."""
    moved = elsewhere(WALL, 700.0, "Detail 3", renumbered=True)
    after = revised(decided(), moved)
    match = fate_of(after, GAP)
    assert match.fate is Fate.STILL_THERE
    assert match.new is not None
    assert match.new.key == "gap:air:700-0.high+700-1.low"
    assert {*verdicts_in(after.project, "Detail 3")} == {match.new.key}
    assert history_of(after.project, match.new.key, "Detail 3")[0].key == GAP


def test_handles_that_were_given_out_anew_lead_no_verdict_astray() -> None:
    """The gap of 30 mm is now called what the gap of 60 mm was called."""
    names = {"10": "11", "11": "12", "12": "10"}
    pieces = tuple(
        replace(p, name=names.get(p.name, p.name), handles=(names.get(p.name, p.name),))
        for p in WALL.pieces
    )
    section = replace(WALL, pieces=pieces)
    assert WIDE in {f.key for f in found_in(section).findings}
    after = revised(decided(WIDE), section)
    match = fate_of(after, WIDE)
    assert match.new is not None
    assert (match.fate, match.new.measured) == (Fate.STILL_THERE, 60.0)
    assert {*verdicts_in(after.project, "Wall")} == {"gap:air:10.low+12.high"}


def test_what_was_mended_is_gone_and_stays_listed() -> None:
    longer = line("11", (0.0, 700.0), (0.0, 1700.0))
    after = revised(decided(), wall(longer))
    assert fate_of(after, GAP).fate in (Fate.GONE, Fate.NOT_SURE)
    mended = revised(
        decided(), wall(line("40", (-1.0, 750.0), (-1.0, 900.0), product="seam-tape"))
    )
    assert fate_of(mended, GAP).fate is Fate.GONE
    assert {*verdicts_in(mended.project, "Wall")} == {f"{GONE}{GAP}"}
    again = revised(mended.project, WALL, revision="C")
    assert {*verdicts_in(again.project, "Wall")} == {f"{GONE}{GAP}"}
    assert verdicts_in(again.project, "Wall")[f"{GONE}{GAP}"].about == "A gap."
    assert homeless(again.project) == {}


def test_a_gap_that_became_wider_is_asked_about_with_both_beside_each_other() -> None:
    higher = line("11", (0.0, 860.0), (0.0, 1700.0))
    after = revised(decided(), wall(higher))
    match = fate_of(after, GAP)
    assert (match.fate, match.new) == (Fate.NOT_SURE, None)
    assert match.old is not None
    assert [(f.key, f.measured) for f in match.asked] == [(GAP, 60.0)]
    assert verdicts_in(after.project, "Wall") == {}
    assert homeless(after.project) == {Subject("", "Wall", GAP): Whereabouts.UNTOLD}
    (question,) = open_questions(after.project)
    assert (question.about, question.at) == (match.old.message, match.old.at)
    assert (question.section, question.asked) == ("Wall", (GAP,))
    told = edits.say_where(after.project, Subject("", "Wall", GAP), ("Wall", GAP), ("Ida", WHEN))
    assert verdicts_in(told, "Wall")[GAP].state is State.ACCEPTED
    assert homeless(told) == {}
    assert open_questions(told) == ()


def test_what_moved_as_a_whole_takes_its_verdict_along() -> None:
    """Two sheets are lowered together, and the place where rain gets in between with them."""
    sheets = [
        line("30", (-90.0, 200.0), (-90.0, 700.0)),
        line("31", (-90.0, 722.0), (-90.0, 1111.0)),
    ]
    lower = [
        replace(p, shape=Line(tuple((x, y - 10.0) for x, y in p.shape.points))) for p in sheets
    ]
    loose = replace(WALL, pieces=tuple(p for p in WALL.pieces if p not in (LOW, MIDDLE, HIGH)))
    before, after = (replace(loose, pieces=(*loose.pieces, *each)) for each in (sheets, lower))
    key = "wet-route:31.low+30"
    revision = revised(decided(key, before), after)
    match = fate_of(revision, key)
    assert match.new is not None
    assert (match.fate, match.new.at) == (Fate.MOVED, (-90.0, 712.0))
    assert {*verdicts_in(revision.project, "Wall")} == {key}


def test_a_remark_alone_is_carried_on_like_a_verdict() -> None:
    before = edits.add_remark(project(WALL), Remark(GAP, "Ida", WHEN, "Wet.", "Wall"))
    moved = elsewhere(WALL, 9.0, "Wall", renumbered=True)
    after = revised(before, moved).project
    assert [e.remark for e in history_of(after, "gap:air:9-0.high+9-1.low", "Wall")] == ["Wet."]


def test_a_signature_follows_its_section_and_goes_to_no_other_of_its_name() -> None:
    """The names of two sections were changed round."""
    before = edits.sign(project(WALL, EAVE), "Wall", "Ida", WHEN)
    swapped = (replace(WALL, name=EAVE.name), replace(EAVE, name="Wall"))
    after = revised(before, *swapped).project
    wall_now, eave_now = after.sections
    assert [(s.sign_off.who, s.changed) for s in signed(after, wall_now)] == [("Ida", False)]
    assert signed(after, eave_now) == ()
    moved = revised(before, elsewhere(WALL, 9.0, "Wall", renumbered=True), EAVE).project
    assert [each.changed for each in signed(moved, moved.sections[0])] == [False]
    longer = edits.set_frame(moved, "Wall", ((-1.0, -1.0), (999.0, -1.0), (999.0, 999.0)))
    assert [each.changed for each in signed(longer, longer.sections[0])] == [True]
    gone = edits.withdraw(after, EAVE.name, "Ida", WHEN)
    assert signed(gone, wall_now) == ()


def test_a_section_that_is_not_known_again_is_asked_about_whole() -> None:
    after = revised(decided(), EAVE)
    assert fate_of(after, GAP).fate is Fate.NOT_SURE
    assert {(s.old, s.new) for s in after.sections} == {("Wall", ""), ("", EAVE.name)}
    assert {*homeless(after.project)} == {Subject("", "Wall", GAP)}


def test_three_revisions_in_a_row_are_followed() -> None:
    second = revised(decided(), elsewhere(WALL, 700.0, "Detail 3", renumbered=True)).project
    third = revised(second, replace(elsewhere(WALL, 90.0, "Wall", renumbered=True)), revision="C")
    assert {*verdicts_in(third.project, "Wall")} == {"gap:air:90-0.high+90-1.low"}
    assert third.project.decisions == decided().decisions


def test_the_same_comparison_twice_adds_nothing() -> None:
    once = revised(decided(), WALL)
    again = laid_over(decided(), once.project)
    assert again.project.carried == once.project.carried


def test_what_was_decided_anew_takes_the_place_of_what_was_carried_on() -> None:
    after = revised(decided(), elsewhere(WALL, 9.0, "Wall", renumbered=True)).project
    key = "gap:air:9-0.high+9-1.low"
    said = edits.set_decision(after, Decision(key, State.MENDED, "Jon", WHEN, section="Wall"))
    assert verdicts_in(said, "Wall")[key].state is State.MENDED
    assert [each.state for each in history_of(said, key, "Wall")] == [State.ACCEPTED, State.MENDED]
