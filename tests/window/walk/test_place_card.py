"""One place of the site list, large."""

from pytestqt.qtbot import QtBot

from enclosure_app.model.drawing import Units
from enclosure_app.window.walk.place_card import PlaceCard
from tests.window.walk.rounds import LAP, TAPE


def test_it_tells_the_place_its_controls_and_what_to_beware_of(qtbot: QtBot) -> None:
    card = PlaceCard()
    qtbot.addWidget(card)
    card.show()
    card.show_place(TAPE, Units.MM, {})
    assert card.kind.text() == "Look here · Water, Air"
    assert card.name.text() == "Tape on wall sheet"
    assert card.cautions.text() == "Mind the edge."
    assert len(card.looks.rows) == 2
    card.show_place(LAP, Units.MM, {})
    assert not card.cautions.isVisible()
    assert len(card.looks.rows) == 1
