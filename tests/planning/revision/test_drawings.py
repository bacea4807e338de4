"""One of several drawings is revised: whose place it takes, and what stays as it is."""

from dataclasses import replace

from enclosure_app.model import edits
from enclosure_app.model.drawing import Drawing, Note, NoteLevel, Units
from enclosure_app.model.project import Project
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.model.section import Section
from enclosure_app.model.standing.sign_offs import signed
from enclosure_app.model.standing.site_checks import seen_in
from enclosure_app.model.standing.verdicts import verdicts_in
from enclosure_app.model.standing.whereabouts import homeless
from enclosure_app.planning.revision import Fate, Revision, brought_over, compared
from enclosure_app.planning.revision.drawings import (
    TakenPlace,
    file_of,
    files_of,
    left_as_they_are,
    taken_place,
)
from tests.planning.revision.test_sections import EAVE, elsewhere
from tests.planning.revision.walls import GAP, LOW, WALL, found_in, project, wall

WHEN = "2026-03-02T10:15:00+02:00"
HANDLED = tuple(replace(p, handles=(p.name,)) for p in EAVE.pieces)
ROOF = replace(EAVE, name="roof", pieces=HANDLED, file="a/roof.dxf")
NORTH = replace(WALL, name="walls: north", file="a/walls.dxf")
SOUTH = replace(
    elsewhere(wall(without=("21", "22")), 7000.0, "walls: south", renumbered=True),
    file="a/walls.dxf",
)
SOUTH_GAP = "gap:air:7000-0.high+7000-1.low"
NOTE = Note(NoteLevel.READ, "Layers as told.")


def several() -> Project:
    """Two walls on one drawing and a roof on another; something was said of each."""
    made = replace(project(NORTH, SOUTH, ROOF), source="a/walls.dxf", notes=(NOTE,))
    for name, key in (("walls: north", GAP), ("walls: south", SOUTH_GAP)):
        made = edits.set_decision(
            made, Decision(key, State.ACCEPTED, "Ida", WHEN, "Dry.", name, "A gap.")
        )
    made = edits.set_decision(
        made, Decision("gap:air:old", State.MENDED, "Ida", WHEN, "", "walls: south", "Gone now.")
    )
    made = edits.tick(made, SiteCheck("lap:x", Seen.IN_ORDER, "Ida", WHEN, section="walls: north"))
    return edits.sign(made, "walls: south", "Ida", WHEN)


def drawing(*sections: Section, file: str = "b/roof-rev-B.dxf") -> Drawing:
    return Drawing(file, Units.MM, sections, (Note(NoteLevel.READ, "Anew."),), title="Roof")


def revised(before: Project, later: Drawing, kept: frozenset[str] | None = None) -> Revision:
    after = brought_over(before, later, kept)
    old, new = (tuple(map(found_in, each.sections)) for each in (before, after))
    return compared(before, old, after, new)


def test_a_drawing_takes_the_place_of_the_one_of_which_most_is_known_again() -> None:
    before = several()
    assert files_of(before) == ("a/walls.dxf", "a/roof.dxf")
    shown = replace(ROOF, name="Section 1", file="")
    assert taken_place(before, drawing(shown)) == {
        "b/roof-rev-B.dxf": TakenPlace("a/roof.dxf", sure=True)
    }
    renamed = taken_place(before, drawing(shown, file="b/2604-7.dxf"))
    assert renamed["b/2604-7.dxf"] == TakenPlace("a/roof.dxf", sure=True)


def test_where_name_and_drawing_disagree_it_is_not_sure() -> None:
    shown = replace(ROOF, name="Section 1", file="")
    found = taken_place(several(), drawing(shown, file="walls-rev-B.dxf"))
    assert found["walls-rev-B.dxf"] == TakenPlace("a/roof.dxf", sure=False)
    other = wall(name="Z", without=tuple(p.name for p in WALL.pieces))
    unknown = taken_place(several(), drawing(other, file="z.dxf"))
    assert unknown["z.dxf"] == TakenPlace("", sure=False)


def test_a_project_of_one_drawing_has_one_to_take_the_place_of() -> None:
    one = replace(project(WALL), source="w.dxf")
    assert taken_place(one, drawing(ROOF))["a/roof.dxf"] == TakenPlace("w.dxf", sure=True)
    assert file_of(one, WALL) == "w.dxf"
    assert left_as_they_are(one, ["w.dxf"]) == frozenset()


def test_the_other_drawings_stay_as_they_are_with_all_that_was_said_of_them() -> None:
    before = several()
    done = revised(before, drawing(replace(ROOF, name="Section 1", file="")))
    after = done.project
    assert [each.name for each in after.sections] == ["walls: north", "walls: south", "roof"]
    assert [each.file for each in after.sections] == ["a/walls.dxf"] * 2 + ["b/roof-rev-B.dxf"]
    assert after.sections[:2] == before.sections[:2]
    assert (after.source, after.units) == ("a/walls.dxf", Units.MM)
    assert after.notes == (NOTE, Note(NoteLevel.READ, "Anew."))
    assert homeless(after) == homeless(after, on_list=True) == {}
    for name in ("walls: north", "walls: south"):
        assert verdicts_in(after, name) == verdicts_in(before, name)
    (name,) = signed(after, after.sections[1])
    assert (name.sign_off.who, name.changed) == ("Ida", False)
    fates = {section.new: {m.fate for m in section.findings} for section in done.sections}
    assert fates["walls: north"] == fates["walls: south"] == {Fate.STILL_THERE}


def test_what_is_said_and_revised_later_is_known_again_through_all_revisions() -> None:
    before = several()
    once = revised(before, drawing(replace(ROOF, name="Section 1", file=""))).project
    longer = replace(LOW, shape=replace(LOW.shape, points=((0.0, -10.0), (0.0, 800.0))))
    walls = (wall(longer, name="N"), replace(SOUTH, name="S", file=""))
    twice = revised(once, drawing(*walls, file="c/walls-rev-C.dxf")).project
    assert twice.source == "c/walls-rev-C.dxf"
    assert [each.name for each in twice.sections] == ["walls: north", "walls: south", "roof"]
    assert verdicts_in(twice, "walls: south")[SOUTH_GAP].who == "Ida"
    assert verdicts_in(twice, "walls: north")[GAP].who == "Ida"
    (gone,) = (key for key in verdicts_in(twice, "walls: south") if key != SOUTH_GAP)
    assert gone == "gone:gap:air:old"
    assert {*seen_in(once, "walls: north")} == {"lap:x"}


def test_a_section_that_is_new_in_it_stands_beside_the_others_under_its_drawings_name() -> None:
    fresh = wall(name="1", without=("10", "11", "12", "20"))
    done = revised(several(), drawing(replace(ROOF, name="0", file=""), fresh))
    names = [each.name for each in done.project.sections]
    assert names == ["walls: north", "walls: south", "roof", "roof-rev-B: 1"]


def test_a_person_may_say_that_everything_goes_or_stays() -> None:
    before = several()
    later = drawing(replace(ROOF, name="Section 1", file=""))
    assert [e.name for e in brought_over(before, later, frozenset()).sections] == ["Section 1"]
    every = frozenset(each.name for each in before.sections)
    assert [e.name for e in brought_over(before, later, every).sections] == [
        "walls: north", "walls: south", "roof", "roof-rev-B: Section 1",
    ]  # fmt: skip
