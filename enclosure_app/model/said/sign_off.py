"""A sign-off: somebody's name under one section, and which state of the drawing was signed."""

import json
from collections.abc import Iterable
from dataclasses import dataclass
from hashlib import sha256
from itertools import pairwise
from math import floor, hypot
from typing import Any

from enclosure_app.model.place import Area, Point, Points, Shape
from enclosure_app.model.product import Product
from enclosure_app.model.section import Section

_DIGITS = 6  # of a mm: what a file keeps of a number is never less
_STRAIGHT = 1e-4  # mm: what lies so near to a line is on it
_STEP, _SHIFT = 0.001, 0.449
"""Places nearer than a thousandth of a mm are one: a file keeps some eight digits of an inch. No
place that anybody draws, neither of inches nor of millimetres, lies near the edge of a step."""


@dataclass(frozen=True, slots=True)
class SignOff:
    """A name under the section called `section`, or with `withdrawn`, the name taken away again.

    `drawn` is the `drawn_sum` of what was signed: another one now means that it was changed.
    `when` is a moment (`model.said.moment`); `after` names the sign-offs that this one follows, and
    `revision` the drawing in which the section had this name.
    """

    section: str
    who: str
    when: str = ""
    remark: str = ""
    drawn: str = ""
    withdrawn: bool = False
    revision: str = ""
    id: str = ""
    after: tuple[str, ...] = ()


def fingerprint(section: Section) -> str:
    """Return a sum over everything in a section that is judged, with the names of its pieces.

    The section's own name, and the order of what is in it, do not matter. Linework and notes are
    left out: they are shown, but nothing is concluded from them.
    """
    products = {key: section.products[key] for key in {p.product for p in section.pieces}}
    judged = {
        "frame": _points(section.frame),
        "pieces": sorted([p.name, p.product, _shape(p.shape)] for p in section.pieces),
        "products": {key: _product(product) for key, product in products.items()},
        "inside": sorted(_points(section.inside)),
        "outside": sorted(_points(section.outside)),
        "gravity": section.gravity and _points([section.gravity]),
        "breaks": sorted([_points(each.near), _points(each.far)] for each in section.breaks),
        "sealed": sorted(section.sealed),
    }
    return sha256(json.dumps(judged, sort_keys=True).encode()).hexdigest()


def drawn_sum(section: Section) -> str:
    """Return a sum over what is drawn and judged, whatever it is called and where it is put.

    Two exports of one drawing have the same sum: handles may be others, pieces may stand in
    another order, lines may be drawn from their other end and rings from another corner, points
    may be put on straight lines, and the section as a whole may lie elsewhere on the sheet.
    """
    xs, ys = zip(*section.frame or ((0.0, 0.0),), strict=True)
    grid = _Grid((min(xs), min(ys)))
    made = {key: _product(section.products[key]) for key in {p.product for p in section.pieces}}
    pieces = {p.name: json.dumps([made[p.product], grid.shape(p.shape)]) for p in section.pieces}
    judged = {
        "frame": grid.ring(section.frame),
        "pieces": sorted(pieces.values()),
        "inside": sorted(grid.steps(section.inside)),
        "outside": sorted(grid.steps(section.outside)),
        "gravity": section.gravity and _points([section.gravity]),
        "breaks": sorted([grid.run(each.near), grid.run(each.far)] for each in section.breaks),
        "sealed": sorted(sorted(pieces.get(n, "") for n in pair) for pair in section.sealed),
    }
    return sha256(json.dumps(judged, sort_keys=True).encode()).hexdigest()


@dataclass(frozen=True, slots=True)
class _Grid:
    """Places as whole steps from the lower left corner of the frame, `origin`."""

    origin: Point

    def steps(self, points: Points) -> list[tuple[int, int]]:
        (u, v) = self.origin
        return [(_step(x - u), _step(y - v)) for x, y in points]

    def run(self, points: Points) -> list[tuple[int, int]]:
        """Return an open line from whichever end comes first."""
        there = self.steps(_corners(points))
        return min(there, there[::-1])

    def ring(self, points: Points) -> list[tuple[int, int]]:
        """Return a ring from the corner and in the direction that come first."""
        start = _firsts(list(points))[0] if points else 0  # a corner: nothing lies beyond it
        turned = (*points[start:], *points[: start + 1])
        there = self.steps(_corners(turned)[:-1])
        turns = (way[k:] + way[:k] for way in (there, there[::-1]) for k in _firsts(way))
        return min(turns, default=[])

    def shape(self, shape: Shape) -> list[Any]:
        if isinstance(shape, Area):
            return ["area", self.ring(shape.outer), *sorted(map(self.ring, shape.holes))]
        places = self.ring(shape.points) if shape.closed else self.run(shape.points)
        return ["line", places, _step(shape.width), shape.closed]


def _step(length: float) -> int:
    return floor(length / _STEP + _SHIFT)


def _corners(points: Points) -> Points:
    """Return a line without the points that only lie on its straight parts."""
    kept = list(points[:1])
    for at, after in pairwise(points[1:]):
        if not _lies_between(kept[-1], at, after):
            kept.append(at)
    return (*kept, *points[1:][-1:])


def _lies_between(a: Point, b: Point, c: Point) -> bool:
    (x, y), (u, v) = (c[0] - a[0], c[1] - a[1]), (b[0] - a[0], b[1] - a[1])
    length = hypot(x, y)
    if length <= _STRAIGHT:
        return hypot(u, v) <= _STRAIGHT
    along, off = (x * u + y * v) / length, abs(x * v - y * u) / length
    return -_STRAIGHT <= along <= length + _STRAIGHT and off <= _STRAIGHT


def _firsts(ring: "list[tuple[int, int]] | list[Point]") -> list[int]:
    first = min(ring, default=None)
    return [k for k, corner in enumerate(ring) if corner == first]


def _points(points: Iterable[tuple[float, float]] | Points) -> list[list[float]]:
    return [[round(x, _DIGITS) + 0.0, round(y, _DIGITS) + 0.0] for x, y in points]


def _shape(shape: Shape) -> list[Any]:
    if isinstance(shape, Area):
        return ["area", _points(shape.outer), *map(_points, shape.holes)]
    return ["line", _points(shape.points), round(shape.width, _DIGITS) + 0.0, shape.closed]


def _product(product: Product) -> list[Any]:
    """Return what a product does; what it is called, and who says so, changes nothing."""
    figures = (
        product.min_lap_mm, product.thickness_mm, product.permeance_ng, product.sd_m,
        product.conductivity,
    )  # fmt: skip
    known = [None if each is None else float(each) for each in figures]
    return [sorted(product.controls), product.bond, product.kind, *known]
