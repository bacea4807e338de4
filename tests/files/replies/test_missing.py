"""A note that somebody deleted is missed, and nothing is decided from that."""

from pathlib import Path

import pytest
from pypdf.generic import ArrayObject, FloatObject, NameObject, TextStringObject

from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.errors import EnclosureError
from enclosure_app.files.replies.proposal import Proposal
from enclosure_app.files.replies.replies import read_replies
from enclosure_app.model.said.decision import State
from enclosure_app.reports.pdf.report import write_sheets
from tests.drawing import eave
from tests.files.pdf_reviewer import Reviewer

pytestmark = pytest.mark.usefixtures("qapp")

GAP, SHORT, LID = eave.GAP.key, eave.SHORT.key, eave.UNSEALED.key
NAME = eave.section().name
KEYS = [finding.key for finding in eave.result().findings]


@pytest.fixture(scope="module")
def sheet(qapp: object, tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("issued") / "sheet.pdf"
    write_sheets(path, (eave.drawing(),), SheetJob(date="2026-11-25"))
    return path


@pytest.fixture
def reviewer(sheet: Path) -> Reviewer:
    return Reviewer(sheet)


def read(reviewer: Reviewer, tmp_path: Path) -> tuple[Proposal, ...]:
    return read_replies(reviewer.saved(tmp_path / "back.pdf"))


def delete(reviewer: Reviewer, *keys: str) -> None:
    """Take notes off their page, with their windows, as readers do."""
    gone = [reviewer.reference(key) for key in keys]
    windows = [each.get_object().get("/Popup") for each in gone]
    page = reviewer.writer.pages[0]
    kept = [each for each in page["/Annots"] if each not in gone]
    kept = [
        each for each in kept if each.get_object() not in [w and w.get_object() for w in windows]
    ]
    page[NameObject("/Annots")] = ArrayObject(kept)


def test_a_deleted_note_is_told_with_the_number_of_its_finding(
    reviewer: Reviewer, tmp_path: Path
) -> None:
    delete(reviewer, SHORT)
    reviewer.state(LID, "Zoë", "Completed")
    lost, said = sorted(read(reviewer, tmp_path), key=lambda each: not each.lost)
    assert lost.doubt == (
        f"The note of finding {KEYS.index(SHORT) + 1} is no longer in the file: ask whether that "
        "was meant."
    )
    assert (lost.key, lost.section, lost.drawing) == (SHORT, NAME, "boathouse.dxf")
    assert (lost.state, lost.who, lost.remark, lost.sure, lost.page) == (None, "", "", False, 1)
    assert (said.key, said.state, said.sure) == (LID, State.MENDED, True)


def test_what_was_answered_to_a_note_that_is_gone_is_kept_and_looked_at(
    reviewer: Reviewer, tmp_path: Path
) -> None:
    """Some readers leave the replies behind; they stand where the note stood."""
    rect = ArrayObject(FloatObject(float(x)) for x in reviewer.note(SHORT)["/Rect"])
    reviewer.reply(SHORT, "Zoë", "Rejected: nonsense", Rect=rect)
    delete(reviewer, SHORT)
    found = read(reviewer, tmp_path)
    assert {(each.key, each.who, each.remark, each.lost) for each in found} == {
        (SHORT, "", "", True),
        (SHORT, "Zoë", "Rejected: nonsense", False),
    }
    assert not any(each.sure or each.state for each in found)


def test_where_all_notes_of_a_sheet_are_gone_one_sentence_says_so(
    reviewer: Reviewer, tmp_path: Path
) -> None:
    del reviewer.writer.pages[0]["/Annots"]
    (told,) = read(reviewer, tmp_path)
    assert told.doubt.startswith(f"None of the notes of findings 1 to {len(KEYS)} is in the file")
    assert (told.key, told.lost, told.section) == ("", True, NAME)


def test_a_note_that_got_another_name_is_still_known_by_its_words(
    reviewer: Reviewer, tmp_path: Path
) -> None:
    reviewer.state(SHORT, "Zoë", "Completed")
    reviewer.note(SHORT)[NameObject("/NM")] = TextStringObject("0b6c1b1e-77aa")
    (found,) = read(reviewer, tmp_path)
    assert (found.key, found.state, found.sure) == (SHORT, State.MENDED, True)


def test_of_two_notes_with_the_same_words_none_is_guessed(tmp_path: Path, sheet: Path) -> None:
    """Two findings that say the same cannot be told apart by their words."""
    twice = tuple(eave.result(section=eave.section(f"Wall {k}")) for k in (1, 2))
    write_sheets(tmp_path / "two.pdf", (eave.drawing(*twice),), SheetJob())
    reviewer = Reviewer(tmp_path / "two.pdf")
    for page in reviewer.writer.pages:
        page["/Annots"][0].get_object()[NameObject("/NM")] = TextStringObject("theirs")
    found = read(reviewer, tmp_path)
    assert {(each.key, each.section) for each in found if each.lost} == {
        (GAP, "Wall 1"), (GAP, "Wall 2")
    }  # fmt: skip


def test_a_page_without_its_list_misses_nothing(reviewer: Reviewer, tmp_path: Path) -> None:
    """Some programs leave out what they do not know."""
    delete(reviewer, SHORT)
    del reviewer.writer.pages[0]["/PieceInfo"]
    assert read(reviewer, tmp_path) == ()


def test_a_file_without_notes_and_without_lists_is_none_of_ours(
    reviewer: Reviewer, tmp_path: Path
) -> None:
    for name in ("/Annots", "/PieceInfo"):
        del reviewer.writer.pages[0][name]
    with pytest.raises(EnclosureError, match="holds no notes of this program"):
        read(reviewer, tmp_path)
