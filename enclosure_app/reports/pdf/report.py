"""The marked-up sheet as a PDF: vector lines, embedded fonts, text that can be searched."""

from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import TYPE_CHECKING
from uuid import uuid4

from enclosure_app.drawing.sheet.cover import Cover, compose_cover
from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.drawing.sheet.sheet import Page, compose_sheets
from enclosure_app.drawing.theme import Theme, load_theme
from enclosure_app.errors import EnclosureError
from enclosure_app.language import say, spoken
from enclosure_app.model.report import DrawingResult
from enclosure_app.progress import part

if TYPE_CHECKING:
    from enclosure_app.reports.pdf.pages import PaintedPage

__all__ = ["COMPOSED", "SheetJob", "nothing_to_draw", "write_sheets"]

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
        pages = compose_sheets(results, job, theme)
    if not pages:
        raise EnclosureError(nothing_to_draw())
    try:
        fresh = _fresh(path)
    except OSError as error:
        raise _unwritable(path, error) from error
    try:
        with part(COMPOSED, 1.0):
            _paint(fresh, pages, job, theme)
        fresh.replace(path)
    except OSError as error:
        raise _unwritable(path, error) from error
    finally:
        fresh.unlink(missing_ok=True)


def nothing_to_draw() -> str:
    """Return what is said where no section has anything to be drawn."""
    return say("There is no section to draw; map a layer of the drawing first.")


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


def _paint(fresh: Path, pages: Sequence[Page], job: SheetJob, theme: Theme) -> None:
    """Write the pages, for which Qt and the PDF library are loaded only here."""
    from enclosure_app.reports.pdf.document import write_document  # noqa: PLC0415
    from enclosure_app.reports.pdf.notes import bookmarks  # noqa: PLC0415
    from enclosure_app.reports.pdf.outline import About  # noqa: PLC0415

    covers = compose_cover(pages, job, theme) if job.cover else ()
    about = About(
        title=" – ".join(filter(None, (job.project, _drawings(pages)))),
        author=job.who,
        language=spoken(),
        day=job.date,
        fronts=len(covers),
        bookmarks=bookmarks(pages, len(covers)),
    )
    write_document(fresh, [*_painted_covers(covers), *_painted(pages, job, theme)], about)


def _drawings(pages: Sequence[Page]) -> str:
    """Return what is said of the drawings in the title: the name of one, or how many there are."""
    names = {page.titles.drawing for page in pages}
    return (
        pages[0].titles.drawing if len(names) == 1 else say("{count} drawings", count=len(names))
    )


def _painted_covers(covers: Sequence[Cover]) -> "Iterator[PaintedPage]":
    from enclosure_app.reports.pdf.notes import PageLink  # noqa: PLC0415
    from enclosure_app.reports.pdf.pages import PaintedPage  # noqa: PLC0415

    for cover in covers:
        links = tuple(PageLink(box, len(covers) + sheet) for box, sheet in cover.links)
        yield PaintedPage(cover.width, cover.height, cover.marks, links=links)


def _painted(pages: Sequence[Page], job: SheetJob, theme: Theme) -> "Iterator[PaintedPage]":
    from enclosure_app.reports.pdf.notes import notes_on  # noqa: PLC0415
    from enclosure_app.reports.pdf.pages import PaintedPage  # noqa: PLC0415

    for number, page in enumerate(pages, 1):
        marks = page.numbered(number, len(pages), theme)
        yield PaintedPage(page.width, page.height, marks, notes_on(page, job, theme))
