"""Writes the notes of findings as PDF annotations, and links (ISO 32000-1, 12.5).

What a finding looks like is painted on the page. Its annotation lies over it, at the very place and
of the same shape, with an appearance that shows nothing: it can be clicked, listed and answered, and
is not printed twice. A verdict is a state of the review model, a reply that readers show beside it.
"""

from collections.abc import Iterable

from pikepdf import Array, Dictionary, Name, Object, Page, Pdf

from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.section.places import RIM
from enclosure_app.model.place import Points
from enclosure_app.reports.pdf.dates import pdf_date
from enclosure_app.reports.pdf.ground import POINTS, Ground
from enclosure_app.reports.pdf.notes import Note, PageLink, StateNote
from enclosure_app.reports.pdf.text import pdf_text

_PRINT = 4
_REPLY = 2 | 4 | 8 | 16  # hidden on the page, and neither zoomed nor turned
_POPUP = (70.0, 45.0)  # mm: the window of a note that is opened
_BESIDE = 4.0  # points from a note to its window


class NoteWriter:
    """Writes notes and links to one page, `height` mm high."""

    def __init__(self, pdf: Pdf, page: Page, height: float, group: Object | None) -> None:
        self._pdf, self._page, self._group = pdf, page, group
        self._ground = Ground(page, height)
        self._listed: list[Object] = []

    def write(self, notes: Iterable[Note], links: Iterable[PageLink]) -> None:
        """Put notes and links to the page."""
        for note in notes:
            self._note(note)
        for link in links:
            self._link(link)
        if self._listed:
            self._page.obj.Annots = Array(self._listed)
        elif Name.Annots in self._page.obj:
            del self._page.obj.Annots

    def _note(self, note: Note) -> None:
        width = round(note.pen.width * POINTS, 3)
        whole = self._answerable(
            note.box,
            note.when,
            NM=pdf_text(note.name),
            T=pdf_text(note.author),
            Subj=pdf_text(note.subject),
            Contents=pdf_text(note.contents),
            F=_PRINT,
            C=_colour(note.pen.colour),
            BS=Dictionary(Type=Name.Border, W=width, S=Name.S),
            AP=Dictionary(N=self._nothing(note.box)),
            **self._shape(note),
        )
        whole.Popup = self._popup(whole, note.box)
        if note.state:
            self._state(whole, note.state, note.box)

    def _shape(self, note: Note) -> dict[str, Object]:
        """Return of which kind a note is, and its line."""
        if not note.line:
            rim = round(RIM * POINTS, 3)
            return {"Subtype": Name.Circle, "RD": Array([rim] * 4)}
        if len(note.line) == 2:
            return {"Subtype": Name.Line, "L": self._run(note.line)}
        kind = Name.Polygon if note.closed else Name.PolyLine
        return {"Subtype": kind, "Vertices": self._run(note.line)}

    def _state(self, parent: Object, state: StateNote, box: Box) -> None:
        self._answerable(
            box,
            state.when,
            NM=pdf_text(state.name),
            Subtype=Name.Text,
            IRT=parent,
            RT=Name.R,
            StateModel=pdf_text("Review"),
            State=pdf_text(state.state),
            T=pdf_text(state.who),
            Contents=pdf_text(state.contents),
            F=_REPLY,
        )

    def _answerable(self, box: Box, when: str, **said: Object | int) -> Object:
        """Add what people answer to: with its date, and switched with the findings."""
        if self._group is not None:
            said["OC"] = self._group
        if pdf_date(when):
            said["M"] = said["CreationDate"] = pdf_text(pdf_date(when))
        annotation = Dictionary(Type=Name.Annot, Rect=self._rectangle(box), P=self._page.obj)
        for name, value in said.items():
            annotation[f"/{name}"] = value
        return self._add(annotation)

    def _popup(self, parent: Object, box: Box) -> Object:
        wide, high = (side * POINTS for side in _POPUP)
        left, _, right, top = self._ground.box(box)
        x = right + _BESIDE
        x = x if x + wide <= self._ground.right else max(left - _BESIDE - wide, self._ground.left)
        y = max(top - high, self._ground.bottom)
        rectangle = Array([round(each, 3) for each in (x, y, x + wide, y + high)])
        popup = Dictionary(
            Type=Name.Annot, Subtype=Name.Popup, Rect=rectangle, Parent=parent, Open=False
        )
        if self._group is not None:
            popup.OC = self._group
        return self._add(popup)

    def _link(self, link: PageLink) -> None:
        target = self._pdf.pages[link.page].obj
        made = Dictionary(
            Type=Name.Annot,
            Subtype=Name.Link,
            Rect=self._rectangle(link.box),
            Border=Array([0, 0, 0]),
            Dest=Array([target, Name.Fit]),
            F=_PRINT,
        )
        if link.words:
            made.Contents = pdf_text(link.words)
        self._add(made)

    def _add(self, annotation: Dictionary) -> Object:
        whole = self._pdf.make_indirect(annotation)
        self._listed.append(whole)
        return whole

    def _nothing(self, box: Box) -> Object:
        """Return an appearance that shows nothing, as large as `box`."""
        size = Array([0, 0, *(round(side * POINTS, 3) for side in (box.width, box.height))])
        about = Dictionary(Type=Name.XObject, Subtype=Name.Form, BBox=size, Resources=Dictionary())
        return self._pdf.make_stream(b"", about)

    def _run(self, points: Points) -> Array:
        return Array([part for point in points for part in self._ground.point(point)])

    def _rectangle(self, box: Box) -> Array:
        return Array(self._ground.box(box))


def _colour(colour: str) -> Array:
    """Return a colour written as ``#rrggbb`` in parts of one."""
    return Array([round(int(colour[k : k + 2], 16) / 255, 4) for k in (1, 3, 5)])
