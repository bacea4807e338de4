"""Two copies made one: counted, chosen, settled, and nothing lost."""

from dataclasses import replace

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.model.said.decision import State
from enclosure_app.model.standing.verdicts import contested_in, verdicts_in
from enclosure_app.planning.merging import Part, Side
from enclosure_app.window.merging.joining import Counts, as_chosen, differing, joined
from tests.planning.revision.walls import GAP, WALL, WIDE, project, wall
from tests.window.merging.copies_joined import BEAD, PLACE, TAPE, WHEN, contested, drawn, said


def test_what_comes_without_a_question_is_counted() -> None:
    assert contested().counts == Counts(verdicts=2)
    other = replace(WALL, name="Eave", pieces=WALL.pieces[:2])
    assert joined(project(WALL), project(WALL, other)).counts == Counts(sections=1)
    figures = joined(project(WALL), replace(project(WALL), figures={"wall-lap": 90.0}))
    assert figures.counts == Counts(settings=1)


def test_a_verdict_that_is_let_hold_is_said_again_and_both_stay_in_the_history() -> None:
    of = contested()
    jon = next(each for each in of.merged.contested[PLACE] if each.who == "Jon")
    after = as_chosen(of, {}, {PLACE: jon}, ("Mara", WHEN))
    holds = verdicts_in(after, "Wall")[GAP]
    assert (holds.state, holds.who, holds.remark) == (State.ACCEPTED, "Mara", "By Jon.")
    assert contested_in(after, "Wall") == {}
    assert {each.who for each in after.decisions} == {"Ida", "Jon", "Mara"}
    assert verdicts_in(after, "Wall")[WIDE].who == "Jon"


def test_what_nobody_settles_stands_side_by_side() -> None:
    after = as_chosen(contested(), {}, {}, ("", ""))
    assert {*contested_in(after, "Wall")} == {GAP}


def test_a_drawing_is_taken_as_it_was_chosen() -> None:
    key = (Part.SECTION, "Wall")
    theirs = as_chosen(drawn(), {key: Side.THEIRS}, {}, ("", ""))
    assert theirs.sections == (wall(BEAD),)
    both = as_chosen(drawn(), {key: Side.BOTH}, {}, ("", ""))
    assert [each.name for each in both.sections] == ["Wall", "Wall-2"]


def test_a_copy_that_holds_nothing_new_is_known() -> None:
    ours = said(project(WALL), State.MENDED, "Ida")
    assert joined(ours, project(WALL)).nothing_new
    assert not joined(project(WALL), ours).nothing_new
    assert not drawn().nothing_new


def test_where_two_versions_differ_is_shown() -> None:
    place = differing(wall(TAPE), wall(BEAD))
    assert place is not None
    assert place[0] == pytest.approx((-1.5, 1275.0))
    assert {*place[1]} == {TAPE.shape.points, BEAD.shape.points}
    assert differing(WALL, replace(WALL, inside=())) is None


def test_what_is_no_copy_is_refused() -> None:
    other = replace(project(replace(WALL, pieces=WALL.pieces[:2])), id="q", title="Barn")
    with pytest.raises(EnclosureError, match="not copies of one project"):
        joined(project(WALL), other)
