"""Where two copies of a project differ in what is drawn and set, and which of the two is taken.

With the copy that both began from, only what both changed is a difference. Without it nobody can
know who changed what, and all that differs is shown.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from enum import StrEnum
from types import MappingProxyType
from typing import Any

from enclosure_app.model.project import Project
from enclosure_app.model.said.sign_off import fingerprint
from enclosure_app.model.section import Section
from enclosure_app.model.underlay import Underlay


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

UNKNOWN: Any = object()
"""Equal to nothing: what a thing was, where nobody knows."""


@dataclass
class Weighing:
    """Weighs what two copies hold, notes where they differ, and takes what was chosen."""

    chosen: Chosen
    differences: list[Difference]

    def taken(self, key: tuple[Part, str], ours: Any, theirs: Any, base: Any) -> Side:  # noqa: ANN401
        """Return the side to take: the one that was changed; where both were, the chosen one."""
        if theirs in (ours, base):
            return Side.OURS
        if ours == base:
            return Side.THEIRS
        side = self.chosen.get(key, Side.OURS)
        self.differences.append(Difference(*key, ours, theirs, side, key not in self.chosen))
        return side

    def value(self, key: tuple[Part, str], ours: Any, theirs: Any, base: Any) -> Any:  # noqa: ANN401
        """Return the value to take."""
        return theirs if self.taken(key, ours, theirs, base) is Side.THEIRS else ours

    def by_name(
        self,
        part: Part,
        ours: Mapping[str, Any],
        theirs: Mapping[str, Any],
        base: Mapping[str, Any] | None,
    ) -> Mapping[str, Any]:
        """Return what is held by name; without a base what only one of the two holds is kept."""
        held: dict[str, Any] = {}
        for name in dict.fromkeys((*ours, *theirs)):
            mine, other = ours.get(name, _ABSENT), theirs.get(name, _ABSENT)
            if base is None and _ABSENT in (mine, other):
                held[name] = other if mine is _ABSENT else mine
            else:
                was = UNKNOWN if base is None else base.get(name, _ABSENT)
                held[name] = self.value((part, name), mine, other, was)
        return MappingProxyType({name: each for name, each in held.items() if each is not _ABSENT})


def settings_weighed(
    weighing: Weighing, ours: Project, theirs: Project, base: Project | None
) -> Project:
    """Return our project with the settings that were changed or chosen."""

    def one(part: Part, of: Callable[[Project], Any]) -> Any:  # noqa: ANN401
        was = of(base) if base else UNKNOWN
        return weighing.value((part, ""), of(ours), of(theirs), was)

    return replace(
        ours,
        title=one(Part.TITLE, lambda each: each.title),
        units=one(Part.UNITS, lambda each: each.units),
        book=one(Part.BOOK, lambda each: each.book),
        layers=one(Part.LAYERS, lambda each: each.layers),
        figures=weighing.by_name(
            Part.FIGURE, ours.figures, theirs.figures, base.figures if base else None
        ),
        severities=weighing.by_name(
            Part.LEVEL, ours.severities, theirs.severities, base.severities if base else None
        ),
        underlays=tuple(
            weighing.by_name(
                Part.UNDERLAY,
                _pictures(ours),
                _pictures(theirs),
                _pictures(base) if base else None,
            ).values()
        ),
    )


def _pictures(project: Project) -> dict[str, Underlay]:
    """Return the pictures by name; several of one name are told apart by their place in the list."""
    found: dict[str, Underlay] = {}
    for each in project.underlays:
        name = " · ".join(filter(None, (each.name, each.section)))
        again = sum(key == name or key.startswith(f"{name} (") for key in found)
        found[f"{name} ({again + 1})" if again else name] = each
    return found


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
