"""Two copies beside the drawing: what is united is counted, what differs is chosen first."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from enclosure_app.planning.merging import Part, Side
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.merging.merge_window import MergeWindow
from tests.window.merging.copies_joined import PLACE, contested, drawn

LEFT = Qt.MouseButton.LeftButton


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
