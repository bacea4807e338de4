"""Which way is outward and which way is uphill at a place on the sheet."""

from collections.abc import Mapping
from dataclasses import dataclass

from enclosure_app.drawing.placement import Placement
from enclosure_app.drawing.polylines import dot, left_of, unit
from enclosure_app.drawing.section.ways import Way, way_through
from enclosure_app.model.place import Point, Points
from enclosure_app.model.product import Control
from enclosure_app.model.report import LayerResult, Run, SectionResult
from enclosure_app.model.section import Section

_STRETCH = 3.0  # mm on paper before and after a place, over which the walk's direction is taken


@dataclass(frozen=True, slots=True)
class Walk:
    """The trace of one control in sheet mm, and whether outside lies on its left."""

    way: Way
    outside_left: bool

    def outward(self, at: Point) -> Point:
        """Return the unit vector that leads outside at the place on the walk nearest to `at`.

        The direction is taken over a short stretch, since a walk steps across from sheet to sheet
        just where they lap.
        """
        along = self.way.foot(at).along
        before, after = (self.way.at(along + by)[0] for by in (-_STRETCH, _STRETCH))
        x, y = left_of(unit(before, after))
        return (x, y) if self.outside_left else (-x, -y)


@dataclass(frozen=True, slots=True)
class Sides:
    """The outward and uphill directions of one section on the sheet."""

    walks: Mapping[Control, Walk]
    inside: Points
    outside: Points
    uphill: Point

    def outward(self, at: Point, direction: Point, control: Control | None = None) -> Point:
        """Return the one of the two normals of `direction` that leads outside."""
        x, y = left_of(direction)
        return (x, y) if dot((x, y), self._out(at, control)) >= 0 else (-x, -y)

    def up(self, direction: Point) -> Point:
        """Return `direction`, turned round if it leads downhill."""
        x, y = direction
        return (-x, -y) if dot(direction, self.uphill) < 0 else (x, y)

    def _out(self, at: Point, control: Control | None) -> Point:
        walk = self.walks.get(control) if control else None
        walk = walk or next(iter(self.walks.values()), None)
        if walk:
            return walk.outward(at)
        if self.outside:
            return unit(at, min(self.outside, key=lambda mark: _far(mark, at)))
        if self.inside:
            return unit(min(self.inside, key=lambda mark: _far(mark, at)), at)
        return 1.0, 0.0


def sides_of(result: SectionResult, placement: Placement) -> Sides:
    """Return the directions of a section as placed on the sheet."""
    section = result.section
    gravity = section.gravity or (0.0, -1.0)
    walks = {}
    for control, layer in result.layers.items():
        way = _way_of(layer)
        if len(way) > 1:
            walks[control] = Walk(way.placed(placement), _outside_is_left(way, section))
    return Sides(
        walks,
        placement.points(section.inside),
        placement.points(section.outside),
        (-gravity[0], -gravity[1]),
    )


def _way_of(layer: LayerResult) -> Way:
    return way_through(
        step.points if isinstance(step, Run) else (step.start, step.end) for step in layer.walk
    )


def _outside_is_left(walk: Way, section: Section) -> bool:
    """Ask every mark; an outside mark on the left or an inside mark on the right speaks for left."""
    votes = [1 if walk.foot(mark).left else -1 for mark in section.outside]
    votes += [-1 if walk.foot(mark).left else 1 for mark in section.inside]
    return sum(votes) >= 0


def _far(a: Point, b: Point) -> float:
    return (a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2
