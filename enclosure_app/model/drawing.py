"""One drawing as read: its units, its sections, and what the reader has to say about it."""

from dataclasses import dataclass, field
from enum import StrEnum

from enclosure_app.model.section import Section


class Units(StrEnum):
    """The units a drawing may be drawn in."""

    MM = "mm"
    CM = "cm"
    M = "m"
    IN = "in"
    FT = "ft"

    @property
    def in_mm(self) -> float:
        """Millimetres in one unit."""
        return {"mm": 1.0, "cm": 10.0, "m": 1000.0, "in": 25.4, "ft": 304.8}[self.value]

    @property
    def imperial(self) -> bool:
        """Whether lengths are written in feet and inches."""
        return self in (Units.IN, Units.FT)


class NoteLevel(StrEnum):
    """How the reader came to what it says."""

    READ = "read"
    REPAIRED = "repaired"
    IGNORED = "ignored"
    GUESSED = "guessed"


@dataclass(frozen=True, slots=True)
class Note:
    """One thing the reader repaired, ignored or guessed, in a sentence.

    `about` is ``"layers"`` for what it took layers for, which changes when the person says what
    they are; "" for what stays true.
    """

    level: NoteLevel
    text: str
    about: str = ""


@dataclass(frozen=True, slots=True)
class Drawing:
    """One drawing: `file` as the person named it, one section for each frame."""

    file: str
    units: Units
    sections: tuple[Section, ...]
    notes: tuple[Note, ...] = ()
    layouts: tuple[str, ...] = ()
    title: str = ""
    identity: str = field(default="", compare=False)
