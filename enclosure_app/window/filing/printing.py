"""The marked-up sheet: as a PDF, on a printer, or looked at before it is printed."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from PySide6.QtCore import QMarginsF, QRectF, Qt
from PySide6.QtGui import (
    QImage,
    QPageLayout,
    QPageSize,
    QPaintDevice,
    QPainter,
    QPicture,
)
from PySide6.QtPrintSupport import QPrinter, QPrintPreviewDialog
from PySide6.QtWidgets import QLineEdit, QWidget

from enclosure_app.drawing.marks import Mark
from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.drawing.sheet.setup import SheetSetup, usual_paper
from enclosure_app.drawing.sheet.sheet_set import Paper, compose_set
from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.project import Project, drawing_of
from enclosure_app.model.report import DrawingResult, SectionResult
from enclosure_app.model.standing.sign_offs import signed
from enclosure_app.model.standing.verdicts import with_verdicts
from enclosure_app.progress import Progress, gone_through, listening, part
from enclosure_app.reports.pdf.painter import MarkPainter
from enclosure_app.reports.pdf.report import COMPOSED, write_sheets
from enclosure_app.window.apart.reading import SheetOrder
from enclosure_app.window.canvas.underlay.layer import lying_under, without_texts_of

Found = tuple[Project, tuple[SectionResult, ...]]
"""A project, and what was found in it."""

VERY_MANY = 20_000  # lines from which a sheet is written in a process of its own
_COARSE = 200 / 25.4  # and of those that are pictures of dots
_DOTS = 300 / 25.4  # dots to the mm at which sheets are painted beforehand


def drawn(project: Project, results: tuple[SectionResult, ...]) -> DrawingResult:
    """Return what was found and decided as the sheets want it; empty sections are left out."""
    found = (with_verdicts(r, project) for r in results if r.section.pieces)
    shown = tuple(without_texts_of(lying_under(project, r.section), r) for r in found)
    return DrawingResult(drawing_of(project), shown, project.underlays)


def job_for(project: Project, setup: SheetSetup | None = None) -> SheetJob:
    """Return the order for the sheets of a project: as set up, else as is usual for its units."""
    setup = setup or SheetSetup()
    drawn_sections = [section for section in project.sections if section.pieces]
    several = len(drawn_sections) > 1
    return SheetJob(
        paper=setup.paper or usual_paper(project.units),
        scale=setup.scale or None,
        project=project.title,
        revision=setup.revision,
        who=setup.who,
        date=f"{datetime.now().astimezone():%Y-%m-%d}",
        cover=several if setup.cover is None else setup.cover,
        signed=tuple((s.name, each) for s in drawn_sections for each in signed(project, s)),
        drawn=project.revision,
    )


@dataclass(frozen=True, slots=True)
class Sheet:
    """One sheet, painted beforehand: what it takes to paint it anew, and its size in mm."""

    picture: QPicture | QImage
    width: float
    height: float


def write_pdf(
    path: Path, found: Found, progress: Progress, setup: SheetSetup | None = None
) -> None:
    """Write the sheets of a project with its results as a PDF.

    Raises:
        EnclosureError: there is nothing to draw, or the file cannot be written.
        StoppedError: it is wanted no more; a file that was there is as it was.
    """
    with listening(progress.tell):
        write_sheets(path, (drawn(*found),), job_for(found[0], setup))


def order_for(path: Path, found: Found, setup: SheetSetup | None = None) -> SheetOrder | None:
    """Return the order to write sheets elsewhere, None where they are soon written here.

    The library lays a finished page down in one go, during which nothing else goes on.
    """
    strokes = sum(len(result.section.strokes) for result in found[1])
    if strokes <= VERY_MANY:
        return None
    return SheetOrder(path, (drawn(*found),), job_for(found[0], setup))


def recorded(
    found: Found,
    progress: Progress,
    setup: SheetSetup | None = None,
    *,
    to_look_at: bool = False,
) -> tuple[Sheet, ...]:
    """Return the sheets of a project and their cover, so that painting them anew takes no time.

    To be looked at only, a very large sheet is a picture of dots: even its lines painted anew
    would take long.

    Raises:
        EnclosureError: there is nothing to draw; paper or scale does not fit.
        StoppedError: they are wanted no more.
    """
    theme = load_theme()
    with listening(progress.tell):
        with part(0.0, COMPOSED):
            composed = compose_set((drawn(*found),), job_for(found[0], setup), theme)
        told = gone_through(list(composed.papers(theme)), COMPOSED, 1.0, each=1)
        return tuple(_recorded(paper, to_look_at=to_look_at) for paper in told)


def _recorded(paper: Paper, *, to_look_at: bool) -> Sheet:
    width, height = paper.width, paper.height
    if to_look_at and len(paper.marks) > VERY_MANY:
        image = QImage(round(width * _COARSE), round(height * _COARSE), QImage.Format.Format_RGB32)
        image.fill(Qt.GlobalColor.white)
        _paint(image, paper.marks, _COARSE, height)
        return Sheet(image, width, height)
    picture = QPicture()
    _paint(picture, paper.marks, _DOTS, height)
    return Sheet(picture, width, height)


def _paint(device: QPaintDevice, marks: tuple[Mark, ...], dots: float, height: float) -> None:
    painter = QPainter(device)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    try:
        MarkPainter(painter, dots, height).paint(marks)
    finally:
        painter.end()


def print_sheets(printer: QPrinter, sheets: Sequence[Sheet]) -> None:
    """Print sheets, those that were asked for: true to scale on their own paper, else as large as fits.

    The whole paper is used, since the border of a sheet keeps clear of where printers cannot print.
    """
    printer.setFullPage(True)
    painter = QPainter()
    for number, sheet in enumerate(asked_for(printer, sheets)):
        if number == 0:
            painter.begin(printer)
        else:
            printer.newPage()
        paper = printer.pageLayout().fullRectPixels(printer.resolution())
        dots = min(paper.width() / sheet.width, paper.height() / sheet.height)
        paint_sheet(painter, sheet, dots)
    painter.end()


def asked_for(printer: QPrinter, sheets: Sequence[Sheet]) -> list[Sheet]:
    """Return the sheets that the person asked for in the printer's dialog; they count from 1."""
    if printer.printRange() is not QPrinter.PrintRange.PageRange:
        return list(sheets)
    ranges, last = printer.pageRanges(), len(sheets)
    if ranges.isEmpty():
        return list(sheets[max(printer.fromPage(), 1) - 1 : printer.toPage() or last])
    return [sheet for number, sheet in enumerate(sheets, 1) if ranges.contains(number)]


def paint_sheet(painter: QPainter, sheet: Sheet, dots: float) -> None:
    """Paint a sheet at so many dots to the mm."""
    if isinstance(sheet.picture, QImage):
        painter.drawImage(QRectF(0, 0, sheet.width * dots, sheet.height * dots), sheet.picture)
        return
    painter.save()
    # a picture makes itself as large as it was in inches, whatever the dots
    inches = sheet.picture.logicalDpiX() / painter.device().logicalDpiX()
    painter.scale(dots / _DOTS * inches, dots / _DOTS * inches)
    sheet.picture.play(painter)
    painter.restore()


def made_printer(job: SheetJob) -> QPrinter:
    """Return a printer that is set up for the paper of an order."""
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    size = QPageSize(getattr(QPageSize.PageSizeId, job.paper.title().replace(" ", "")))
    defined = size.definitionSize()
    wide = defined.width() > defined.height()  # ANSI B is: turned, it would stand upright
    turned = QPageLayout.Orientation.Portrait if wide else QPageLayout.Orientation.Landscape
    printer.setPageLayout(QPageLayout(size, turned, QMarginsF()))
    return printer


class Preview(QPrintPreviewDialog):
    """Shows sheets as they will be printed."""

    def __init__(self, parent: QWidget, job: SheetJob, sheets: Sequence[Sheet]) -> None:
        self._printer = made_printer(job)  # the dialog uses it and does not keep it alive
        super().__init__(self._printer, parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.paintRequested.connect(lambda printer: print_sheets(printer, sheets))
        for line in self.findChildren(QLineEdit):
            line.setStyleSheet("padding: 0")  # there is no room for it in that bar
