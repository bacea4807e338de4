"""What is read of the list of notes that a page was issued with."""

import pikepdf
import pytest

from enclosure_app.files.replies.issued import PIECE, Issued, issued_on
from enclosure_app.files.replies.names import About, named, note_name

NAME = note_name(About("eave.dxf", "Eave", "gap:a+b", "r1"), "A gap.")
PDF = pikepdf.new()  # pages live as long as their document


def page(**entry: object) -> pikepdf.Page:
    made = PDF.add_blank_page(page_size=(200, 200))
    listed = pikepdf.Array([pikepdf.Dictionary({f"/{name}": v for name, v in entry.items()})])
    private = pikepdf.Dictionary(Private=pikepdf.Dictionary(Notes=listed))
    made.obj.PieceInfo = pikepdf.Dictionary({PIECE: private})
    return made


def test_a_whole_entry_is_read() -> None:
    (read,) = issued_on(page(NM=NAME, N=3, At=pikepdf.Array([10, 20.5]), Measured=60.25), 4)
    about = named(NAME)
    assert about is not None
    assert read == Issued(NAME, about, 3, 4, (10.0, 20.5), 60.25)


@pytest.mark.parametrize("at", [pikepdf.Array([1]), pikepdf.Array([]), 7, pikepdf.Name.None_])
def test_what_is_damaged_of_an_entry_is_left_out_of_it(at: object) -> None:
    (read,) = issued_on(page(NM=NAME, N=pikepdf.Name.X, At=at, Measured="much"), 1)
    assert (read.number, read.at, read.measured) == (0, (0.0, 0.0), None)


@pytest.mark.parametrize("name", ["theirs", note_name(About("a", "b", "c"), "x", verdict=True)])
def test_only_notes_of_findings_are_missed(name: str) -> None:
    assert list(issued_on(page(NM=name, N=3), 1)) == []
