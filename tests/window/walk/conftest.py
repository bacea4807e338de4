"""A walk through a sample with three findings."""

from collections.abc import Callable

import pytest
from pytestqt.qtbot import QtBot

from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.walk.page import WalkPage


@pytest.fixture
def walk(opened: Callable[..., MainWindow], qtbot: QtBot) -> WalkPage:
    """Return the page of a walk through the flush eave, with a name given."""
    window = opened()
    window.settings.who = "Ida"
    window.do("walk")
    page = window.views.walk
    qtbot.waitUntil(lambda: page.isVisible() and page.stop is not None)
    return page
