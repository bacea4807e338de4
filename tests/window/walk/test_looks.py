"""Questions of a place: three answers each, taken back by a second touch."""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model.drawing import Units
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.planning.site_list.questions import Question
from enclosure_app.window.walk.looks import Looks, figures, look_line
from tests.window.walk.rounds import LAP, TAPE

LEFT = Qt.MouseButton.LeftButton
PRESSED, CENTRED = (key for key, _ in TAPE.items)


@pytest.fixture
def looks(qtbot: QtBot) -> Looks:
    shown = Looks()
    qtbot.addWidget(shown)
    shown.show_place(TAPE, Units.MM, {})
    shown.show()
    return shown


def test_an_answer_names_its_question(looks: Looks, qtbot: QtBot) -> None:
    with qtbot.waitSignal(looks.answered) as told:
        qtbot.mouseClick(looks.rows[CENTRED].buttons[Seen.NOT_IN_ORDER], LEFT)
    assert told.args == [CENTRED, Seen.NOT_IN_ORDER]


def test_the_same_answer_again_takes_it_back(looks: Looks, qtbot: QtBot) -> None:
    looks.show_place(TAPE, Units.MM, {PRESSED: SiteCheck(PRESSED, Seen.IN_ORDER, "Ida")})
    assert looks.rows[PRESSED].buttons[Seen.IN_ORDER].isChecked()
    with qtbot.waitSignal(looks.answered) as told:
        qtbot.mouseClick(looks.rows[PRESSED].buttons[Seen.IN_ORDER], LEFT)
    assert told.args == [PRESSED, Seen.NOT_LOOKED_AT]


def test_all_of_it_is_offered_while_something_is_left(looks: Looks, qtbot: QtBot) -> None:
    with qtbot.waitSignal(looks.all_answered):
        qtbot.mouseClick(looks.all_in_order, LEFT)
    every = {key: SiteCheck(key, Seen.IN_ORDER, "Ida") for key in looks.rows}
    looks.show_place(TAPE, Units.MM, every)
    assert not looks.all_in_order.isEnabled()


def test_keys_answer_the_first_question_that_is_left(looks: Looks) -> None:
    first = looks.next_row()
    assert first is not None
    assert first.key == PRESSED
    looks.show_place(TAPE, Units.MM, {PRESSED: SiteCheck(PRESSED, Seen.HIDDEN)})
    second = looks.next_row()
    assert second is not None
    assert second.key == CENTRED


def test_another_place_has_its_own_questions(looks: Looks) -> None:
    looks.show_place(LAP, Units.MM, {})
    assert list(looks.rows) == ["lap:A.high+B.low:lap-width"]
    assert not looks.all_in_order.isVisible()


def test_lengths_are_told_in_the_units_of_the_drawing() -> None:
    question = Question("lap-width", "?", "", "IRC R703.2", drawn=152.4, least=50.8)
    assert figures(question, Units.MM) == "Drawn: 152 mm · at least 51 mm · IRC R703.2"
    assert figures(question, Units.IN) == 'Drawn: 6" · at least 2" · IRC R703.2'


def test_what_was_seen_is_told_with_who_and_when() -> None:
    check = SiteCheck("k", Seen.NOT_IN_ORDER, "Ida", "2026-05-04T09:00:00+02:00", "Torn.")
    assert look_line(check) == "Not in order by Ida, 2026-05-04: Torn."
    assert look_line(SiteCheck("k", Seen.HIDDEN)) == "Cannot be seen"


def test_each_button_says_which_question_it_answers(looks: Looks) -> None:
    names = [b.accessibleName() for b in looks.rows[PRESSED].buttons.values()]
    assert len(set(names)) == 3
    assert all(looks.rows[PRESSED].asked.text() in name for name in names)


def test_a_question_is_chosen_for_a_note_by_touch_by_key_and_by_what_is_amiss(
    looks: Looks, qtbot: QtBot
) -> None:
    assert looks.chosen == ""
    with qtbot.waitSignal(looks.picked) as told:
        qtbot.mouseClick(looks.rows[CENTRED].note, LEFT)
    assert told.args == [CENTRED]
    assert [row.note.isChecked() for row in looks.rows.values()] == [False, True]
    looks.choose_next()
    assert looks.chosen == PRESSED
    qtbot.mouseClick(looks.rows[CENTRED].buttons[Seen.NOT_IN_ORDER], LEFT)
    assert looks.chosen == CENTRED
    qtbot.mouseClick(looks.rows[PRESSED].buttons[Seen.IN_ORDER], LEFT)
    assert looks.chosen == CENTRED


def test_the_only_question_of_a_place_needs_no_choice(looks: Looks) -> None:
    looks.show_place(LAP, Units.MM, {})
    (row,) = looks.rows.values()
    assert looks.chosen == row.key
    assert not row.note.isVisible()


def test_what_was_noted_before_anybody_looked_stands_at_its_question(looks: Looks) -> None:
    noted = SiteCheck(PRESSED, Seen.NOT_LOOKED_AT, "Ida", remark="From below", photographs=("a",))
    looks.show_place(TAPE, Units.MM, {PRESSED: noted})
    assert looks.rows[PRESSED].told.text() == "From below · 1 photograph"
    assert not looks.rows[PRESSED].is_answered
    looks.show_place(TAPE, Units.MM, {PRESSED: SiteCheck(PRESSED, Seen.NOT_LOOKED_AT, "Ida")})
    assert not looks.rows[PRESSED].told.isVisible()
