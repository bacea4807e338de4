"""What File in the menu does."""

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject
from PySide6.QtPrintSupport import QPrintDialog
from PySide6.QtWidgets import QDialog, QFileDialog

from enclosure_app.errors import EnclosureError
from enclosure_app.window import printing
from enclosure_app.window.commands.parts import Parts


class FileCommands(QObject):
    """Opening, saving, writing and printing."""

    def __init__(self, parts: Parts) -> None:
        super().__init__(parts.window)
        self._parts = parts
        self.leaving = False

    def new_sheet(self) -> None:
        """Begin with an empty sheet."""
        self.ask_to_save(self._parts.filing.new_sheet)

    def open_file(self) -> None:
        """Ask for a file and open it."""
        self.ask_to_save(self._parts.filing.ask_what_to_open)

    def put_underlay(self) -> None:
        """Ask for a picture or PDF page, and put it under the drawing."""
        self._parts.underlaying.ask_what_to_put()

    def save(self) -> None:
        """Save the project."""
        self._parts.filing.save()

    def save_as(self) -> None:
        """Save the project elsewhere."""
        self._parts.filing.save_as()

    def write_pdf(self) -> None:
        """Write the marked-up sheets, and say where they are."""
        parts = self._parts
        project = parts.document.project
        stem = Path(project.source or project.title or "section").with_suffix(".pdf").name
        title = self.tr("Write the marked-up sheet")
        name, _ = QFileDialog.getSaveFileName(parts.window, title, stem, "PDF (*.pdf)")
        if name:
            self.write_pdf_to(Path(name))

    def write_pdf_to(self, path: Path) -> None:
        """Write the marked-up sheets to a file."""
        parts = self._parts
        try:
            printing.write_pdf(path, parts.document.project, tuple(parts.checking.results))
        except EnclosureError as error:
            parts.messages.say(str(error))
            return
        parts.messages.say(self.tr("The sheet is written: {}").format(path))

    def preview(self) -> None:
        """Look at the sheets before they are printed."""
        parts = self._parts
        results = tuple(parts.checking.results)
        dialog = printing.preview(parts.window, parts.document.project, results)
        dialog.open()

    def print_sheets(self) -> None:
        """Ask for a printer, and print the sheets."""
        parts = self._parts
        printer = printing.made_printer(parts.document.project)
        if QPrintDialog(printer, parts.window).exec() != QDialog.DialogCode.Accepted:
            return
        results = tuple(parts.checking.results)
        try:
            printing.print_sheets(printer, parts.document.project, results)
        except EnclosureError as error:
            parts.messages.say(str(error))

    def close(self) -> None:
        """Close the window."""
        self._parts.window.close()

    def leave(self) -> None:
        """Close the window, whatever is not saved."""
        self.leaving = True
        self._parts.window.close()

    def ask_to_save(self, then: Callable[[], object]) -> None:
        """Go on with `then`, after asking in place what is to become of unsaved changes."""
        parts = self._parts
        if not parts.document.modified:
            then()
            return

        question = self.tr("What you changed since the last save is not kept yet.")
        answers = {
            self.tr("Save"): lambda: parts.filing.save(then),
            self.tr("Go on without saving"): then,
        }
        parts.messages.ask(question, answers)
