"""Writes down on a page which notes it is issued with (`files.replies.issued` reads it back)."""

from collections.abc import Sequence

from pikepdf import Array, Dictionary, Page

from enclosure_app.files.replies.issued import PIECE
from enclosure_app.reports.pdf.dates import pdf_date
from enclosure_app.reports.pdf.ground import Ground
from enclosure_app.reports.pdf.notes import Note
from enclosure_app.reports.pdf.text import pdf_text


def list_notes(page: Page, notes: Sequence[Note], height: float) -> None:
    """List the notes of a page, `height` mm high, in its page-piece dictionary."""
    if not notes:
        return
    ground = Ground(page, height)
    listed = Array([_entry(note, ground) for note in notes])
    kept = Dictionary(Private=Dictionary(Notes=listed))
    date = pdf_date(notes[0].when)
    if date:  # ISO 32000-1, 14.5: both tell when it was put there
        kept.LastModified = page.obj.LastModified = pdf_text(date)
    page.obj.PieceInfo = Dictionary({PIECE: kept})


def _entry(note: Note, ground: Ground) -> Dictionary:
    at = ground.point(note.box.centre)
    entry = Dictionary(NM=pdf_text(note.name), N=note.number, At=Array(at))
    if note.measured is not None:
        entry.Measured = round(note.measured, 4)
    return entry
