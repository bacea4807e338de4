"""A section that was changed after it was signed says so."""

from collections.abc import Callable

from enclosure_app.model import edits
from enclosure_app.model.place import Line
from enclosure_app.model.project import Project
from enclosure_app.model.standing.sign_offs import signed

WHEN = "2026-03-02T10:15:00+02:00"


def test_a_later_change_shows_and_undoing_it_does_not(house: Callable[..., Project]) -> None:
    project = edits.sign(house(a=Line(((0.0, 0.0), (0.0, 9.0)))), "Eave", " Ida ", WHEN, "Seen.")
    (before,) = signed(project, project.sections[0])
    assert (before.sign_off.who, before.sign_off.when, before.changed) == ("Ida", WHEN, False)
    moved = edits.move_point(project, "Eave", "a", 1, (0.0, 10.0))
    assert [each.changed for each in signed(moved, moved.sections[0])] == [True]
    back = edits.move_point(moved, "Eave", "a", 1, (0.0, 9.0))
    assert [each.changed for each in signed(back, back.sections[0])] == [False]
    assert signed(moved, moved.sections[1]) == ()


def test_people_sign_side_by_side_and_a_second_signature_follows_the_first(
    house: Callable[..., Project],
) -> None:
    project = house(a=Line(((0.0, 0.0), (0.0, 9.0))))
    for who in ("Ida", "Jon", "IDA"):
        project = edits.sign(project, "Eave", who, WHEN)
    names = [each.sign_off.who for each in signed(project, project.sections[0])]
    assert names == ["Jon", "IDA"]
    assert [each.who for each in project.sign_offs] == ["Ida", "Jon", "IDA"]


def test_a_name_that_is_taken_away_stays_in_the_history(house: Callable[..., Project]) -> None:
    project = edits.sign(house(), "Eave", "Ida", WHEN)
    project = edits.withdraw(project, "Eave", "Ida", WHEN, "The lap was not seen.")
    assert signed(project, project.sections[0]) == ()
    assert [each.withdrawn for each in project.sign_offs] == [False, True]
