"""The marked-up sheet as a PDF: vector lines, embedded fonts, text that can be searched."""

from collections.abc import Sequence
from pathlib import Path
from uuid import uuid4

from enclosure_app.drawing.job import SheetJob
from enclosure_app.drawing.sheet import Page, compose_sheets
from enclosure_app.drawing.theme import Theme, load_theme
from enclosure_app.errors import EnclosureError
from enclosure_app.model.report import DrawingResult

__all__ = ["SheetJob", "write_sheets"]


def write_sheets(path: Path, results: Sequence[DrawingResult], job: SheetJob) -> None:
    """Write the sheets of all sections of `results` as one PDF to `path`.

    The file is written beside `path` first and then put in its place, so that a sheet that was
    there before stays whole if this one cannot be written.

    Raises:
        EnclosureError: there is nothing to draw; paper or scale is not known or does not fit; the
            file cannot be written.
    """
    theme = load_theme()
    pages = compose_sheets(results, job, theme)
    if not pages:
        raise EnclosureError("There is no section to draw; map a layer of the drawing first.")
    try:
        part = _part(path)
    except OSError as error:
        raise _unwritable(path, error) from error
    try:
        _paint(part, pages, job, theme)
        part.replace(path)
    except OSError as error:
        raise _unwritable(path, error) from error
    finally:
        part.unlink(missing_ok=True)


def _part(path: Path) -> Path:
    """Create an empty file beside `path`, with the rights that new files have here."""
    part = path.with_name(f".{path.name}.{uuid4().hex}.part")
    part.touch(exist_ok=False)
    return part


def _unwritable(path: Path, error: OSError) -> EnclosureError:
    why = error.strerror or str(error)
    return EnclosureError(f"The sheet {path} cannot be written ({why}); choose another place.")


def _paint(part: Path, pages: Sequence[Page], job: SheetJob, theme: Theme) -> None:
    """Paint the pages with Qt, which is loaded only here."""
    from enclosure_app.reports.pdf_pages import PaintedPage, paint_pages  # noqa: PLC0415

    painted = [
        PaintedPage(page.width, page.height, page.numbered(number, len(pages), theme))
        for number, page in enumerate(pages, 1)
    ]
    title = " – ".join(filter(None, (job.project, pages[0].titles.drawing)))
    paint_pages(part, painted, title, job.who)
