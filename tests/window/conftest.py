"""A window that shows nothing on any screen, with a memory of its own."""

import os

os.environ["QT_QPA_PLATFORM"] = "offscreen"

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings
from pytestqt.qtbot import QtBot

from enclosure_app.resources import sample
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.settings import Settings


@pytest.fixture
def settings(tmp_path: Path) -> Settings:
    store = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    return Settings(store)


@pytest.fixture
def window(qtbot: QtBot, settings: Settings) -> Iterator[MainWindow]:
    """Return a window with nothing open, 1366 x 768."""
    shown = MainWindow(settings)
    qtbot.addWidget(shown)
    shown.show()
    yield shown
    shown.commands.leaving = True
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


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Overlook what the screenless platform of Qt says of itself at every window."""
    here = Path(__file__).parent
    for item in items:
        if here in item.path.parents:
            item.add_marker(pytest.mark.qt_log_ignore("propagateSizeHints"))
