"""What was said of earlier things, in few words."""

from enclosure_app.model import edits
from enclosure_app.model.said.carried import Subject
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.window.revising.laying import About
from enclosure_app.window.revising.said_words import Said, of_earlier
from tests.planning.revision.walls import GAP, WIDE
from tests.window.revising.walls_laid import WHEN, decided


def spoken() -> object:
    made = edits.add_remark(decided(), Remark(WIDE, "Jon", WHEN, "Look again.", "Wall"))
    for name, seen in (("a", Seen.IN_ORDER), ("b", Seen.IN_ORDER), ("c", Seen.NOT_IN_ORDER)):
        made = edits.tick(made, SiteCheck(f"lap:x:{name}", seen, "Ida", WHEN, section="Wall"))
    return made


def test_a_verdict_is_told_with_its_person_and_a_remark_as_one() -> None:
    said = Said(spoken(), "Wall")
    assert said.of_finding(GAP) == "To be mended · Ida"
    assert said.of_finding(WIDE) == "Remark"
    assert said.of_finding("gap:other") == ""
    assert Said(spoken(), "Eave").of_finding(GAP) == ""


def test_looks_are_told_each_way_once() -> None:
    said = Said(spoken(), "Wall")
    assert said.of_looks(["lap:x:a", "lap:x:b"]) == "In order · Ida"
    assert said.of_looks(["lap:x:b", "lap:x:c"]) == "In order, Not in order · Ida"
    assert said.of_looks(["lap:y:a"]) == ""


def test_what_nobody_can_place_is_told_line_by_line() -> None:
    held = edits.set_decision(
        spoken(), Decision(GAP, State.ACCEPTED, "Jon", WHEN, "Behind the board.", "Wall")
    )
    told = [*of_earlier(held, [About(Subject("", "Wall", GAP))])]
    assert told == ["Accepted by Jon, 2026-03-02: Behind the board."]
    assert [*of_earlier(held, [About(Subject("", "Wall", WIDE))])] == ["Jon · Look again."]
    looks = [About(Subject("", "Wall", f"lap:x:{name}"), on_list=True) for name in "abc"]
    assert [*of_earlier(held, looks)] == [
        "In order by Ida, 2026-03-02", "Not in order by Ida, 2026-03-02",
    ]  # fmt: skip
