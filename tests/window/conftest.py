"""A window that shows nothing on any screen, with a memory of its own."""

import os

os.environ["QT_QPA_PLATFORM"] = "offscreen"

from collections.abc import Callable, Iterator
from pathlib import Path

import ezdxf
import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, QSettings, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from enclosure_app.resources import sample
from enclosure_app.window.apart.working import Working
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.settings import Settings
from enclosure_app.window.walk.page import WalkPage

_LEFT, _PLAIN = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier


@pytest.fixture
def settings(tmp_path: Path) -> Settings:
    store = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    return Settings(store)


@pytest.fixture
def window(qtbot: QtBot, settings: Settings) -> Iterator[MainWindow]:
    """Return a window with nothing open, 1366 x 768."""
    shown = MainWindow(settings, Working(apart=False))  # what is opened is open at once
    qtbot.addWidget(shown)
    shown.show()
    yield shown
    shown.commands.files.leaving = True
    shown.close()


@pytest.fixture
def opened(window: MainWindow) -> Callable[..., MainWindow]:
    """Return a function that opens a sample in the window."""

    def open_sample(
        file: str = "eave-flush-faulty.dxf", layers: str = "layers-second-office.toml"
    ) -> MainWindow:
        assert sample(file).is_file()
        window.filing.open_sample(file, layers)
        return window

    return open_sample


@pytest.fixture(scope="session")
def large(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a drawing that takes a second and more to read."""
    drawing = ezdxf.new("R2010")
    drawing.header["$INSUNITS"] = 4
    space = drawing.modelspace()
    for n in range(12_000):
        x, y = 40 * (n % 200), 40 * (n // 200)
        space.add_line((x, y), (x + 30, y), {"layer": "X"})
    path = tmp_path_factory.mktemp("large") / "large.dxf"
    drawing.saveas(path)
    return path


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Overlook what the screenless platform of Qt says of itself at every window."""
    here = Path(__file__).parent
    for item in items:
        if here in item.path.parents:
            item.add_marker(pytest.mark.qt_log_ignore("This plugin does not support"))


class Hand:
    """A hand on the mouse over the drawing: places are mm of the section."""

    def __init__(self, window: MainWindow, qtbot: QtBot) -> None:
        self.canvas, self._qtbot = window.canvas, qtbot

    def dot(self, place: tuple[float, float]) -> QPoint:
        """Return the dot nearest to a place."""
        return self.canvas.camera.seen(place).toPoint()

    def at(self, place: tuple[float, float]) -> tuple[float, float]:
        """Return the place of the dot that is nearest to a place."""
        return self.canvas.camera.place(QPointF(self.dot(place)))

    def click(self, place: tuple[float, float], keys: Qt.KeyboardModifier = _PLAIN) -> None:
        self._qtbot.mouseMove(self.canvas, self.dot(place))
        self._qtbot.mouseClick(self.canvas, _LEFT, keys, self.dot(place))

    def double(self, place: tuple[float, float]) -> None:
        self._qtbot.mouseDClick(self.canvas, _LEFT, _PLAIN, self.dot(place))

    def move(self, place: tuple[float, float], keys: Qt.KeyboardModifier = _PLAIN) -> None:
        dot = QPointF(self.dot(place))
        whole, none = self.canvas.mapToGlobal(dot), Qt.MouseButton.NoButton
        event = QMouseEvent(QEvent.Type.MouseMove, dot, whole, none, _LEFT, keys)
        QApplication.sendEvent(self.canvas, event)

    def drag(self, *places: tuple[float, float], keys: Qt.KeyboardModifier = _PLAIN) -> None:
        self._qtbot.mousePress(self.canvas, _LEFT, keys, self.dot(places[0]))
        for place in places[1:]:
            self.move(place, keys)
        self._qtbot.mouseRelease(self.canvas, _LEFT, keys, self.dot(places[-1]))

    def keys(self, text: str) -> None:
        self._qtbot.keyClicks(self.canvas, text)

    def press(self, key: Qt.Key) -> None:
        self._qtbot.keyClick(self.canvas, key)


@pytest.fixture
def sheet(window: MainWindow) -> MainWindow:
    """Return a window on an empty sheet, 2 m by 2 m, with a self-adhered sheet to draw with."""
    window.filing.new_sheet()
    window.lines.choose("self-adhered-sheet")
    window.canvas.catching = False
    return window


@pytest.fixture
def hand(window: MainWindow, qtbot: QtBot) -> Hand:
    return Hand(window, qtbot)


@pytest.fixture
def walk(opened: Callable[..., MainWindow], qtbot: QtBot) -> WalkPage:
    """Return the page of a walk through a sample with three findings, with a name given."""
    shown = opened()
    shown.settings.who = "Ida"
    shown.do("walk")
    page = shown.views.walk
    qtbot.waitUntil(lambda: page.isVisible() and page.stop is not None)
    return page
