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
from PySide6.QtWidgets import QWidget

from enclosure_app.drawing.marks import Mark
from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.drawing.sheet.sheet import Page, compose_sheets
from enclosure_app.drawing.theme import load_theme
from enclosure_app.errors import EnclosureError
from enclosure_app.model.project import Project, drawing_of
from enclosure_app.model.report import DrawingResult, SectionResult
from enclosure_app.model.standing.sign_offs import signed
from enclosure_app.model.standing.verdicts import with_verdicts
from enclosure_app.progress import Progress, gone_through, listening, part
from enclosure_app.reports.pdf.painter import MarkPainter
from enclosure_app.reports.pdf.report import COMPOSED, nothing_to_draw, write_sheets
from enclosure_app.window.apart.reading import SheetOrder
from enclosure_app.window.canvas.underlay.layer import lying_under, without_texts_of

VERY_MANY = 20_000  # lines from which a sheet is written in a process of its own
_COARSE = 200 / 25.4  # and of those that are pictures of dots
_DOTS = 300 / 25.4  # dots to the mm at which sheets are painted beforehand


def drawn(project: Project, results: tuple[SectionResult, ...]) -> DrawingResult:
    """Return what was found and decided as the sheets want it; empty sections are left out."""
    found = (with_verdicts(r, project) for r in results if r.section.pieces)
    shown = tuple(without_texts_of(lying_under(project, r.section), r) for r in found)
    return DrawingResult(drawing_of(project), shown, project.underlays)


def job_for(project: Project) -> SheetJob:
    """Return the order for the sheets of a project, with a cover where these are several."""
    paper = "ANSI B" if project.units.imperial else "A3"
    drawn_sections = [section for section in project.sections if section.pieces]
    return SheetJob(
        paper=paper,
        project=project.title,
        date=f"{datetime.now().astimezone():%Y-%m-%d}",
        cover=len(drawn_sections) > 1,
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
    path: Path, found: tuple[Project, tuple[SectionResult, ...]], progress: Progress
) -> None:
    """Write the sheets of a project with its results as a PDF.

    Raises:
        EnclosureError: there is nothing to draw, or the file cannot be written.
        StoppedError: it is wanted no more; a file that was there is as it was.
    """
    with listening(progress.tell):
        write_sheets(path, (drawn(*found),), job_for(found[0]))


def order_for(path: Path, found: tuple[Project, tuple[SectionResult, ...]]) -> SheetOrder | None:
    """Return the order to write sheets elsewhere, None where they are soon written here.

    The library lays a finished page down in one go, during which nothing else goes on.
    """
    strokes = sum(len(result.section.strokes) for result in found[1])
    if strokes <= VERY_MANY:
        return None
    return SheetOrder(path, (drawn(*found),), job_for(found[0]))


def recorded(
    project: Project,
    results: tuple[SectionResult, ...],
    progress: Progress,
    *,
    to_look_at: bool = False,
) -> tuple[Sheet, ...]:
    """Return the sheets of a project, so that painting them anew takes no time to speak of.

    To be looked at only, a very large sheet is a picture of dots: even its lines painted anew
    would take long.

    Raises:
        EnclosureError: there is nothing to draw.
        StoppedError: they are wanted no more.
    """
    theme = load_theme()
    with listening(progress.tell):
        with part(0.0, COMPOSED):
            pages = compose_sheets((drawn(project, results),), job_for(project), theme)
        if not pages:
            raise EnclosureError(nothing_to_draw())
        told = gone_through(pages, COMPOSED, 1.0, each=1)
        return tuple(
            _recorded(page, page.numbered(number, len(pages), theme), to_look_at=to_look_at)
            for number, page in enumerate(told, 1)
        )


def _recorded(page: Page, marks: tuple[Mark, ...], *, to_look_at: bool) -> Sheet:
    if to_look_at and len(marks) > VERY_MANY:
        image = QImage(
            round(page.width * _COARSE), round(page.height * _COARSE), QImage.Format.Format_RGB32
        )
        image.fill(Qt.GlobalColor.white)
        _paint(image, marks, _COARSE, page.height)
        return Sheet(image, page.width, page.height)
    picture = QPicture()
    _paint(picture, marks, _DOTS, page.height)
    return Sheet(picture, page.width, page.height)


def _paint(device: QPaintDevice, marks: tuple[Mark, ...], dots: float, height: float) -> None:
    painter = QPainter(device)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    try:
        MarkPainter(painter, dots, height).paint(marks)
    finally:
        painter.end()


def print_sheets(printer: QPrinter, sheets: Sequence[Sheet]) -> None:
    """Print sheets, each as large as the printer's paper takes it."""
    painter = QPainter()
    for number, sheet in enumerate(sheets):
        if number == 0:
            painter.begin(printer)
        else:
            printer.newPage()
        area = printer.pageLayout().paintRectPixels(printer.resolution())
        dots = min(area.width() / sheet.width, area.height() / sheet.height)
        paint_sheet(painter, sheet, dots)
    painter.end()


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


def made_printer(project: Project) -> QPrinter:
    """Return a printer that is set up for the sheets of a project."""
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    size = QPageSize.PageSizeId.AnsiB if project.units.imperial else QPageSize.PageSizeId.A3
    layout = QPageLayout(QPageSize(size), QPageLayout.Orientation.Landscape, QMarginsF())
    printer.setPageLayout(layout)
    return printer


class Preview(QPrintPreviewDialog):
    """Shows sheets as they will be printed."""

    def __init__(self, parent: QWidget, project: Project, sheets: Sequence[Sheet]) -> None:
        self._printer = made_printer(project)  # the dialog uses it and does not keep it alive
        super().__init__(self._printer, parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.paintRequested.connect(lambda printer: print_sheets(printer, sheets))
