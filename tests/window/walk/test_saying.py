"""Who speaks, about what, and one step for what is said."""

from collections.abc import Callable

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


def test_what_cannot_be_done_is_said_and_changes_nothing(saying: Saying) -> None:
    def refused(project: Project) -> Project:
        raise EnclosureError("The lap is not there.")

    before = saying.project
    assert not saying.apply("Nothing", refused)
    assert saying.project is before
    window = saying.page.window()
    assert isinstance(window, MainWindow)
    assert window.messages.words.text() == "The lap is not there."
