"""Sheets as PDF, recorded for print and preview, and stopped."""

from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtGui import QImage, QPageLayout, QPageRanges, QPainter, QPicture
from PySide6.QtPrintSupport import QPrinter
from pytestqt.qtbot import QtBot

from enclosure_app.drawing.sheet.job import PAPERS, SheetJob, paper_size
from enclosure_app.drawing.sheet.setup import SheetSetup
from enclosure_app.errors import EnclosureError
from enclosure_app.files.projects import limits_of, new_project
from enclosure_app.model.drawing import Units
from enclosure_app.model.edits import sign
from enclosure_app.model.project import Project
from enclosure_app.model.report import SectionResult
from enclosure_app.model.section import Stroke
from enclosure_app.progress import Progress, StoppedError
from enclosure_app.reports.pdf.painter import MarkPainter
from enclosure_app.resources import sample
from enclosure_app.window.apart.orders import Order, read_order
from enclosure_app.window.filing import printing
from enclosure_app.window.judging import judge

pypdf = pytest.importorskip("pypdf")
pdfium = pytest.importorskip("pypdfium2")

Found = tuple[Project, tuple[SectionResult, ...]]


@pytest.fixture(scope="module")
def found() -> Found:
    order = Order((sample("ridge.dxf"),), layers=sample("layers-second-office.toml"))
    project = read_order(order)
    return project, judge(project, limits_of(project)).results


@pytest.fixture(scope="module")
def several() -> Found:
    layers = sample("layers-second-office.toml")
    project = read_order(Order((sample("four-sections.dxf"),), layers=layers))
    project = sign(project, 0, "Ida", "2026-03-02T10:00:00+01:00")
    return project, judge(project, limits_of(project)).results


def test_the_sheet_is_written_and_says_how_far_it_is(
    found: Found, qtbot: QtBot, tmp_path: Path
) -> None:
    progress, path = Progress(), tmp_path / "ridge.pdf"
    printing.write_pdf(path, found, progress)
    assert progress.share is not None
    assert progress.share >= printing.COMPOSED
    (page,) = pypdf.PdfReader(path).pages
    assert "RIDGE" in page.extract_text()


def test_a_sheet_that_is_stopped_leaves_the_one_before_as_it_was(
    found: Found, qtbot: QtBot, tmp_path: Path
) -> None:
    path = tmp_path / "ridge.pdf"
    path.write_bytes(b"the one before")
    progress = Progress()

    class Impatient(Progress):
        def tell(self, share: float) -> None:
            super().tell(share)
            if share >= printing.COMPOSED:
                self.stop()
                self.go_on()

    with pytest.raises(StoppedError):
        printing.write_pdf(path, found, Impatient())
    assert path.read_bytes() == b"the one before"
    assert [each.name for each in tmp_path.iterdir()] == ["ridge.pdf"]
    progress.stop()
    with pytest.raises(StoppedError):
        printing.recorded(found, progress)


def test_where_nothing_is_drawn_nothing_is_recorded(qtbot: QtBot) -> None:
    project = new_project(Units.MM, "empty")
    results = judge(project, limits_of(project)).results
    with pytest.raises(EnclosureError, match="no section to draw"):
        printing.recorded((project, results), Progress())


def rendered(width: float, height: float, dots: float) -> tuple[QImage, QPainter]:
    image = QImage(round(width * dots), round(height * dots), QImage.Format.Format_RGB32)
    image.fill(0xFFFFFFFF)
    image.setDotsPerMeterX(round(1000 * dots * 1.7))  # a device of other inches than the picture's
    image.setDotsPerMeterY(round(1000 * dots * 1.7))
    return image, QPainter(image)


def test_a_recorded_sheet_is_what_would_be_painted(found: Found, qtbot: QtBot) -> None:
    """Its heavy lines lie on those painted at once, whatever the device says of its inches."""
    (sheet,) = printing.recorded(found, Progress())
    composed = printing.compose_set(
        (printing.drawn(*found),), printing.job_for(found[0]), printing.load_theme()
    )
    (page,) = composed.papers(printing.load_theme())
    dots = 3.0
    image, painter = rendered(sheet.width, sheet.height, dots)
    printing.paint_sheet(painter, sheet, dots)
    painter.end()
    direct, painter = rendered(page.width, page.height, dots)
    MarkPainter(painter, dots, page.height).paint(page.marks)
    painter.end()
    assert image.size() == direct.size()
    dark = [
        (x, y)
        for x in range(0, direct.width(), 3)
        for y in range(0, direct.height(), 3)
        if direct.pixelColor(x, y).lightness() < 60
    ]
    assert len(dark) > 300
    close = [
        any(
            image.pixelColor(min(x + i, image.width() - 1), min(y + j, image.height() - 1))
            .lightness() < 140
            for i in (-1, 0, 1)
            for j in (-1, 0, 1)
        )
        for x, y in dark
    ]  # fmt: skip
    assert sum(close) > 0.97 * len(close)


def test_a_very_large_sheet_is_dots_to_look_at_and_lines_to_print(
    found: Found, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(printing, "VERY_MANY", 100)
    (seen,) = printing.recorded(found, Progress(), to_look_at=True)
    (printed,) = printing.recorded(found, Progress())
    assert isinstance(seen.picture, QImage)
    assert isinstance(printed.picture, QPicture)
    pictures = []
    for sheet in (seen, printed):
        image, painter = rendered(sheet.width, sheet.height, 1.0)
        printing.paint_sheet(painter, sheet, 1.0)
        painter.end()
        pictures.append(image)
    one, other = pictures
    dark = [(x, y) for x in range(0, one.width(), 2) for y in range(0, one.height(), 2)]
    apart = [abs(one.pixelColor(*p).lightness() - other.pixelColor(*p).lightness()) for p in dark]
    assert sum(apart) / len(apart) < 12


def test_sheets_are_printed_one_to_a_page(found: Found, qtbot: QtBot, tmp_path: Path) -> None:
    (sheet,) = printing.recorded(found, Progress())
    printer = printing.made_printer(printing.job_for(found[0]))
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "printed.pdf"))
    printing.print_sheets(printer, [sheet, sheet])
    pages = pypdf.PdfReader(tmp_path / "printed.pdf").pages
    assert len(pages) == 2
    sides = sorted(float(side) for side in pages[0].mediabox[2:])
    assert [round(side * 25.4 / 72) for side in sides] == [297, 420]


@pytest.mark.parametrize(("paper", "share"), [("A3", 1.0), ("A4", 297 / 420)])
def test_a_print_on_the_sheet_s_own_paper_is_true_to_scale(
    found: Found, paper: str, share: float, qtbot: QtBot, tmp_path: Path
) -> None:
    """The border stands 20 mm from the left edge, and is smaller only where the paper is."""
    (sheet,) = printing.recorded(found, Progress())
    printer = printing.made_printer(SheetJob(paper=paper))
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "printed.pdf"))
    printing.print_sheets(printer, [sheet])
    page = pdfium.PdfDocument(tmp_path / "printed.pdf")[0]
    picture = page.render(scale=10 * 25.4 / 72, grayscale=True).to_numpy()  # 0.1 mm
    dark = np.flatnonzero(picture[picture.shape[0] // 2] < 128)
    assert dark[0] / 10 == pytest.approx(20 * share, abs=0.5)
    assert dark[-1] / 10 == pytest.approx(410 * share, abs=0.5)


def test_only_very_large_sheets_are_written_elsewhere(found: Found, tmp_path: Path) -> None:
    path = tmp_path / "sheet.pdf"
    assert printing.order_for(path, found) is None
    (result,) = found[1]
    many = tuple(Stroke(((0.0, float(y)), (9.0, float(y)))) for y in range(printing.VERY_MANY + 1))
    large = replace(result, section=replace(result.section, strokes=many))
    order = printing.order_for(path, (found[0], (large,)))
    assert order is not None
    assert order.path == path
    assert len(order.results[0].sections[0].section.strokes) == len(many)


def test_several_sections_are_a_set_with_a_cover_that_says_who_signed(
    several: Found, qtbot: QtBot, tmp_path: Path
) -> None:
    project = several[0]
    printing.write_pdf(tmp_path / "set.pdf", several, Progress())
    cover, *sheets = pypdf.PdfReader(tmp_path / "set.pdf").pages
    assert len(sheets) == 4
    told = " ".join(cover.extract_text().split())
    assert "Ida, 2026-03-02" in told
    assert told.count("not signed") == 4  # three sections, and the sum of them
    signed = ["Ida, 2026-03-02" in sheet.extract_text() for sheet in sheets]
    assert signed == [True, False, False, False]
    assert printing.job_for(project).drawn == project.revision


@pytest.mark.parametrize("to_look_at", [True, False])
def test_print_and_preview_have_the_cover_that_the_pdf_has(
    several: Found, to_look_at: bool, qtbot: QtBot
) -> None:
    """Dot for dot the page that is composed for the PDF, before the four sheets."""
    theme = printing.load_theme()
    sheets = printing.recorded(several, Progress(), to_look_at=to_look_at)
    composed = printing.compose_set(
        (printing.drawn(*several),), printing.job_for(several[0]), theme
    )
    assert len(sheets) == 1 + 4 == len(list(composed.papers(theme)))
    bare = printing.recorded(several, Progress(), SheetSetup(cover=False))
    assert len(bare) == 4
    (cover,) = composed.painted_covers()
    pictures = []
    for paint in (
        lambda painter: printing.paint_sheet(painter, sheets[0], 2.0),
        lambda painter: MarkPainter(painter, 2.0, cover.height).paint(cover.marks),
    ):
        image, painter = rendered(cover.width, cover.height, 2.0)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint(painter)
        painter.end()
        pictures.append(image)
    one, other = pictures
    places = [(x, y) for x in range(0, one.width(), 2) for y in range(0, one.height(), 2)]
    apart = [
        abs(one.pixelColor(*p).lightness() - other.pixelColor(*p).lightness()) for p in places
    ]
    assert sum(other.pixelColor(*p).lightness() < 100 for p in places) > 200
    assert sum(apart) / len(apart) < 3


def test_only_the_pages_that_were_asked_for_are_printed(several: Found, qtbot: QtBot) -> None:
    job, sheets = printing.job_for(several[0]), printing.recorded(several, Progress())
    printer = printing.made_printer(job)
    assert printing.asked_for(printer, sheets) == list(sheets)
    printer.setPrintRange(QPrinter.PrintRange.PageRange)
    printer.setFromTo(2, 3)
    assert printing.asked_for(printer, sheets) == list(sheets[1:3])
    ranges = QPageRanges()
    ranges.addPage(1)
    ranges.addRange(4, 5)
    printer.setPageRanges(ranges)
    assert printing.asked_for(printer, sheets) == [sheets[0], sheets[3], sheets[4]]


@pytest.mark.parametrize("paper", PAPERS)
def test_a_printer_is_set_up_for_the_paper_of_the_sheets(paper: str, qtbot: QtBot) -> None:
    layout = printing.made_printer(SheetJob(paper=paper)).pageLayout()
    size = layout.fullRect(QPageLayout.Unit.Millimeter)
    assert (size.width(), size.height()) == pytest.approx(paper_size(paper), abs=0.5)


def test_one_section_has_no_cover(found: Found) -> None:
    assert not printing.job_for(found[0]).cover
