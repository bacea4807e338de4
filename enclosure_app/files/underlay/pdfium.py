"""The one door to PDFium: opens PDF files, says in a sentence why one does not open, renders pages.

PDFium must not be called from two threads at a time, so everybody who calls it holds `PDFIUM`.
"""

from collections.abc import Iterator
from contextlib import contextmanager
from math import ceil
from threading import RLock
from typing import TYPE_CHECKING

from enclosure_app.errors import EnclosureError
from enclosure_app.language import say

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray
    from pypdfium2 import PdfDocument, PdfPage

PDFIUM = RLock()
"""Held while PDFium works."""

POINT_MM = 25.4 / 72
"""mm in one point, the unit of PDF pages (ISO 32000-1, 8.3.2.3)."""

_PASSWORD, _SECURITY = 4, 5  # PDFium's numbers of errors
_LEAST, _LARGEST = 1.0, 40_000.0  # points: sides of a page that can be shown


@contextmanager
def opened(data: bytes, name: str) -> Iterator["PdfDocument"]:
    """Open a PDF, and close it at the end.

    Args:
        data: The bytes of the file.
        name: Its name, for messages.

    Raises:
        EnclosureError: it is empty, damaged, protected by a password, or without pages.
    """
    import pypdfium2  # noqa: PLC0415  only when a PDF is opened: the window is seen sooner

    if not data:
        raise EnclosureError(
            say("{file}: the file is empty; export or scan the page again.", file=name)
        )
    with PDFIUM:
        try:
            document = pypdfium2.PdfDocument(data)
        except pypdfium2.PdfiumError as error:
            raise EnclosureError(_sentence(name, data, error.err_code)) from None
        try:
            if not len(document):
                raise EnclosureError(_sentence(name, data, 0))
            yield document
        finally:
            document.close()


@contextmanager
def page_of(document: "PdfDocument", number: int, name: str) -> Iterator["PdfPage"]:
    """Open one page, counted from 0, and close it at the end.

    Raises:
        EnclosureError: there is no such page, it is damaged, or its size cannot be shown.
    """
    import pypdfium2  # noqa: PLC0415  see `opened`

    if not 0 <= number < len(document):
        raise EnclosureError(
            say(
                "{file}: there is no page {page}; it has {pages}, choose one of them.",
                file=name,
                page=number + 1,
                pages=len(document),
            )
        )
    try:
        page = document[number]
    except pypdfium2.PdfiumError:
        raise EnclosureError(
            say(
                "{file}: page {page} is damaged and cannot be shown; export it again.",
                file=name,
                page=number + 1,
            )
        ) from None
    try:
        _check_size(page, number, name)
        yield page
    finally:
        page.close()


def _check_size(page: "PdfPage", number: int, name: str) -> None:
    wide, high = page.get_size()
    if not (_LEAST <= wide <= _LARGEST and _LEAST <= high <= _LARGEST):
        raise EnclosureError(
            say(
                "{file}: page {page} is {wide:.3g} m by {high:.3g} m, which is no size of a "
                "drawing; export it on paper of a usual size.",
                file=name,
                page=number + 1,
                wide=wide * POINT_MM / 1000,
                high=high * POINT_MM / 1000,
            )
        )


Part = tuple[float, float, float, float]
"""Left, bottom, right, top of a part of a page, in points from its lower left corner."""


def rendered(
    data: bytes, page: int, dots: float, part: Part | None = None
) -> "tuple[NDArray[np.uint8], Part]":
    """Return a page as a picture, shape (height, width, 4): blue, green, red and nothing.

    Args:
        data: The bytes of the file.
        page: Which page, from 0.
        dots: How many for one point.
        part: Only this part of the page, and what of it lies in the same dots.

    Returns:
        The picture, and exactly what part of the page it shows.

    Raises:
        EnclosureError: the file or the page cannot be shown.
    """
    with opened(data, "PDF") as document, page_of(document, page, "PDF") as shown:
        wide, high = shown.get_size()
        left, bottom, right, top = part or (0.0, 0.0, wide, high)
        cut = [int(max(each, 0.0) * dots) for each in (left, bottom, wide - right, high - top)]
        # PDFium's door rounds up what it is given: half a dot less is rounded to the dot meant
        crop = tuple(max(each - 0.5, 0.0) / dots for each in cut)
        bitmap = shown.render(scale=dots, crop=crop, prefer_bgrx=True)
        picture: NDArray[np.uint8] = bitmap.to_numpy().copy()
        bitmap.close()
        across, up = wide / ceil(wide * dots), high / ceil(high * dots)
        rows, columns = picture.shape[:2]
        left, top = cut[0] * across, high - cut[3] * up
        return picture, (left, top - rows * up, left + columns * across, top)


def _sentence(name: str, data: bytes, code: int | None) -> str:
    # an older refusal's number stays with PDFium where it gives none: look for the lock as well
    if code in (_PASSWORD, _SECURITY) and b"/Encrypt" in data:
        return say(
            "{file}: this PDF is protected by a password; save a copy without one and open that.",
            file=name,
        )
    return say(
        "{file}: this is no sound PDF, it was cut short or has no pages; export or download it "
        "again.",
        file=name,
    )
