"""Figures that findings are measured against, each with its source, and the drafting tolerances."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from math import atan, degrees
from types import MappingProxyType

from enclosure_app.language import say
from enclosure_app.model.finding import Severity


@dataclass(frozen=True, slots=True)
class Limit:
    """One required figure and where it comes from.

    `unit` is ``"mm"``, ``"slope"`` (rise over run) or ``"setting"`` (1 for yes, 0 for no).
    """

    name: str
    value: float
    source: str
    edition: str = ""
    confirmed: bool = False
    unit: str = "mm"
    note: str = ""

    @property
    def basis(self) -> str:
        """Where the figure comes from, with a warning while nobody has confirmed it."""
        source = say(self.source)
        text = f"{source}, {say(self.edition)}" if self.edition else source
        return text if self.confirmed else say("{source} (unconfirmed)", source=text)


@dataclass(frozen=True, slots=True)
class Tolerances:
    """Drafting slop and settings of the check; lengths in mm, slopes as rise over run."""

    touch: float = 2.0
    lap_reach: float = 15.0
    level: float = 1 / 48
    driving_angle: float = 30.0  # degrees from the vertical at which rain still arrives


@dataclass(frozen=True, slots=True)
class Limits:
    """The rule book in force: figures by name, tolerances, and the severity of each rule."""

    figures: Mapping[str, Limit]
    tolerances: Tolerances = Tolerances()
    severities: Mapping[str, Severity] = field(default_factory=lambda: MappingProxyType({}))
    book: str = ""

    def figure(self, name: str) -> Limit:
        """Return the figure called `name`; a missing one is a bug in the rule book."""
        return self.figures[name]

    def overridden(self, figures: Mapping[str, float], source: str) -> "Limits":
        """Return these limits with the project's own figures put in, naming their `source`."""
        own = {
            name: replace(
                self.figures[name], value=value, source=source, edition="", confirmed=True
            )
            for name, value in figures.items()
        }
        known = {**self.figures, **own}
        return replace(
            self, figures=MappingProxyType(known), tolerances=tolerances_of(known, self.tolerances)
        )


def tolerances_of(figures: Mapping[str, Limit], others: Tolerances | None = None) -> Tolerances:
    """Return the settings of the check that stand among figures; those that do not are `others`."""
    found = {
        field_name: read(figures[name].value)
        for name, (field_name, read) in _TOLERANCES.items()
        if name in figures
    }
    return replace(others or Tolerances(), **found)


_TOLERANCES: Mapping[str, tuple[str, Callable[[float], float]]] = {
    "touch": ("touch", float),
    "lap-reach": ("lap_reach", float),
    "level-slope": ("level", float),
    "driving-rain": ("driving_angle", lambda slope: round(degrees(atan(slope)), 9)),
}
