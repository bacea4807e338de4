"""The stops of a walk through one section: what was found and what to look at, in walking order."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum
from types import MappingProxyType

from enclosure_app.model.finding import Finding
from enclosure_app.model.place import Point, Points
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.decision import State
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.planning.site_list.listing import SiteList
from enclosure_app.planning.site_list.places import SitePlace
from enclosure_app.window.canvas.picture.composition import numbers_of


class Which(StrEnum):
    """Which stops are walked."""

    EVERYTHING = "everything"
    WRONG = "what is wrong"
    LEFT = "what is left"


@dataclass(frozen=True, slots=True)
class Stop:
    """One place of a walk: a finding with its number, or a place of the site list."""

    key: str
    along: float
    finding: Finding | None = None
    place: SitePlace | None = None
    number: int = 0

    @property
    def at(self) -> Point:
        """Where it is, in mm of the drawing."""
        told = self.finding or self.place
        return told.at if told else (0.0, 0.0)

    @property
    def extent(self) -> tuple[Points, ...]:
        """The lines that show it."""
        told = self.finding or self.place
        return told.extent if told else ()


@dataclass(frozen=True, slots=True)
class Round:
    """All stops of a section, with what was decided and seen there."""

    result: SectionResult
    stops: tuple[Stop, ...]
    seen: Mapping[str, SiteCheck] = field(default_factory=lambda: MappingProxyType({}))

    def is_done(self, stop: Stop) -> bool:
        """Whether a finding was decided, or all of a place looked at."""
        if stop.finding is not None:
            return self.result.state(stop.finding) is not State.OPEN
        place = stop.place
        return place is None or all(self.look(key) for key, _ in place.items)

    def is_amiss(self, stop: Stop) -> bool:
        """Whether something is wrong there: by the drawing, or by what somebody saw."""
        place = stop.place
        if place is None:
            return True
        return any(self.look(key) is Seen.NOT_IN_ORDER for key, _ in place.items)

    def look(self, key: str) -> Seen | None:
        """Return what was seen of an item of the site list, None while nobody looked."""
        check = self.seen.get(key)
        return None if check is None or check.seen is Seen.NOT_LOOKED_AT else check.seen

    def shown(self, which: Which) -> tuple[Stop, ...]:
        """Return the stops that are walked."""
        if which is Which.WRONG:
            return tuple(stop for stop in self.stops if self.is_amiss(stop))
        if which is Which.LEFT:
            return self.left
        return self.stops

    @property
    def left(self) -> tuple[Stop, ...]:
        """The stops that are still to be decided or looked at."""
        return tuple(stop for stop in self.stops if not self.is_done(stop))

    @property
    def to_be_mended(self) -> tuple[Stop, ...]:
        """The stops where something is to be mended, or was seen not to be in order."""
        return tuple(
            stop
            for stop in self.stops
            if self.is_amiss(stop)
            and (stop.finding is None or self.result.state(stop.finding) is State.TO_BE_MENDED)
        )


def round_of(
    result: SectionResult, listed: SiteList, seen: Mapping[str, SiteCheck] | None = None
) -> Round:
    """Return the walk through a section: at one place what is wrong comes before what to look at."""
    numbers = numbers_of(result.findings)
    wrong = [Stop(f.key, f.along, finding=f, number=numbers[f.key]) for f in result.findings]
    look = [Stop(place.key, place.along, place=place) for place in listed.places]
    stops = sorted([*wrong, *look], key=_order)
    return Round(result, tuple(stops), seen or MappingProxyType({}))


def _order(stop: Stop) -> tuple[float, bool, int, str]:
    return (round(stop.along, 1), stop.finding is None, stop.number, stop.key)
