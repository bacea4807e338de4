"""Looks at the site list, and sign-offs."""

from collections.abc import Callable

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.model import edits
from enclosure_app.model.drawing import Units
from enclosure_app.model.project import Project
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.model.said.sign_off import drawn_sum
from enclosure_app.model.said.site_check import Seen, SiteCheck

WHEN = "2026-03-02T10:15:00+02:00"
PICTURE = Photograph(b"jpeg", (4, 3), "IMG_1.jpg")


def test_a_look_is_put_down_with_its_photographs_after_the_last_one() -> None:
    project = Project("House", Units.MM, ())
    look = SiteCheck("lap:a+b", Seen.NOT_IN_ORDER, "Ida", WHEN, "A wrinkle.", "Eave")
    once = edits.tick(project, look, [PICTURE])
    twice = edits.tick(once, SiteCheck("lap:a+b", Seen.IN_ORDER, "Ida", WHEN, section="Eave"))
    elsewhere = edits.tick(twice, SiteCheck("lap:a+b", Seen.IN_ORDER, "Ida", section="Ridge"))
    first, second, third = elsewhere.site_checks
    assert (first.photographs, first.remark, first.after) == ((PICTURE.key,), "A wrinkle.", ())
    assert (second.after, third.after) == ((first.id,), ())
    with pytest.raises(EnclosureError, match="pick one"):
        edits.tick(project, SiteCheck("", Seen.IN_ORDER))
    with pytest.raises(EnclosureError, match="take it in again"):
        edits.tick(project, SiteCheck("a", Seen.IN_ORDER, photographs=("x",)))


def test_a_section_is_signed_by_a_person_as_it_is_drawn_now(house: Callable[..., Project]) -> None:
    project = edits.sign(house(), "Eave", " Ida ", WHEN, " Seen on site. ")
    (given,) = project.sign_offs
    assert (given.who, given.when, given.remark) == ("Ida", WHEN, "Seen on site.")
    assert given.drawn == drawn_sum(project.sections[0])
    with pytest.raises(EnclosureError, match="Type your name"):
        edits.sign(project, "Eave", " ", WHEN)
    with pytest.raises(EnclosureError):
        edits.sign(project, "Attic", "Ida", WHEN)


def test_only_a_name_that_is_there_is_taken_away(house: Callable[..., Project]) -> None:
    project = edits.sign(house(), "Eave", "Ida", WHEN)
    with pytest.raises(EnclosureError, match='Jon has not signed "Eave"'):
        edits.withdraw(project, "Eave", "Jon", WHEN)
    gone = edits.withdraw(project, "Eave", "Ida", WHEN)
    assert gone.sign_offs[1].after == (gone.sign_offs[0].id,)
    with pytest.raises(EnclosureError, match="has not signed"):
        edits.withdraw(gone, "Eave", "Ida", WHEN)
