"""The program starts, speaks the person's language, and owns up to its own faults."""

import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

from enclosure_app.resources import sample
from enclosure_app.window.application import made_application, own_up_in
from enclosure_app.window.main_window import MainWindow

STARTED = """
import sys
from pathlib import Path
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
from enclosure_app.window import application

made = application.made_application()

def look():
    (window,) = [each for each in made.topLevelWidgets() if each.objectName() == "" and
                 type(each).__name__ == "MainWindow"]
    if not window.document.project.sections and sys.argv[1:]:
        QTimer.singleShot(50, look)
        return
    print(made.applicationDisplayName(), "|", len(window.document.project.sections))
    window.close()

QTimer.singleShot(50, look)
status = application.run([Path(name) for name in sys.argv[1:]])
print("status", status)
"""


AGAIN = """
import sys
from pathlib import Path
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QMenu
from enclosure_app.window import application

made = application.made_application()

def front():
    return next(each for each in made.topLevelWidgets()
                if type(each).__name__ == "MainWindow" and each.isVisible())

def choose():
    window = front()
    if not window.document.project.sections:
        QTimer.singleShot(50, choose)
        return
    menu = window.findChild(QMenu, "languages")
    next(each for each in menu.actions() if each.text() == "Deutsch").trigger()
    QTimer.singleShot(0, look)
    window.messages.answers.itemAt(0).widget().click()

def look():
    window = next((each for each in made.topLevelWidgets() if type(each).__name__ == "MainWindow"
                   and each.isVisible() and each.settings.language == "de"
                   and each.document.project.sections
                   and each.menuBar().actions()[0].text() == "&Datei"), None)
    if window is None:
        QTimer.singleShot(50, look)
        return
    print(window.menuBar().actions()[0].text(), "|", len(window.document.project.sections))
    window.close()

QTimer.singleShot(50, choose)
print("status", application.run([Path(sys.argv[1])]))
"""


def started(room: Path, language: str, *files: Path, script: str = STARTED) -> str:
    """Start the program in a process of its own, and return what it says of itself."""
    ran = subprocess.run(
        [sys.executable, "-c", script, *map(str, files)],
        capture_output=True, text=True, timeout=60, check=False,
        env={"QT_QPA_PLATFORM": "offscreen", "XDG_CONFIG_HOME": str(room), "LANG": language,
             "XDG_DATA_HOME": str(room), "HOME": str(room), "PATH": "/usr/bin:/bin"},
    )  # fmt: skip
    told = [line for line in ran.stderr.splitlines() if "propagateSizeHints" not in line]
    assert told == []
    return ran.stdout


def test_it_starts_empty_and_ends_when_its_window_is_closed(tmp_path: Path) -> None:
    assert started(tmp_path, "C.UTF-8") == "Enclosure continuity | 0\nstatus 0\n"


def test_it_starts_on_a_drawing(tmp_path: Path) -> None:
    told = started(tmp_path, "C.UTF-8", sample("four-sections.dxf"))
    assert told == "Enclosure continuity | 4\nstatus 0\n"


def test_it_speaks_the_language_of_the_system(tmp_path: Path) -> None:
    assert started(tmp_path, "de_AT.UTF-8").startswith("Durchgängigkeit der Hülle | 0")


def test_it_opens_anew_on_the_same_drawing_in_the_language_that_was_chosen(tmp_path: Path) -> None:
    told = started(tmp_path, "C.UTF-8", sample("four-sections.dxf"), script=AGAIN)
    assert told == "&Datei | 4\nstatus 0\n"


def test_it_bears_its_name_and_icon(qapp: QApplication) -> None:
    made = made_application()
    assert made is qapp
    assert made.desktopFileName() == "enclosure-app"
    assert not made.windowIcon().isNull()


@pytest.fixture
def owning_up(window: MainWindow) -> Iterator[MainWindow]:
    hook = sys.excepthook
    own_up_in(window)
    yield window
    sys.excepthook = hook


def test_a_fault_of_its_own_is_said_in_the_window_and_to_developers(
    owning_up: MainWindow, capsys: pytest.CaptureFixture[str]
) -> None:
    error = ZeroDivisionError("float division")
    sys.excepthook(type(error), error, None)
    said = owning_up.messages.words.text()
    assert said.startswith("The program itself failed (ZeroDivisionError: float division)")
    assert "Save your work" in said
    assert "ZeroDivisionError: float division" in capsys.readouterr().err
