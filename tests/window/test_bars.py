"""The bar of messages and that of the next step."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton
from pytestqt.qtbot import QtBot

from enclosure_app.window.bars import MessageBar, StepBar
from enclosure_app.window.next_step import Step

LEFT = Qt.MouseButton.LeftButton
MANY = ("inches: 7' 10\" high", "feet: 94' 0\" high", "metres: 94 m high", "mm: 94 mm high")


@pytest.fixture
def bar(qtbot: QtBot) -> MessageBar:
    made = MessageBar()
    qtbot.addWidget(made)
    made.resize(900, 40)
    return made


def buttons(bar: MessageBar) -> list[QPushButton]:
    items = [bar.answers.itemAt(number) for number in range(bar.answers.count())]
    widgets = [item.widget() for item in items if item is not None]
    return [widget for widget in widgets if isinstance(widget, QPushButton)]


def test_a_sentence_stays_until_it_is_understood(bar: MessageBar, qtbot: QtBot) -> None:
    assert not bar.isVisible()
    bar.say("The disk is full.")
    assert bar.isVisible()
    assert bar.words.text() == "The disk is full."
    qtbot.mouseClick(bar.close_button, LEFT)
    assert not bar.isVisible()


def test_an_answer_does_what_it_says_and_closes_the_question(
    bar: MessageBar, qtbot: QtBot
) -> None:
    done: list[str] = []
    bar.ask("Which?", {"this": lambda: done.append("this"), "that": lambda: done.append("that")})
    assert [button.text() for button in buttons(bar)] == ["this", "that"]
    qtbot.mouseClick(buttons(bar)[1], LEFT)
    assert done == ["that"]
    assert not bar.isVisible()


def test_another_sentence_takes_the_answers_away(bar: MessageBar) -> None:
    bar.ask("Which?", {"this": lambda: None})
    bar.say("Never mind.")
    assert buttons(bar) == []


def test_a_few_answers_stand_beside_the_words_and_many_below_them(
    bar: MessageBar, qtbot: QtBot
) -> None:
    bar.ask("Which units is the drawing drawn in?", {"one": lambda: None, "two": lambda: None})
    one, _ = buttons(bar)
    qtbot.waitUntil(lambda: one.geometry().left() > bar.words.geometry().right())
    bar.ask("Which units is the drawing drawn in?", {text: lambda: None for text in MANY})
    bar.resize(600, 120)
    under = buttons(bar)
    qtbot.waitUntil(lambda: under[0].geometry().top() > bar.words.geometry().bottom())
    assert bar.words.width() > 300
    assert all(answer.geometry().right() < bar.width() for answer in under)


def test_the_next_step_is_taken_by_its_button(qtbot: QtBot) -> None:
    steps = StepBar()
    qtbot.addWidget(steps)
    steps.show()
    steps.offer(Step("Click outside.", "tool_outside", "Mark outside"))
    assert steps.words.text() == steps.words.toolTip() == "Click outside."
    with qtbot.waitSignal(steps.taken) as taken:
        qtbot.mouseClick(steps.button, LEFT)
    assert taken.args == ["tool_outside"]
    steps.offer(Step("Nothing is wrong."))
    assert not steps.button.isVisible()
