"""The picture of a rule on the screen."""

import pytest
from PySide6.QtGui import QImage
from pytestqt.qtbot import QtBot

from enclosure_app.model.drawing import Units
from enclosure_app.rules import RULES
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.findings.rule_picture import judged, rule_picture


def colours(image: QImage) -> set[int]:
    return {image.pixel(x, y) for x in range(0, image.width(), 2) for y in range(image.height())}


@pytest.mark.parametrize("rule", [rule.name for rule in RULES])
def test_every_rule_has_a_picture_with_something_in_it(qtbot: QtBot, rule: str) -> None:
    image = rule_picture(rule, 290, Look())
    assert image is not None
    assert image.width() == 290
    assert 100 < image.height() < 400
    assert len(colours(image)) > 20


def test_it_is_as_sharp_as_the_screen(qtbot: QtBot) -> None:
    plain, fine = rule_picture("gap", 300, Look()), rule_picture("gap", 300, Look(), 2.0)
    assert plain is not None
    assert fine is not None
    assert (fine.width(), fine.height()) == (2 * plain.width(), 2 * plain.height())
    assert fine.deviceIndependentSize() == plain.deviceIndependentSize()


def test_it_is_dark_by_night_and_in_the_units_of_the_drawing(qtbot: QtBot) -> None:
    by_day, by_night = rule_picture("gap", 300, Look()), rule_picture("gap", 300, Look(dark=True))
    inches = rule_picture("gap", 300, Look(Units.IN))
    assert by_day is not None
    assert by_night is not None
    assert by_day.pixelColor(0, 0).lightness() > 200
    assert by_night.pixelColor(0, 0).lightness() < 60
    assert inches != by_day


def test_a_rule_that_is_not_there_has_none(qtbot: QtBot) -> None:
    assert rule_picture("no-such-rule", 300, Look()) is None
    assert judged("no-such-rule") is None
