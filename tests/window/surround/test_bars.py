"""The bars above the drawing: the next sensible step, and what could not be done."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QPushButton
from pytestqt.qtbot import QtBot

from enclosure_app.window.surround.bars import MessageBar, StepBar
from enclosure_app.window.surround.next_step import Step

LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def bar(qtbot: QtBot) -> MessageBar:
    shown = MessageBar()
    shown.resize(900, 40)
    qtbot.addWidget(shown)
    return shown


def answers(bar: MessageBar) -> dict[str, QPushButton]:
    buttons = [b for b in bar.findChildren(QPushButton) if b is not bar.close_button]
    return {button.text(): button for button in buttons}


def test_a_step_is_offered_with_its_button_and_taken_by_a_click(qtbot: QtBot) -> None:
    bar = StepBar()
    qtbot.addWidget(bar)
    bar.offer(Step("Nothing says which side is outside.", "tool_outside", "Mark outside"))
    assert bar.words.text() == "Nothing says which side is outside."
    with qtbot.waitSignal(bar.taken) as taken:
        qtbot.mouseClick(bar.button, LEFT)
    assert taken.args == ["tool_outside"]
    bar.offer(Step("Nothing is to be done.", "", ""))
    assert bar.button.isHidden()


def test_a_sentence_stays_until_it_is_understood(bar: MessageBar, qtbot: QtBot) -> None:
    bar.say("The file is empty.")
    assert bar.isVisible()
    qtbot.mouseClick(bar.close_button, LEFT)
    assert bar.isHidden()


def test_a_sentence_is_read_aloud(bar: MessageBar) -> None:
    bar.say("The file is empty.")
    seen = QAccessible.queryAccessibleInterface(bar)
    assert seen.text(QAccessible.Text.Name) == "Message"
    assert seen.text(QAccessible.Text.Description) == "The file is empty."


def test_an_answer_does_what_it_says_and_closes_the_question(
    bar: MessageBar, qtbot: QtBot
) -> None:
    done: list[str] = []
    bar.ask("Keep it?", {"Yes": lambda: done.append("yes"), "No": lambda: done.append("no")})
    qtbot.mouseClick(answers(bar)["No"], LEFT)
    assert done == ["no"]
    assert bar.isHidden()


def test_the_answers_of_one_question_are_not_those_of_the_next(
    bar: MessageBar, qtbot: QtBot
) -> None:
    bar.ask("Keep it?", {"Yes": lambda: None})
    bar.say("The file is empty.")
    qtbot.waitUntil(lambda: not answers(bar))


def test_many_answers_stand_below_the_words_where_there_is_little_room(
    bar: MessageBar, qtbot: QtBot
) -> None:
    texts = ["millimetres", "centimetres", "metres", "inches", "feet"]
    bar.ask("In which units is it drawn?", {text: lambda: None for text in texts})
    bar.resize(420, 160)
    qtbot.waitUntil(
        lambda: all(b.y() >= bar.words.geometry().bottom() for b in answers(bar).values())
    )
    bar.resize(1500, 60)
    qtbot.waitUntil(
        lambda: all(b.x() >= bar.words.geometry().right() for b in answers(bar).values())
    )


def test_a_long_step_is_read_whole_in_a_narrow_window(qtbot: QtBot) -> None:
    bar = StepBar()
    qtbot.addWidget(bar)
    bar.offer(
        Step("Walk through the faults in order, from one end to the other. " * 2, "x", "Next")
    )
    bar.resize(360, 100)
    bar.show()
    needed = bar.words.heightForWidth(bar.words.width())
    assert bar.minimumSizeHint().height() <= 100
    assert bar.words.height() >= needed
