"""From a file to an underlay: which files can lie under a drawing, their pages, and one of these."""

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from enclosure_app.errors import EnclosureError
from enclosure_app.files.content import missed, unreadable_told
from enclosure_app.files.underlay import pdf as underlay_pdf
from enclosure_app.files.underlay.image import frames_in, megabytes, read_picture, small_image
from enclosure_app.language import say
from enclosure_app.model.edits import PageLines
from enclosure_app.model.underlay import Underlay

SUFFIXES = (".png", ".jpg", ".jpeg", ".tif", ".tiff", ".bmp", ".webp", ".gif", ".pdf")
"""How the names of files end that can lie under a drawing."""

_LARGEST = 400_000_000  # bytes of a file that is read at all


@dataclass(frozen=True, slots=True)
class UnderlayFile:
    """A file that was read whole; `pages` are what its pages are called."""

    name: str
    data: bytes
    pages: tuple[str, ...]

    @property
    def is_pdf(self) -> bool:
        """Whether it is a PDF."""
        return _is_pdf(self.data)


@dataclass(frozen=True, slots=True)
class ReadUnderlay:
    """An underlay as read, the lines and notes of its page, and what the reader has to say."""

    underlay: Underlay
    lines: PageLines
    notes: tuple[str, ...] = ()


def can_lie_under(path: Path) -> bool:
    """Whether a file is one that can lie under a drawing, by its name."""
    return path.name.lower().endswith(SUFFIXES)


def read_underlay_file(path: Path) -> UnderlayFile:
    """Read a picture or a PDF, and how many pages it has.

    Raises:
        EnclosureError: it is not there, cannot be read, or is no such file.
    """
    data = _bytes(path)
    if _is_pdf(data):
        return UnderlayFile(path.name, data, underlay_pdf.page_names(data, path.name))
    frames = frames_in(data, path.name)
    return UnderlayFile(path.name, data, tuple(str(n + 1) for n in range(frames)))


def read_underlay(
    file: UnderlayFile, page: int = 0, tell: Callable[[float], None] = lambda _: None
) -> ReadUnderlay:
    """Read one page into an underlay that can be kept with a project.

    Args:
        file: The file.
        page: Which page, from 0.
        tell: Is told from time to time what share is done; it may raise to stop.

    Raises:
        EnclosureError: the page is damaged or cannot be shown.
    """
    name = file.name
    if len(file.pages) > 1 and 0 <= page < len(file.pages):
        name = say("{file}, page {page}", file=file.name, page=file.pages[page])
    if not file.is_pdf:
        picture = read_picture(file.data, file.name, page)
        wide, high = picture.size
        underlay = Underlay(
            name,
            picture.kind,
            picture.data,
            mm_per_pixel=picture.mm_per_pixel,
            size=(float(wide), float(high)),
            paper_mm=picture.paper_mm,
        )
        return ReadUnderlay(underlay, PageLines(), picture.notes)
    read = underlay_pdf.read_page(file.data, file.name, page, tell)
    underlay = Underlay(
        name,
        read.kind,
        read.data,
        mm_per_pixel=read.paper_mm,
        page=read.page,
        size=read.size,
        paper_mm=read.paper_mm,
    )
    return ReadUnderlay(underlay, read.lines, read.notes)


def small_picture(file: UnderlayFile, page: int, most: int) -> bytes:
    """Return a small picture of a page, as PNG.

    Args:
        file: The file.
        page: Which page, from 0.
        most: How many dots along its longer side.

    Raises:
        EnclosureError: the page is damaged or cannot be shown.
    """
    if file.is_pdf:
        return underlay_pdf.small_page(file.data, file.name, page, most)
    return small_image(file.data, file.name, page, most)


def _is_pdf(data: bytes) -> bool:
    return b"%PDF-" in data[:1024]


def _bytes(path: Path) -> bytes:
    missed(path)
    with unreadable_told(path):
        size = path.stat().st_size
        if size > _LARGEST:
            raise EnclosureError(
                say(
                    "{file} has {bytes}, too much for one picture; cut out the page or part that "
                    "is needed.",
                    file=path.name,
                    bytes=megabytes(size),
                )
            )
        data = path.read_bytes()
    if not data:
        raise EnclosureError(
            say("{file}: the file is empty; scan or export it again.", file=path.name)
        )
    return data
