"""Whatever stands in a file's name or in a drawing, the PDF can hold it."""

from pathlib import Path

import pypdf
import pytest

from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.files.replies.names import named
from enclosure_app.reports.pdf.report import write_sheets
from enclosure_app.reports.pdf.text import pdf_text, plain
from tests.drawing import eave
from tests.reports.rendering import complaints


@pytest.mark.parametrize(
    ("text", "held"),
    [
        ("Wall\nΤοίχος\t–", "Wall\nΤοίχος\t–"),
        ("half \udcff", "half ?"),
        ("nothing \x00", "nothing ?"),
        ("𝔘", "𝔘"),
        ("", ""),
    ],
)
def test_letters_are_kept_and_others_replaced(text: str, held: str) -> None:
    assert plain(text) == held
    assert str(pdf_text(text)) == held


def test_a_sheet_with_damaged_names_is_written(tmp_path: Path, qapp: object) -> None:
    wall = eave.result(section=eave.section("Wall \udcff\x01"))
    drawing = eave.drawing(wall, file="damaged \udcfe.dxf")
    path = tmp_path / "sheet.pdf"
    write_sheets(path, (drawing,), SheetJob(project="\x02Mill\ud800", who="I\udcffda", cover=True))
    assert complaints(path) == ""
    reader = pypdf.PdfReader(path)
    assert reader.metadata.title.startswith("?Mill? – damaged")
    first = reader.pages[1]["/Annots"][0].get_object()
    assert first["/T"] == "I?da"
    about = named(first["/NM"])
    assert about is not None
    assert about.about[:2] == ("damaged \udcfe.dxf", "Wall \udcff\x01")
    assert about.said(first["/Contents"])
