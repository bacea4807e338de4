"""The walk at a glance: a mark for each stop, to be touched."""

import itertools
from dataclasses import replace

import pytest
from PySide6.QtCore import QPoint, Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.window.walk.overview import Overview
from enclosure_app.window.walk.stops import Which
from tests.window.walk.rounds import TAPE, eave_round


@pytest.fixture
def band(qtbot: QtBot) -> Overview:
    shown = Overview()
    qtbot.addWidget(shown)
    shown.resize(400, 44)
    shown.show()
    return shown


def test_a_touch_goes_to_the_nearest_stop(band: Overview, qtbot: QtBot) -> None:
    walked = eave_round()
    band.show_round(walked, Which.EVERYTHING, "")
    third = walked.stops[2]
    with qtbot.waitSignal(band.taken) as told:
        qtbot.mouseClick(
            band, Qt.MouseButton.LeftButton, pos=QPoint(round(band.x_of(third)) + 4, 20)
        )
    assert told.args == [third.key]


def test_stops_stand_apart_from_left_to_right(band: Overview) -> None:
    walked = eave_round()
    band.show_round(walked, Which.EVERYTHING, "")
    places = [band.x_of(stop) for stop in walked.stops]
    gaps = [b - a for a, b in itertools.pairwise(places)]
    assert min(gaps) > 40
    assert 0 < places[0] < places[-1] < 400


def test_what_is_done_is_filled_and_said(band: Overview) -> None:
    def dark() -> int:
        image = band.grab().toImage()
        at = QPoint(round(band.x_of(eave_round().stops[0])), 22)
        return image.pixelColor(at).lightness()

    band.show_round(eave_round(), Which.EVERYTHING, "")
    hollow = dark()
    assert band.accessibleDescription() == "0 of 8 are done"
    seen = {key: SiteCheck(key, Seen.IN_ORDER) for key, _ in TAPE.items}
    band.show_round(eave_round(**seen), Which.EVERYTHING, "")
    assert abs(dark() - hollow) > 100
    assert band.accessibleDescription() == "1 of 8 are done"


def test_many_stops_are_drawn_smaller_than_they_stand_apart(band: Overview) -> None:
    band.show_round(eave_round(), Which.EVERYTHING, "")
    few = eave_round()
    many = replace(few, stops=tuple(replace(few.stops[0], key=f"bead:{n}") for n in range(60)))
    band.show_round(many, Which.EVERYTHING, "")
    image, y = band.grab().toImage(), 18  # above the line that the stops stand on
    dark = [image.pixelColor(x, y).lightness() < 128 for x in range(20, 380)]
    assert sum(a != b for a, b in itertools.pairwise(dark)) < 4  # nothing runs together up there
    assert band.x_of(many.stops[1]) - band.x_of(many.stops[0]) > 5
