"""Reads what people put to the pages of a PDF with any reader: notes, replies, states.

They come as plain values; what they mean for a finding is for `files.replies.replies` to say. Whatever is
damaged in one of them is left out of it, and never stops the others.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from html.parser import HTMLParser
from pathlib import Path
from typing import TYPE_CHECKING, Any

from enclosure_app.errors import EnclosureError
from enclosure_app.files.replies.issued import Issued, issued_on
from enclosure_app.language import say
from enclosure_app.model.place import Point

if TYPE_CHECKING:
    from pikepdf import Object, Page, Pdf

# The markup annotations of ISO 32000-1, table 169, which people can write with.
_KINDS = frozenset(
    {
        "Text", "FreeText", "Line", "Square", "Circle", "Polygon", "PolyLine", "Highlight",
        "Underline", "Squiggly", "StrikeOut", "Stamp", "Caret", "Ink", "FileAttachment",
    }
)  # fmt: skip

Identity = tuple[int, int]


@dataclass(frozen=True, slots=True)
class Comment:
    """One note, reply or state on a page of a PDF.

    `page` counts from 1, `at` is the middle of it in points of the page, `order` its place among
    all. `answers` is the identity of what it is a reply to, None where it is none. `when` is ISO
    8601, with the offset where the reader wrote one.
    """

    identity: Identity
    page: int
    order: int
    kind: str
    name: str = ""
    author: str = ""
    contents: str = ""
    when: str = ""
    model: str = ""
    state: str = ""
    answers: Identity | None = None
    at: Point = (0.0, 0.0)


@dataclass(frozen=True, slots=True)
class Written:
    """All that people wrote on the pages of a PDF, and the notes that these were issued with."""

    comments: tuple[Comment, ...]
    issued: tuple[Issued, ...] = ()


def read_written(path: Path) -> Written:
    """Return all that people wrote on the pages of a PDF, page by page.

    Raises:
        EnclosureError: it is not there, not a PDF, or locked with a password.
    """
    import pikepdf  # noqa: PLC0415  loaded when a file is read, not when the program starts

    try:
        with pikepdf.open(path) as pdf:
            return Written(tuple(_comments(pdf)), tuple(_issued(pdf)))
    except OSError as error:
        why = error.strerror or str(error)
        raise EnclosureError(
            say("{path} cannot be read ({why}); choose another file.", path=path, why=why)
        ) from error
    except pikepdf.PasswordError as error:
        raise EnclosureError(
            say("{path} is locked with a password: save it without one first.", path=path)
        ) from error
    except pikepdf.PdfError as error:
        raise EnclosureError(
            say("{path} is not a PDF that can be read: save it anew and try again.", path=path)
        ) from error


def _comments(pdf: "Pdf") -> Iterator[Comment]:
    order = 0
    for number, page in enumerate(pdf.pages, 1):
        for annotation in _annotations(page):
            order += 1
            comment = _comment(annotation, number, order)
            if comment.kind in _KINDS:
                yield comment


def _issued(pdf: "Pdf") -> Iterator[Issued]:
    for number, page in enumerate(pdf.pages, 1):
        yield from issued_on(page, number)


def _annotations(page: "Page") -> "Iterator[Object]":
    import pikepdf  # noqa: PLC0415

    listed = page.obj.get("/Annots")
    if isinstance(listed, pikepdf.Array):
        yield from (each for each in listed if isinstance(each, pikepdf.Dictionary))


def _comment(annotation: "Object", page: int, order: int) -> Comment:
    return Comment(
        identity=_identity(annotation, order),
        page=page,
        order=order,
        kind=str(annotation.get("/Subtype", "")).lstrip("/"),
        name=_text(annotation, "/NM"),
        author=_text(annotation, "/T").strip(),
        contents=_text(annotation, "/Contents") or _plain(_text(annotation, "/RC")),
        when=_when(annotation),
        model=_text(annotation, "/StateModel"),
        state=_text(annotation, "/State"),
        answers=_answered(annotation),
        at=_middle(annotation),
    )


def _identity(annotation: "Object", order: int) -> Identity:
    """Return the object's number; one that has none is only itself."""
    return annotation.objgen if annotation.is_indirect else (0, order)


def _answered(annotation: "Object") -> Identity | None:
    """Return what it is a reply to; what is only grouped with another note is no reply."""
    import pikepdf  # noqa: PLC0415

    parent = annotation.get("/IRT")
    grouped = str(annotation.get("/RT", "/R")) == "/Group"
    if isinstance(parent, pikepdf.Dictionary) and parent.is_indirect and not grouped:
        return parent.objgen
    return None


def _text(annotation: "Object", name: str) -> str:
    """Return a text with lines as Python breaks them; "" where there is none to be read."""
    import pikepdf  # noqa: PLC0415

    value: Any = annotation.get(name)
    if isinstance(value, pikepdf.Name):  # some programs write a state as a name
        return str(value).lstrip("/")
    if not isinstance(value, pikepdf.String):
        return ""
    try:
        text = str(value)
    except UnicodeDecodeError:
        text = bytes(value).decode("utf-8", "replace").lstrip("\ufeff")
    return text.replace("\r\n", "\n").replace("\r", "\n").strip()


class _Letters(HTMLParser):
    """Gathers the letters of a rich text, a line for each paragraph."""

    def __init__(self) -> None:
        super().__init__()
        self.found: list[str] = []

    def handle_data(self, data: str) -> None:
        self.found.append(data)

    def handle_endtag(self, tag: str) -> None:
        if tag == "p":
            self.found.append("\n")


def _plain(rich: str) -> str:
    letters = _Letters()
    letters.feed(rich)
    return "".join(letters.found).strip()


def _when(annotation: "Object") -> str:
    from pikepdf.models.metadata import decode_pdf_date  # noqa: PLC0415

    for name in ("/M", "/CreationDate"):
        try:
            at: datetime = decode_pdf_date(_text(annotation, name))
        except ValueError:  # ISO 32000-1 allows /M to be any text
            continue
        return at.isoformat(timespec="seconds")
    return ""


def _middle(annotation: "Object") -> Point:
    try:
        left, bottom, right, top = (float(edge) for edge in annotation.get("/Rect", ()))
    except (TypeError, ValueError):
        return (0.0, 0.0)
    return (left + right) / 2, (bottom + top) / 2
