"""Plays a reviewer with another PDF program: writes replies with pypdf, never with pikepdf."""

from pathlib import Path

import pypdf
from pypdf.generic import (
    ArrayObject,
    DictionaryObject,
    FloatObject,
    IndirectObject,
    NameObject,
    NumberObject,
    TextStringObject,
)

from enclosure_app.files.replies.names import named


class Reviewer:
    """One PDF in a reader's hands; `incremental` adds to the file instead of writing it anew."""

    def __init__(self, path: Path, *, incremental: bool = False) -> None:
        self.writer = (
            pypdf.PdfWriter(path, incremental=True)
            if incremental
            else pypdf.PdfWriter(clone_from=path)
        )

    def note(self, key: str) -> DictionaryObject:
        """The note of a finding."""
        return self.reference(key).get_object()

    def reference(self, key: str) -> IndirectObject:
        """Where the note of a finding stands."""
        for page in self.writer.pages:
            for reference in page.get("/Annots", ()):
                about = named(str(reference.get_object().get("/NM", "")))
                if about and about.about.key == key and not about.verdict:
                    return reference
        raise LookupError(key)

    def add(self, page: int, kind: str, who: str, text: str, **more: object) -> IndirectObject:
        """Put a note to a page."""
        made = DictionaryObject(
            {
                NameObject("/Type"): NameObject("/Annot"),
                NameObject("/Subtype"): NameObject(f"/{kind}"),
                NameObject("/Rect"): ArrayObject(FloatObject(x) for x in (10, 10, 30, 30)),
                NameObject("/NM"): TextStringObject(f"{who}-{text}-{len(more)}"),
                NameObject("/T"): TextStringObject(who),
                NameObject("/M"): TextStringObject("D:20261201093000+01'00'"),
                NameObject("/F"): NumberObject(28),
            }
        )
        if text:
            made[NameObject("/Contents")] = TextStringObject(text)
        for name, value in more.items():
            made[NameObject(f"/{name}")] = value
        reference = self.writer._add_object(made)  # noqa: SLF001  pypdf has no other door
        leaf = self.writer.pages[page]
        if "/Annots" not in leaf:
            leaf[NameObject("/Annots")] = ArrayObject()
        leaf["/Annots"].append(reference)
        return reference

    def reply(
        self, to: str | IndirectObject, who: str, text: str, when: str = "", **more: object
    ) -> IndirectObject:
        """Answer the note of a finding, or another reply."""
        target = self.reference(to) if isinstance(to, str) else to
        if when:
            more["M"] = TextStringObject(when)
        page = self._page_of(target)
        return self.add(page, "Text", who, text, IRT=target, RT=NameObject("/R"), **more)

    def state(
        self,
        to: str | IndirectObject,
        who: str,
        word: str,
        *,
        when: str = "",
        model: str = "Review",
    ) -> IndirectObject:
        """Set the state of a note, as readers do: by a hidden reply with words of their own."""
        told = {"State": TextStringObject(word), "StateModel": TextStringObject(model)}
        return self.reply(to, who, f"{word} set by {who}", when, **told)

    def _page_of(self, reference: IndirectObject) -> int:
        for number, page in enumerate(self.writer.pages):
            if reference in page.get("/Annots", ()):
                return number
        return 0

    def saved(self, path: Path) -> Path:
        """Write the file as this program would."""
        self.writer.write(path)
        return path
