"""A question that was left open, at its place in the drawing as it is now."""

from dataclasses import replace

import pytest
from PySide6.QtCore import QPointF, Qt
from pytestqt.qtbot import QtBot

from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.model import edits
from enclosure_app.model.said.carried import Subject
from enclosure_app.model.said.question import Question
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.model.standing.questions import open_questions
from enclosure_app.planning.site_list.listing import site_list
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.revising.laying import About
from enclosure_app.window.revising.open_card import OpenCard
from tests.window.revising.walls_laid import laid

LAID = laid()
PROJECT = LAID.revision.project


def shown(qtbot: QtBot, question: Question) -> OpenCard:
    card = OpenCard([question])
    qtbot.addWidget(card)
    card.resize(500, 400)
    card.show()
    card.show_in(PROJECT, (LAID.anew, ()), Look())
    return card


def test_it_stands_where_it_would_be_with_what_it_may_be(qtbot: QtBot) -> None:
    (question,) = open_questions(PROJECT)
    card = shown(qtbot, question)
    assert card.now == {}
    texts = [button.text() for button in card.asking.buttons]
    assert texts[-2:] == ["It is gone", "Leave it open"]
    assert len(texts) == 3
    assert card.said.text() == "To be mended by Ida, 2026-03-02"
    place = card.side.place
    (asked,) = (f for f in LAID.anew[0].findings if f.key in question.asked)
    middle = place.camera.place(QPointF(place.width() / 2, place.height() / 2))
    assert middle == pytest.approx(asked.at)
    with qtbot.waitSignal(card.changed):
        qtbot.keyClick(card.asking.buttons[0], Qt.Key.Key_Space)
    assert card.now == {About(question.earlier): ("Wall", asked.key)}
    qtbot.keyClick(card.asking.buttons[1], Qt.Key.Key_Space)
    assert card.now == {About(question.earlier): ("Wall", "")}


def test_where_the_section_itself_is_lost_there_is_no_picture(qtbot: QtBot) -> None:
    card = shown(qtbot, Question(Subject("", "Eave", "gap:x"), "A gap."))
    assert card.title.text() == "Eave · A gap."
    assert not card.side.isVisible()
    qtbot.keyClick(card.asking.buttons[0], Qt.Key.Key_Space)
    assert [*card.now.values()] == [("Eave", "")]


def test_what_was_seen_of_a_place_stands_beside_what_was_asked_there(qtbot: QtBot) -> None:
    said = PROJECT
    questions = []
    for name, text in (("clean", "Was it clean?"), ("pressed", "Is it pressed down?")):
        look = SiteCheck(f"lap:o:{name}", Seen.IN_ORDER, "Ida", "2026-03-02T10:15:00+02:00",
                         section="Wall")  # fmt: skip
        said = edits.tick(replace(said, revision=""), look)
        questions.append(
            Question(Subject("", "Wall", look.key), f"Sheet over sheet: {text}", on_list=True)
        )
    card = OpenCard(questions)
    qtbot.addWidget(card)
    card.show_in(said, (LAID.anew, ()), Look())
    assert card.title.text() == "Wall · Sheet over sheet"
    assert card.said.text().splitlines() == [
        "Was it clean? In order by Ida, 2026-03-02",
        "Is it pressed down? In order by Ida, 2026-03-02",
    ]


def test_all_that_was_seen_of_a_place_is_answered_at_once(qtbot: QtBot) -> None:
    """One question of it is not asked there any more: what was seen of that is history."""
    result = LAID.anew[0]
    listed = site_list(result, load_limits())
    place = listed.places[0]
    kept = [key for key, _ in place.items][:2]
    looked = [*(key.rpartition(":")[2] for key in kept), "never-asked-here"]
    questions = [
        Question(Subject("", "Wall", f"lap:old:{name}"), name, "B", "Wall", place.at,
                 tuple(kept), on_list=True)
        for name in looked
    ]  # fmt: skip
    card = OpenCard(questions)
    qtbot.addWidget(card)
    card.show_in(PROJECT, (LAID.anew, [listed]), Look())
    card.show()
    texts = [button.text() for button in card.asking.buttons]
    assert texts == [f"It is “{place.title}” now", "It is to be looked at again", "Leave it open"]
    qtbot.keyClick(card.asking.buttons[0], Qt.Key.Key_Space)
    assert {about.earlier.key: now for about, now in card.now.items()} == {
        f"lap:old:{looked[0]}": ("Wall", kept[0]),
        f"lap:old:{looked[1]}": ("Wall", kept[1]),
        "lap:old:never-asked-here": ("Wall", ""),
    }
    assert all(about.on_list for about in card.now)
