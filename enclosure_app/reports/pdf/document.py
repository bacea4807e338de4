"""Writes a PDF: pages painted by Qt, put into layers, with notes, links, bookmarks and its title."""

from collections.abc import Sequence
from io import BytesIO
from pathlib import Path

from pikepdf import ObjectStreamMode, Pdf

from enclosure_app.drawing.marks import Overlay
from enclosure_app.reports.pdf.annotations import NoteWriter
from enclosure_app.reports.pdf.issued import list_notes
from enclosure_app.reports.pdf.layers import layered
from enclosure_app.reports.pdf.outline import About, tell_about
from enclosure_app.reports.pdf.pages import PaintedPage, painted
from enclosure_app.reports.pdf.structure import tell_structure


def write_document(path: Path, pages: Sequence[PaintedPage], about: About) -> None:
    """Write `pages` as a PDF to `path`; the same pages always give the same bytes.

    Raises:
        OSError: the file cannot be written.
        StoppedError: it is wanted no more.
    """
    with path.open("ab"):  # says why, before there is anything to be lost
        pass
    painting = painted(pages)
    pdf, groups = layered(painting)
    for made, page in zip(pdf.pages, pages, strict=True):
        writer = NoteWriter(pdf, made, page.height, groups.get(Overlay.FINDINGS))
        writer.write(page.notes, page.links)
        list_notes(made, page.notes, page.height)
    tell_structure(pdf, [[run.tag for run in runs if run.tag] for runs in painting.runs])
    tell_about(pdf, about, [page.height for page in pages])
    path.write_bytes(_saved(pdf))


def _saved(pdf: Pdf) -> bytes:
    buffer = BytesIO()
    pdf.save(
        buffer,
        object_stream_mode=ObjectStreamMode.generate,
        compress_streams=True,
        deterministic_id=True,
    )
    return buffer.getvalue()
