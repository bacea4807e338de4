"""The last look at an item counts; of two at once the one that saw more amiss."""

from dataclasses import replace

from enclosure_app.model import edits
from enclosure_app.model.drawing import Units
from enclosure_app.model.project import Project
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.model.standing.site_checks import contested_looks_in, looks_at, seen_in

HOUSE = Project("House", Units.MM, ())
WRONG = SiteCheck("lap:a+b", Seen.NOT_IN_ORDER, "Ida", "2026-03-02T10:00:00+02:00", section="Eave")
RIGHT = replace(WRONG, seen=Seen.IN_ORDER, when="2026-03-02T09:00:00+00:00")


def test_the_last_look_counts_and_the_first_stays() -> None:
    project = edits.tick(edits.tick(HOUSE, WRONG), RIGHT)
    assert seen_in(project, "Eave")["lap:a+b"].seen is Seen.IN_ORDER
    assert seen_in(project, "Ridge") == {}
    assert [each.seen for each in looks_at(project, "lap:a+b", "Eave")] == [
        Seen.NOT_IN_ORDER,
        Seen.IN_ORDER,
    ]
    assert looks_at(project, "lap:a+b", "Ridge") == ()


def test_of_two_looks_at_once_the_one_that_saw_more_amiss_counts() -> None:
    mine = edits.tick(HOUSE, WRONG)
    theirs = edits.tick(replace(HOUSE, id=HOUSE.id), RIGHT)
    both = replace(HOUSE, site_checks=(*mine.site_checks, *theirs.site_checks))
    assert seen_in(both, "Eave")["lap:a+b"].seen is Seen.NOT_IN_ORDER
    assert {each.seen for each in contested_looks_in(both, "Eave")["lap:a+b"]} == {
        Seen.IN_ORDER,
        Seen.NOT_IN_ORDER,
    }
    assert contested_looks_in(mine, "Eave") == {}
