"""The words of a stop: one card at a time, with what was said, cautions, and a name where it lacks."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from enclosure_app.planning.site_list.questions import HEIGHT
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.walk.stops import Stop
from enclosure_app.window.walk.words_column import Shown, WordsColumn
from tests.drawing import eave
from tests.window.walk.rounds import TAPE, eave_round

PLACE, SHORT = eave_round().stops[:2]


@pytest.fixture
def words(qtbot: QtBot) -> WordsColumn:
    column = WordsColumn()
    qtbot.addWidget(column)
    column.resize(480, 600)
    column.show()
    return column


def cards(words: WordsColumn) -> list[QWidget]:
    every = (words.finding, words.look_here, words.signing)
    return [card for card in every if card.isVisible()]


def shown(**more: object) -> Shown:
    return Shown(eave_round(), Look(), **{"who": "Ida", **more})  # type: ignore[arg-type]


def test_each_kind_of_stop_has_its_own_card(words: WordsColumn) -> None:
    words.show_stop(shown(), SHORT)
    assert cards(words) == [words.finding]
    assert words.finding.message.text() == eave.SHORT.message
    words.show_stop(shown(), PLACE)
    assert cards(words) == [words.look_here]
    assert words.look_here.name.text() == TAPE.title
    words.show_stop(shown(), None)
    assert cards(words) == [words.signing]
    assert not words.note.isVisible()


def test_what_was_said_stands_under_the_words(words: WordsColumn) -> None:
    words.show_stop(shown(), SHORT)
    assert not words.said.isVisible()
    words.show_stop(shown(said=("Ida: torn", "Per: taped")), SHORT)
    assert words.said.text() == "Ida: torn\nPer: taped"


@pytest.mark.parametrize("stop", [PLACE, SHORT, None])
def test_working_at_height_is_told_at_every_stop(words: WordsColumn, stop: Stop | None) -> None:
    words.show_stop(shown(), stop)
    assert words.beware.isVisible()
    assert words.beware.text() == HEIGHT


def test_a_name_is_asked_for_while_nobody_gave_one(words: WordsColumn, qtbot: QtBot) -> None:
    words.show_stop(shown(), SHORT)
    assert not words.who.isVisible()
    words.show_stop(shown(who=""), SHORT)
    assert words.who.isVisible()
    qtbot.keyClicks(words.who, "Ida")
    assert words.finding.verdict.who.text() == "Ida"


def test_another_section_follows_the_last_page_where_there_is_one(words: WordsColumn) -> None:
    words.show_stop(shown(section=(1, 2)), None)
    assert words.signing.next_section.isVisible()
    words.show_stop(shown(section=(2, 2)), None)
    assert not words.signing.next_section.isVisible()


def test_another_stop_begins_at_the_top_and_what_was_typed_waits_at_its_own(
    words: WordsColumn, qtbot: QtBot
) -> None:
    words.show_stop(shown(), PLACE)
    qtbot.keyClicks(words.note.words, "torn")
    qtbot.waitUntil(lambda: words.verticalScrollBar().maximum() > 0)
    words.verticalScrollBar().setValue(50)
    words.show_stop(shown(), SHORT)
    assert words.verticalScrollBar().value() == 0
    assert words.note.words.text() == ""
    words.show_stop(shown(), None)
    assert "not put down yet: Tape on wall sheet." in words.signing.told.text()
    words.show_stop(shown(), PLACE)
    assert words.note.words.text() == "torn"


def test_a_place_of_several_questions_asks_which_one_a_note_is_about(words: WordsColumn) -> None:
    words.show_stop(shown(), PLACE)
    assert words.note.about.text().startswith("Which question is it about?")
    looks = words.look_here.looks
    key = list(looks.rows)[1]
    looks.choose(key)
    assert words.note.about.text() == f"About: {looks.rows[key].asked.text()}"
    words.show_stop(shown(), SHORT)
    assert not words.note.about.isVisible()
    words.show_stop(shown(), PLACE)
    assert words.note.about.text().startswith("Which question")  # chosen anew each time


def test_a_note_that_is_begun_by_hand_comes_into_view(words: WordsColumn, qtbot: QtBot) -> None:
    words.show_stop(shown(), PLACE)
    row = next(iter(words.look_here.looks.rows.values()))
    qtbot.waitUntil(lambda: words.verticalScrollBar().maximum() > 0)
    qtbot.mouseClick(row.note, Qt.MouseButton.LeftButton)
    seen = words.viewport().rect()
    for part in (words.note.about, words.note.words, words.note.photograph):
        assert seen.contains(part.mapTo(words.viewport(), part.rect().center()))


def test_a_name_is_asked_for_in_place_and_only_while_it_lacks(words: WordsColumn) -> None:
    words.show_stop(shown(who=""), PLACE)
    assert not words.name_asked.isVisible()
    words.ask_name("Type your name.")
    assert words.name_asked.isVisible()
    words.show_stop(shown(), PLACE)
    assert not words.name_asked.isVisible()
