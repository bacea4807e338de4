"""Two copies beside the drawing: what is united is counted, what differs is chosen first."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from enclosure_app.model.said.decision import State
from enclosure_app.planning.merging import Part, Side
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.merging.joining import joined
from enclosure_app.window.merging.merge_window import MergeWindow
from tests.planning.revision.walls import line, project, wall
from tests.window.merging.copies_joined import BEAD, PLACE, TAPE, contested, drawn, said

LEFT = Qt.MouseButton.LeftButton
COPIES = ((TAPE, State.MENDED, "Ida"), (BEAD, State.NO_FAULT, "Jon"))


@pytest.fixture
def shown(qtbot: QtBot) -> MergeWindow:
    window = MergeWindow()
    qtbot.addWidget(window)
    window.show()
    return window


def test_it_counts_what_comes_without_a_question(shown: MergeWindow) -> None:
    shown.show_joined(contested(), "jon.json", Look(), "Ida")
    assert shown.told.text() == (
        "jon.json adds without a question: 2 verdicts. To be chosen: 0. Decided differently: 1."
    )
    assert shown.bar.take.isEnabled()
    assert not shown.bar.who.isVisible()
    texts = [label.text() for label in shown.findChildren(QLabel)]
    assert "Wall · A gap.\nTo be mended by Jon, 2026-03-02: By Jon." in texts


def test_a_drawing_has_to_be_chosen_first(shown: MergeWindow, qtbot: QtBot) -> None:
    shown.show_joined(drawn(), "jon.json", Look(), "")
    assert not shown.bar.take.isEnabled()
    assert shown.bar.lacking.text() == "Still to be chosen: 1."
    qtbot.keyClick(shown.differences[0].choices[1].button, Qt.Key.Key_Space)
    with qtbot.waitSignal(shown.taken) as taken:
        qtbot.mouseClick(shown.bar.take, LEFT)
    assert taken.args == [{(Part.SECTION, "Wall"): Side.THEIRS}, {}, ""]


def test_a_settled_verdict_needs_a_name(shown: MergeWindow, qtbot: QtBot) -> None:
    of = contested()
    shown.show_joined(of, "jon.json", Look(), "")
    qtbot.keyClick(shown.contests[0].choices[0].button, Qt.Key.Key_Space)
    assert shown.bar.lacking.text() == "Type your name: it is put beside what you say."
    assert not shown.bar.take.isEnabled()
    qtbot.keyClicks(shown.bar.who, "Mara")
    with qtbot.waitSignal(shown.taken) as taken:
        qtbot.mouseClick(shown.bar.take, LEFT)
    assert taken.args == [{}, {PLACE: of.merged.contested[PLACE][0]}, "Mara"]


def test_another_copy_takes_the_place_of_this_one(shown: MergeWindow) -> None:
    shown.show_joined(drawn(), "jon.json", Look(), "")
    shown.show_joined(contested(), "kim.json", Look(), "")
    assert shown.differences == []
    assert len(shown.contests) == 1


def test_what_was_chosen_is_remembered_when_the_copies_are_compared_again(
    shown: MergeWindow, qtbot: QtBot
) -> None:
    ours, theirs = (said(project(wall(each)), state, who) for each, state, who in COPIES)
    shown.show_joined(joined(ours, theirs), "jon.json", Look(), "Ida")
    for card in (shown.differences[0], shown.contests[0]):
        qtbot.keyClick(card.choices[1].button, Qt.Key.Key_Space)
    chosen, settled = shown.chosen, shown.settled
    assert chosen == {(Part.SECTION, "Wall"): Side.THEIRS}
    assert [*settled] == [PLACE]
    qtbot.keyClicks(shown.bar.who, " L.")
    more = said(ours, State.ACCEPTED, "Ida", "another")
    shown.show_joined(joined(more, project(wall(BEAD))), "kim.json", Look(), "Ida")
    assert shown.chosen == {}  # it is another copy
    assert shown.bar.name == "Ida"
    shown.show_joined(joined(ours, theirs), "jon.json", Look(), "Ida")
    for card in (shown.differences[0], shown.contests[0]):
        qtbot.keyClick(card.choices[1].button, Qt.Key.Key_Space)
    qtbot.keyClicks(shown.bar.who, " L.")
    shown.show_joined(joined(more, theirs), "jon.json", Look(), "Ida")
    assert shown.bar.name == "Ida L."
    assert (shown.chosen, shown.settled) == (chosen, settled)
    assert shown.bar.take.isEnabled()


def test_what_is_asked_otherwise_than_before_is_chosen_anew(
    shown: MergeWindow, qtbot: QtBot
) -> None:
    ours, theirs = (said(project(wall(each)), state, who) for each, state, who in COPIES)
    shown.show_joined(joined(ours, theirs), "jon.json", Look(), "Ida")
    for card in (shown.differences[0], shown.contests[0]):
        qtbot.keyClick(card.choices[1].button, Qt.Key.Key_Space)
    longer = line("drawn-1", (-1.0, 700.0), (-1.0, 850.0), product="seam-tape")
    other = said(said(project(wall(longer)), State.MENDED, "Ida"), State.ACCEPTED, "Ida")
    shown.show_joined(joined(other, theirs), "jon.json", Look(), "Ida")
    assert (shown.chosen, shown.settled) == ({}, {})
    assert not shown.bar.take.isEnabled()
