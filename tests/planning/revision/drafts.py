"""A revised section in the making, with the truth known of every piece."""

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from math import dist
from random import Random

from enclosure_app.model.finding import Finding
from enclosure_app.model.place import Area, Point, Points, Shape
from enclosure_app.model.section import Piece, Section

REACH = 2.5  # mm: how far a finding may lie from where the truth puts it


@dataclass(frozen=True)
class Made:
    """One piece of the revised drawing, made of earlier pieces `of`, moved besides by `by`."""

    piece: Piece
    of: frozenset[str]
    by: Point = (0.0, 0.0)


@dataclass
class Draft:
    """A revised section in the making. `place` brings a place of the earlier one to the later."""

    section: Section
    made: list[Made]
    random: Random
    steps: list[str] = field(default_factory=list)
    place: Callable[[Point], Point] = lambda point: point

    def finished(self) -> Section:
        return replace(self.section, pieces=tuple(each.piece for each in self.made))

    def some(self, condition: Callable[[Made], bool] = bool) -> int | None:
        rows = [n for n, each in enumerate(self.made) if condition(each)]
        return self.random.choice(rows) if rows else None

    def is_true(self, old: Finding, new: Finding) -> bool:
        """Whether two findings are one: of the same pieces, at the same place of them."""
        if (old.rule, old.control) != (new.rule, new.control):
            return False
        made = {each.piece.name: each for each in self.made}
        own = frozenset(old.pieces)
        if not all(made[name].of & own for name in new.pieces if name in made):
            return False
        if not own <= frozenset().union(*(made[n].of for n in new.pieces if n in made)):
            return False
        there = self.place(old.at)
        moves = {(0.0, 0.0), *(made[name].by for name in new.pieces if name in made)}
        return any(dist((there[0] + dx, there[1] + dy), new.at) <= REACH for dx, dy in moves)


def points_of(shape: Shape) -> Points:
    return shape.outer if isinstance(shape, Area) else shape.points


def mapped(shape: Shape, move: Callable[[Point], Point]) -> Shape:
    if isinstance(shape, Area):
        holes = tuple(tuple(map(move, hole)) for hole in shape.holes)
        return Area(tuple(map(move, shape.outer)), holes)
    return replace(shape, points=tuple(map(move, shape.points)))


def drafted(section: Section, random: Random) -> Draft:
    return Draft(section, [Made(p, frozenset({p.name})) for p in section.pieces], random)


def fresh_name(draft: Draft) -> str:
    names = {each.piece.name for each in draft.made}
    while True:
        name = f"{draft.random.randrange(0x20, 0xFFFF):X}"
        if name not in names:
            return name
