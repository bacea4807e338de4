"""What reviewers answered in a PDF comes back to its findings; what is not certain says so."""

import subprocess
from pathlib import Path

import pypdf
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from pypdf.generic import ArrayObject, FloatObject, NameObject, TextStringObject

from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.errors import EnclosureError
from enclosure_app.files.replies.names import VERDICTS
from enclosure_app.files.replies.proposal import Proposal
from enclosure_app.files.replies.replies import read_replies
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.reports.pdf.report import write_sheets
from tests.drawing import eave
from tests.files.pdf_reviewer import Reviewer

pytestmark = pytest.mark.usefixtures("qapp")

GAP, SHORT, LID = eave.GAP.key, eave.SHORT.key, eave.UNSEALED.key
NAME = eave.section().name
DONE = Decision(GAP, State.MENDED, "Ida", "2026-03-02T10:15:00+02:00", "Taped.", NAME)


@pytest.fixture(scope="module")
def sheet(qapp: object, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The marked-up sheet of the boathouse, with one verdict on it."""
    path = tmp_path_factory.mktemp("issued") / "sheet.pdf"
    result = eave.result(decisions={GAP: DONE})
    job = SheetJob(who="M. Ferreira", date="2026-11-25")
    write_sheets(path, (eave.drawing(result),), job)
    return path


@pytest.fixture
def reviewer(sheet: Path) -> Reviewer:
    return Reviewer(sheet)


def read(reviewer: Reviewer, tmp_path: Path) -> tuple[Proposal, ...]:
    return read_replies(reviewer.saved(tmp_path / "back.pdf"))


def test_a_sheet_that_nobody_answered_proposes_nothing(sheet: Path) -> None:
    assert read_replies(sheet) == ()


@pytest.mark.parametrize(
    ("word", "state", "sure"),
    [
        ("Accepted", State.TO_BE_MENDED, True),
        ("Completed", State.MENDED, True),
        ("Rejected", State.NO_FAULT, False),  # these two want a reason
        ("Cancelled", State.ACCEPTED, False),
    ],
)
def test_a_state_is_a_verdict(
    reviewer: Reviewer, tmp_path: Path, word: str, state: State, sure: bool
) -> None:
    reviewer.state(SHORT, "Zoë", word)
    (found,) = read(reviewer, tmp_path)
    assert (found.key, found.state, found.who) == (SHORT, state, "Zoë")
    assert (found.section, found.drawing, found.page) == (NAME, "boathouse.dxf", 1)
    assert found.when == "2026-12-01T09:30:00+01:00"
    assert found.remark == ""
    assert found.sure is sure
    assert ("gives no reason" in found.doubt) is not sure
    assert found.note.startswith(eave.SHORT.message)


def test_a_reply_is_the_reason_of_a_state(reviewer: Reviewer, tmp_path: Path) -> None:
    reviewer.state(SHORT, "Zoë", "Rejected")
    reviewer.reply(SHORT, "Zoë", "Measured on site:\r110 mm – да.")
    (found,) = read(reviewer, tmp_path)
    assert found.state is State.NO_FAULT
    assert found.remark == "Measured on site:\n110 mm – да."
    assert found.sure


def test_a_reply_alone_decides_nothing(reviewer: Reviewer, tmp_path: Path) -> None:
    reviewer.reply(SHORT, "Zoë", "Who ordered this sheet?")
    (found,) = read(reviewer, tmp_path)
    assert (found.state, found.remark, found.sure) == (None, "Who ordered this sheet?", True)


def test_a_reply_in_plain_words_decides(reviewer: Reviewer, tmp_path: Path) -> None:
    """On a telephone there are replies, but no states."""
    reviewer.reply(SHORT, "Zoë", "Not a fault: 110 mm on site")
    (found,) = read(reviewer, tmp_path)
    assert (found.state, found.remark) == (State.NO_FAULT, "110 mm on site")


def test_the_last_state_counts_and_all_words_are_kept(reviewer: Reviewer, tmp_path: Path) -> None:
    reviewer.state(SHORT, "Zoë", "Completed", when="D:20261203080000Z")
    reviewer.reply(SHORT, "Zoë", "second", "D:20261202120000Z")
    reviewer.state(SHORT, "Zoë", "Accepted", when="D:20261202110000Z")
    reviewer.reply(SHORT, "Zoë", "first", "D:20261202100000Z")
    (found,) = read(reviewer, tmp_path)
    assert (found.state, found.when) == (State.MENDED, "2026-12-03T08:00:00+00:00")
    assert found.remark == "first\nsecond"


def test_replies_to_replies_and_states_upon_states_are_about_the_finding(
    reviewer: Reviewer, tmp_path: Path
) -> None:
    """Some readers hang each new state on the one before."""
    first = reviewer.state(SHORT, "Zoë", "Accepted", when="D:20261201100000Z")
    reviewer.state(first, "Zoë", "Completed", when="D:20261202100000Z")
    asked = reviewer.reply(LID, "Per", "Is this sealed?")
    reviewer.reply(asked, "Zoë", "Mended. A bead runs behind it.")
    found = {(each.key, each.who): each for each in read(reviewer, tmp_path)}
    assert found[SHORT, "Zoë"].state is State.MENDED
    assert found[LID, "Per"].state is None
    assert found[LID, "Zoë"].state is State.MENDED
    assert found[LID, "Zoë"].remark == "A bead runs behind it."
    assert len(found) == 3


def test_an_answer_to_our_verdict_is_about_its_finding(reviewer: Reviewer, tmp_path: Path) -> None:
    ours = next(
        each for each in reviewer.writer.pages[0]["/Annots"] if "/State" in each.get_object()
    )
    reviewer.state(ours, "Zoë", "Accepted")
    (found,) = read(reviewer, tmp_path)
    assert (found.key, found.state) == (GAP, State.TO_BE_MENDED)


def test_two_people_who_disagree_are_told_apart(reviewer: Reviewer, tmp_path: Path) -> None:
    reviewer.state(SHORT, "Zoë", "Completed")
    reviewer.state(SHORT, "Per", "Accepted")
    reviewer.state(LID, "Per", "Accepted")
    found = {(each.key, each.who): each for each in read(reviewer, tmp_path)}
    assert found[SHORT, "Zoë"].doubt == "Per decided otherwise."
    assert found[SHORT, "Per"].doubt == "Zoë decided otherwise."
    assert found[LID, "Per"].sure


def test_a_state_that_is_no_verdict_is_not_taken_for_one(
    reviewer: Reviewer, tmp_path: Path
) -> None:
    reviewer.state(SHORT, "Zoë", "Marked", model="Marked")
    reviewer.state(LID, "Zoë", "Unmarked", model="Marked")
    reviewer.state(GAP, "Zoë", "Deferred")
    found = {each.key: each for each in read(reviewer, tmp_path)}
    assert set(found) == {SHORT, GAP}
    assert all(each.state is None and not each.sure for each in found.values())
    assert found[SHORT].doubt == "It was set to “Marked”, which is no verdict."


def test_words_written_into_our_note_are_found_and_looked_at(
    reviewer: Reviewer, tmp_path: Path
) -> None:
    note = reviewer.note(SHORT)
    note[NameObject("/Contents")] = TextStringObject(note["/Contents"] + "\rMended: cut longer")
    (found,) = read(reviewer, tmp_path)
    assert (found.key, found.state, found.remark) == (SHORT, State.MENDED, "cut longer")
    assert "does not tell by whom" in found.doubt


def test_changed_words_of_our_note_are_kept_whole(reviewer: Reviewer, tmp_path: Path) -> None:
    note = reviewer.note(SHORT)
    changed = note["/Contents"].replace("only 60 mm", "90 mm")
    note[NameObject("/Contents")] = TextStringObject(changed)
    (found,) = read(reviewer, tmp_path)
    assert found.state is None
    assert found.remark == changed
    assert found.doubt == "The note's own words were changed."


def test_a_note_that_was_moved_is_still_about_its_finding(
    reviewer: Reviewer, tmp_path: Path
) -> None:
    far = ArrayObject(FloatObject(x) for x in (900, 700, 930, 730))
    reviewer.note(SHORT)[NameObject("/Rect")] = far
    assert read(reviewer, tmp_path) == ()
    reviewer.state(SHORT, "Zoë", "Completed")
    (found,) = read(reviewer, tmp_path)
    assert (found.key, found.sure) == (SHORT, True)


def test_a_reviewers_own_note_is_not_lost_and_not_guessed(
    reviewer: Reviewer, tmp_path: Path
) -> None:
    reviewer.add(0, "FreeText", "Per", "No flashing here at all")
    beside = ArrayObject(FloatObject(float(x) + 2) for x in reviewer.note(LID)["/Rect"])
    near = reviewer.add(0, "Text", "Per", "This one too", Rect=beside)
    reviewer.reply(near, "Zoë", "Agreed")
    reviewer.add(0, "Ink", "Zoë", "")
    found = read(reviewer, tmp_path)
    assert {(each.key, each.who, each.remark) for each in found} == {
        ("", "Per", "No flashing here at all"),
        ("", "Zoë", ""),
        (LID, "Per", "This one too"),
        (LID, "Zoë", "Agreed"),
    }
    assert not any(each.sure or each.state for each in found)
    assert {each.doubt for each in found if each.key} == {
        "This is a note of its own that stands near a finding, and answers none."
    }
    assert {each.note for each in found if not each.key} == {""}  # its words are told once
    (ink,) = (each for each in found if not each.remark)
    assert "no words (Ink)" in ink.doubt


def test_the_same_finding_in_two_sections_and_drawings_is_told_apart(
    qapp: object, tmp_path: Path
) -> None:
    """Pieces of two sections may have the same names, and so the same keys."""
    walls = [eave.result(section=eave.section(f"Wall: {n} %3A/ü")) for n in (1, 2)]
    drawings = eave.drawing(*walls), eave.drawing(*walls, file="slip.dxf")
    write_sheets(tmp_path / "set.pdf", drawings, SheetJob(cover=True))
    reviewer = Reviewer(tmp_path / "set.pdf")
    for page, who in enumerate(("Ann", "Ben", "Cem", "Dag"), 1):
        note = reviewer.writer.pages[page]["/Annots"][0]  # of the gap, which comes first
        reviewer.state(note, who, "Completed")
    found = read(reviewer, tmp_path)
    assert [(each.who, each.drawing, each.section, each.page) for each in found] == [
        ("Ann", "boathouse.dxf", walls[0].section.name, 2),
        ("Ben", "boathouse.dxf", walls[1].section.name, 3),
        ("Cem", "slip.dxf", walls[0].section.name, 4),
        ("Dag", "slip.dxf", walls[1].section.name, 5),
    ]
    assert {(each.key, each.state, each.sure) for each in found} == {(GAP, State.MENDED, True)}


@settings(max_examples=15, deadline=None, suppress_health_check=list(HealthCheck))
@given(
    st.lists(
        st.tuples(
            st.sampled_from([finding.key for finding in eave.result().findings]),
            st.sampled_from(["Ann", "Ben"]),
            st.sampled_from(["Accepted", "Rejected", "Cancelled", "Completed", ""]),
            st.booleans(),
        ),
        max_size=8,
    ),
    st.booleans(),
)
def test_nothing_that_anybody_said_is_lost_or_put_to_another_finding(
    sheet: Path,
    tmp_path: Path,
    said: list[tuple[str, str, str, bool]],
    incremental: bool,
) -> None:
    """Each remark is a word of its own; it comes back once, in its finding and its writer's name."""
    reviewer = Reviewer(sheet, incremental=incremental)
    last: dict[tuple[str, str], object] = {}
    states: dict[tuple[str, str], State] = {}
    words: dict[tuple[str, str], set[str]] = {}
    for number, (key, who, word, nested) in enumerate(said):
        target = last.get((key, who), key) if nested else key
        when = f"D:202612{number + 1:02}120000Z"
        if word:
            last[key, who] = reviewer.state(target, who, word, when=when)
            states[key, who] = VERDICTS[word]
        else:
            last[key, who] = reviewer.reply(target, who, f"word{number}", when)
            words.setdefault((key, who), set()).add(f"word{number}")
    found = read(reviewer, tmp_path)
    assert len({(each.key, each.who) for each in found}) == len(found)
    assert {(each.key, each.who): each.state for each in found if each.state} == states
    told = {(each.key, each.who): set(each.remark.split()) for each in found if each.remark}
    assert told == words


def test_an_incremental_update_is_read(sheet: Path, tmp_path: Path) -> None:
    reviewer = Reviewer(sheet, incremental=True)
    reviewer.state(SHORT, "Zoë", "Completed")
    path = reviewer.saved(tmp_path / "updated.pdf")
    assert path.read_bytes().startswith(sheet.read_bytes())
    (found,) = read_replies(path)
    assert (found.key, found.state) == (SHORT, State.MENDED)


@pytest.mark.parametrize(
    "form",
    [
        ["--object-streams=generate", "--recompress-flate"],
        ["--object-streams=disable", "--qdf"],
        ["--linearize"],
    ],
)
def test_a_file_that_was_written_otherwise_is_read_the_same(
    reviewer: Reviewer, tmp_path: Path, form: list[str]
) -> None:
    reviewer.state(SHORT, "Zoë", "Completed")
    path, other = reviewer.saved(tmp_path / "back.pdf"), tmp_path / "other.pdf"
    try:
        done = subprocess.run(["qpdf", *form, str(path), str(other)], check=False)  # noqa: S607
    except FileNotFoundError:
        pytest.skip("qpdf is not installed; .ci/system-packages asks for it")
    assert done.returncode == 0
    assert read_replies(other) == read_replies(path) != ()


def test_a_pdf_of_others_is_refused_in_one_sentence(tmp_path: Path) -> None:
    blank = pypdf.PdfWriter()
    blank.add_blank_page(200, 200)
    blank.write(tmp_path / "blank.pdf")
    other = Reviewer(tmp_path / "blank.pdf")
    other.add(0, "Text", "Per", "hello")
    with pytest.raises(EnclosureError, match=r"other\.pdf holds no notes of this program"):
        read_replies(other.saved(tmp_path / "other.pdf"))
