"""The site list: what to look at on site, place by place along the layers, in walking order.

It is made from what is drawn, not from what is wrong: a sound drawing is built on a site, too.
Joints, tapes and beads, folds, metal and what passes through each give a place; what a product is
and how it is bonded decides what is to be looked at there.
"""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from math import dist, inf

from enclosure_app.language import say
from enclosure_app.model.limits import Limits
from enclosure_app.model.place import Area, Point
from enclosure_app.model.product import Control, Kind
from enclosure_app.model.report import SectionResult
from enclosure_app.planning.site_list.folds import folds
from enclosure_app.planning.site_list.joints import beads, butts, laps
from enclosure_app.planning.site_list.metal import metal
from enclosure_app.planning.site_list.passing import openings, passing
from enclosure_app.planning.site_list.places import Drawn, SitePlace, drawn
from enclosure_app.planning.site_list.questions import DAMP, HEIGHT, TRENCH

_DEEP = 1000.0  # mm below the ground from which on a bank may bury somebody; common practice
_SAME = 60.0  # mm: what has one key this near to each other is one place of several controls
_HIGH = frozenset({Kind.ROOFING, Kind.UNDERLAYMENT, Kind.EAVE_MEMBRANE, Kind.DRIP_EDGE})
_WET = frozenset({Kind.SILL_PAN, Kind.OPENING, Kind.PENETRATION})


@dataclass(frozen=True, slots=True)
class SiteList:
    """The places to look at in one section, in walking order."""

    section: str
    places: tuple[SitePlace, ...]

    def place(self, key: str) -> SitePlace | None:
        """Return the place with a key, None where there is none."""
        return next((place for place in self.places if place.key == key), None)


def site_list(result: SectionResult, limits: Limits) -> SiteList:
    """Return what to look at in one section; lengths are mm, places are the drawing's."""
    section = drawn(result, limits)
    made = (*laps(section), *beads(section), *butts(section), *folds(section))
    found = _united([*made, *metal(section), *passing(section), *openings(section)])
    in_order = sorted(found, key=lambda place: (round(place.along, 1), place.key, place.at))
    return SiteList(result.section.name, _keys_apart(_cautioned(section, in_order)))


def _united(places: Iterable[SitePlace]) -> list[SitePlace]:
    """Return places without those that two controls have in common; the first one stands for both."""
    kept: dict[str, list[SitePlace]] = {}
    for place in places:
        same = kept.setdefault(place.key, [])
        near = next((n for n, other in enumerate(same) if _is_near(place.at, other.at)), None)
        if near is None:
            same.append(place)
        else:
            same[near] = same[near].joined(place)
    return [place for several in kept.values() for place in several]


def _is_near(a: Point, b: Point) -> bool:
    return dist(a, b) <= _SAME


def _cautioned(section: Drawn, places: Iterable[SitePlace]) -> list[SitePlace]:
    """Return places with what to beware of there."""
    bounds = _roof_and_ground(section)
    return [replace(place, cautions=_cautions(section, place, bounds)) for place in places]


def _cautions(section: Drawn, place: SitePlace, bounds: tuple[float, float]) -> tuple[str, ...]:
    roof, ground = bounds
    kinds = {section.product(name).kind for name in place.pieces}
    y = section.pose.settled(place.at)[1]
    told = [say(HEIGHT)] if kinds & _HIGH or y >= roof else []
    told += [say(TRENCH)] if y < ground - _DEEP else []
    return (*told, say(DAMP)) if kinds & _WET or Control.WATER in place.controls else tuple(told)


def _roof_and_ground(section: Drawn) -> tuple[float, float]:
    """Return from where on one stands high, and how high the ground is (settled y, mm).

    Where there is a roof, all that is not below its lowest sheet is work at height.
    """
    roof, ground = inf, -inf
    for piece in section.named.section.pieces if section.upright else ():
        shape = piece.shape
        ys = [y for _, y in (shape.outer if isinstance(shape, Area) else shape.points)]
        kind = section.product(piece.name).kind
        roof = min(roof, *ys) if kind in _HIGH else roof
        ground = max(ground, *ys) if kind is Kind.GROUND else ground
    return roof, ground


def _keys_apart(places: Iterable[SitePlace]) -> tuple[SitePlace, ...]:
    """Number places that bear the same key, in walking order."""
    count: dict[str, int] = {}
    apart = []
    for place in places:
        number = count[place.key] = count.get(place.key, 0) + 1
        apart.append(replace(place, key=f"{place.key}#{number}") if number > 1 else place)
    return tuple(apart)
