"""What is read aloud: a set is read with other libraries than the one it was written with."""

import re
from pathlib import Path
from typing import Any

import pypdf
import pytest

from enclosure_app.drawing.marks import Label, tagged
from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.drawing.tags import Role, Tag, cell
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.reports.pdf.document import write_document
from enclosure_app.reports.pdf.outline import About
from enclosure_app.reports.pdf.pages import PaintedPage
from enclosure_app.reports.pdf.report import write_sheets
from tests.drawing import eave
from tests.reports.rendering import complaints

pytestmark = pytest.mark.usefixtures("qapp")

FINDINGS = eave.result().findings
DONE = Decision(eave.SHORT.key, State.MENDED, "Ida", "2026-03-02T10:15:00+02:00", "Taped.")
GONE = Decision("gap:gone", State.ACCEPTED, "Ida", remark="So be it.", about="An old gap.")


@pytest.fixture(scope="module")
def reader(qapp: object, tmp_path_factory: pytest.TempPathFactory) -> pypdf.PdfReader:
    """A set of two sections with a cover; one of them goes on on a second sheet."""
    path = tmp_path_factory.mktemp("issued") / "set.pdf"
    decisions = {eave.SHORT.key: DONE, "gap:gone": GONE}
    many = eave.crowded(30)
    write_sheets(
        path, (eave.drawing(eave.result(decisions=decisions), many),), SheetJob(cover=True)
    )
    assert complaints(path) == ""
    return pypdf.PdfReader(path)


def kids(element: Any) -> list[Any]:  # noqa: ANN401  pypdf's own values
    found = element.get("/K", [])
    listed = found if isinstance(found, list) else [found]
    return [each.get_object() for each in listed]


def all_of(element: Any, role: str) -> list[Any]:  # noqa: ANN401
    """The elements of a role below one, in reading order."""
    found = []
    for each in kids(element):
        if isinstance(each, dict) and "/S" in each:
            found += [each] if each["/S"] == role else []
            found += all_of(each, role)
    return found


def parts(reader: pypdf.PdfReader) -> list[Any]:
    return kids(reader.trailer["/Root"]["/StructTreeRoot"]["/K"])


def spoken(reader: pypdf.PdfReader, page: int) -> dict[int, str]:
    """The text of each numbered run of a page, by what its letters stand for in their fonts."""
    texts: dict[int, str] = {}
    open_runs: list[int | None] = []

    def before(operator: bytes, operands: Any, *_: object) -> None:  # noqa: ANN401
        if operator in (b"BDC", b"BMC"):
            told = operands[1] if len(operands) > 1 and isinstance(operands[1], dict) else {}
            open_runs.append(told.get("/MCID"))
        elif operator == b"EMC":
            open_runs.pop()

    def text(words: str, *_: object) -> None:
        number = next((each for each in reversed(open_runs) if each is not None), None)
        if number is not None:
            texts[number] = texts.get(number, "") + words

    reader.pages[page].extract_text(visitor_operand_before=before, visitor_text=text)
    return texts


def test_the_document_says_that_it_is_tagged_and_in_which_language(
    reader: pypdf.PdfReader,
) -> None:
    root = reader.trailer["/Root"]
    assert root["/MarkInfo"]["/Marked"] is True or root["/MarkInfo"]["/Marked"].value is True
    assert root["/Lang"] == "en"
    assert [part["/S"] for part in parts(reader)] == ["/Sect"] * len(reader.pages)


def test_every_page_is_marked_from_end_to_end_and_leads_back_into_the_tree(
    reader: pypdf.PdfReader,
) -> None:
    """ISO 32000-1, 14.7.4.4: each number on a page is that of the element that names it."""
    numbers = reader.trailer["/Root"]["/StructTreeRoot"]["/ParentTree"]["/Nums"]
    parents = dict(zip(numbers[::2], numbers[1::2], strict=True))
    for page in reader.pages:
        content = page.get_contents().get_data().decode("latin-1")
        runs = [int(each) for each in re.findall(r"/MCID (\d+)", content)]
        assert runs == list(range(len(runs)))
        elements = parents[page["/StructParents"]].get_object()
        assert len(elements) == len(runs)
        for number, element in enumerate(elements):
            assert number in element.get_object()["/K"]
            assert element.get_object()["/Pg"].get_object() == page.get_object()
        outside, depth = "", 0
        for line in content.splitlines():
            begun = line.endswith((" BDC", " BMC"))
            depth += begun
            outside += "" if depth or line == "EMC" else line
            depth -= line == "EMC"
        assert depth == 0
        assert outside.strip() == ""


def test_headings_lead_through_the_pages(reader: pypdf.PdfReader) -> None:
    for number, part in enumerate(parts(reader)):
        assert next(each["/S"] for each in kids(part)) == "/H1"
        (heading,) = all_of(part, "/H1")
        told = spoken(reader, number)[heading["/K"][0]]
        assert told.strip() == (
            "Marked-up sections of the enclosure" if number == 0 else eave.section().name
        )


def test_tables_have_rows_of_equal_length_with_their_heads(reader: pypdf.PdfReader) -> None:
    for part in parts(reader):
        for table in all_of(part, "/Table"):
            rows = all_of(table, "/TR")
            assert len({len(kids(row)) for row in rows}) == 1
            for row in rows:
                assert {each["/S"] for each in kids(row)} <= {"/TH", "/TD"}
                assert any(each["/S"] == "/TH" for each in kids(row)) or row is rows[-1]


def test_a_finding_is_a_row_with_all_that_is_said_of_it(reader: pypdf.PdfReader) -> None:
    part, told = parts(reader)[1], spoken(reader, 1)
    table = all_of(part, "/Table")[0]
    _, *rows = all_of(table, "/TR")

    def words(element: Any) -> str:  # noqa: ANN401
        return " ".join("".join(told[number] for number in element.get("/K", [])).split())

    for number, (row, finding) in enumerate(zip(rows, FINDINGS, strict=False), 1):
        head, what, measured, _ = kids(row)
        assert (words(head), head["/A"]["/Scope"]) == (str(number), "/Row")
        assert finding.message in words(what)
        assert finding.advice in words(what)
        assert ("Mended by Ida, 2026-03-02: Taped." in words(what)) is (
            finding.key == eave.SHORT.key
        )
        assert measured["/S"] == "/TD"
    assert "No longer found: An old gap." in words(kids(rows[-1])[1])
    assert len(rows) == len(FINDINGS) + 1


def test_a_figure_is_told_in_words(reader: pypdf.PdfReader) -> None:
    drawing, *ribbons = all_of(parts(reader)[1], "/Figure")
    name = eave.section().name
    assert drawing["/Alt"].startswith(
        f"Drawing of the section “{name}” at 1:20: 4 faults, 1 doubt"
    )
    assert [each["/Alt"] for each in ribbons[:2]] == [
        "The water layer laid out straight: continuous.",
        "The air layer laid out straight: broken.",
    ]


def test_notes_and_links_are_told_where_they_lie(reader: pypdf.PdfReader) -> None:
    """Each by itself; the states and windows of notes go with their notes."""
    numbers = reader.trailer["/Root"]["/StructTreeRoot"]["/ParentTree"]["/Nums"]
    parents = dict(zip(numbers[::2], numbers[1::2], strict=True))
    links, notes = all_of(parts(reader)[0], "/Link"), all_of(parts(reader)[1], "/Annot")
    assert (len(links), len(notes)) == (2, len(FINDINGS))
    for element in (*links, *notes):
        annotation = element["/K"]["/Obj"].get_object()
        assert annotation["/Contents"]
        assert parents[annotation["/StructParent"]].get_object() == element
    assert all(page["/Tabs"] == "/S" for page in reader.pages)


def test_a_cell_that_is_empty_is_there_all_the_same(tmp_path: Path) -> None:
    marks = [
        *tagged(cell("t", "", 1, scope="Column"), [Label("head", (10, 40), 3, "black")]),
        *tagged(cell("t", "a", 0, scope="Row"), [Label("first", (10, 30), 3, "black")]),
        *tagged(cell("t", "a", 1), [Label("one", (50, 30), 3, "black")]),
        *tagged(cell("t", "b", 0, scope="Row"), [Label("second", (10, 20), 3, "black")]),
        *tagged(Tag(Role.WORDS, "end"), [Label("end", (10, 10), 3, "black")]),
    ]
    write_document(tmp_path / "t.pdf", [PaintedPage(100, 50, tuple(marks))], About("t"))
    (part,) = parts(pypdf.PdfReader(tmp_path / "t.pdf"))
    assert [each["/S"] for each in kids(part)] == ["/Table", "/P"]
    rows = [[(each["/S"], "/K" in each) for each in kids(row)] for row in all_of(part, "/TR")]
    assert rows == [
        [("/TD", False), ("/TH", True)], [("/TH", True), ("/TD", True)],
        [("/TH", True), ("/TD", False)],
    ]  # fmt: skip


def test_pages_of_which_nothing_is_told_are_not_said_to_be_tagged(tmp_path: Path) -> None:
    plain = PaintedPage(100, 50, (Label("plain", (10, 10), 3, "black"),))
    write_document(tmp_path / "plain.pdf", [plain], About("plain"))
    root = pypdf.PdfReader(tmp_path / "plain.pdf").trailer["/Root"]
    assert "/StructTreeRoot" not in root
    assert "/MarkInfo" not in root
