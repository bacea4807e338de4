"""What a document says of itself, read by another library than it was written with."""

from pathlib import Path

import pypdf
import pytest

from enclosure_app.drawing.placement import Box
from enclosure_app.reports.pdf.document import write_document
from enclosure_app.reports.pdf.notes import Bookmark
from enclosure_app.reports.pdf.outline import About
from enclosure_app.reports.pdf.pages import PaintedPage

pytestmark = pytest.mark.usefixtures("qapp")

TREE = (
    Bookmark("Eave", 1, None, (Bookmark("1  Gap", 1, Box(100, 100, 160, 160)),)),
    Bookmark("Стена – Τοίχος", 2),
)


def written(tmp_path: Path, about: About) -> pypdf.PdfReader:
    write_document(tmp_path / "three.pdf", [PaintedPage(420, 297, ())] * 3, about)
    return pypdf.PdfReader(tmp_path / "three.pdf")


def test_bookmarks_lead_to_their_pages_and_places(tmp_path: Path) -> None:
    reader = written(tmp_path, About("Set", bookmarks=TREE))
    eave, below, wall = reader.outline
    (gap,) = below
    assert (eave.title, gap.title, wall.title) == ("Eave", "1  Gap", "Стена – Τοίχος")
    pages = [reader.get_destination_page_number(each) for each in (eave, gap, wall)]
    assert pages == [1, 1, 2]
    assert eave["/Type"] == "/Fit"
    assert gap["/Type"] == "/FitR"
    corners = [float(gap[name]) for name in ("/Left", "/Right")]
    assert corners == pytest.approx([100 / 25.4 * 72, 160 / 25.4 * 72], abs=0.6)
    high = float(reader.pages[1].mediabox.height)
    assert [float(gap[name]) for name in ("/Bottom", "/Top")] == pytest.approx(
        [high - 197 / 25.4 * 72, high - 137 / 25.4 * 72], abs=0.01
    )
    assert reader.trailer["/Root"]["/PageMode"] == "/UseOutlines"


def test_without_bookmarks_none_are_shown(tmp_path: Path) -> None:
    root = written(tmp_path, About("Set")).trailer["/Root"]
    assert "/Outlines" not in root
    assert "/PageMode" not in root


@pytest.mark.parametrize(("fronts", "labels"), [(0, ["1", "2", "3"]), (1, ["i", "1", "2"])])
def test_sheets_are_numbered_as_in_their_title_blocks(
    tmp_path: Path, fronts: int, labels: list[str]
) -> None:
    assert list(written(tmp_path, About("Set", fronts=fronts)).page_labels) == labels


def test_title_author_language_and_day_are_set_both_ways(tmp_path: Path) -> None:
    reader = written(tmp_path, About("Haus – Traufe", "Ида", "de", "2026-03-02"))
    assert reader.metadata["/Title"] == "Haus – Traufe"
    assert reader.metadata["/Author"] == "Ида"
    assert reader.metadata["/CreationDate"] == reader.metadata["/ModDate"] == "D:20260302"
    xmp = reader.xmp_metadata
    assert xmp.dc_title == {"x-default": "Haus – Traufe"}
    assert xmp.dc_creator == ["Ида"]
    assert xmp.dc_language == ["de"]
    assert xmp.xmp_creator_tool == reader.metadata["/Creator"] == "Enclosure continuity check"
    root = reader.trailer["/Root"]
    assert root["/Lang"] == "de"
    assert root["/ViewerPreferences"]["/DisplayDocTitle"]


def test_what_nobody_knows_is_not_said(tmp_path: Path) -> None:
    told = written(tmp_path, About("Set", day="in spring")).metadata
    assert set(told) == {"/Title", "/Creator", "/Producer"}
