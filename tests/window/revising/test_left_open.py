"""All that is open, asked again: put down with a name, or left."""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model.said.carried import Subject
from enclosure_app.model.said.question import Question
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.revising.laying import About
from enclosure_app.window.revising.left_open import LeftOpen, asked_at_once, left_open_words
from tests.planning.revision.walls import GAP
from tests.window.revising.walls_laid import decided, laid


@pytest.fixture
def left_open(qtbot: QtBot) -> LeftOpen:
    of = laid()
    shown = LeftOpen()
    qtbot.addWidget(shown)
    shown.show()
    shown.show_questions(of.revision.project, (of.anew, ()), Look(), "")
    return shown


def test_only_what_something_was_said_of_is_asked(left_open: LeftOpen) -> None:
    assert [card.question.earlier for card in left_open.cards] == [Subject("", "Wall", GAP)]
    assert left_open.told.text().endswith("which ones they are now: 1.")
    assert left_open.said == {}
    assert not left_open.bar.take.isEnabled()


def test_what_is_said_needs_a_name(left_open: LeftOpen, qtbot: QtBot) -> None:
    qtbot.keyClick(left_open.cards[0].asking.buttons[1], Qt.Key.Key_Space)
    assert not left_open.bar.take.isEnabled()
    qtbot.keyClicks(left_open.bar.who, "Jon")
    with qtbot.waitSignal(left_open.taken) as taken:
        qtbot.mouseClick(left_open.bar.take, Qt.MouseButton.LeftButton)
    assert taken.args == [{About(Subject("", "Wall", GAP)): ("Wall", "")}, "Jon"]


def test_of_one_place_of_the_site_list_everything_is_asked_at_once() -> None:
    def look(key: str) -> Question:
        return Question(Subject("", "Wall", key), on_list=True)

    one, two, other = look("lap:a+b:pressed"), look("lap:a+b:clean"), look("lap:b+c:clean")
    finding = Question(Subject("", "Wall", "lap:a+b:pressed"))
    assert asked_at_once([finding, one, other, two]) == [(finding,), (one, two), (other,)]


def test_where_to_answer_it_is_said() -> None:
    assert left_open_words(laid().revision.project).startswith("Left open: 1. File, ")
    assert left_open_words(decided()) == ""
