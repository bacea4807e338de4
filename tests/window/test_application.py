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


def started(room: Path, language: str, *files: Path) -> str:
    """Start the program in a process of its own, and return what it says of itself."""
    ran = subprocess.run(
        [sys.executable, "-c", STARTED, *map(str, files)],
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
