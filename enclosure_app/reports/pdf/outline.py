"""What a document says of itself: its bookmarks, page labels, title, author, language and date."""

from collections.abc import Sequence
from dataclasses import dataclass

from pikepdf import Array, Dictionary, Name, OutlineItem, Pdf

from enclosure_app.reports.pdf.dates import pdf_date
from enclosure_app.reports.pdf.ground import Ground
from enclosure_app.reports.pdf.notes import PROGRAM, Bookmark
from enclosure_app.reports.pdf.text import pdf_text, plain


@dataclass(frozen=True, slots=True)
class About:
    """What is said of a document: `language` as in BCP 47, `day` an ISO date, "" if not known.

    `fronts` is how many of its pages come before the sheets, which are numbered on their own.
    """

    title: str
    author: str = ""
    language: str = "en"
    day: str = ""
    fronts: int = 0
    bookmarks: tuple[Bookmark, ...] = ()


def tell_about(pdf: Pdf, about: About, heights: Sequence[float]) -> None:
    """Write all of it; `heights` are those of the pages in mm."""
    _outline(pdf, about.bookmarks, heights)
    _labels(pdf, about.fronts)
    _information(pdf, about)
    pdf.Root.Lang = pdf_text(about.language)
    pdf.Root.ViewerPreferences = Dictionary(DisplayDocTitle=True)


def _outline(pdf: Pdf, bookmarks: Sequence[Bookmark], heights: Sequence[float]) -> None:
    if not bookmarks:
        return
    with pdf.open_outline() as outline:
        outline.root.extend(_item(pdf, each, heights) for each in bookmarks)
    pdf.Root.PageMode = Name.UseOutlines


def _item(pdf: Pdf, bookmark: Bookmark, heights: Sequence[float]) -> OutlineItem:
    item = OutlineItem(plain(bookmark.title), _target(pdf, bookmark, heights[bookmark.page]))
    item.is_closed = True
    item.children.extend(_item(pdf, each, heights) for each in bookmark.below)
    return item


def _target(pdf: Pdf, bookmark: Bookmark, height: float) -> Array:
    page = pdf.pages[bookmark.page]
    if bookmark.box is None:
        return Array([page.obj, Name.Fit])
    return Array([page.obj, Name.FitR, *Ground(page, height).box(bookmark.box)])


def _labels(pdf: Pdf, fronts: int) -> None:
    """Number the sheets from 1, as their title blocks do, and what comes before them from i."""
    sheets = [fronts, Dictionary(S=Name.D)]
    front = [0, Dictionary(S=Name.r)] if fronts else []
    pdf.Root.PageLabels = Dictionary(Nums=Array([*front, *sheets]))


def _information(pdf: Pdf, about: About) -> None:
    """Say title, author and date, in XMP and in the older dictionary alike."""
    told = {"Title": about.title, "Author": about.author, "Creator": PROGRAM, "Producer": PROGRAM}
    date = pdf_date(about.day)
    if date:
        told |= {"CreationDate": date, "ModDate": date}
    pdf.docinfo = pdf.make_indirect(
        Dictionary({f"/{name}": pdf_text(text) for name, text in told.items() if text})
    )
    with pdf.open_metadata(set_pikepdf_as_editor=False, update_docinfo=False) as xmp:
        xmp["dc:title"] = plain(about.title)
        xmp["dc:language"] = {about.language}
        xmp["xmp:CreatorTool"] = PROGRAM
        xmp["pdf:Producer"] = PROGRAM
        if about.author:
            xmp["dc:creator"] = [plain(about.author)]
        if date:
            xmp["xmp:CreateDate"] = xmp["xmp:ModifyDate"] = about.day
