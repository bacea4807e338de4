"""Starts the window: the application, what it does with its own faults, and the first file."""

import sys
from collections.abc import Sequence
from importlib import import_module
from pathlib import Path
from threading import Thread
from types import TracebackType

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QIcon
from PySide6.QtWidgets import QApplication

from enclosure_app import __version__
from enclosure_app.drawing.typeface import text_width
from enclosure_app.files.dxf.memory import kept_in_use, set_aside
from enclosure_app.files.maps.guesses import guess_of
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.resources import resource
from enclosure_app.window.languages import speak_in, tongue_of
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.settings import Settings

_TURN = 0.001  # s that work beside the window may hold it up: it asks for many turns a frame


def run(files: Sequence[Path] = ()) -> int:
    """Open the window on a project, on drawings, on what lies under them; return the exit status."""
    sys.setswitchinterval(_TURN)
    application = made_application()
    Thread(target=make_ready, name="making ready", daemon=True).start()
    while True:
        window = shown_window(application, files)
        status = int(application.exec())
        if not window.commands.files.again:
            return status
        files = open_in(window)
        window.deleteLater()


def shown_window(application: QApplication, files: Sequence[Path]) -> MainWindow:
    """Return a window in the language that is chosen, on these files."""
    settings = Settings()
    speak_in(application, tongue_of(settings.language))
    application.setApplicationDisplayName(say("Enclosure continuity"))
    window = MainWindow(settings)
    own_up_in(window)
    window.show()
    window.working.reader.warm()
    if files:
        window.open_files(files)
    return window


def open_in(window: MainWindow) -> list[Path]:
    """Return the file of the project that is open, or the drawing it was read from."""
    kept, source = window.document.path, window.document.project.source
    return [path for path in [kept or Path(source)] if path.is_file()]


def make_ready() -> None:
    """Load what will be needed while the person looks at the first page, or a file is read.

    What checks drawings, the letters' widths, the words by which layers are guessed, the usual
    figures. All of it stays, and looking through it for unused objects would stop the window for
    a tenth of a second.
    """
    with kept_in_use():
        import_module("enclosure_app.checker")
        for bold in (False, True):
            text_width("0", 1.0, bold=bold)
        guess_of("A-WALL", {})
        load_limits()
    set_aside()


def made_application() -> QApplication:
    """Return the running application, or a new one with the program's name and icon."""
    running = QApplication.instance()
    application = running if isinstance(running, QApplication) else QApplication(sys.argv[:1])
    application.setApplicationName("enclosure-app")
    application.setApplicationVersion(__version__)
    application.setDesktopFileName("enclosure-app")
    application.setWindowIcon(QIcon(str(resource("icons/enclosure-app.svg"))))
    return application


def own_up_in(window: MainWindow) -> None:
    """Say in the window when the program itself fails, instead of dying or of saying nothing."""

    def told(kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        sys.__excepthook__(kind, error, trace)
        window.messages.say(
            say(
                "The program itself failed ({}: {}); that is its fault and not yours. Save your "
                "work, and please send its developers this sentence and the drawing."
            ).format(kind.__name__, error)
        )

    sys.excepthook = told


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("Application", text)
