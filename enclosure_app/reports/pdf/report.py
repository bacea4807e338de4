"""The marked-up sheet as a PDF: vector lines, embedded fonts, text that can be searched."""

from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import TYPE_CHECKING
from uuid import uuid4

from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.drawing.sheet.sheet import Page
from enclosure_app.drawing.sheet.sheet_set import SheetSet, compose_set
from enclosure_app.drawing.theme import Theme, load_theme
from enclosure_app.errors import EnclosureError
from enclosure_app.language import say, spoken
from enclosure_app.model.report import DrawingResult
from enclosure_app.progress import part

if TYPE_CHECKING:
    from enclosure_app.reports.pdf.pages import PaintedPage

__all__ = ["COMPOSED", "SheetJob", "write_sheets"]

COMPOSED = 0.5
"""The share of making sheets that is done when they are composed."""


def write_sheets(path: Path, results: Sequence[DrawingResult], job: SheetJob) -> None:
    """Write the sheets of all sections of `results` as one PDF to `path`.

    The file is written beside `path` first and then put in its place, so that a sheet that was
    there before stays whole if this one cannot be written.

    Raises:
        EnclosureError: there is nothing to draw; paper or scale is not known or does not fit; the
            file cannot be written.
    """
    theme = load_theme()
    with part(0.0, COMPOSED):
        composed = compose_set(results, job, theme)
    try:
        fresh = _fresh(path)
    except OSError as error:
        raise _unwritable(path, error) from error
    try:
        with part(COMPOSED, 1.0):
            _paint(fresh, composed, job, theme)
        fresh.replace(path)
    except OSError as error:
        raise _unwritable(path, error) from error
    finally:
        fresh.unlink(missing_ok=True)


def _fresh(path: Path) -> Path:
    """Create an empty file beside `path`, with the rights that new files have here."""
    fresh = path.with_name(f".{path.name}.{uuid4().hex}.part")
    fresh.touch(exist_ok=False)
    return fresh


def _unwritable(path: Path, error: OSError) -> EnclosureError:
    why = error.strerror or str(error)
    return EnclosureError(
        say(
            "The sheet {path} cannot be written ({why}); choose another place.", path=path, why=why
        )
    )


def _paint(fresh: Path, composed: SheetSet, job: SheetJob, theme: Theme) -> None:
    """Write the pages, for which Qt and the PDF library are loaded only here."""
    from enclosure_app.reports.pdf.document import write_document  # noqa: PLC0415
    from enclosure_app.reports.pdf.notes import bookmarks  # noqa: PLC0415
    from enclosure_app.reports.pdf.outline import About  # noqa: PLC0415

    fronts = len(composed.covers)
    about = About(
        title=" – ".join(filter(None, (job.project, _drawings(composed.sheets)))),
        author=job.who,
        language=spoken(),
        day=job.date,
        fronts=fronts,
        bookmarks=bookmarks(composed.sheets, fronts),
    )
    write_document(fresh, list(_painted(composed, job, theme)), about)


def _drawings(pages: Sequence[Page]) -> str:
    """Return what is said of the drawings in the title: the name of one, or how many there are."""
    names = {page.titles.drawing for page in pages}
    return (
        pages[0].titles.drawing if len(names) == 1 else say("{count} drawings", count=len(names))
    )


def _where_to(sheets: Sequence[Page], number: int) -> str:
    """Return where a row of the cover leads, for whoever does not see it."""
    section = sheets[number].titles.section
    return say("Sheet {sheet}: {section}", sheet=number + 1, section=section)


def _painted(composed: SheetSet, job: SheetJob, theme: Theme) -> "Iterator[PaintedPage]":
    """Yield all pages with what is put over them: the cover's links, and the notes of findings."""
    from enclosure_app.reports.pdf.notes import PageLink, notes_on  # noqa: PLC0415
    from enclosure_app.reports.pdf.pages import PaintedPage  # noqa: PLC0415

    fronts = len(composed.covers)
    for cover, paper in zip(composed.covers, composed.painted_covers(), strict=True):
        links = tuple(
            PageLink(box, fronts + sheet, _where_to(composed.sheets, sheet))
            for box, sheet in cover.links
        )
        yield PaintedPage(paper.width, paper.height, paper.marks, links=links)
    for sheet, paper in zip(composed.sheets, composed.painted_sheets(theme), strict=True):
        notes = notes_on(sheet, job, theme)
        yield PaintedPage(paper.width, paper.height, paper.marks, notes)
