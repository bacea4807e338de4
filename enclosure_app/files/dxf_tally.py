"""Counts what a reading leaves out, and says it in one sentence for each reason."""

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field

from enclosure_app.files.dxf_words import counted, listed, printable
from enclosure_app.model.drawing import Note, NoteLevel

_OTHER_THINGS = {
    "IMAGE": "picture",
    "OLEFRAME": "embedded object",
    "OLE2FRAME": "embedded object",
    "ACAD_PROXY_ENTITY": "object of an add-on program",
    "WIPEOUT": "masking area",
    "PDFUNDERLAY": "attached page",
    "DWFUNDERLAY": "attached page",
    "DGNUNDERLAY": "attached page",
    "PDFREFERENCE": "attached page",
    "3DSOLID": "solid",
    "BODY": "solid",
    "REGION": "solid region",
    "SURFACE": "surface",
    "EXTRUDEDSURFACE": "surface",
    "LOFTEDSURFACE": "surface",
    "REVOLVEDSURFACE": "surface",
    "SWEPTSURFACE": "surface",
    "PLANESURFACE": "surface",
    "MESH": "surface mesh",
    "POLYLINE": "surface mesh",
    "XLINE": "endless construction line",
    "RAY": "endless construction line",
    "POINT": "point",
    "SHAPE": "shape symbol",
    "TOLERANCE": "tolerance frame",
    "ACAD_TABLE": "table",
}


@dataclass(slots=True)
class Group:
    """How many, and the handle of the first."""

    count: int = 0
    first: str = ""

    def add(self, handle: str) -> None:
        """Count one more."""
        self.count += 1
        self.first = self.first or handle


@dataclass(slots=True)
class Tally:
    """What one reading left out."""

    hidden: Counter[str] = field(default_factory=Counter)
    invisible: Group = field(default_factory=Group)
    other: dict[str, Group] = field(default_factory=dict)
    wild: Group = field(default_factory=Group)
    broken: Group = field(default_factory=Group)
    empty: Group = field(default_factory=Group)
    outside: dict[str, Group] = field(default_factory=dict)
    missing: dict[str, Group] = field(default_factory=dict)
    clipped: dict[str, Group] = field(default_factory=dict)
    cyclic: dict[str, Group] = field(default_factory=dict)
    crowded: Group = field(default_factory=Group)
    paper: dict[str, int] = field(default_factory=dict)

    def leave_out(self, kind: str, handle: str) -> None:
        """Count one entity of a type that has no place in a section drawing's check."""
        self.other.setdefault(_OTHER_THINGS.get(kind, f"{printable(kind)} entity"), Group()).add(
            handle
        )

    def notes(self) -> tuple[Note, ...]:
        """Return one note for each reason."""
        return tuple(Note(NoteLevel.IGNORED, text) for text in self._sentences())

    def _sentences(self) -> Iterator[str]:
        yield from self._hidden()
        yield from self._blocks()
        for one, group in sorted(self.other.items()):
            yield f"Left out: {_plural(group.count, one)} (first: {group.first})."
        yield from self._faulty()
        for name, count in self.paper.items():
            yield f"The paper layout “{name}” was not read; it holds {_entities(count)}."

    def _hidden(self) -> Iterator[str]:
        if self.hidden:
            layers = f"{'a layer that is' if len(self.hidden) == 1 else 'layers that are'}"
            yield (
                f"Left out: {_entities(self.hidden.total())} on {layers} frozen or switched off: "
                f"{listed(self.hidden)}. To read them as well, add --all-layers."
            )
        if self.invisible.count:
            yield (
                f"Left out: {counted(self.invisible.count, 'invisible entity', 'invisible entities')}"
                f" (first: {self.invisible.first}). To read them as well, add --all-layers."
            )

    def _blocks(self) -> Iterator[str]:
        for name, group in self.outside.items():
            yield (
                f"The drawing “{name}” is attached from outside and was not read "
                f"({counted(group.count, 'place')}): bind it into this drawing to have it checked."
            )
        for name, group in self.missing.items():
            yield (
                f"The block “{name}” is missing from the file and was left out "
                f"({counted(group.count, 'place')}; first: {group.first})."
            )
        for name, group in self.clipped.items():
            yield (
                f"The block “{name}” is clipped at {counted(group.count, 'place')} "
                f"(first: {group.first}); its content was read whole."
            )
        for name, group in self.cyclic.items():
            yield f"The block “{name}” contains itself; the inner one was left out ({group.first})."
        if self.crowded.count:
            yield (
                "Blocks repeat too often in this drawing; the repeats after the first "
                f"{MOST_INSERTS} were left out (first: {self.crowded.first})."
            )

    def _faulty(self) -> Iterator[str]:
        if self.wild.count:
            yield (
                f"Left out: {_entities(self.wild.count)} with impossible coordinates "
                f"(first: {self.wild.first})."
            )
        if self.broken.count:
            yield (
                f"Left out: {_entities(self.broken.count)} with damaged data "
                f"(first: {self.broken.first})."
            )
        if self.empty.count:
            yield (
                f"Left out: {_entities(self.empty.count)} without length or area "
                f"(first: {self.empty.first})."
            )


MOST_INSERTS = 200_000


def _entities(count: int) -> str:
    return counted(count, "entity", "entities")


def _plural(count: int, one: str) -> str:
    if one.endswith(" entity"):
        return counted(count, one, one[:-1] + "ies")
    head, of, tail = one.partition(" of ")
    many = f"{head}{'es' if head.endswith(('sh', 'x')) else 's'}{of}{tail}"
    return counted(count, one, many)
