"""The marks that say which side is inside and which is outside."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass

from enclosure_app.files.dxf.raw import RawText
from enclosure_app.geometry.outlines.clipping import within
from enclosure_app.language import later, say
from enclosure_app.model.place import Points
from enclosure_app.model.section import Section


@dataclass(frozen=True, slots=True)
class Marks:
    """Points (mm) that lie inside and outside the building."""

    inside: Points = ()
    outside: Points = ()

    def within(self, ring: Points) -> "Marks":
        """Return those that lie in the ring."""
        return Marks(_within(self.inside, ring), _within(self.outside, ring))

    def overridden(self, by: "Marks") -> "Marks":
        """Return these marks, each kind replaced by that of `by` where it has any."""
        return Marks(by.inside or self.inside, by.outside or self.outside)


NO_MARKS = Marks()


_NO_INSIDE = later(
    "{file}: no inside mark in section {section}: give --inside X,Y or write the word INSIDE in "
    "the room."
)
_NO_OUTSIDE = later(
    "{file}: no outside mark in section {section}: give --outside X,Y or write the word OUTSIDE "
    "in the open."
)


def written(texts: Iterable[RawText], mark_of: Callable[[str], str | None]) -> Marks:
    """Return the places of the texts (mm) that are a word for inside or outside, whole."""
    found = [(mark_of(text.text.strip()), text.at) for text in texts]
    return Marks(
        tuple(at for word, at in found if word == "inside"),
        tuple(at for word, at in found if word == "outside"),
    )


def missing(file: str, sections: Sequence[Section]) -> tuple[str, ...]:
    """Return one sentence for each mark that a section lacks."""
    return tuple(
        say(told, file=file, section=section.name)
        for section in sections
        for told, marks in ((_NO_INSIDE, section.inside), (_NO_OUTSIDE, section.outside))
        if not marks
    )


def _within(points: Points, ring: Points) -> Points:
    return tuple(p for p, inside in zip(points, within(points, ring), strict=True) if inside)
