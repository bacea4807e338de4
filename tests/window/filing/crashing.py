"""Draws something in a window, keeps a copy of it, and is gone without a word, as in a crash."""

import os
import sys
from pathlib import Path

from PySide6.QtCore import QSettings

from enclosure_app.model.edits import remove_pieces
from enclosure_app.window.apart.working import Working
from enclosure_app.window.application import made_application
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.settings import Settings

made_application()
store = QSettings(sys.argv[1], QSettings.Format.IniFormat)
window = MainWindow(Settings(store), Working(apart=False))
window.filing.open(Path(sys.argv[2]))
project = window.document.project
window.document.apply("Delete", remove_pieces(project, 0, [project.sections[0].pieces[0].name]))
window.keeping.copy()
os._exit(9)
