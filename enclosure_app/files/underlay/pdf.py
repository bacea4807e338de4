"""Reads a page of a PDF: the page itself, alone and no larger than needed, its lines and its notes."""

from collections.abc import Callable
from dataclasses import dataclass
from io import BytesIO
from typing import TYPE_CHECKING, Any

from enclosure_app.files.maps.guesses import mark_of
from enclosure_app.files.underlay.image import LONGEST, kept_picture, megabytes
from enclosure_app.files.underlay.marks import hidden_layers
from enclosure_app.files.underlay.paths import MOST, TooManyLinesError, objects, page_strokes
from enclosure_app.files.underlay.pdfium import POINT_MM, opened, page_of
from enclosure_app.files.underlay.texts import page_texts
from enclosure_app.language import say
from enclosure_app.model.edits import PageLines
from enclosure_app.model.section import Stroke, Text

if TYPE_CHECKING:
    from pypdfium2 import PdfDocument, PdfPage

_HEAVY = 3_000_000  # bytes of one page from which a picture of it may be kept instead
_WHOLE = 3_000_000  # bytes of a whole file that is kept where a page alone would look different
_WORTH = 0.6  # of the page's bytes that its picture may have
_DOTS = 300 / 72  # for one point, in a picture of a page
_LOOK = 0.75  # dots for one point: enough to see whether two pages look the same
_ALIKE = 0.002  # share of the dots that may differ


@dataclass(frozen=True, slots=True)
class Page:
    """A page to be kept: `kind` ``pdf``, ``png`` or ``jpeg``; `size` in points or dots.

    `page` is which page of `data` it is; `paper_mm` what a point or dot measures on paper.
    """

    data: bytes
    kind: str
    page: int
    size: tuple[float, float]
    paper_mm: float
    lines: PageLines
    notes: tuple[str, ...]


def page_names(data: bytes, name: str) -> tuple[str, ...]:
    """Return what the pages of a PDF are called: their labels, or their numbers.

    Raises:
        EnclosureError: the PDF cannot be opened.
    """
    with opened(data, name) as document:
        labels = [document.get_page_label(number) for number in range(len(document))]
    return tuple(label or str(number) for number, label in enumerate(labels, 1))


def read_page(
    data: bytes, name: str, number: int, tell: Callable[[float], None] = lambda _: None
) -> Page:
    """Return one page of a PDF with its lines and notes.

    Args:
        data: The bytes of the file.
        name: Its name, for messages.
        number: Which page, from 0.
        tell: Is told from time to time what share is done; it may raise to stop.

    Raises:
        EnclosureError: the PDF or the page cannot be shown.
    """
    with opened(data, name) as document, page_of(document, number, name) as page:
        hidden = hidden_layers(page, [handle for handle, _ in objects(page)])
        notes: list[str] = []
        try:
            strokes = page_strokes(page, hidden, tell)
        except TooManyLinesError:
            strokes = ()
            notes.append(
                say(
                    "{file}: the page holds more than {most} lines; it is laid under the drawing "
                    "as a picture, and there is nothing on it to snap to.",
                    file=name,
                    most=MOST,
                )
            )
        lines = _with_marks(strokes, page_texts(page))
        kept = _kept(document, page, number, data)
        if note := _note(kept, name, len(data), len(document)):
            notes.append(note)
        return Page(*kept, lines=lines, notes=tuple(notes))


def _with_marks(strokes: tuple[Stroke, ...], texts: tuple[Text, ...]) -> PageLines:
    """Return lines and notes, with the places whose notes say inside or outside."""
    told = [(mark_of(text.text), text.at) for text in texts]
    inside = tuple(at for side, at in told if side == "inside")
    return PageLines(strokes, texts, inside, tuple(at for side, at in told if side == "outside"))


def small_page(data: bytes, name: str, number: int, most: int) -> bytes:
    """Return a small picture of a page as PNG, `most` dots along its longer side.

    Raises:
        EnclosureError: the PDF or the page cannot be shown.
    """
    with opened(data, name) as document, page_of(document, number, name) as page:
        bitmap, held = page.render(scale=most / max(page.get_size())), BytesIO()
        bitmap.to_pil().save(held, "PNG", compress_level=1)
        bitmap.close()
        return held.getvalue()


_Kept = tuple[bytes, str, int, tuple[float, float], float]
"""Bytes, kind, which page of them, size, mm on paper of one point or dot."""


def _kept(document: "PdfDocument", page: "PdfPage", number: int, data: bytes) -> _Kept:
    """Return the page alone, the whole file, or a picture: the smallest that looks the same."""
    size = page.get_size()
    alone = _alone(document, number)
    if _looks_like(page, alone):
        best: _Kept = (alone, "pdf", 0, size, POINT_MM)
    elif len(data) <= _WHOLE:  # layers that are switched off are known to the whole file only
        best = (data, "pdf", number, size, POINT_MM)
    else:
        return _pictured(page)
    if len(best[0]) <= _HEAVY:
        return best
    picture = _pictured(page)
    return picture if len(picture[0]) <= _WORTH * len(best[0]) else best


def _alone(document: "PdfDocument", number: int) -> bytes:
    import pypdfium2  # noqa: PLC0415  only when a PDF is opened

    new, held = pypdfium2.PdfDocument.new(), BytesIO()
    try:
        new.import_pages(document, [number])
        new.save(held)
    finally:
        new.close()
    return held.getvalue()


def _looks_like(page: "PdfPage", alone: bytes) -> bool:
    with opened(alone, "PDF") as document, page_of(document, 0, "PDF") as other:
        here, there = _look(page), _look(other)
        if here.shape != there.shape:
            return False
        apart = abs(here.astype(int) - there.astype(int)) > 40
        return bool(apart.mean() <= _ALIKE * (here < 255).mean())


def _look(page: "PdfPage") -> Any:  # noqa: ANN401  an array of grey dots
    longest = max(page.get_size())
    bitmap = page.render(scale=min(_LOOK, 2000 / longest), grayscale=True)
    grey = bitmap.to_numpy().copy()
    bitmap.close()
    return grey


def _pictured(page: "PdfPage") -> _Kept:
    longest = max(page.get_size())
    dots = min(_DOTS, LONGEST / longest)
    bitmap = page.render(scale=dots)
    kept = kept_picture(bitmap.to_pil(), POINT_MM / dots)
    bitmap.close()
    wide, high = kept.size
    return (kept.data, kept.kind, 0, (float(wide), float(high)), kept.paper_mm)


def _note(kept: _Kept, name: str, weight: int, pages: int) -> str:
    """Return what was made of a file, where the page is no longer a PDF page of it."""
    size = megabytes(len(kept[0]))
    if kept[1] != "pdf":
        wide, high = kept[3]
        return say(
            "{file}: this page is heavy; it is kept as a picture of {dots} dots and {bytes}. Its "
            "lines are kept as lines.",
            file=name,
            dots=f"{wide:.0f} × {high:.0f}",
            bytes=size,
        )
    if pages > 1 and weight > 1_000_000:
        return say(
            "{file} has {bytes}; only this page is kept, with {kept_bytes}.",
            file=name,
            bytes=megabytes(weight),
            kept_bytes=size,
        )
    return ""
