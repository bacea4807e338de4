"""What was seen of a joint stays with it in the revised drawing, or it is to be looked at again."""

from dataclasses import replace

from enclosure_app.model import edits
from enclosure_app.model.project import Project
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.model.section import Section
from enclosure_app.model.standing.site_checks import looks_at, seen_in
from enclosure_app.model.standing.whereabouts import homeless
from enclosure_app.planning.revision import Revision, looks_carried
from enclosure_app.planning.revision.comparing import GONE
from enclosure_app.planning.revision.looks import spots_of
from enclosure_app.planning.site_list.listing import SiteList, site_list
from tests.planning.revision.test_sections import EAVE, elsewhere
from tests.planning.revision.walls import found_in, laid_over, limits, project

HANDLED = replace(EAVE, pieces=tuple(replace(p, handles=(p.name,)) for p in EAVE.pieces))


def lists(of: Project) -> list[SiteList]:
    return [site_list(found_in(each), limits()) for each in of.sections]


def revised(before: Project, section: Section, revision: str = "B") -> Revision:
    after = replace(before, sections=(section,), revision=revision)
    return looks_carried(laid_over(before, after), before, lists(before), lists(after))


def looked_at(key: str) -> Project:
    look = SiteCheck(key, Seen.IN_ORDER, "Ida", "2026-03-02T10:15:00+02:00", section=EAVE.name)
    return edits.tick(project(HANDLED), look)


ITEMS = [*spots_of(lists(project(HANDLED))[0])]


def test_in_a_new_issue_every_look_stays_with_its_joint() -> None:
    """The drawing was renumbered, renamed and moved."""
    later = elsewhere(HANDLED, 700.0, "Detail 3", renumbered=True)
    names = dict(
        zip((p.name for p in HANDLED.pieces), (p.name for p in later.pieces), strict=True)
    )
    for item in ITEMS[:: max(1, len(ITEMS) // 5)]:
        after = revised(looked_at(item.key), later).project
        ((key, look),) = seen_in(after, "Detail 3").items()
        found = next(e for e in spots_of(lists(after)[0]) if e.key == key)
        assert (look.seen, found.what) == (Seen.IN_ORDER, item.what)
        assert found.pieces == {names[name] for name in item.pieces}
        assert looks_at(after, key, "Detail 3")[0].key == item.key


def test_a_joint_whose_sheet_is_gone_keeps_its_history_and_troubles_nobody() -> None:
    item = ITEMS[0]
    name = sorted(item.pieces)[0]
    fewer = replace(HANDLED, pieces=tuple(p for p in HANDLED.pieces if p.name != name))
    after = revised(looked_at(item.key), fewer).project
    kept = {*seen_in(after, EAVE.name)} | {each.key for each in homeless(after, on_list=True)}
    assert kept in ({f"{GONE}{item.key}"}, {item.key})
    third = revised(after, HANDLED, "C").project
    assert third.site_checks == after.site_checks
    kept = {*seen_in(third, EAVE.name)} | {each.key for each in homeless(third, on_list=True)}
    assert kept in ({f"{GONE}{item.key}"}, {item.key})


def test_the_same_twice_adds_nothing() -> None:
    before = looked_at(ITEMS[0].key)
    once = revised(before, HANDLED)
    again = looks_carried(once, before, lists(before), lists(once.project))
    assert again.project == once.project
