"""Who speaks, about what, and one step for what is said."""

from collections.abc import Callable
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.errors import EnclosureError
from enclosure_app.model.project import Project
from enclosure_app.model.said.site_check import Seen
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.walk.saying import Saying

Opened = Callable[..., MainWindow]


@pytest.fixture
def saying(opened: Opened) -> Saying:
    window = opened()
    window.do("walk")
    return window.walking.saying


def to(saying: Saying, *, finding: bool) -> str:
    page = saying.page
    page.go_to(next(s.key for s in page.stops if (s.finding is not None) is finding))
    return page.here


def test_at_a_finding_it_is_about_the_finding(saying: Saying) -> None:
    key = to(saying, finding=True)
    about = saying.about()
    assert about is not None
    assert about.finding is not None
    assert (about.finding.key, about.section, about.stop) == (key, "FLUSH EAVE", key)


def test_at_a_place_it_is_about_the_question_that_is_chosen_or_about_nothing(
    saying: Saying,
) -> None:
    to(saying, finding=False)
    assert saying.about() is None
    key, row = next(iter(saying.page.words.look_here.looks.rows.items()))
    about = saying.about(key)
    assert about is not None
    assert row.asked.text() in about.words
    check = saying.look(about, Seen.HIDDEN, "behind the gutter")
    assert (check.key, check.seen, check.remark) == (key, Seen.HIDDEN, "behind the gutter")
    assert check.about == about.words


def test_on_the_last_page_it_is_about_nothing(saying: Saying) -> None:
    saying.page.go_to("")
    assert saying.about() is None


def test_a_name_is_asked_for_in_place_and_what_was_touched_is_done_then(
    saying: Saying, qtbot: QtBot
) -> None:
    to(saying, finding=True)
    done: list[str] = []
    assert not saying.is_named(lambda: done.append("later"))
    who = saying.page.words.who
    assert who.hasFocus()
    qtbot.keyClicks(who, " Ida ")
    qtbot.keyClick(who, Qt.Key.Key_Return)
    assert saying.is_named(lambda: done.append("never"))
    assert saying.who == "Ida"
    assert done == ["later"]
    assert not who.isVisible()
    assert saying.page.foot.onward.hasFocus()


def test_a_note_that_waits_for_a_name_stays_with_its_own_stop(
    saying: Saying, qtbot: QtBot
) -> None:
    page = saying.page
    first, second, *_ = [stop.key for stop in page.stops if stop.finding]
    page.go_to(first)
    qtbot.keyClicks(page.words.note.words, "Torn")
    qtbot.keyClick(page.words.note.words, Qt.Key.Key_Return)
    assert page.words.who.hasFocus()
    page.go_to(second)
    page.words.note.words.setText("typed here")
    qtbot.keyClicks(page.words.who, "Ida")
    qtbot.keyClick(page.words.who, Qt.Key.Key_Return)
    (remark,) = saying.project.remarks
    assert (remark.key, remark.remark, remark.who) == (first, "Torn", "Ida")
    assert page.words.note.words.text() == "typed here"
    page.go_to(first)
    assert page.words.note.words.text() == ""  # it is put down, and waits no more


def test_a_look_that_waits_for_a_name_stays_with_its_own_place(
    saying: Saying, qtbot: QtBot
) -> None:
    page, place = saying.page, to(saying, finding=False)
    key, row = next(iter(page.words.look_here.looks.rows.items()))
    qtbot.mouseClick(row.buttons[Seen.IN_ORDER], Qt.MouseButton.LeftButton)
    to(saying, finding=True)
    qtbot.keyClicks(page.words.who, "Ida")
    qtbot.keyClick(page.words.who, Qt.Key.Key_Return)
    (check,) = saying.project.site_checks
    assert (check.key, check.seen, check.who) == (key, Seen.IN_ORDER, "Ida")
    assert check.key.startswith(place)


def test_what_is_about_another_drawing_is_not_put_to_this_one(saying: Saying) -> None:
    to(saying, finding=True)
    about = saying.about()
    assert about is not None
    elsewhere = replace(about, project="another")
    refused: list[str] = []
    saying.refuse = refused.append  # type: ignore[method-assign]
    before = saying.project
    assert not saying.put([elsewhere], "Nothing", lambda project: replace(project, title="x"))
    assert saying.project is before
    assert refused == [
        "What was noted at “FLUSH EAVE” was not put down: another drawing is open, or the "
        "section bears another name. Go there and note it again."
    ]


def test_what_cannot_be_done_is_said_and_changes_nothing(saying: Saying) -> None:
    def refused(project: Project) -> Project:
        raise EnclosureError("The lap is not there.")

    before = saying.project
    assert not saying.apply("Nothing", refused)
    assert saying.project is before
    window = saying.page.window()
    assert isinstance(window, MainWindow)
    assert window.messages.words.text() == "The lap is not there."
