"""The panels stand as the person left them, and the first-run page has none."""

from collections.abc import Iterator

import pytest
from PySide6.QtWidgets import QApplication, QDockWidget
from pytestqt.qtbot import QtBot

from enclosure_app.window.apart.working import Working
from enclosure_app.window.languages import TONGUES, speak_in
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.settings import Settings


def shown(window: MainWindow) -> dict[str, bool]:
    """Return which panels are to be seen, by their titles, and the tools."""
    panels = {dock.windowTitle(): not dock.isHidden() for dock in window.findChildren(QDockWidget)}
    return {**panels, "tools": not window.tools.isHidden()}


def started(qtbot: QtBot, settings: Settings, *, part: str = "") -> MainWindow:
    window = MainWindow(settings)
    qtbot.addWidget(window)
    window.show()
    if part:
        window.parts.begin(part)
        window.document.undo_stack.setClean()
    return window


ALL = {
    "What the lines are": True,
    "What is wrong": True,
    "The layers unrolled": True,
    "tools": True,
}
NONE = dict.fromkeys(ALL, False)


def test_a_drawing_comes_with_all_panels_after_days_without_one(
    qtbot: QtBot, settings: Settings
) -> None:
    for _ in range(2):
        window = started(qtbot, settings)
        assert shown(window) == NONE
        window.close()
    assert shown(started(qtbot, settings, part="eave")) == ALL


def test_a_hidden_panel_stays_hidden_and_an_empty_start_shows_none(
    qtbot: QtBot, settings: Settings
) -> None:
    window = started(qtbot, settings, part="eave")
    window.findChild(QDockWidget, window.docks[0].objectName()).close()
    left = {**ALL, window.docks[0].windowTitle(): False}
    assert shown(window) == left
    window.close()
    empty = started(qtbot, settings)
    assert shown(empty) == NONE
    empty.close()
    assert shown(started(qtbot, settings, part="eave")) == left


@pytest.fixture(params=TONGUES, ids=lambda tongue: tongue.code)
def spoken(request: pytest.FixtureRequest, qapp: QApplication) -> Iterator[None]:
    """Speak each language in turn, and English again after it."""
    speak_in(qapp, request.param)
    yield
    speak_in(qapp, TONGUES[0])


@pytest.mark.usefixtures("spoken")
def test_a_narrow_window_stays_narrow_and_its_panels_give_way(
    qtbot: QtBot, settings: Settings
) -> None:
    window = MainWindow(settings, Working(apart=False))
    qtbot.addWidget(window)
    window.resize(800, 1280)
    window.show()
    window.filing.open_sample("four-sections-faulty.dxf", "layers-second-office.toml")
    qtbot.wait(50)  # laid out by then
    assert window.width() == 800
    lines, findings = (dock.width() for dock in window.docks[:2])
    assert lines < 0.32 * 800
    assert findings < 0.37 * 800
    window.commands.files.leaving = True
    window.close()
