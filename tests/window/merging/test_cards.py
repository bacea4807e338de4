"""Each difference on a card of its own: nothing is chosen before somebody chooses it."""

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from pytestqt.qtbot import QtBot

from enclosure_app.planning.merging import Side
from enclosure_app.window.canvas.look import Look
from enclosure_app.window.merging.cards import ContestCard, DifferenceCard
from tests.window.merging.copies_joined import PLACE, contested, drawn

LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def card(qtbot: QtBot) -> DifferenceCard:
    of = drawn()
    shown = DifferenceCard(of.merged.differences[0], of, Look())
    qtbot.addWidget(shown)
    shown.resize(900, 320)
    shown.show()
    return shown


def test_both_drawings_stand_side_by_side_where_they_differ(card: DifferenceCard) -> None:
    assert card.title.text() == "Wall is drawn differently"
    for picture in card.pictures:
        middle = picture.camera.place(QPointF(picture.width() / 2, picture.height() / 2))
        assert middle == pytest.approx((-1.5, 1275.0))


def test_a_side_is_chosen_by_mouse_or_keys(card: DifferenceCard, qtbot: QtBot) -> None:
    assert card.value is None
    ours, theirs, both = (choice.button for choice in card.choices)
    with qtbot.waitSignal(card.changed):
        qtbot.mouseClick(theirs, LEFT, pos=QPoint(10, theirs.height() // 2))
    assert card.value is Side.THEIRS
    qtbot.keyClick(both, Qt.Key.Key_Space)
    assert card.value is Side.BOTH
    qtbot.keyClick(ours, Qt.Key.Key_Space)
    assert card.value is Side.OURS


def test_verdicts_stand_side_by_side_unless_one_is_let_hold(qtbot: QtBot) -> None:
    sides = contested().merged.contested[PLACE]
    card = ContestCard(PLACE, sides)
    qtbot.addWidget(card)
    card.show()
    assert card.title.text() == "Wall · A gap."
    assert card.value is None
    told = [choice.told.text() for choice in card.choices]
    assert {line.split(" · ")[1] for line in told[:2]} == {"Ida", "Jon"}
    qtbot.keyClick(card.choices[1].button, Qt.Key.Key_Space)
    assert card.value == sides[1]
    last = card.choices[-1].button
    qtbot.mouseClick(last, LEFT, pos=QPoint(10, last.height() // 2))
    assert card.value is None
