"""Counts what a reading leaves out, and says it in one sentence for each reason."""

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field

from enclosure_app.files.dxf.words import listed, printable
from enclosure_app.language import later, say, say_count
from enclosure_app.model.drawing import Note, NoteLevel

_OTHER_THINGS = {  # kind of entity: what it is called, one and many of them
    "IMAGE": ("{count} picture", "{count} pictures"),
    "OLEFRAME": ("{count} embedded object", "{count} embedded objects"),
    "OLE2FRAME": ("{count} embedded object", "{count} embedded objects"),
    "ACAD_PROXY_ENTITY": (
        "{count} object of an add-on program",
        "{count} objects of an add-on program",
    ),
    "WIPEOUT": ("{count} masking area", "{count} masking areas"),
    "PDFUNDERLAY": ("{count} attached page", "{count} attached pages"),
    "DWFUNDERLAY": ("{count} attached page", "{count} attached pages"),
    "DGNUNDERLAY": ("{count} attached page", "{count} attached pages"),
    "PDFREFERENCE": ("{count} attached page", "{count} attached pages"),
    "3DSOLID": ("{count} solid", "{count} solids"),
    "BODY": ("{count} solid", "{count} solids"),
    "REGION": ("{count} solid region", "{count} solid regions"),
    "SURFACE": ("{count} surface", "{count} surfaces"),
    "EXTRUDEDSURFACE": ("{count} surface", "{count} surfaces"),
    "LOFTEDSURFACE": ("{count} surface", "{count} surfaces"),
    "REVOLVEDSURFACE": ("{count} surface", "{count} surfaces"),
    "SWEPTSURFACE": ("{count} surface", "{count} surfaces"),
    "PLANESURFACE": ("{count} surface", "{count} surfaces"),
    "MESH": ("{count} surface mesh", "{count} surface meshes"),
    "POLYLINE": ("{count} surface mesh", "{count} surface meshes"),
    "XLINE": ("{count} endless construction line", "{count} endless construction lines"),
    "RAY": ("{count} endless construction line", "{count} endless construction lines"),
    "POINT": ("{count} point", "{count} points"),
    "SHAPE": ("{count} shape symbol", "{count} shape symbols"),
    "TOLERANCE": ("{count} tolerance frame", "{count} tolerance frames"),
    "ACAD_TABLE": ("{count} table", "{count} tables"),
}
_UNKNOWN = later("{count} {kind} entity"), later("{count} {kind} entities")


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
    other: dict[tuple[tuple[str, str], str], Group] = field(default_factory=dict)
    wild: Group = field(default_factory=Group)
    broken: Group = field(default_factory=Group)
    empty: Group = field(default_factory=Group)
    among_marks: Group = field(default_factory=Group)
    outside: dict[str, Group] = field(default_factory=dict)
    missing: dict[str, Group] = field(default_factory=dict)
    clipped: dict[str, Group] = field(default_factory=dict)
    cyclic: dict[str, Group] = field(default_factory=dict)
    crowded: Group = field(default_factory=Group)
    paper: dict[str, int] = field(default_factory=dict)

    def leave_out(self, kind: str, handle: str) -> None:
        """Count one entity of a type that has no place in a section drawing's check."""
        key = _OTHER_THINGS.get(kind, _UNKNOWN), "" if kind in _OTHER_THINGS else printable(kind)
        self.other.setdefault(key, Group()).add(handle)

    def notes(self) -> tuple[Note, ...]:
        """Return one note for each reason."""
        return tuple(Note(NoteLevel.IGNORED, text) for text in self._sentences())

    def _sentences(self) -> Iterator[str]:
        yield from self._hidden()
        yield from self._blocks()
        for (words, kind), group in sorted(self.other.items(), key=_name):
            things = say_count(group.count, *words, kind=kind)
            yield say("Left out: {things} (first: {first}).", things=things, first=group.first)
        yield from self._faulty()
        if self.among_marks.count:
            yield say(
                "Left out: {entities} on the layers of this program's own marks (first: {first}): "
                "draw on other layers what is to be checked.",
                entities=_entities(self.among_marks.count),
                first=self.among_marks.first,
            )
        for name, count in self.paper.items():
            yield say(
                "The paper layout “{name}” was not read; it holds {entities}.",
                name=name,
                entities=_entities(count),
            )

    def _hidden(self) -> Iterator[str]:
        if self.hidden:
            yield say_count(
                len(self.hidden),
                "Left out: {entities} on a layer that is frozen or switched off: {names}. "
                "To read them as well, add --all-layers.",
                "Left out: {entities} on layers that are frozen or switched off: {names}. "
                "To read them as well, add --all-layers.",
                entities=_entities(self.hidden.total()),
                names=listed(self.hidden),
            )
        if self.invisible.count:
            yield say_count(
                self.invisible.count,
                "Left out: {count} invisible entity (first: {first}). "
                "To read them as well, add --all-layers.",
                "Left out: {count} invisible entities (first: {first}). "
                "To read them as well, add --all-layers.",
                first=self.invisible.first,
            )

    def _blocks(self) -> Iterator[str]:
        for name, group in self.outside.items():
            yield say(
                "The drawing “{name}” is attached from outside and was not read ({places}): bind "
                "it into this drawing to have it checked.",
                name=name,
                places=_places(group.count),
            )
        for name, group in self.missing.items():
            yield say(
                "The block “{name}” is missing from the file and was left out ({places}; first: "
                "{first}).",
                name=name,
                places=_places(group.count),
                first=group.first,
            )
        for name, group in self.clipped.items():
            yield say(
                "The block “{name}” is clipped at {places} (first: {first}); its content was read "
                "whole.",
                name=name,
                places=_places(group.count),
                first=group.first,
            )
        for name, group in self.cyclic.items():
            yield say(
                "The block “{name}” contains itself; the inner one was left out ({first}).",
                name=name,
                first=group.first,
            )
        if self.crowded.count:
            yield say(
                "Blocks repeat too often in this drawing; the repeats after the first {most} were "
                "left out (first: {first}).",
                most=MOST_INSERTS,
                first=self.crowded.first,
            )

    def _faulty(self) -> Iterator[str]:
        if self.wild.count:
            yield say(
                "Left out: {entities} with impossible coordinates (first: {first}).",
                entities=_entities(self.wild.count),
                first=self.wild.first,
            )
        if self.broken.count:
            yield say(
                "Left out: {entities} with damaged data (first: {first}).",
                entities=_entities(self.broken.count),
                first=self.broken.first,
            )
        if self.empty.count:
            yield say(
                "Left out: {entities} without length or area (first: {first}).",
                entities=_entities(self.empty.count),
                first=self.empty.first,
            )


MOST_INSERTS = 200_000


def _entities(count: int) -> str:
    return say_count(count, "{count} entity", "{count} entities")


def _places(count: int) -> str:
    return say_count(count, "{count} place", "{count} places")


def _name(item: tuple[tuple[tuple[str, str], str], Group]) -> str:
    """Return the English name of a kind of thing, by which kinds are told in order."""
    (one, _), kind = item[0]
    return one.format(count=1, kind=kind)
