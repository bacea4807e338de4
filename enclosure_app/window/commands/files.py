"""What File in the menu does."""

from collections.abc import Callable
from pathlib import Path
from typing import Any

from PySide6.QtCore import QObject
from PySide6.QtPrintSupport import QPrintDialog
from PySide6.QtWidgets import QDialog, QFileDialog

from enclosure_app.model.project import Project
from enclosure_app.model.report import SectionResult
from enclosure_app.progress import Progress
from enclosure_app.window.apart.working import Job, Lane
from enclosure_app.window.commands.parts import Parts
from enclosure_app.window.filing import printing


class FileCommands(QObject):
    """Opening, saving, writing and printing."""

    def __init__(self, parts: Parts) -> None:
        super().__init__(parts.window)
        self._parts = parts
        self.leaving = False
        self.again = False  # whether the window is to open anew once it is closed

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
        project, results = parts.document.project, tuple(parts.checking.results)
        told = self.tr("The sheet is written: {}").format(path)
        self._issue(
            self.tr("Writing {}").format(path.name),
            self._writing(path, (project, results)),
            lambda _: parts.messages.say(told),
        )

    def _writing(
        self, path: Path, found: tuple[Project, tuple[SectionResult, ...]]
    ) -> Callable[[Progress], None]:
        """Return what writes sheets: here in a thread, or elsewhere where they are very large."""
        working = self._parts.working

        def write(progress: Progress) -> None:
            order = printing.order_for(path, found) if working.apart else None
            if order:
                working.writer.write(order, progress)
            else:
                printing.write_pdf(path, found, progress)

        return write

    def preview(self) -> None:
        """Look at the sheets before they are printed."""
        parts = self._parts
        project, results = parts.document.project, tuple(parts.checking.results)
        self._issue(
            self.tr("Making the sheets ready"),
            lambda progress: printing.recorded(project, results, progress, to_look_at=True),
            lambda sheets: printing.Preview(parts.window, project, sheets).open(),
        )

    def print_sheets(self) -> None:
        """Ask for a printer, and print the sheets."""
        parts = self._parts
        project, results = parts.document.project, tuple(parts.checking.results)
        printer = printing.made_printer(project)
        if QPrintDialog(printer, parts.window).exec() != QDialog.DialogCode.Accepted:
            return
        self._issue(
            self.tr("Making the sheets ready"),
            lambda progress: printing.recorded(project, results, progress),
            lambda sheets: printing.print_sheets(printer, sheets),
        )

    def _issue(
        self, words: str, work: Callable[[Progress], Any], then: Callable[[Any], object]
    ) -> None:
        """Make sheets while the window goes on."""
        messages = self._parts.messages
        messages.hide()
        self._parts.working.begin(
            Job(Lane.ISSUING, words, work, then, refused=lambda error: messages.say(str(error)))
        )

    def close(self) -> None:
        """Close the window."""
        self._parts.window.close()

    def leave(self) -> None:
        """Close the window, whatever is not saved."""
        self.leaving = True
        self._parts.window.close()

    def begin_again(self) -> None:
        """Close the window so that it opens anew; what is not saved is asked about first."""

        def leave_for_another() -> None:
            self.again = True
            self.leave()

        self.ask_to_save(leave_for_another)

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
