"""A set goes out, is answered, and comes back as several programs would have written it."""

import subprocess
from collections.abc import Callable
from pathlib import Path

import pikepdf
import pypdf
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from pypdf.generic import ByteStringObject, NameObject, TextStringObject

from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.errors import EnclosureError
from enclosure_app.files.replies.proposal import Proposal
from enclosure_app.files.replies.replies import read_replies
from enclosure_app.model.said.decision import State
from enclosure_app.reports.pdf.report import write_sheets
from tests.drawing import eave
from tests.files.pdf_reviewer import Reviewer

pdfium = pytest.importorskip("pypdfium2")

pytestmark = pytest.mark.usefixtures("qapp")

Told = set[tuple[str, str, str, State | None, str]]
WALLS = ("Wall 1", "Wall 2", "Wall 3")
KEYS = [finding.key for finding in eave.result().findings]
ANSWERS: Told = {
    ("Wall 1", KEYS[0], "Ann", State.MENDED, "Taped – both sides."),
    ("Wall 1", KEYS[1], "Ben", None, "Which sheet?"),
    ("Wall 2", KEYS[2], "Ann", State.TO_BE_MENDED, ""),
    ("Wall 3", KEYS[0], "Çem", State.NO_FAULT, "Es läuft dahinter weiter."),
}


@pytest.fixture(scope="module")
def issued(qapp: object, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A set of three walls, with a cover."""
    path = tmp_path_factory.mktemp("issued") / "set.pdf"
    walls = [eave.result(section=eave.section(name)) for name in WALLS]
    write_sheets(path, (eave.drawing(*walls),), SheetJob(cover=True, date="2026-11-25"))
    return path


@pytest.fixture(scope="module")
def back(issued: Path) -> Path:
    reviewer = Reviewer(issued)
    for section, key, who, state, remark in sorted(ANSWERS, key=str):
        note = _note(reviewer, section, key)
        if state:
            word = {"mended": "Completed", "to be mended": "Accepted", "not a fault": "Rejected"}
            reviewer.state(note, who, word[state.value])
        if remark:
            reviewer.reply(note, who, remark)
    return reviewer.saved(issued.with_name("back.pdf"))


def _note(reviewer: Reviewer, section: str, key: str) -> pypdf.generic.IndirectObject:
    return reviewer.writer.pages[1 + WALLS.index(section)]["/Annots"][2 * KEYS.index(key)]


def told(found: tuple[Proposal, ...]) -> Told:
    assert all(each.sure for each in found), [each.doubt for each in found]
    assert len({(each.section, each.key, each.who) for each in found}) == len(found)
    return {(each.section, each.key, each.who, each.state, each.remark) for each in found}


def of(*sections: str) -> Told:
    return {answer for answer in ANSWERS if answer[0] in sections}


def run(*command: object) -> None:
    try:
        done = subprocess.run([str(part) for part in command], check=False)
    except FileNotFoundError:
        pytest.skip(f"{command[0]} is not installed; .ci/system-packages asks for it")
    assert done.returncode == 0


def with_qpdf(*options: object) -> Callable[[Path, Path], None]:
    def rewrite(source: Path, target: Path) -> None:
        run("qpdf", *(source if each == "FILE" else each for each in options), target)

    return rewrite


def by_pdfium(source: Path, target: Path) -> None:
    pdfium.PdfDocument(source).save(target)


def pages_by_pdfium(source: Path, target: Path) -> None:
    taken = pdfium.PdfDocument.new()
    taken.import_pages(pdfium.PdfDocument(source), [3, 1])
    taken.save(target)


def page_by_poppler(source: Path, target: Path) -> None:
    run("pdfseparate", "-f", 3, "-l", 3, source, target)


def by_pypdf(source: Path, target: Path) -> None:
    taken = pypdf.PdfWriter()
    taken.append(source, pages=(1, 3))
    taken.write(target)


def beside_others(source: Path, target: Path) -> None:
    """Bound with the pages of another document, as for the minutes of a meeting."""
    blank = target.with_name("blank.pdf")
    pikepdf.new().save(blank)
    with pikepdf.open(blank, allow_overwriting_input=True) as other:
        other.add_blank_page(page_size=(500, 500))
        other.save(blank)
    run("qpdf", "--empty", "--pages", blank, "1", source, "1-z", blank, "1", "--", target)


@pytest.mark.parametrize(
    ("rewrite", "kept"),
    [
        pytest.param(with_qpdf("--linearize", "FILE"), WALLS, id="made ready for the web"),
        pytest.param(with_qpdf("--qdf", "--object-streams=disable", "FILE"), WALLS, id="unpacked"),
        pytest.param(with_qpdf("FILE", "--encrypt", "", "own", "256", "--"), WALLS, id="locked"),
        pytest.param(with_qpdf("FILE", "--rotate=+90"), WALLS, id="turned"),
        pytest.param(with_qpdf("FILE", "--pages", ".", "z-1", "--"), WALLS, id="last page first"),
        pytest.param(with_qpdf("FILE", "--pages", ".", "3", "--"), WALLS[1:2], id="one page"),
        pytest.param(
            with_qpdf("--empty", "--pages", "FILE", "4,2", "--"), WALLS[::2], id="two pages alone"
        ),
        pytest.param(
            with_qpdf("--empty", "--pages", "FILE", "1-z", "FILE", "2-3", "--"), WALLS, id="twice"
        ),
        pytest.param(beside_others, WALLS, id="bound with others"),
        pytest.param(by_pdfium, WALLS, id="saved by PDFium"),
        pytest.param(pages_by_pdfium, WALLS[::2], id="pages taken by PDFium"),
        pytest.param(page_by_poppler, WALLS[1:2], id="a page taken by poppler"),
        pytest.param(by_pypdf, WALLS[:2], id="pages taken by pypdf"),
    ],
)
def test_a_file_that_another_program_wrote_anew_says_the_same(
    back: Path, tmp_path: Path, rewrite: Callable[[Path, Path], None], kept: tuple[str, ...]
) -> None:
    """Pages that were taken out are not taken for notes that were deleted."""
    target = tmp_path / "Renamed – geprüft (2).pdf"
    rewrite(back, target)
    assert told(read_replies(target)) == of(*kept)


def test_two_reviewers_copies_bound_together_are_united(issued: Path, tmp_path: Path) -> None:
    """Also where both hold the same answer of one person: it is told once."""
    copies = []
    for who in ("Ann", "Ben"):
        reviewer = Reviewer(issued)
        reviewer.state(_note(reviewer, "Wall 1", KEYS[0]), who, "Completed")
        reviewer.reply(_note(reviewer, "Wall 2", KEYS[1]), "Çem", "Said to both.")
        copies.append(reviewer.saved(tmp_path / f"{who}.pdf"))
    run("pdfunite", *copies, tmp_path / "united.pdf")
    assert told(read_replies(tmp_path / "united.pdf")) == {
        ("Wall 1", KEYS[0], "Ann", State.MENDED, ""),
        ("Wall 1", KEYS[0], "Ben", State.MENDED, ""),
        ("Wall 2", KEYS[1], "Çem", None, "Said to both."),
    }


def test_notes_that_were_painted_into_the_page_are_missed_not_passed_over(
    back: Path, tmp_path: Path
) -> None:
    with_qpdf("--flatten-annotations=all", "FILE")(back, tmp_path / "flat.pdf")
    found = read_replies(tmp_path / "flat.pdf")
    assert {(each.section, each.lost) for each in found} == {(name, True) for name in WALLS}
    assert all(each.doubt.startswith("None of the notes") for each in found)


def test_a_pdf_that_was_printed_anew_is_refused(back: Path, tmp_path: Path) -> None:
    run("pdftocairo", "-pdf", back, tmp_path / "printed.pdf")
    with pytest.raises(EnclosureError, match="printing a PDF anew leaves them out"):
        read_replies(tmp_path / "printed.pdf")


def test_several_incremental_saves_are_read_to_the_last(issued: Path, tmp_path: Path) -> None:
    """Ann answers, Ben saves over it, Ann changes her mind; each save is added to the file."""
    path = issued
    for who, word, day in (("Ann", "Rejected", 1), ("Ben", "Accepted", 2), ("Ann", "Accepted", 3)):
        reviewer = Reviewer(path, incremental=True)
        note = _note(reviewer, "Wall 1", KEYS[0])
        reviewer.state(note, who, word, when=f"D:202612{day:02}100000Z")
        path = reviewer.saved(tmp_path / f"{day}.pdf")
    assert told(read_replies(path)) == {
        ("Wall 1", KEYS[0], "Ann", State.TO_BE_MENDED, ""),
        ("Wall 1", KEYS[0], "Ben", State.TO_BE_MENDED, ""),
    }


def test_the_later_of_two_states_is_told_by_the_instant_not_by_the_clock(
    issued: Path, tmp_path: Path
) -> None:
    """Half past nine in one zone is before eight in another."""
    reviewer = Reviewer(issued)
    note = _note(reviewer, "Wall 1", KEYS[0])
    reviewer.state(note, "Ann", "Completed", when="D:20261201080000-05'00'")
    reviewer.state(note, "Ann", "Accepted", when="D:20261201093000+09'00'")
    (found,) = read_replies(reviewer.saved(tmp_path / "zones.pdf"))
    assert (found.state, found.when) == (State.MENDED, "2026-12-01T08:00:00-05:00")


Form = Callable[[Reviewer, pypdf.generic.IndirectObject], object]


def _state_as_name(reviewer: Reviewer, note: pypdf.generic.IndirectObject) -> None:
    made = {"State": NameObject("/Completed"), "StateModel": NameObject("/Review")}
    reviewer.reply(note, "Ann", "", **made)


def _without_kind_of_reply(reviewer: Reviewer, note: pypdf.generic.IndirectObject) -> None:
    """RT may be left out: it is R then (ISO 32000-1, table 170)."""
    reference = reviewer.state(note, "Ann", "Completed")
    del reference.get_object()["/RT"]


def _rich(reviewer: Reviewer, note: pypdf.generic.IndirectObject) -> None:
    rich = '<?xml version="1.0"?><body xmlns="http://www.w3.org/1999/xhtml"><p>Mended: taped.</p></body>'
    reviewer.reply(note, "Ann", "", RC=TextStringObject(rich))


def _before_its_note(reviewer: Reviewer, note: pypdf.generic.IndirectObject) -> None:
    listed = reviewer.writer.pages[1]["/Annots"]
    reviewer.state(note, "Ann", "Completed")
    listed.insert(0, listed.pop())


def _on_another_page(reviewer: Reviewer, note: pypdf.generic.IndirectObject) -> None:
    reviewer.state(note, "Ann", "Completed")
    reviewer.writer.pages[3]["/Annots"].append(reviewer.writer.pages[1]["/Annots"].pop())


def _in_utf8(reviewer: Reviewer, note: pypdf.generic.IndirectObject) -> None:
    """Text strings of PDF 2.0 may be UTF-8 with a mark at their beginning."""
    text = ByteStringObject(b"\xef\xbb\xbf" + b"Mended: taped.")
    reference = reviewer.reply(note, "Ann", "")
    reference.get_object()[NameObject("/Contents")] = text


@pytest.mark.parametrize(
    ("write", "remark"),
    [
        (lambda r, note: r.state(note, "Ann", "Completed"), ""),
        (lambda r, note: r.state(note, "Ann", "Completed", model=""), ""),
        (lambda r, note: r.reply(note, "Ann", "Mended. Taped."), "Taped."),
        (lambda r, note: r.reply(note, "Ann", "MENDED – taped"), "taped"),
        (_state_as_name, ""),
        (_without_kind_of_reply, ""),
        (_rich, "taped."),
        (_in_utf8, "taped."),
        (_before_its_note, ""),
        (_on_another_page, ""),
    ],
)
def test_a_verdict_is_read_however_a_reader_wrote_it(
    issued: Path, tmp_path: Path, write: Form, remark: str
) -> None:
    reviewer = Reviewer(issued)
    write(reviewer, _note(reviewer, "Wall 1", KEYS[0]))
    found = read_replies(reviewer.saved(tmp_path / "back.pdf"))
    assert told(found) == {("Wall 1", KEYS[0], "Ann", State.MENDED, remark)}


def test_a_state_in_the_note_itself_is_looked_at_for_nobody_knows_whose_it_is(
    issued: Path, tmp_path: Path
) -> None:
    reviewer = Reviewer(issued)
    note = _note(reviewer, "Wall 1", KEYS[0]).get_object()
    note[NameObject("/State")] = TextStringObject("Completed")
    note[NameObject("/StateModel")] = TextStringObject("Review")
    (found,) = read_replies(reviewer.saved(tmp_path / "back.pdf"))
    assert (found.key, found.state, found.who) == (KEYS[0], State.MENDED, "")
    assert found.doubt == "It was set in the note itself, which does not tell by whom."


@settings(max_examples=20, deadline=None, suppress_health_check=list(HealthCheck))
@given(
    st.lists(st.integers(1, 4), min_size=1, max_size=6),
    st.sets(st.tuples(st.sampled_from(WALLS), st.sampled_from(KEYS)), max_size=5),
)
def test_whatever_pages_are_taken_only_what_was_deleted_on_them_is_missed(
    issued: Path, tmp_path: Path, taken: list[int], deleted: set[tuple[str, str]]
) -> None:
    """Pages in any order, some twice, and notes deleted on any of them."""
    with pikepdf.open(issued) as pdf:
        for section, key in deleted:
            listed = pdf.pages[1 + WALLS.index(section)].Annots
            gone = pdf.pages[1 + WALLS.index(section)].PieceInfo.EnclosureCheck.Private.Notes
            name = str(gone[KEYS.index(key)].NM)
            del listed[
                next(k for k, note in enumerate(listed) if str(note.get("/NM", "")) == name)
            ]
        with pikepdf.new() as other:
            other.pages.extend([pdf.pages[number - 1] for number in taken])
            other.save(tmp_path / "taken.pdf")
    expected = {each for each in deleted if 1 + WALLS.index(each[0]) + 1 in taken}
    if taken and set(taken) == {1}:
        with pytest.raises(EnclosureError, match="holds no notes"):
            read_replies(tmp_path / "taken.pdf")
        return
    found = read_replies(tmp_path / "taken.pdf")
    assert all(each.lost and not each.sure and each.state is None for each in found)
    assert {(each.section, each.key) for each in found} == expected
    assert len(found) == len(expected)
