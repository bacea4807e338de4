"""Revised drawings made at random, with the truth known of every piece.

A revision is made of a section by what offices do between two issues: pieces are moved, split,
joined, deleted, added; the file is written anew, renumbered, mirrored, shifted, renamed. Each piece
knows which earlier pieces it is made of, so that what the program says can be judged.
"""

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from functools import cache
from math import dist
from random import Random

from enclosure_app.model.finding import Finding
from enclosure_app.model.place import Area, Line, Point, Points, Shape
from enclosure_app.model.section import Piece, Section
from tests.random_edits import edited, sections

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


def _fresh(draft: Draft) -> str:
    names = {each.piece.name for each in draft.made}
    while True:
        name = f"{draft.random.randrange(0x20, 0xFFFF):X}"
        if name not in names:
            return name


# Writing the file anew: nothing that is drawn changes.


def renumber(draft: Draft) -> None:
    """Give out the handles anew: the same ones to other pieces, or fresh ones."""
    names = [each.piece.name for each in draft.made]
    if draft.random.random() < 0.5:
        draft.random.shuffle(names)
    else:
        names = [f"N{n:X}" for n in range(len(names))]
    draft.made = [
        replace(each, piece=replace(each.piece, name=name, handles=(name,)))
        for each, name in zip(draft.made, names, strict=True)
    ]


def swap_handles(draft: Draft) -> None:
    if len(draft.made) < 2:
        return
    a, b = draft.random.sample(range(len(draft.made)), 2)
    one, two = draft.made[a], draft.made[b]
    draft.made[a] = replace(
        one, piece=replace(one.piece, name=two.piece.name, handles=two.piece.handles)
    )
    draft.made[b] = replace(
        two, piece=replace(two.piece, name=one.piece.name, handles=one.piece.handles)
    )


def write_anew(draft: Draft) -> None:
    """Turn lines round, put points between, shuffle the order: as another program exports it."""
    for n, each in enumerate(draft.made):
        shape, random = each.piece.shape, draft.random
        points = points_of(shape)
        if isinstance(shape, Line) and not shape.closed and random.random() < 0.5:
            points = points[::-1]
        if random.random() < 0.5:
            k = random.randrange(len(points) - 1)
            (x0, y0), (x1, y1) = points[k : k + 2]
            points = (*points[: k + 1], ((x0 + x1) / 2, (y0 + y1) / 2), *points[k + 1 :])
        again = (
            Area(points, shape.holes) if isinstance(shape, Area) else replace(shape, points=points)
        )
        draft.made[n] = replace(each, piece=replace(each.piece, shape=again))
    draft.random.shuffle(draft.made)


def _everywhere(draft: Draft, move: Callable[[Point], Point]) -> None:
    section, before = draft.section, draft.place
    draft.made = [
        replace(each, piece=replace(each.piece, shape=mapped(each.piece.shape, move)))
        for each in draft.made
    ]
    draft.section = replace(
        section,
        frame=tuple(map(move, section.frame)),
        inside=tuple(map(move, section.inside)),
        outside=tuple(map(move, section.outside)),
        breaks=tuple(
            replace(
                b, near=(move(b.near[0]), move(b.near[1])), far=(move(b.far[0]), move(b.far[1]))
            )
            for b in section.breaks
        ),
    )
    draft.place = lambda point: move(before(point))


def in_inches(draft: Draft) -> None:
    """Write every place in inches of three decimals."""
    _everywhere(draft, lambda p: (round(p[0] / 25.4, 3) * 25.4, round(p[1] / 25.4, 3) * 25.4))


def shift(draft: Draft) -> None:
    by = draft.random.choice([1.0, 40.0, 1e3, 1e5])
    dx, dy = (draft.random.uniform(-by, by) for _ in range(2))
    _everywhere(draft, lambda p: (p[0] + dx, p[1] + dy))


def mirror(draft: Draft) -> None:
    about = draft.random.uniform(-1e3, 1e3)
    _everywhere(draft, lambda p: (2 * about - p[0], p[1]))
    draft.made = [replace(each, by=(-each.by[0], each.by[1])) for each in draft.made]


def rename(draft: Draft) -> None:
    draft.section = replace(draft.section, name=f"Section {draft.random.randrange(99)}")
    draft.made = [
        replace(each, piece=replace(each.piece, layer=f"L{n % 5}"))
        for n, each in enumerate(draft.made)
    ]


# Drawing on: what the revision is for.


def _move(draft: Draft, rows: list[int], by: Point) -> None:
    for n in rows:
        each = draft.made[n]
        shape = mapped(each.piece.shape, lambda p: (p[0] + by[0], p[1] + by[1]))
        to = (each.by[0] + by[0], each.by[1] + by[1])
        draft.made[n] = Made(replace(each.piece, shape=shape), each.of, to)


def move_piece(draft: Draft) -> None:
    n, by = draft.some(), draft.random.choice([3.0, 30.0, 300.0])
    if n is not None:
        _move(draft, [n], (draft.random.uniform(-by, by), draft.random.uniform(-by, by)))


def move_group(draft: Draft) -> None:
    count = draft.random.randrange(2, 8)
    start = draft.random.randrange(len(draft.made))
    by = draft.random.choice([30.0, 300.0])
    rows = [*range(len(draft.made))][start : start + count]
    _move(draft, rows, (draft.random.uniform(-by, by), draft.random.uniform(-by, by)))


def move_point(draft: Draft) -> None:
    n = draft.some()
    if n is None:
        return
    each, by = draft.made[n], draft.random.choice([2.0, 20.0, 200.0])
    points = list(points_of(each.piece.shape))
    k = draft.random.randrange(len(points))
    x, y = points[k]
    points[k] = (x + draft.random.uniform(-by, by), y + draft.random.uniform(-by, by))
    shape = each.piece.shape
    again: Shape = (
        Area(tuple(points), shape.holes)
        if isinstance(shape, Area)
        else replace(shape, points=tuple(points))
    )
    draft.made[n] = replace(each, piece=replace(each.piece, shape=again))


def delete(draft: Draft) -> None:
    if len(draft.made) > 3 and (n := draft.some()) is not None:
        del draft.made[n]


def delete_and_give_the_handle_again(draft: Draft) -> None:
    if len(draft.made) < 4 or (n := draft.some()) is None:
        return
    gone = draft.made.pop(n)
    add(draft, gone.piece.name)


def add(draft: Draft, name: str = "") -> None:
    """Draw a piece like another one, elsewhere."""
    n = draft.some()
    if n is None:
        return
    like = draft.made[n].piece
    by = draft.random.choice([15.0, 150.0, 1500.0])
    dx, dy = (draft.random.uniform(-by, by) for _ in range(2))
    name = name or _fresh(draft)
    shape = mapped(like.shape, lambda p: (p[0] + dx, p[1] + dy))
    draft.made.append(
        Made(replace(like, name=name, handles=(name,), shape=shape), frozenset({"+" + name}))
    )


def split(draft: Draft) -> None:
    n = draft.some(lambda each: isinstance(each.piece.shape, Line) and not each.piece.shape.closed)
    if n is None:
        return
    each = draft.made[n]
    shape = each.piece.shape
    assert isinstance(shape, Line)
    k = draft.random.randrange(len(shape.points) - 1)
    (x0, y0), (x1, y1) = shape.points[k : k + 2]
    t, gap = draft.random.uniform(0.2, 0.8), draft.random.choice([0.0, 0.0, 8.0])
    length = dist((x0, y0), (x1, y1)) or 1.0
    first = (x0 + t * (x1 - x0), y0 + t * (y1 - y0))
    s = min(0.95, t + gap / length)
    second = (x0 + s * (x1 - x0), y0 + s * (y1 - y0))
    halves = [(*shape.points[: k + 1], first), (second, *shape.points[k + 1 :])]
    draft.random.shuffle(halves)
    kept, other = (replace(shape, points=points) for points in halves)
    name = _fresh(draft)
    draft.made[n] = replace(each, piece=replace(each.piece, shape=kept))
    draft.made.append(
        replace(each, piece=replace(each.piece, name=name, handles=(name,), shape=other))
    )


def join(draft: Draft) -> None:
    """Make one run of two lines of one product whose ends are near to each other."""
    lines = [
        n for n, each in enumerate(draft.made)
        if isinstance(each.piece.shape, Line) and not each.piece.shape.closed
    ]  # fmt: skip
    draft.random.shuffle(lines)
    for a in lines:
        for b in lines:
            one, two = draft.made[a], draft.made[b]
            if a == b or one.piece.product != two.piece.product or one.by != two.by:
                continue
            if dist(one.piece.shape.points[-1], two.piece.shape.points[0]) > 120.0:
                continue
            points = (*one.piece.shape.points, *two.piece.shape.points)
            shape = replace(one.piece.shape, points=points)
            draft.made[a] = Made(replace(one.piece, shape=shape), one.of | two.of, one.by)
            del draft.made[b]
            return


def other_product(draft: Draft) -> None:
    n, like = draft.some(), draft.some()
    if n is not None and like is not None:
        each = draft.made[n]
        product = draft.made[like].piece.product
        draft.made[n] = replace(each, piece=replace(each.piece, product=product))


def widen_frame(draft: Draft) -> None:
    xs, ys = zip(*draft.section.frame, strict=True)
    by = draft.random.uniform(0.0, 80.0)
    low, high = (min(xs) - by, min(ys)), (max(xs) + by, max(ys) + by)
    frame = (low, (high[0], low[1]), high, (low[0], high[1]))
    draft.section = replace(draft.section, frame=frame)


WRITTEN = (renumber, swap_handles, write_anew, in_inches, shift, mirror, rename)
DRAWN = (
    move_piece, move_group, move_point, delete, delete_and_give_the_handle_again, add, split,
    join, other_product, widen_frame,
)  # fmt: skip
Step = Callable[[Draft], None]


@cache
def faulty_sections() -> tuple[Section, ...]:
    """The samples', the walls and the ready-made parts, some of them damaged at random."""
    random, found = Random(4), list[Section]()  # noqa: S311  drawings, no secrets
    for section in sections():
        found.append(_handled(section))
        for _ in range(2):
            damaged = section
            for _ in range(random.randrange(1, 4)):
                edit = (
                    random.randrange(17), random.randrange(10_000), random.randrange(10_000),
                    random.randrange(6), random.randint(-30, 30), random.randint(-30, 30),
                )  # fmt: skip
                damaged = edited(damaged, edit)
            found.append(_handled(damaged))
    return tuple(found)


def _handled(section: Section) -> Section:
    """Return a section whose pieces have handles, as a drawing's have."""
    pieces = tuple(replace(p, handles=p.handles or (p.name,)) for p in section.pieces)
    return replace(section, pieces=pieces)


def revised(section: Section, random: Random, steps: tuple[Step, ...]) -> Draft:
    draft = drafted(section, random)
    for step in steps:
        step(draft)
        draft.steps.append(step.__name__)
    return draft


def random_steps(random: Random) -> tuple[Step, ...]:
    """Some of each kind, in any order; often the file is only written anew."""
    drawn = random.choices(DRAWN, k=random.choice([0, 1, 1, 2, 3, 5]))
    written = random.sample(WRITTEN, k=random.choice([0, 1, 1, 2, 3, 4]))
    steps = [*drawn, *written]
    random.shuffle(steps)
    return tuple(steps)


def sheet_of_sections(earlier: list[Section], random: Random) -> list[Draft]:
    """Return a revision of several sections on one sheet, in the order of the earlier ones.

    Some are only written anew; then their names may be given round, and all may be renumbered.
    """
    drafts = [revised(each, random, random_steps(random)) for each in earlier]
    names = [draft.section.name for draft in drafts]
    if random.random() < 0.4:
        random.shuffle(names)
    for n, (draft, name) in enumerate(zip(drafts, names, strict=True)):
        unique = name if names.count(name) == 1 else f"{name} {n}"
        draft.section = replace(draft.section, name=unique)
    return drafts


def with_twins(chosen: list[Section], random: Random) -> list[Section]:
    """Return sections beside each other, one of them drawn twice, all under names of their own."""
    twins = [*chosen, random.choice(chosen)] if random.random() < 0.6 else chosen
    apart: list[Section] = []
    for n, section in enumerate(twins):
        draft = drafted(section, random)
        _everywhere(draft, lambda p, n=n: (p[0] + 20_000.0 * n, p[1]))  # type: ignore[misc]
        draft.made = [
            replace(
                m,
                piece=replace(
                    m.piece, name=f"{n}x{m.piece.name}", handles=(f"{n}x{m.piece.name}",)
                ),
            )
            for m in draft.made
        ]
        draft.section = replace(section, name=f"Detail {n}", **{
            name: getattr(draft.section, name) for name in ("frame", "inside", "outside", "breaks")
        })  # fmt: skip
        apart.append(draft.finished())
    return apart
