"""Notes are read from whatever a reader made of the file; damage in one stops none of the others."""

from pathlib import Path

import pypdf
import pytest
from pypdf.generic import (
    ArrayObject,
    ByteStringObject,
    NameObject,
    NullObject,
    NumberObject,
    TextStringObject,
)

from enclosure_app.errors import EnclosureError
from enclosure_app.files.replies.comments import read_written
from tests.files.pdf_reviewer import Reviewer


@pytest.fixture
def reviewer(tmp_path: Path) -> Reviewer:
    blank = pypdf.PdfWriter()
    blank.add_blank_page(400, 300)
    blank.add_blank_page(400, 300)
    blank.write(tmp_path / "blank.pdf")
    return Reviewer(tmp_path / "blank.pdf")


def test_a_note_comes_with_all_that_it_says(reviewer: Reviewer, tmp_path: Path) -> None:
    first = reviewer.add(0, "Text", "Zoë", "one\r\ntwo\rthree")
    reviewer.reply(first, "Ида", "ответ", when="D:20260302")
    note, reply = read_written(reviewer.saved(tmp_path / "notes.pdf")).comments
    assert (note.page, note.kind, note.author) == (1, "Text", "Zoë")
    assert note.contents == "one\ntwo\nthree"
    assert note.when == "2026-12-01T09:30:00+01:00"
    assert note.at == (20.0, 20.0)
    assert note.answers is None
    assert (reply.author, reply.contents, reply.when) == ("Ида", "ответ", "2026-03-02T00:00:00")
    assert reply.answers == note.identity
    assert reply.order > note.order


def test_what_is_grouped_is_no_reply_and_links_are_no_notes(
    reviewer: Reviewer, tmp_path: Path
) -> None:
    first = reviewer.add(1, "Square", "Per", "box")
    reviewer.add(1, "Text", "Per", "label", IRT=first, RT=NameObject("/Group"))
    reviewer.add(1, "Link", "Per", "")
    reviewer.add(1, "Popup", "Per", "")
    found = read_written(reviewer.saved(tmp_path / "notes.pdf")).comments
    assert [(each.page, each.contents, each.answers) for each in found] == [
        (2, "box", None), (2, "label", None)
    ]  # fmt: skip


def test_rich_text_is_read_where_there_is_no_plain_one(reviewer: Reviewer, tmp_path: Path) -> None:
    rich = TextStringObject("<body><p>Seal &amp; <b>tape</b></p><p>it</p></body>")
    reviewer.add(0, "FreeText", "Per", "", RC=rich)
    (note,) = read_written(reviewer.saved(tmp_path / "notes.pdf")).comments
    assert note.contents == "Seal & tape\nit"


def test_damage_in_one_note_stops_no_other(reviewer: Reviewer, tmp_path: Path) -> None:
    reviewer.add(0, "Text", "Per", "kept")
    reviewer.add(
        0, "Text", "Per", "", Contents=ByteStringObject(b"\xef\xbb\xbfhalf \xff"),
        M=TextStringObject("some time in spring"), Rect=ArrayObject([NumberObject(3)]),
        IRT=NullObject(), T=NumberObject(4),
    )  # fmt: skip
    reviewer.writer.pages[0]["/Annots"].append(NullObject())
    reviewer.writer.pages[0]["/Annots"].append(NumberObject(9))
    reviewer.writer.pages[1][NameObject("/Annots")] = NumberObject(9)
    kept, damaged = read_written(reviewer.saved(tmp_path / "notes.pdf")).comments
    assert kept.contents == "kept"
    assert damaged.contents.startswith("half ")
    assert (damaged.when, damaged.at, damaged.author, damaged.answers) == (
        "",
        (0.0, 0.0),
        "",
        None,
    )


def test_what_cannot_be_read_is_one_sentence(reviewer: Reviewer, tmp_path: Path) -> None:
    (tmp_path / "text.pdf").write_text("this is no PDF", encoding="utf-8")
    with pytest.raises(EnclosureError, match=r"text\.pdf is not a PDF that can be read"):
        read_written(tmp_path / "text.pdf")
    with pytest.raises(EnclosureError, match=r"missing\.pdf cannot be read \(.*choose another"):
        read_written(tmp_path / "missing.pdf")
    reviewer.writer.encrypt("secret", algorithm="RC4-128")
    with pytest.raises(EnclosureError, match=r"locked\.pdf is locked with a password"):
        read_written(reviewer.saved(tmp_path / "locked.pdf"))


def test_a_file_cut_short_gives_what_is_left_or_a_sentence(
    reviewer: Reviewer, tmp_path: Path
) -> None:
    reviewer.add(0, "Text", "Per", "kept")
    whole = reviewer.saved(tmp_path / "notes.pdf").read_bytes()
    for share in range(1, 20):
        cut = tmp_path / "cut.pdf"
        cut.write_bytes(whole[: len(whole) * share // 20])
        try:
            found = [comment.contents for comment in read_written(cut).comments]
        except EnclosureError:
            continue
        assert found in ([], ["kept"])
