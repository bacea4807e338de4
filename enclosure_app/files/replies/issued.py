"""Which notes a page was issued with, so that one that somebody deleted is missed.

Each page lists them in a page-piece dictionary (ISO 32000-1, 14.5), which goes with the page when it
is taken out, put elsewhere or written anew. A page that lost its list says nothing, and nothing is
concluded from that.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from enclosure_app.files.replies.names import NoteName, named
from enclosure_app.model.place import Point

if TYPE_CHECKING:
    from pikepdf import Object, Page

PIECE = "/EnclosureCheck"
"""The name under which a page keeps what this program has to know of it."""


@dataclass(frozen=True, slots=True)
class Issued:
    """A note that a page was issued with: its name, and the number of its finding on the sheets.

    `page` counts from 1, `at` is its middle in points of the page; `measured` is what was measured
    then, in mm, None where nothing was.
    """

    name: str
    about: NoteName
    number: int
    page: int
    at: Point = (0.0, 0.0)
    measured: float | None = None


def issued_on(page: "Page", number: int) -> Iterator[Issued]:
    """Yield the notes that a page was issued with; whatever is damaged of the list is left out."""
    for entry in _listed(page.obj):
        name = str(entry.get("/NM", ""))
        about = named(name)
        if about and not about.verdict:
            measured = _number(entry.get("/Measured"))
            counted = int(_number(entry.get("/N")) or 0)
            yield Issued(name, about, counted, number, _point(entry.get("/At")), measured)


def _listed(page: "Object") -> "Iterator[Object]":
    import pikepdf  # noqa: PLC0415  loaded when a file is read, not when the program starts

    found: Any = page
    for step in ("/PieceInfo", PIECE, "/Private", "/Notes"):
        if not isinstance(found, pikepdf.Dictionary):
            return
        found = found.get(step)
    if isinstance(found, pikepdf.Array):
        yield from (entry for entry in found if isinstance(entry, pikepdf.Dictionary))


def _point(value: Any) -> Point:  # noqa: ANN401  whatever stands in the file
    try:
        x, y = (float(part) for part in value)
    except (TypeError, ValueError):
        return (0.0, 0.0)
    return x, y


def _number(value: Any) -> float | None:  # noqa: ANN401  whatever stands in the file
    try:
        return float(value)
    except (TypeError, ValueError):
        return None
