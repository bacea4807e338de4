"""Tells what the marks of a document are, for whoever has it read aloud (ISO 32000-1, 14.7 and 14.8).

A document has a part for each page, in reading order: headings, words, tables of rows of cells,
figures with words to be read instead, and the notes and links that lie over the page.
"""

from collections.abc import Iterator, Mapping, Sequence
from itertools import groupby

from pikepdf import Array, Dictionary, Name, Object, Page, Pdf

from enclosure_app.drawing.tags import Role, Tag
from enclosure_app.reports.pdf.text import pdf_text

_CELLS = (Role.HEAD, Role.CELL)


def tell_structure(pdf: Pdf, pages: Sequence[Sequence[Tag]]) -> None:
    """Write the structure of a document.

    Args:
        pdf: The document, with the notes and links of its pages.
        pages: For each page, the tag of each run that has one, in the order of their numbers.
    """
    if not any(pages):
        return
    tree = _Tree(pdf)
    for page, tags in zip(pdf.pages, pages, strict=True):
        tree.add_page(page, tags)
    tree.write()


class _Tree:
    """The tree of what a document is made of, and the way from its pages back into it."""

    def __init__(self, pdf: Pdf) -> None:
        self._pdf = pdf
        self._root = pdf.make_indirect(Dictionary(Type=Name.StructTreeRoot))
        self._document = self._made("Document", self._root)
        self._parents: list[Object] = []

    def add_page(self, page: Page, tags: Sequence[Tag]) -> None:
        """Add the part of one page."""
        part = self._made("Sect", self._document, page)
        numbers: dict[Tag, list[int]] = {}
        for number, tag in enumerate(tags):
            numbers.setdefault(tag, []).append(number)
        made = dict(self._elements(part, page, numbers))
        page.obj.StructParents = len(self._parents)
        page.obj.Tabs = Name.S
        self._parents.append(self._pdf.make_indirect(Array([made[tag] for tag in tags])))
        for annotation in _told(page):
            self._add_annotation(part, page, annotation)

    def write(self) -> None:
        """Put the tree to its document."""
        numbers = [part for pair in enumerate(self._parents) for part in pair]
        self._root.K = self._document
        self._root.ParentTree = self._pdf.make_indirect(Dictionary(Nums=Array(numbers)))
        self._root.ParentTreeNextKey = len(self._parents)
        self._pdf.Root.StructTreeRoot = self._root
        self._pdf.Root.MarkInfo = Dictionary(Marked=True)

    def _elements(
        self, part: Object, page: Page, numbers: Mapping[Tag, list[int]]
    ) -> Iterator[tuple[Tag, Object]]:
        """Yield each tag of a page with its element; cells stand in the rows of their tables."""
        tables: set[str] = set()
        for tag in numbers:
            if tag.role not in _CELLS:
                yield tag, self._filled(tag, part, page, numbers[tag])
            elif tag.name not in tables:
                tables.add(tag.name)
                yield from self._table(tag.name, part, page, numbers)

    def _table(
        self, name: str, part: Object, page: Page, numbers: Mapping[Tag, list[int]]
    ) -> Iterator[tuple[Tag, Object]]:
        cells = [tag for tag in numbers if tag.role in _CELLS and tag.name == name]
        order = {row: k for k, row in enumerate(dict.fromkeys(tag.row for tag in cells))}
        cells.sort(key=lambda tag: (order[tag.row], tag.column))
        table, broad = self._made("Table", part, page), max(tag.column for tag in cells) + 1
        for _, those in groupby(cells, lambda tag: tag.row):
            row, there = self._made("TR", table, page), {tag.column: tag for tag in those}
            for column in range(broad):
                tag = there.get(column)
                if tag is None:
                    self._made(Role.CELL, row, page)
                else:
                    yield tag, self._filled(tag, row, page, numbers[tag])

    def _filled(self, tag: Tag, parent: Object, page: Page, numbers: list[int]) -> Object:
        """Return the element of a tag with the runs that belong to it."""
        made = self._made(tag.role, parent, page)
        made.K = Array(numbers)
        if tag.words:
            made.Alt = pdf_text(tag.words)
        if tag.scope:
            made.A = Dictionary(O=Name.Table, Scope=Name(f"/{tag.scope}"))
        return made

    def _add_annotation(self, part: Object, page: Page, annotation: Object) -> None:
        role = "Link" if annotation.Subtype == Name.Link else "Annot"
        made = self._made(role, part, page)
        made.K = Dictionary(Type=Name.OBJR, Obj=annotation, Pg=page.obj)
        annotation.StructParent = len(self._parents)
        self._parents.append(made)

    def _made(self, role: str, parent: Object, page: Page | None = None) -> Object:
        """Return a new element, which is put to its parent."""
        made = Dictionary(Type=Name.StructElem, S=Name(f"/{role}"), P=parent)
        if page is not None:
            made.Pg = page.obj
        element = self._pdf.make_indirect(made)
        if parent.get("/Type") == Name.StructElem:
            if "/K" not in parent:
                parent.K = Array()
            parent.K.append(element)
        return element


def _told(page: Page) -> Iterator[Object]:
    """Yield the links and the notes of findings on a page; their windows and states are theirs."""
    for annotation in page.obj.get("/Annots", ()):
        if annotation.Subtype != Name.Popup and "/IRT" not in annotation:
            yield annotation
