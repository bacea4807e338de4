"""Nothing in the walk that is to be touched is smaller than a fingertip."""

import pytest
from PySide6.QtWidgets import QLineEdit, QPushButton

from enclosure_app.window.dress import DAY, NIGHT, Colours
from enclosure_app.window.walk.dress import WALK
from enclosure_app.window.walk.page import WalkPage
from tests.window.test_dress import contrast

FINGERTIP = 44


@pytest.mark.parametrize("size", [(1024, 768), (800, 1280)])
def test_what_is_touched_is_as_high_as_a_fingertip(walk: WalkPage, size: tuple[int, int]) -> None:
    walk.window().resize(*size)
    for stop in ("", *(stop.key for stop in walk.stops)):
        walk.go_to(stop)
        touched = [*walk.findChildren(QPushButton), *walk.findChildren(QLineEdit)]
        small = {
            (w.text(), w.height(), w.width())
            for w in touched
            if w.isVisible() and (w.height() < FINGERTIP or w.width() < FINGERTIP)
        }
        assert small == set()


def test_nothing_is_cut_off_on_a_tablet_held_upright(walk: WalkPage) -> None:
    walk.window().resize(800, 1280)
    assert walk.window().width() == 800
    for stop in walk.stops:
        walk.go_to(stop.key)
        assert walk.words.page.width() <= walk.words.viewport().width()


@pytest.mark.parametrize("colours", [DAY, NIGHT], ids=["day", "night"])
def test_words_and_edges_stand_out_in_bright_sun(colours: Colours) -> None:
    """A contrast of 7 to 1 is the enhanced one (WCAG 2.2, 1.4.6); edges and words are the ink."""
    assert "border: 2px solid palette(window-text)" in WALK
    assert contrast(colours.ink, colours.panel) >= 7
    assert contrast(colours.ink, colours.raised) >= 7
