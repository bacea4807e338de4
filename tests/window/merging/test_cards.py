"""Each difference on a card of its own: nothing is chosen before somebody chooses it."""

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from pytestqt.qtbot import QtBot

from enclosure_app.planning.merging import Side
from enclosure_app.window.canvas.ink.look import Look
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


def test_the_place_that_people_decided_differently_about_is_seen(qtbot: QtBot) -> None:
    of = contested()
    card = ContestCard(PLACE, of.merged.contested[PLACE])
    qtbot.addWidget(card)
    card.resize(700, 400)
    card.show_place(of, Look())
    card.show()
    assert card.picture is not None
    (at,) = (f.at for f in of.found[0].findings if f.key == PLACE[1])
    middle = QPointF(card.picture.width() / 2, card.picture.height() / 2)
    assert card.picture.camera.place(middle) == pytest.approx(at)


def test_what_is_not_found_here_has_no_picture(qtbot: QtBot) -> None:
    of = contested()
    card = ContestCard(("Eave", "gap:x"), of.merged.contested[PLACE])
    qtbot.addWidget(card)
    card.show_place(of, Look())
    assert card.picture is None
