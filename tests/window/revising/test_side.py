"""One drawing of two: its place in the middle, and what is said of it."""

from dataclasses import replace

import pytest
from PySide6.QtCore import QPointF
from pytestqt.qtbot import QtBot

from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.revising.side import Side
from tests.window.revising.walls_laid import decided, laid


@pytest.fixture
def side(qtbot: QtBot) -> Side:
    shown = Side()
    qtbot.addWidget(shown)
    shown.resize(400, 500)
    shown.show()
    shown.show_section(decided(), laid().found[0], Look())
    return shown


def middle(side: Side) -> tuple[float, float]:
    place = side.place
    return place.camera.place(QPointF(place.width() / 2, place.height() / 2))


def test_a_finding_stands_in_the_middle(side: Side) -> None:
    finding = laid().found[0].findings[0]
    side.show_finding(finding, "<b>A gap.</b>")
    assert middle(side) == pytest.approx(finding.at)
    assert side.told.text() == "<b>A gap.</b>\nMeasured 210 mm, required 0 mm"


def test_what_is_not_measured_has_no_figures(side: Side) -> None:
    finding = laid().found[0].findings[0]
    side.show_finding(replace(finding, measured=None), "A gap.")
    assert side.told.text() == "A gap."
    side.show_finding(replace(finding, measured=30.0, required=None), "A gap.")
    assert side.told.text() == "A gap.\nMeasured 30 mm"


def test_where_it_would_be_is_shown_and_why_it_is_not_there(side: Side) -> None:
    side.show_nothing((0.0, 815.0), "Gone.")
    assert middle(side) == pytest.approx((0.0, 815.0))
    side.show_nothing(None, "Nowhere.")
    assert middle(side) == pytest.approx((0.0, 1500.0))  # the whole section
    assert side.told.text() == "Nowhere."


def test_without_a_section_there_is_no_picture(side: Side) -> None:
    side.show_section(decided(), None, Look())
    assert not side.place.isVisible()
