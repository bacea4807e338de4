"""From a file on the disk to a picture under the drawing that is to scale, kept and opened again."""

from io import BytesIO
from pathlib import Path

import pytest
from PIL import Image
from PySide6.QtCore import QMimeData, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from enclosure_app.files.project.file import load_project, save_project
from enclosure_app.files.underlay.pdfium import rendered
from enclosure_app.model import edits
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Line
from enclosure_app.model.section import Section
from enclosure_app.model.underlay import Underlay
from enclosure_app.progress import Progress
from enclosure_app.resources import sample
from enclosure_app.window.filing.printing import write_pdf
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.underlay.underlaying import beside_what_is_drawn, paper_units, scale_step
from tests.made_pdf import made_pdf

WALL = "1 w 100 100 m 100 500 l S BT /F1 9 Tf 120 300 Td (housewrap) Tj ET"


@pytest.fixture
def pdf(tmp_path: Path) -> Path:
    path = tmp_path / "wall.pdf"
    path.write_bytes(made_pdf(WALL))
    return path


def png(folder: Path, *, dpi: int = 300) -> Path:
    path = folder / "scan.png"
    held = BytesIO()
    Image.new("L", (900, 600), 220).save(held, "PNG", dpi=(dpi, dpi))
    path.write_bytes(held.getvalue())
    return path


def drop(window: MainWindow, *paths: Path) -> bool:
    """Drop files on the window; say whether it took them."""
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path)) for path in paths])
    copy, left, none = (
        Qt.DropAction.CopyAction,
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
    )
    enter = QDragEnterEvent(QPointF(200, 200).toPoint(), copy, data, left, none)
    QApplication.sendEvent(window, enter)
    if enter.isAccepted():
        QApplication.sendEvent(window, QDropEvent(QPointF(200, 200), copy, data, left, none))
    return enter.isAccepted()


def wait_for(window: MainWindow, qtbot: QtBot, count: int = 1) -> None:
    qtbot.waitUntil(lambda: len(window.document.project.underlays) == count, timeout=5000)
    window.checking.check_now()


def test_a_page_dropped_on_an_empty_window_begins_a_section(
    window: MainWindow, qtbot: QtBot, pdf: Path
) -> None:
    assert drop(window, pdf)
    wait_for(window, qtbot)
    (section,) = window.document.project.sections
    (under,) = window.document.project.underlays
    assert (section.name, under.section, under.kind) == ("wall", "wall", "pdf")
    assert section.frame == under.outline
    assert [stroke.handle for stroke in section.strokes] == ["page-1:1"]
    assert [text.text for text in section.texts] == ["housewrap"]
    assert window.views.steps.words.text().startswith("The picture is not to scale.")
    assert window.views.steps.button.text() == "Set the scale"
    assert window.windowTitle().startswith("wall")
    window.do("undo")
    assert window.document.project.underlays == ()
    window.do("redo")
    assert len(window.document.project.underlays) == 1


def test_the_step_that_is_offered_brings_it_to_scale_and_it_is_traced_and_kept(
    window: MainWindow,
    hand,  # noqa: ANN001
    qtbot: QtBot,
    pdf: Path,
    tmp_path: Path,
) -> None:
    """The whole way: drop, two clicks, a length, trace a line of the page, save, open again."""
    drop(window, pdf)
    wait_for(window, qtbot)
    qtbot.mouseClick(window.views.steps.button, Qt.MouseButton.LeftButton)
    assert window.toolbox.name == "scale"
    for end in window.document.project.sections[0].strokes[0].points:
        hand.click(end)
    hand.keys("8'")
    hand.press(Qt.Key.Key_Return)
    low, high = window.document.project.sections[0].strokes[0].points
    assert high[1] - low[1] == pytest.approx(2438.4)

    window.lines.choose("self-adhered-sheet")
    window.do("tool_trace")
    hand.click(low)
    hand.click(high)
    (piece,) = window.document.project.sections[0].pieces
    assert piece.shape == Line((pytest.approx(low), pytest.approx(high)))
    window.checking.check_now()
    assert "to scale" not in window.views.steps.words.text()

    kept = tmp_path / "wall.enclosure.json"
    save_project(window.document.project, kept)
    again = load_project(kept)
    assert again.underlays == window.document.project.underlays
    assert again.sections[0].strokes == window.document.project.sections[0].strokes
    assert kept.stat().st_size < 60_000  # a page of a kilobyte takes no more than it needs


def test_the_sheet_shows_it_under_the_drawing(
    sheet: MainWindow, qtbot: QtBot, tmp_path: Path
) -> None:
    """Written as PDF, rendered by PDFium: pale where the picture lies, white beside it."""
    project = edits.add_piece(
        sheet.document.project, 0, sheet.place.product, Line(((100.0, 1900.0), (1900.0, 1900.0)))
    )
    held = BytesIO()
    Image.new("L", (1000, 1000), 0).save(held, "PNG")
    name = project.sections[0].name
    under = Underlay("a.png", "png", held.getvalue(), size=(1000.0, 1000.0), section=name)
    sheet.document.apply("", edits.add_underlay(project, under))
    sheet.checking.check_now()
    results = tuple(sheet.checking.results)
    shown, hidden = tmp_path / "shown.pdf", tmp_path / "hidden.pdf"
    write_pdf(shown, (sheet.document.project, results), Progress())
    without_it = edits.show_underlay(sheet.document.project, 0, shown=False)
    write_pdf(hidden, (without_it, results), Progress())
    with_it, without = (rendered(path.read_bytes(), 0, 1.0)[0] for path in (shown, hidden))
    differs = (with_it[:, :, 0].astype(int) - without[:, :, 0]) < -90
    rows, columns = differs.any(axis=1).nonzero()[0], differs.any(axis=0).nonzero()[0]
    wide, high = columns[-1] - columns[0] + 1, rows[-1] - rows[0] + 1
    assert wide == pytest.approx(high, abs=2)  # a square of 1 m, half as wide as the frame
    assert differs.sum() > 0.9 * wide * high


def test_what_was_drawn_while_it_was_read_is_kept(
    sheet: MainWindow, qtbot: QtBot, pdf: Path
) -> None:
    sheet.underlaying.open([pdf])
    line = Line(((100.0, 100.0), (900.0, 100.0)))
    project = edits.add_piece(sheet.document.project, 0, sheet.place.product, line)
    sheet.document.apply("", project)
    wait_for(sheet, qtbot)
    (section,) = sheet.document.project.sections
    assert [piece.shape for piece in section.pieces] == [line]
    assert len(section.strokes) == 1


def test_of_several_pages_one_is_asked_for_in_place(
    window: MainWindow, qtbot: QtBot, tmp_path: Path
) -> None:
    path = tmp_path / "set.pdf"
    path.write_bytes(made_pdf("", WALL))
    window.underlaying.open([path])
    chooser = window.views.which_page
    qtbot.waitUntil(lambda: not chooser.isHidden(), timeout=5000)
    chooser.pages.setCurrentRow(1)
    qtbot.keyClick(chooser.pages, Qt.Key.Key_Return)
    wait_for(window, qtbot)
    assert window.document.project.underlays[0].name == "set.pdf, page 2"
    assert window.document.project.sections[0].name == "set"
    assert len(window.document.project.sections[0].strokes) == 1


def test_a_scan_goes_under_what_is_drawn(sheet: MainWindow, qtbot: QtBot, tmp_path: Path) -> None:
    project = edits.add_piece(
        sheet.document.project, 0, sheet.place.product, Line(((100.0, 100.0), (900.0, 100.0)))
    )
    sheet.document.apply("", project)
    frame = project.sections[0].frame
    assert drop(sheet, png(tmp_path))
    wait_for(sheet, qtbot)
    assert sheet.document.project.sections[0].frame == frame
    (under,) = sheet.document.project.underlays
    assert under.at == (0.0, 0.0)
    assert under.mm_per_pixel == pytest.approx(25.4 / 300, rel=1e-3)
    assert sheet.document.undo_stack.undoText() == "Put scan.png under the drawing"


def test_several_files_come_one_after_the_other(
    sheet: MainWindow, qtbot: QtBot, pdf: Path, tmp_path: Path
) -> None:
    assert drop(sheet, pdf, png(tmp_path))
    wait_for(sheet, qtbot, 2)
    assert [each.name for each in sheet.document.project.underlays] == ["wall.pdf", "scan.png"]


def test_a_picture_that_comes_with_a_drawing_goes_under_it(
    window: MainWindow, qtbot: QtBot, tmp_path: Path
) -> None:
    window.open_files([png(tmp_path), sample("eave-flush.dxf")])
    wait_for(window, qtbot)
    assert window.document.project.source.endswith("eave-flush.dxf")
    assert window.document.project.sections[0].pieces
    assert window.document.project.underlays[0].name == "scan.png"
    window.do("undo")
    assert window.document.project.underlays == ()


def test_a_damaged_file_is_said_and_the_next_one_comes(
    sheet: MainWindow, qtbot: QtBot, pdf: Path, tmp_path: Path
) -> None:
    broken = tmp_path / "broken.png"
    broken.write_bytes(b"nothing of a picture")
    sheet.underlaying.open([broken, pdf])
    wait_for(sheet, qtbot)
    assert sheet.messages.words.text().startswith("broken.png: this is no picture that can be")
    assert sheet.document.project.underlays[0].name == "wall.pdf"


def test_what_is_neither_drawing_nor_picture_is_not_taken(
    window: MainWindow, tmp_path: Path
) -> None:
    path = tmp_path / "letter.odt"
    path.write_bytes(b"")
    assert not drop(window, path)


def test_what_was_made_smaller_is_said(
    sheet: MainWindow, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("enclosure_app.files.underlay.image.LONGEST", 300)
    sheet.underlaying.open([png(tmp_path)])
    wait_for(sheet, qtbot)
    assert "it is kept with 300 × 200 dots" in sheet.messages.words.text()


def test_asking_for_a_file_puts_it_under(
    sheet: MainWindow, qtbot: QtBot, pdf: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(
        "enclosure_app.window.underlay.underlaying.QFileDialog.getOpenFileName",
        lambda *_: (str(pdf), ""),
    )
    sheet.do("put_underlay")
    wait_for(sheet, qtbot)
    assert sheet.document.project.underlays[0].name == "wall.pdf"


@pytest.mark.parametrize(
    ("size", "units"),
    [
        ((792.0, 612.0), Units.IN),  # ANSI A, across
        ((1224.0, 792.0), Units.IN),  # ANSI B
        ((2592.0, 1728.0), Units.IN),  # Arch D
        ((842.0, 595.0), Units.MM),  # ISO A4
        ((1191.0, 842.0), Units.MM),  # ISO A3
    ],
)
def test_paper_in_inches_means_a_drawing_in_feet_and_inches(
    size: tuple[float, float], units: Units
) -> None:
    """Sizes of ANSI/ASME Y14.1 and ISO 216, as usual tables have them."""
    page = Underlay("a.pdf", "pdf", b"", size=size, paper_mm=25.4 / 72)
    assert paper_units(page, Units.MM) is units
    unknown = Underlay("a.png", "png", b"", size=size)
    assert paper_units(unknown, Units.CM) is Units.CM


def test_it_is_laid_into_the_corner_of_the_frame() -> None:
    frame = ((100.0, 50.0), (900.0, 50.0), (900.0, 700.0))
    laid = beside_what_is_drawn(Underlay("a", "png", b""), Section("Eave", frame, (), {}))
    assert laid.at == (100.0, 50.0)


def test_the_scale_is_offered_only_while_nothing_is_drawn(sheet: MainWindow) -> None:
    project = sheet.document.project
    section = project.sections[0]
    assert scale_step(project, section) is None
    name = section.name
    project = edits.add_underlay(project, Underlay("a", "png", b"", size=(9, 9), section=name))
    step = scale_step(project, project.sections[0])
    assert step is not None
    assert step.action == "tool_scale"
    drawn = edits.add_piece(project, 0, sheet.place.product, Line(((0.0, 0.0), (9.0, 0.0))))
    assert scale_step(drawn, drawn.sections[0]) is None
    hidden = edits.show_underlay(project, 0, shown=False)
    assert scale_step(hidden, hidden.sections[0]) is None
