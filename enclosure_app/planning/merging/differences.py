"""Where two copies of a project differ in what is drawn and set, and which of the two is taken.

Each copy knows the states that it was in whenever it was kept (`model.states`). What one of them is
in and the other has been in was left behind there, so that only what both changed is a difference:
no copy that both began from has to be at hand.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from enum import StrEnum
from types import MappingProxyType
from typing import Any

from enclosure_app.model.project import Project
from enclosure_app.model.said.sign_off import fingerprint
from enclosure_app.model.section import Section
from enclosure_app.model.states import pictures, state_of


class Side(StrEnum):
    """Which of two is taken. `BOTH` keeps two sections, the other one under a name of its own."""

    OURS = "ours"
    THEIRS = "theirs"
    BOTH = "both"


class Part(StrEnum):
    """What two copies can differ in."""

    DRAWING = "the revision of the drawing"
    SECTION = "a section"
    TITLE = "the title"
    UNITS = "the units"
    BOOK = "the rule book"
    FIGURE = "a required figure"
    LEVEL = "how loud a rule is"
    LAYERS = "what the layers are"
    UNDERLAY = "a picture under the drawing"


@dataclass(frozen=True, slots=True)
class Difference:
    """One thing in which two copies differ: `name` says which section, figure, rule or picture.

    `ours` and `theirs` are what it is in each, to be shown side by side; `taken` is the side that
    stands in the merged project, and `asked` whether nobody chose it yet.
    """

    part: Part
    name: str
    ours: Any
    theirs: Any
    taken: Side
    asked: bool

    @property
    def key(self) -> tuple[Part, str]:
        """What a choice is given by."""
        return (self.part, self.name)


Chosen = Mapping[tuple[Part, str], Side]
_ABSENT: Any = None
_STATES = {
    Part.SECTION: "section",
    Part.TITLE: "title",
    Part.UNITS: "units",
    Part.BOOK: "book",
    Part.FIGURE: "figure",
    Part.LEVEL: "level",
    Part.LAYERS: "layers",
    Part.UNDERLAY: "picture",
}
"""What the parts are called in `model.states`."""


@dataclass
class Weighing:
    """Weighs what two copies hold, notes where they differ, and takes what was chosen.

    `pasts` are the states that ours and theirs were in.
    """

    chosen: Chosen
    differences: list[Difference]
    pasts: tuple[frozenset[str], frozenset[str]] = (frozenset(), frozenset())

    def has_been(self, side: Side, part: Part, name: str, value: Any) -> bool:  # noqa: ANN401
        """Whether a copy was once in a state; that there is none of a name is no state."""
        past = self.pasts[side is Side.THEIRS]
        if value is _ABSENT:
            return False
        held = value.section if isinstance(value, Drawn) else value
        return state_of(_STATES[part], name, held) in past

    def knew(self, side: Side, part: Part, name: str) -> bool:
        """Whether there was once one of this name in a copy."""
        return state_of(_STATES[part], name) in self.pasts[side is Side.THEIRS]

    def taken(self, key: tuple[Part, str], ours: Any, theirs: Any) -> Side:  # noqa: ANN401
        """Return the side to take: the one that was changed; where both were, the chosen one."""
        if ours == theirs:
            return Side.OURS
        left = self.has_been(Side.THEIRS, *key, ours), self.has_been(Side.OURS, *key, theirs)
        if ours is _ABSENT and not self.knew(Side.OURS, *key):
            return Side.THEIRS  # it is new there
        if theirs is _ABSENT and not self.knew(Side.THEIRS, *key):
            return Side.OURS
        if left[0] != left[1]:
            return Side.THEIRS if left[0] else Side.OURS
        side = self.chosen.get(key, Side.OURS)
        self.differences.append(Difference(*key, ours, theirs, side, key not in self.chosen))
        return side

    def value(self, key: tuple[Part, str], ours: Any, theirs: Any) -> Any:  # noqa: ANN401
        """Return the value to take."""
        return theirs if self.taken(key, ours, theirs) is Side.THEIRS else ours

    def by_name(
        self, part: Part, ours: Mapping[str, Any], theirs: Mapping[str, Any]
    ) -> Mapping[str, Any]:
        """Return what is held by name; what only one of the two ever held is kept."""
        held = {
            name: self.value((part, name), ours.get(name, _ABSENT), theirs.get(name, _ABSENT))
            for name in dict.fromkeys((*ours, *theirs))
        }
        return MappingProxyType({name: each for name, each in held.items() if each is not _ABSENT})


def settings_weighed(weighing: Weighing, ours: Project, theirs: Project) -> Project:
    """Return our project with the settings that were changed or chosen."""

    def one(part: Part, of: Callable[[Project], Any]) -> Any:  # noqa: ANN401
        return weighing.value((part, ""), of(ours), of(theirs))

    return replace(
        ours,
        title=one(Part.TITLE, lambda each: each.title),
        units=one(Part.UNITS, lambda each: each.units),
        book=one(Part.BOOK, lambda each: each.book),
        layers=one(Part.LAYERS, lambda each: each.layers),
        figures=weighing.by_name(Part.FIGURE, ours.figures, theirs.figures),
        severities=weighing.by_name(Part.LEVEL, ours.severities, theirs.severities),
        underlays=tuple(
            weighing.by_name(Part.UNDERLAY, pictures(ours), pictures(theirs)).values()
        ),
    )


@dataclass(frozen=True, slots=True, eq=False)
class Drawn:
    """A section as it is compared: two are equal where everything drawn and judged is the same."""

    section: Section

    def __eq__(self, other: object) -> bool:
        """Whether another one shows and means the same; products that are not used do not count."""
        if not isinstance(other, Drawn):
            return False
        one, two = self.section, other.section
        if one is two:
            return True
        bare = (replace(each, products=MappingProxyType({})) for each in (one, two))
        return fingerprint(one) == fingerprint(two) and next(bare) == next(bare)

    def __hash__(self) -> int:
        """Return the hash of its name: equal ones have equal names."""
        return hash(self.section.name)
