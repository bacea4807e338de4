"""What was said of an earlier drawing is followed to the drawing now, or is asked about."""

from dataclasses import replace

from enclosure_app.model.drawing import Units
from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import EVERYTHING, Carried, Subject
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.model.standing.whereabouts import (
    Trail,
    Whereabouts,
    homeless,
    standing_in,
    subject_of,
)

OLD = Subject("", "Eave", "gap:a+b")
MIDDLE = Subject("B", "Eave", "gap:2+3")
NOW = Subject("C", "Eave", "gap:7+8")
SAID = Decision("gap:a+b", State.MENDED, "Ida", section="Eave", id="1")


def project(*links: Carried, revision: str = "C") -> Project:
    return Project("House", Units.MM, (), decisions=(SAID,), carried=links, revision=revision)


STEP = Carried(OLD, MIDDLE, id="s")
LAST = Carried(MIDDLE, NOW, id="t")


def test_a_subject_is_followed_from_drawing_to_drawing() -> None:
    assert Trail(project(STEP, LAST)).now(OLD) == NOW
    assert Trail(project(STEP, LAST)).now(NOW) == NOW
    assert Trail(project(revision="")).now(OLD) == OLD


def test_what_nobody_carried_on_is_nowhere_although_a_finding_has_its_very_key() -> None:
    assert Trail(project()).now(OLD) is Whereabouts.UNTOLD
    assert Trail(project(STEP)).now(OLD) is Whereabouts.UNTOLD
    assert standing_in((SAID,), Trail(project(STEP)), "Eave") == {}


def test_what_is_gone_is_not_asked_about() -> None:
    gone = Carried(MIDDLE, NOW._replace(key=""), who="Ida", id="g")
    assert Trail(project(STEP, gone)).now(OLD) is Whereabouts.GONE
    assert homeless(project(STEP, gone)) == {}


def test_two_answers_are_asked_about_until_a_third_settles_them() -> None:
    one = Carried(MIDDLE, NOW, who="Ida", id="i")
    other = Carried(MIDDLE, NOW._replace(key="gap:9"), who="Jon", id="j")
    asked = project(STEP, one, other)
    assert homeless(asked) == {OLD: Whereabouts.CONTESTED}
    settled = Carried(MIDDLE, NOW, who="Ida", id="k", after=("i", "j"))
    assert Trail(project(STEP, one, other, settled)).now(OLD) == NOW


def test_a_person_outranks_the_program() -> None:
    person = Carried(MIDDLE, NOW._replace(key="gap:9"), who="Jon", id="j")
    assert Trail(project(STEP, LAST, person)).now(OLD) == person.later


def test_links_to_a_drawing_that_was_not_chosen_lead_nowhere() -> None:
    """Two copies were revised to B and to X, and the one with B was kept, and revised again."""
    aside = Carried(OLD, Subject("X", "Eave", "gap:5"), id="x")
    gone = Carried(OLD, Subject("Y", "Eave", ""), id="y")
    assert Trail(project(STEP, LAST, aside, gone)).now(OLD) == NOW
    assert Trail(project(aside, gone)).now(OLD) is Whereabouts.UNTOLD


def test_items_of_the_site_list_have_a_trail_of_their_own() -> None:
    on_list = [replace(each, on_list=True) for each in (STEP, LAST)]
    check = SiteCheck("gap:a+b", Seen.IN_ORDER, section="Eave", id="c")
    trail = Trail(project(*on_list), on_list=True)
    assert Trail(project(*on_list)).now(OLD) is Whereabouts.UNTOLD
    assert standing_in((check,), trail, "Eave") == {"gap:7+8": (replace(check, key="gap:7+8"),)}


def test_looks_that_nobody_can_place_are_asked_about_apart() -> None:
    looked = replace(project(), site_checks=(SiteCheck("x", Seen.IN_ORDER, id="c"),))
    assert homeless(looked, on_list=True) == {Subject("", "", "x"): Whereabouts.UNTOLD}
    assert {*homeless(looked)} == {OLD}


def test_a_ring_of_links_in_a_file_written_by_hand_ends() -> None:
    lead = Carried(MIDDLE._replace(key="gap:9"), NOW, id="t")
    ring = project(STEP, Carried(MIDDLE, OLD, id="r"), lead)
    assert Trail(ring).now(OLD) is Whereabouts.CONTESTED


def test_a_remark_alone_is_asked_about_too() -> None:
    told = replace(project(), decisions=(), remarks=(Remark("x", section="Eave", id="r"),))
    assert homeless(told) == {Subject("", "Eave", "x"): Whereabouts.UNTOLD}
    assert subject_of(SAID) == OLD


def test_in_a_section_that_a_revision_did_not_touch_everything_is_what_it_was() -> None:
    kept = Carried(Subject("", "Wall", EVERYTHING), Subject("B", "North", EVERYTHING), id="k")
    own = Carried(Subject("", "Wall", "gap:y"), Subject("B", "North", ""), id="o")
    trail = Trail(Project("H", Units.MM, (), revision="B", carried=(kept, own)))
    assert trail.now(Subject("", "Wall", "gap:x")) == Subject("B", "North", "gap:x")
    assert trail.now(Subject("", "Wall", "gap:y")) is Whereabouts.GONE  # said of it by itself
    assert trail.now(Subject("", "Eave", "gap:x")) is Whereabouts.UNTOLD
    seen = Trail(Project("H", Units.MM, (), revision="B", carried=(kept,)), on_list=True)
    assert seen.now(Subject("", "Wall", "lap:x")) == Subject("B", "North", "lap:x")
