"""A question names what it is about, and where it would lie."""

from enclosure_app.model.said.carried import Subject
from enclosure_app.model.said.question import Question


def test_a_question_without_a_place_is_of_a_section_that_was_not_known_again() -> None:
    asked = Question(Subject("", "Eave", "gap:a"), "A gap.")
    assert (asked.section, asked.at, asked.asked) == ("", None, ())
