"""What was said of a stop until now: verdicts, remarks, looks with more to them, photographs."""

from dataclasses import replace
from types import MappingProxyType

from enclosure_app.model.drawing import Units
from enclosure_app.model.edits import add_remark, set_decision, tick
from enclosure_app.model.project import Project
from enclosure_app.model.said.decision import State
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.model.standing.verdicts import remark_on, verdict_on
from enclosure_app.window.walk.history import contest, photographs_of, said_lines, said_of
from enclosure_app.window.walk.stops import Stop
from tests.drawing import eave
from tests.window.walk.rounds import TAPE

BEGUN = Project("wall", Units.MM, (eave.result().section,))
PICTURE = Photograph(b"jpeg", (4, 3), "nail.jpg")
SECTION = BEGUN.sections[0].name
SHORT = Stop(eave.SHORT.key, 0.0, finding=eave.SHORT)
PLACE = Stop(TAPE.key, 0.0, place=TAPE)
MORNING, NOON = "2026-05-04T09:00:00+02:00", "2026-05-04T12:00:00+02:00"


def test_verdicts_and_remarks_are_told_in_their_order() -> None:
    project = add_remark(BEGUN, remark_on(eave.SHORT, "Per", NOON, "Torn"), [PICTURE])
    project = set_decision(project, verdict_on(eave.SHORT, State.TO_BE_MENDED, "Ida", MORNING))
    said = said_of(project, "", SHORT)
    assert said_lines(said) == (
        "2026-05-04 09:00 (UTC+02:00), Ida: To be mended",
        "2026-05-04 12:00 (UTC+02:00), Per: Torn · 1 photograph",
    )
    assert photographs_of(project, said) == (PICTURE,)


def test_the_only_verdict_is_not_told_twice() -> None:
    project = set_decision(BEGUN, verdict_on(eave.SHORT, State.MENDED, "Ida", MORNING))
    assert said_lines(said_of(project, "", SHORT)) == ()
    again = set_decision(project, verdict_on(eave.SHORT, State.TO_BE_MENDED, "Per", NOON))
    assert len(said_lines(said_of(again, "", SHORT))) == 2


def test_of_a_place_only_looks_with_more_to_them_are_told() -> None:
    (first, _), (second, _) = TAPE.items
    project = tick(BEGUN, SiteCheck(first, Seen.IN_ORDER, "Ida", MORNING, section=SECTION))
    amiss = SiteCheck(second, Seen.NOT_IN_ORDER, "Ida", NOON, "Wrinkled", section=SECTION)
    said = said_of(tick(project, amiss), SECTION, PLACE)
    assert len(said) == 2
    assert said_lines(said) == ("2026-05-04 12:00 (UTC+02:00), Ida: Not in order · Wrinkled",)
    (told,) = said_lines(said, PLACE)
    asked = TAPE.questions[1].text
    assert told == f"2026-05-04 12:00 (UTC+02:00), Ida: {asked} · Not in order · Wrinkled"


def test_a_photograph_that_is_lost_is_passed_over() -> None:
    project = add_remark(BEGUN, remark_on(eave.SHORT, "Per", NOON), [PICTURE])
    assert said_lines(said_of(project, "", SHORT))[0].endswith("Per: 1 photograph")
    bare = Project("", Units.MM, (), remarks=project.remarks, photographs=MappingProxyType({}))
    assert photographs_of(bare, said_of(project, "", SHORT)) == ()


def test_verdicts_that_stand_side_by_side_are_told_until_somebody_settles_it() -> None:
    mended = set_decision(BEGUN, verdict_on(eave.SHORT, State.MENDED, "Ida", MORNING))
    open_still = set_decision(BEGUN, verdict_on(eave.SHORT, State.TO_BE_MENDED, "Per", NOON))
    both = replace(BEGUN, decisions=(*mended.decisions, *open_still.decisions))
    (told,) = contest(both, "", SHORT)
    assert "Ida: Mended" in told
    assert "Per: To be mended" in told
    settled = set_decision(both, verdict_on(eave.SHORT, State.MENDED, "Ida", NOON))
    assert contest(settled, "", SHORT) == ()
    assert contest(both, "", PLACE) == ()


def test_looks_that_stand_side_by_side_are_told_with_their_question() -> None:
    (first, question), _ = TAPE.items

    def looked(seen: Seen, who: str, when: str = MORNING) -> Project:
        return tick(BEGUN, SiteCheck(first, seen, who, when, section=SECTION))

    mine, theirs = looked(Seen.IN_ORDER, "Ida"), looked(Seen.NOT_IN_ORDER, "Per")
    both = replace(BEGUN, site_checks=(*mine.site_checks, *theirs.site_checks))
    (told,) = contest(both, SECTION, PLACE)
    assert "Ida: In order" in told
    assert "Per: Not in order" in told
    assert question.text in told
    assert contest(mine, SECTION, PLACE) == ()
    settled = tick(both, SiteCheck(first, Seen.IN_ORDER, "Ida", NOON, section=SECTION))
    assert contest(settled, SECTION, PLACE) == ()
