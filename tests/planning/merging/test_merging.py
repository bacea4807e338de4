"""Two copies made one: what both changed is shown side by side, and nothing is lost."""

from collections.abc import Mapping
from dataclasses import replace

import pytest
from hypothesis import given, settings

from enclosure_app.errors import EnclosureError
from enclosure_app.model import edits
from enclosure_app.model.finding import Severity
from enclosure_app.model.project import Project
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.standing.questions import open_questions
from enclosure_app.model.standing.sign_offs import signed
from enclosure_app.model.standing.standing import standing
from enclosure_app.model.standing.verdicts import verdicts_in
from enclosure_app.model.standing.whereabouts import homeless
from enclosure_app.model.states import remembering
from enclosure_app.planning.merging import Merged, Part, Side, merged
from enclosure_app.planning.parts import part
from tests.planning.merging.histories import copies
from tests.planning.revision.walls import GAP, WALL, laid_over, line, project, wall

NOTHING: Mapping[tuple[Part, str], Side] = {}
WHEN = "2026-03-02T10:15:00+02:00"
TAPE = line("drawn-1", (-1.0, 780.0), (-1.0, 850.0), product="seam-tape")
BEAD = line("drawn-1", (-2.0, 1690.0), (-2.0, 1770.0), product="seam-tape")
BASE = project(WALL)
NEW = "lap:air:drawn-1.low+10.face"


def began_from(
    base: Project,
    ours: Project,
    theirs: Project,
    chosen: Mapping[tuple[Part, str], Side] = NOTHING,
) -> Merged:
    """Return what comes of two copies that know the one which both began from."""
    return merged(*(remembering(each, [base]) for each in (ours, theirs)), chosen=chosen)


def said(before: Project, state: State, key: str = GAP, who: str = "Ida") -> Project:
    return edits.set_decision(before, Decision(key, state, who, WHEN, f"By {who}.", "Wall"))


def sections_of(project: Project) -> Mapping[str, object]:
    return {each.name: each for each in project.sections}


@settings(max_examples=60, deadline=None)
@given(copies())
def test_copies_that_only_speak_have_no_differences_and_are_one_either_way(
    pair: tuple[Project, Project],
) -> None:
    ours, theirs = merged(*pair), merged(*reversed(pair))
    assert ours.differences == theirs.differences == ()
    assert ours.project == theirs.project
    assert merged(ours.project, pair[0]).project == ours.project
    assert ours.contested == theirs.contested


@settings(max_examples=60, deadline=None)
@given(copies())
def test_just_what_both_decided_differently_since_is_contested(
    pair: tuple[Project, Project],
) -> None:
    shared = {each.id for each in pair[0].decisions} & {each.id for each in pair[1].decisions}
    last = [{e.key: e for e in standing(each.decisions) if e.id not in shared} for each in pair]
    expected = {
        ("Wall", key) for key in last[0].keys() & last[1].keys()
        if last[0][key].state is not last[1][key].state
    }  # fmt: skip
    assert {*merged(*pair).contested} == expected


def test_two_verdicts_stand_side_by_side_until_somebody_settles_it() -> None:
    common = said(BASE, State.TO_BE_MENDED)
    done = merged(said(common, State.MENDED), said(common, State.ACCEPTED, who="Jon"))
    sides = done.contested["Wall", GAP]
    assert {(each.who, each.state) for each in sides} == {
        ("Ida", State.MENDED),
        ("Jon", State.ACCEPTED),
    }
    settled = said(done.project, State.ACCEPTED)
    assert merged(settled, done.project).contested == {}
    assert len(settled.decisions) == 4


def test_with_the_common_copy_only_what_both_changed_is_asked() -> None:
    ours = replace(
        BASE, title="Ours", figures={"wall-lap": 90.0}, severities={"gap": Severity.DOUBT}
    )
    theirs = replace(BASE, title="Theirs", book="irc-2021", figures={"wall-lap": 80.0})
    done = began_from(BASE, ours, theirs)
    assert [(each.key, each.ours, each.theirs) for each in done.asked] == [
        ((Part.TITLE, ""), "Ours", "Theirs"),
        ((Part.FIGURE, "wall-lap"), 90.0, 80.0),
    ]
    assert (done.project.title, done.project.book) == ("Ours", "irc-2021")
    assert done.project.severities == {"gap": Severity.DOUBT}
    chosen = {(Part.TITLE, ""): Side.THEIRS, (Part.FIGURE, "wall-lap"): Side.OURS}
    final = began_from(BASE, ours, theirs, chosen)
    assert final.asked == ()
    assert (final.project.title, final.project.figures) == ("Theirs", {"wall-lap": 90.0})


def test_a_section_that_one_person_drew_on_is_taken_and_one_that_both_did_is_chosen() -> None:
    taped, beaded = project(wall(TAPE)), project(wall(BEAD))
    assert began_from(BASE, BASE, taped).project.sections == taped.sections
    assert began_from(BASE, taped, BASE).differences == ()
    (difference,) = began_from(BASE, taped, beaded).differences
    assert (difference.key, difference.taken) == ((Part.SECTION, "Wall"), Side.OURS)
    assert (difference.ours.section, difference.theirs.section) == (wall(TAPE), wall(BEAD))
    theirs = began_from(BASE, taped, beaded, {difference.key: Side.THEIRS})
    assert theirs.project.sections == beaded.sections
    both = began_from(BASE, taped, beaded, {difference.key: Side.BOTH}).project
    assert [each.name for each in both.sections] == ["Wall", "Wall-2"]
    assert both.sections[1].pieces == wall(BEAD).pieces


def test_a_section_that_is_new_in_either_is_kept_and_one_taken_away_goes() -> None:
    eave = part("eave", WALL.products)
    more = project(WALL, eave)
    assert {*sections_of(merged(BASE, more).project)} == {"Wall", eave.name}
    assert {*sections_of(began_from(BASE, more, BASE).project)} == {"Wall", eave.name}
    assert {*sections_of(began_from(more, BASE, more).project)} == {"Wall"}


def test_a_verdict_about_one_persons_drawing_is_not_given_to_the_others() -> None:
    """Both drew a "drawn-1", and not the same one; each said something of the lap beside it."""
    ours = said(project(wall(TAPE)), State.MENDED, NEW)
    theirs = said(said(project(wall(BEAD)), State.ACCEPTED, NEW, "Jon"), State.MENDED, GAP, "Jon")
    theirs = edits.sign(theirs, "Wall", "Jon", WHEN)
    done = merged(ours, theirs).project
    assert [(e.sign_off.who, e.changed) for e in signed(done, done.sections[0])] == [("Jon", True)]
    assert {*verdicts_in(done, "Wall")} == {GAP}
    assert {subject.key for subject in homeless(done)} == {NEW}
    assert len(done.decisions) == 3
    (question,) = open_questions(done)
    assert (question.about, question.at, question.asked) == (NEW, None, ())
    told = edits.say_where(done, question.earlier, ("Wall", ""), ("Ida", WHEN))
    assert homeless(told) == {}


def test_where_both_versions_are_kept_each_keeps_what_only_it_was_spoken_of() -> None:
    ours = project(wall(TAPE))
    theirs = said(project(wall(BEAD)), State.ACCEPTED, NEW, "Jon")
    done = merged(ours, theirs, chosen={(Part.SECTION, "Wall"): Side.BOTH}).project
    assert {*verdicts_in(done, "Wall-2")} == {NEW}
    assert {*verdicts_in(done, "Wall")} == set()
    assert homeless(done) == {}


def test_a_section_renamed_in_one_copy_is_one_section() -> None:
    signed_first = edits.sign(said(BASE, State.MENDED), "Wall", "Ida", WHEN)
    renamed = edits.rename_section(signed_first, "Wall", "North wall")
    spoken = said(signed_first, State.ACCEPTED, who="Jon")
    for done in (
        began_from(signed_first, renamed, spoken),
        began_from(signed_first, spoken, renamed),
    ):
        (section,) = done.project.sections
        assert section.name == "North wall"
        assert verdicts_in(done.project, "North wall")[GAP].state is State.ACCEPTED
        assert [each.sign_off.who for each in signed(done.project, section)] == ["Ida"]


def test_a_revised_drawing_of_one_copy_is_taken_with_what_the_other_said_of_the_earlier() -> None:
    spoken = said(BASE, State.MENDED)
    names = {"10": "A0", "11": "A1", "12": "A2"}
    pieces = tuple(
        replace(p, name=names.get(p.name, p.name), handles=(names.get(p.name, p.name),))
        for p in WALL.pieces
    )
    later = replace(BASE, sections=(replace(WALL, pieces=pieces),), revision="B")
    revised = laid_over(BASE, later).project
    for done in (began_from(BASE, spoken, revised), began_from(BASE, revised, spoken)):
        assert done.differences == ()
        assert done.project.revision == "B"
        assert verdicts_in(done.project, "Wall")["gap:air:A0.high+A1.low"].state is State.MENDED
    (asked,) = merged(spoken, revised).asked
    assert (asked.part, asked.taken) == (Part.DRAWING, Side.THEIRS)


def test_of_two_revised_drawings_one_is_chosen_and_what_was_said_follows_it() -> None:
    common = said(BASE, State.MENDED)
    one, other = (
        laid_over(common, replace(common, sections=(section,), revision=name)).project
        for name, section in (("B", wall(TAPE)), ("C", wall(BEAD)))
    )
    done = merged(one, other)
    (asked,) = done.asked
    assert (asked.part, done.project.revision) == (Part.DRAWING, "B")
    assert verdicts_in(done.project, "Wall") == verdicts_in(one, "Wall") != {}
    theirs = merged(one, other, chosen={asked.key: Side.THEIRS}).project
    assert verdicts_in(theirs, "Wall") == verdicts_in(other, "Wall")
    assert theirs.sections == other.sections


def test_projects_that_have_nothing_in_common_are_not_made_one() -> None:
    other = replace(project(part("ridge", WALL.products)), title="Barn", id="q")
    with pytest.raises(EnclosureError, match='"House" and "Barn" are not copies of one project'):
        merged(BASE, other)
    assert merged(BASE, replace(BASE, id="q")).differences == ()
