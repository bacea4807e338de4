"""A question stays open until somebody answers it, and is asked only where something was said."""

from dataclasses import replace

from enclosure_app.model import edits
from enclosure_app.model.drawing import Units
from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Subject
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.question import Question
from enclosure_app.model.standing.questions import open_questions

EARLIER = Subject("", "Eave", "gap:a")
SAID = Decision("gap:a", State.MENDED, "Ida", section="Eave", about="A gap.")
BEFORE = edits.set_decision(Project("House", Units.MM, ()), SAID)
ASKED = Question(EARLIER, "A gap.", "B", "Eave", (1.0, 2.0), ("gap:7", "gap:8"), "q")
UNSAID = replace(ASKED, earlier=EARLIER._replace(key="gap:b"), id="r")


def test_it_is_asked_with_both_places_until_it_is_answered() -> None:
    project = replace(BEFORE, revision="B", questions=(ASKED, UNSAID))
    assert open_questions(project) == (ASKED,)
    answered = edits.say_where(project, EARLIER, ("Eave", "gap:7"), ("Ida", ""))
    assert open_questions(answered) == ()


def test_an_older_question_gives_way_to_what_was_said() -> None:
    project = replace(BEFORE, revision="C", questions=(ASKED,))
    assert open_questions(project) == (Question(EARLIER, "A gap."),)
    nameless = replace(BEFORE.decisions[0], about="")
    bare = replace(project, decisions=(nameless,), questions=())
    assert open_questions(bare) == (Question(EARLIER, "gap:a"),)


def test_in_the_drawing_it_was_said_of_nothing_is_asked() -> None:
    assert open_questions(BEFORE) == ()
