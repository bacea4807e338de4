"""What File in the menu does."""

from collections.abc import Callable
from pathlib import Path
from typing import Any

from PySide6.QtCore import QObject, QUrl
from PySide6.QtGui import QDesktopServices
from PySide6.QtPrintSupport import QPrintDialog
from PySide6.QtWidgets import QDialog, QFileDialog

from enclosure_app.drawing.sheet.setup import SheetSetup
from enclosure_app.files.project.file import SUFFIX
from enclosure_app.model.project import Project
from enclosure_app.progress import Progress
from enclosure_app.window.apart.working import Job, Lane
from enclosure_app.window.commands.fittings import Fittings
from enclosure_app.window.filing import printing
from enclosure_app.window.filing.sheet_form import SheetForm


class FileCommands(QObject):
    """Opening, saving, writing and printing."""

    def __init__(self, fittings: Fittings) -> None:
        super().__init__(fittings.window)
        self._fittings = fittings
        self.leaving = False
        self.sheets: SheetForm | None = None
        self.again = False  # whether the window is to open anew once it is closed
        fittings.filing.opened.connect(self._show_setup)

    def new_sheet(self) -> None:
        """Begin with an empty sheet."""
        self.ask_to_save(self._fittings.filing.new_sheet)

    def open_file(self) -> None:
        """Ask for a file and open it."""
        self.ask_to_save(self._fittings.filing.ask_what_to_open)

    def put_underlay(self) -> None:
        """Ask for a picture or PDF page, and put it under the drawing."""
        self._fittings.underlaying.ask_what_to_put()

    def save(self) -> None:
        """Save the project."""
        self._fittings.filing.save()

    def save_as(self) -> None:
        """Save the project elsewhere."""
        self._fittings.filing.save_as()

    def set_up_sheets(self) -> None:
        """Set up paper, scale and title block of the sheets, beside the drawing."""
        if self.sheets is None:
            self.sheets = SheetForm(self._fittings.window)
            self.sheets.changed.connect(self._keep_sheets)
            self.sheets.wanted.connect(lambda name: getattr(self, name)())
        self._show_setup()
        self.sheets.show()
        self.sheets.activateWindow()

    def _show_setup(self) -> None:
        """Show how the sheets of what is open are set up: what is typed next is about these."""
        project = self._fittings.document.project
        if self.sheets:
            self.sheets.show_setup(self._setup(project), project.units)

    def _keep_sheets(self, setup: SheetSetup) -> None:
        self._fittings.settings.keep_sheets(self._fittings.document.project.id, setup)

    def _setup(self, project: Project) -> SheetSetup:
        return self._fittings.settings.sheets(project.id)

    def write_pdf(self) -> None:
        """Write the marked-up sheets, and say where they are."""
        title, proposed = self.tr("Write the marked-up sheet"), str(self._proposed())
        window = self._fittings.window
        name, _ = QFileDialog.getSaveFileName(window, title, proposed, "PDF (*.pdf)")
        if name:
            path = Path(name)
            self.write_pdf_to(path if path.suffix else path.with_suffix(".pdf"))

    def _proposed(self) -> Path:
        """Return where the sheets would lie: beside the project, else beside the drawing."""
        document = self._fittings.document
        if document.path:
            return document.path.with_name(f"{document.path.name.removesuffix(SUFFIX)}.pdf")
        named = document.project.source or document.project.title or "section"
        return Path(named).with_suffix(".pdf")

    def write_pdf_to(self, path: Path) -> None:
        """Write the marked-up sheets to a file, once what is drawn now is checked."""
        self._fittings.checking.once_current(lambda: self._write_pdf_to(path))

    def _write_pdf_to(self, path: Path) -> None:
        fittings = self._fittings
        project, results = fittings.document.project, tuple(fittings.checking.results)
        told = self.tr("The sheet is written: {}").format(path)
        self._issue(
            self.tr("Writing {}").format(path.name),
            self._writing(path, (project, results)),
            lambda _: fittings.messages.ask(told, {self.tr("Open it"): lambda: _open(path)}),
        )

    def _writing(self, path: Path, found: printing.Found) -> Callable[[Progress], None]:
        """Return what writes sheets: here in a thread, or elsewhere where they are very large."""
        working, setup = self._fittings.working, self._setup(found[0])

        def write(progress: Progress) -> None:
            order = printing.order_for(path, found, setup) if working.apart else None
            if order:
                working.writer.write(order, progress)
            else:
                printing.write_pdf(path, found, progress, setup)

        return write

    def preview(self) -> None:
        """Look at the sheets before they are printed, once what is drawn now is checked."""
        self._fittings.checking.once_current(self._preview)

    def _preview(self) -> None:
        fittings, found, setup = self._fittings, *self._found_and_setup()
        job = printing.job_for(found[0], setup)
        self._issue(
            self.tr("Making the sheets ready"),
            lambda progress: printing.recorded(found, progress, setup, to_look_at=True),
            lambda sheets: printing.Preview(fittings.window, job, sheets).open(),
        )

    def print_sheets(self) -> None:
        """Ask for a printer, and print the sheets, once what is drawn now is checked."""
        self._fittings.checking.once_current(self._print_sheets)

    def _print_sheets(self) -> None:
        found, setup = self._found_and_setup()
        printer = printing.made_printer(printing.job_for(found[0], setup))
        if QPrintDialog(printer, self._fittings.window).exec() != QDialog.DialogCode.Accepted:
            return
        self._issue(
            self.tr("Making the sheets ready"),
            lambda progress: printing.recorded(found, progress, setup),
            lambda sheets: printing.print_sheets(printer, sheets),
        )

    def _found_and_setup(self) -> tuple[printing.Found, SheetSetup]:
        project = self._fittings.document.project
        return (project, tuple(self._fittings.checking.results)), self._setup(project)

    def _issue(
        self, words: str, work: Callable[[Progress], Any], then: Callable[[Any], object]
    ) -> None:
        """Make sheets while the window goes on."""
        messages = self._fittings.messages
        messages.hide()
        self._fittings.working.begin(
            Job(Lane.ISSUING, words, work, then, refused=lambda error: messages.say(str(error)))
        )

    def close(self) -> None:
        """Close the window."""
        self._fittings.window.close()

    def leave(self) -> None:
        """Close the window, whatever is not saved."""
        self.leaving = True
        self._fittings.window.close()

    def begin_again(self) -> None:
        """Close the window so that it opens anew; what is not saved is asked about first."""

        def leave_for_another() -> None:
            self.again = True
            self.leave()

        self.ask_to_save(leave_for_another)

    def ask_to_save(self, then: Callable[[], object]) -> None:
        """Go on with `then`, after asking in place what is to become of unsaved changes."""
        fittings = self._fittings
        if not fittings.document.modified:
            then()
            return

        question = self.tr("What you changed since the last save is not kept yet.")
        answers = {
            self.tr("Save"): lambda: fittings.filing.save(then),
            self.tr("Go on without saving"): then,
        }
        fittings.messages.ask(question, answers)


def _open(path: Path) -> None:
    """Open a file with what the system opens such files with."""
    QDesktopServices.openUrl(QUrl.fromLocalFile(str(path.resolve())))
