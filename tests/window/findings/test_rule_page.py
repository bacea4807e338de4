"""The page of a rule: its picture, its words, and the way back."""

import pytest
from PySide6.QtCore import Qt, QUrl
from PySide6.QtGui import QImage, QTextDocument
from pytestqt.qtbot import QtBot

from enclosure_app.rules import RULES
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.findings.rule_page import RulePage, rule_html


@pytest.fixture
def page(qtbot: QtBot) -> RulePage:
    made = RulePage()
    made.resize(350, 600)
    qtbot.addWidget(made)
    made.show()
    return made


def picture(page: RulePage) -> QImage:
    found = page.text.document().resource(
        QTextDocument.ResourceType.ImageResource, QUrl("rule-picture")
    )
    assert isinstance(found, QImage)
    return found


@pytest.mark.parametrize("rule", [rule.name for rule in RULES])
def test_every_rule_says_why_what_instead_and_where_from(page: RulePage, rule: str) -> None:
    page.show_rule(rule)
    told = page.text.toPlainText()
    assert told.startswith(rule.replace("-", " ").capitalize())
    headings = ["What it finds", "Why it matters", "What to draw instead", "Source"]
    places = [told.index(heading) for heading in headings]
    assert places == sorted(places)


def test_the_picture_fits_the_page_and_says_what_it_shows(page: RulePage) -> None:
    page.show_rule("short-lap")
    assert 250 < picture(page).deviceIndependentSize().width() < 350
    assert page.text.horizontalScrollBar().maximum() == 0
    image = picture(page)
    assert "alt='The fault as it is drawn, and the same place" in rule_html("short-lap", image)


def test_a_wider_page_has_a_wider_picture(page: RulePage) -> None:
    page.show_rule("short-lap")
    narrow = picture(page).width()
    page.resize(460, 600)
    assert picture(page).width() > narrow + 60


def test_the_picture_follows_the_light(page: RulePage) -> None:
    page.show_rule("short-lap")
    page.show_look(Look(dark=True))
    assert picture(page).pixelColor(0, 0).lightness() < 60


def test_a_click_leads_back(page: RulePage, qtbot: QtBot) -> None:
    page.show_rule("gap")
    with qtbot.waitSignal(page.closed):
        qtbot.mouseClick(page.back, Qt.MouseButton.LeftButton)
