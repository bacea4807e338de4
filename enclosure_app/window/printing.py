"""The marked-up sheet: as a PDF, on a printer, or looked at before it is printed."""

from datetime import datetime
from pathlib import Path

from PySide6.QtCore import QMarginsF
from PySide6.QtGui import QPageLayout, QPageSize, QPainter
from PySide6.QtPrintSupport import QPrinter, QPrintPreviewDialog
from PySide6.QtWidgets import QWidget

from enclosure_app.drawing.job import SheetJob
from enclosure_app.drawing.sheet import compose_sheets
from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.project import Project, drawing_of
from enclosure_app.model.report import DrawingResult, SectionResult
from enclosure_app.model.verdicts import with_verdicts
from enclosure_app.reports.pdf_painter import MarkPainter
from enclosure_app.reports.pdf_report import write_sheets
from enclosure_app.window.canvas.underlay_layer import lying_under, without_texts_of


def drawn(project: Project, results: tuple[SectionResult, ...]) -> DrawingResult:
    """Return what was found and decided as the sheets want it; empty sections are left out."""
    found = (with_verdicts(r, project) for r in results if r.section.pieces)
    shown = tuple(without_texts_of(lying_under(project, r.section), r) for r in found)
    return DrawingResult(drawing_of(project), shown, project.underlays)


def job_for(project: Project) -> SheetJob:
    """Return the order for the sheets of a project."""
    paper = "ANSI B" if project.units.imperial else "A3"
    return SheetJob(
        paper=paper, project=project.title, date=f"{datetime.now().astimezone():%Y-%m-%d}"
    )


def write_pdf(path: Path, project: Project, results: tuple[SectionResult, ...]) -> None:
    """Write the sheets of a project as a PDF.

    Raises:
        EnclosureError: there is nothing to draw, or the file cannot be written.
    """
    write_sheets(path, (drawn(project, results),), job_for(project))


def print_sheets(printer: QPrinter, project: Project, results: tuple[SectionResult, ...]) -> None:
    """Print the sheets of a project, each as large as the printer's paper takes it.

    Raises:
        EnclosureError: there is nothing to draw.
    """
    theme = load_theme()
    pages = compose_sheets((drawn(project, results),), job_for(project), theme)
    painter = QPainter()
    for number, page in enumerate(pages, 1):
        if number == 1:
            painter.begin(printer)
        else:
            printer.newPage()
        area = printer.pageLayout().paintRectPixels(printer.resolution())
        dots = min(area.width() / page.width, area.height() / page.height)
        MarkPainter(painter, dots, page.height).paint(page.numbered(number, len(pages), theme))
    painter.end()


def made_printer(project: Project) -> QPrinter:
    """Return a printer that is set up for the sheets of a project."""
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    size = QPageSize.PageSizeId.AnsiB if project.units.imperial else QPageSize.PageSizeId.A3
    layout = QPageLayout(QPageSize(size), QPageLayout.Orientation.Landscape, QMarginsF())
    printer.setPageLayout(layout)
    return printer


def preview(
    parent: QWidget, project: Project, results: tuple[SectionResult, ...]
) -> QPrintPreviewDialog:
    """Return a preview of the sheets, to be shown."""
    dialog = QPrintPreviewDialog(made_printer(project), parent)
    dialog.paintRequested.connect(lambda printer: print_sheets(printer, project, results))
    return dialog
