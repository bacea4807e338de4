"""The PDF: vector lines, embedded fonts, text that can be found, and never half a file."""

import os
import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import pypdf
import pytest

from enclosure_app.drawing.sheet.job import PAPERS
from enclosure_app.errors import EnclosureError
from enclosure_app.model.drawing import Units
from enclosure_app.model.report import DrawingResult
from enclosure_app.reports.pdf.report import SheetJob, write_sheets
from tests.drawing import eave
from tests.reports.rendering import complaints

pytestmark = pytest.mark.usefixtures("qapp")

JOB = SheetJob("A3", None, "Boathouse at Lund Water", "B", "M. Ferreira", "2026-11-25")


def written(tmp_path: Path, *results: DrawingResult, **order: object) -> pypdf.PdfReader:
    path = tmp_path / "sheet.pdf"
    write_sheets(path, results or (eave.drawing(),), replace(JOB, **order))
    return pypdf.PdfReader(path)


def words(page: pypdf.PageObject) -> str:
    """The text of a page with every run of white space as one blank."""
    return " ".join(page.extract_text().split())


def fonts(reader: pypdf.PdfReader) -> dict[str, bool]:
    """Names of the fonts used, and whether each is embedded."""
    found = {}
    for page in reader.pages:
        for reference in page["/Resources"]["/Font"].values():
            font = reference.get_object()
            below = (
                font["/DescendantFonts"][0].get_object() if "/DescendantFonts" in font else font
            )
            descriptor = below["/FontDescriptor"].get_object()
            found[font["/BaseFont"]] = any(f"/FontFile{k}" in descriptor for k in ("", "2", "3"))
    return found


def test_what_was_found_can_be_searched_for(tmp_path: Path) -> None:
    text = words(written(tmp_path).pages[0])
    for finding in eave.result().findings:
        assert " ".join(finding.message.split()) in text
        assert " ".join(finding.advice.split()) in text
    for part in (
        "Boathouse at Lund Water",
        "1:20",
        "M. Ferreira",
        "2026-11-25",
        "1 of 1",
        "INSIDE",
        "(unconfirmed)",
    ):
        assert part in text


def test_rows_stand_on_the_page_that_holds_them(tmp_path: Path) -> None:
    reader = written(tmp_path, eave.drawing(eave.crowded()))
    first, second = (words(page) for page in reader.pages)
    assert "Place number 1:" in first
    assert "Place number 1:" not in second
    assert "Place number 40:" in second
    assert "Place number 40:" not in first
    assert "2 of 2" in second


def test_letters_of_other_languages_can_be_searched_for(tmp_path: Path) -> None:
    named = eave.result(section=eave.section("Стена у карниза – Τοίχος στη στέγη"))
    reader = written(tmp_path, eave.drawing(named), project="Łódź, Ærø, Çeşme", who="Ж. Яковлева")
    text = words(reader.pages[0])
    for part in ("Стена у карниза – Τοίχος στη στέγη", "Łódź, Ærø, Çeşme", "Ж. Яковлева"):
        assert part in text


def test_letters_that_no_font_here_may_have_do_not_stop_the_sheet(tmp_path: Path) -> None:
    """A script that the shipped typeface lacks is left to the system's fonts."""
    reader = written(tmp_path, project="外壁 軒先", who="فاطمة")
    assert "boathouse.dxf" in words(reader.pages[0])


def test_words_with_fi_and_fl_are_not_joined_to_one_sign(tmp_path: Path) -> None:
    assert "waffle flashing, final fixing" in words(
        written(tmp_path, project="waffle flashing, final fixing").pages[0]
    )


def test_feet_and_inches_can_be_searched_for(tmp_path: Path) -> None:
    text = words(written(tmp_path, eave.drawing(units=Units.IN), paper="ANSI B").pages[0])
    for part in ('2 3/8"', '3 15/16"', '1/2" = 1\'-0"', "feet and inches"):
        assert part in text


def test_every_font_is_embedded_and_is_the_shipped_one(tmp_path: Path) -> None:
    found = fonts(written(tmp_path))
    assert len(found) == 2
    assert all(found.values())
    assert all("RobotoCondensed" in name.replace("-", "").replace(" ", "") for name in found)


@pytest.mark.parametrize(("paper", "size"), PAPERS.items())
def test_pages_have_the_size_of_their_paper(
    tmp_path: Path, paper: str, size: tuple[float, float]
) -> None:
    box = written(tmp_path, paper=paper).pages[0].mediabox
    assert (float(box.width) * 25.4 / 72, float(box.height) * 25.4 / 72) == pytest.approx(
        size, abs=0.2
    )


def test_title_and_author_are_set(tmp_path: Path) -> None:
    about = written(tmp_path).metadata
    assert about.title == "Boathouse at Lund Water – boathouse.dxf"
    assert about.author == "M. Ferreira"


def test_the_drawing_is_lines_and_not_a_picture(tmp_path: Path) -> None:
    resources = written(tmp_path).pages[0]["/Resources"]
    assert not resources.get("/XObject", {})


def test_a_line_has_the_weight_that_the_theme_says(tmp_path: Path) -> None:
    """The border is 0.7 mm: among the widths set on the page, in the page's scale, is that one."""
    page = written(tmp_path).pages[0]
    content = page.get_contents().get_data().decode("latin-1").split()
    dots = {float(content[i - 1]) for i, word in enumerate(content) if word == "w"}
    assert any(width == pytest.approx(0.7 * 1200 / 25.4, abs=0.1) for width in dots)


def test_two_sheets_of_the_same_order_are_the_same_file(tmp_path: Path) -> None:
    for name in ("one.pdf", "other.pdf"):
        write_sheets(tmp_path / name, (eave.drawing(),), JOB)
    assert (tmp_path / "one.pdf").read_bytes() == (tmp_path / "other.pdf").read_bytes()


def test_a_sheet_is_in_order_for_qpdf_and_has_bookmarks_labels_and_a_language(
    tmp_path: Path,
) -> None:
    reader = written(tmp_path, eave.drawing(), eave.drawing(file="slip.dxf"))
    assert complaints(tmp_path / "sheet.pdf") == ""
    names = [mark.title for mark in reader.outline if not isinstance(mark, list)]
    section = eave.section().name
    assert names == [f"boathouse.dxf – {section}", f"slip.dxf – {section}"]
    assert list(reader.page_labels) == ["1", "2"]
    assert reader.trailer["/Root"]["/Lang"] == "en"


def test_a_set_begins_with_a_cover_that_leads_to_its_sheets(tmp_path: Path) -> None:
    drawings = eave.drawing(), eave.drawing(eave.crowded(60), file="slip.dxf")
    reader = written(tmp_path, *drawings, cover=True)
    assert complaints(tmp_path / "sheet.pdf") == ""
    first = words(reader.pages[0])
    for part in ("Boathouse at Lund Water", "boathouse.dxf", "slip.dxf", "not signed", "2–5"):
        assert part in first
    links = [each.get_object() for each in reader.pages[0]["/Annots"]]
    targets = [link["/Dest"][0].get_object() for link in links]
    assert targets == [reader.pages[1].get_object(), reader.pages[2].get_object()]
    assert list(reader.page_labels) == ["i", "1", "2", "3", "4", "5"]
    assert "1 of 5" in words(reader.pages[1])
    cover, wall, _, slip, below = reader.outline
    assert cover.title == "Cover"
    places = [reader.get_destination_page_number(each) for each in (cover, wall, slip)]
    assert places == [0, 1, 2]
    assert len(below) == 60
    assert reader.metadata.title == "Boathouse at Lund Water – 2 drawings"


def test_a_sheet_that_cannot_be_made_leaves_the_old_one_whole(tmp_path: Path) -> None:
    path = tmp_path / "sheet.pdf"
    path.write_bytes(b"what was here before")
    with pytest.raises(EnclosureError, match="does not fit"):
        write_sheets(path, (eave.drawing(),), replace(JOB, scale="1:1"))
    assert path.read_bytes() == b"what was here before"
    assert [p.name for p in tmp_path.iterdir()] == ["sheet.pdf"]


def test_a_sheet_can_be_read_by_whoever_may_read_new_files_here(tmp_path: Path) -> None:
    """The part file is no private temporary file whose rights would stay with the sheet."""
    path, usual = tmp_path / "sheet.pdf", tmp_path / "usual.txt"
    usual.touch()
    write_sheets(path, (eave.drawing(),), JOB)
    assert path.stat().st_mode == usual.stat().st_mode


def test_a_place_that_cannot_be_written_is_named(tmp_path: Path) -> None:
    path = tmp_path / "missing folder" / "sheet.pdf"
    with pytest.raises(
        EnclosureError, match=r"missing folder.*cannot be written.*choose another place"
    ):
        write_sheets(path, (eave.drawing(),), JOB)


def test_a_folder_is_not_overwritten(tmp_path: Path) -> None:
    with pytest.raises(EnclosureError, match="cannot be written"):
        write_sheets(tmp_path, (eave.drawing(),), JOB)
    assert tmp_path.is_dir()


def test_nothing_to_draw_is_said(tmp_path: Path) -> None:
    with pytest.raises(EnclosureError, match="no section to draw"):
        write_sheets(tmp_path / "sheet.pdf", (), JOB)


def test_a_sheet_needs_no_screen_and_qt_is_loaded_only_for_it(tmp_path: Path) -> None:
    """In a process of its own without a display; importing the module loads no Qt."""
    code = (
        "import sys\n"
        "from pathlib import Path\n"
        "from enclosure_app.reports.pdf.report import SheetJob, write_sheets\n"
        "assert not [m for m in sys.modules if m.startswith('PySide6')]\n"
        "from tests.drawing import eave\n"
        "write_sheets(Path(sys.argv[1]), (eave.drawing(),), SheetJob())\n"
    )
    hidden = {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"}
    bare = {name: value for name, value in os.environ.items() if name not in hidden}
    path = tmp_path / "sheet.pdf"
    done = subprocess.run(
        [sys.executable, "-c", code, str(path)],
        env=bare, cwd=Path(__file__).parents[3], capture_output=True, text=True, check=False,
    )  # fmt: skip
    assert (done.returncode, done.stderr) == (0, "")
    assert "boathouse.dxf" in words(pypdf.PdfReader(path).pages[0])


def test_the_rows_of_a_cover_lead_to_their_sheets_and_say_so(tmp_path: Path) -> None:
    walls = [eave.result(section=eave.section(name)) for name in ("Wall A", "Wall B")]
    write_sheets(tmp_path / "set.pdf", (eave.drawing(*walls),), SheetJob(cover=True))
    reader = pypdf.PdfReader(tmp_path / "set.pdf")
    links = [each.get_object() for each in reader.pages[0]["/Annots"]]
    assert [link["/Contents"] for link in links] == ["Sheet 1: Wall A", "Sheet 2: Wall B"]
    targets = [link["/Dest"][0].get_object() for link in links]
    assert targets == [page.get_object() for page in reader.pages[1:]]
