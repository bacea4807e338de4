"""Revised drawings made at random, with the truth known of every piece.

A revision is made of a section by what offices do between two issues: pieces are moved, split,
joined, deleted, added; the file is written anew, renumbered, mirrored, shifted, renamed. Each piece
knows which earlier pieces it is made of, so that what the program says can be judged.
"""

from collections import defaultdict
from collections.abc import Callable
from dataclasses import replace
from functools import cache
from math import dist
from random import Random

from enclosure_app.geometry.runs.likeness import length, middle
from enclosure_app.model.place import Area, Line, Point, Shape
from enclosure_app.model.section import Section
from tests.planning.revision.drafts import Draft, Made, drafted, fresh_name, mapped, points_of
from tests.planning.revision.writing_anew import WRITTEN, everywhere, mirror, renumber, shift
from tests.random_edits import edited, sections

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
    name = name or fresh_name(draft)
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
    long = dist((x0, y0), (x1, y1)) or 1.0
    first = (x0 + t * (x1 - x0), y0 + t * (y1 - y0))
    s = min(0.95, t + gap / long)
    second = (x0 + s * (x1 - x0), y0 + s * (y1 - y0))
    halves = [(*shape.points[: k + 1], first), (second, *shape.points[k + 1 :])]
    draft.random.shuffle(halves)
    kept, other = (replace(shape, points=points) for points in halves)
    name = fresh_name(draft)
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


# What is meant to lead astray: pieces that look like each other.


def _look_alike(draft: Draft) -> list[list[int]]:
    """The pieces of one product and length, from below, several together."""
    rows: dict[tuple[str, int], list[int]] = defaultdict(list)
    for n, each in enumerate(draft.made):
        rows[each.piece.product, round(length(points_of(each.piece.shape)))].append(n)
    return [sorted(row, key=lambda n: _centre(draft, n)[::-1]) for row in rows.values() if row[1:]]


def _is_of_earlier(each: Made) -> bool:
    return not any(name.startswith("+") for name in each.of)


def _centre(draft: Draft, n: int) -> Point:
    return middle(points_of(draft.made[n].piece.shape))


def pass_handles_on(draft: Draft) -> None:
    """Each of several pieces that look alike gets the handle of the next one."""
    for row in _look_alike(draft):
        old = [draft.made[n].piece for n in row]
        for n, like in zip(row, [*old[1:], old[0]], strict=True):
            piece = replace(draft.made[n].piece, name=like.name, handles=like.handles)
            draft.made[n] = replace(draft.made[n], piece=piece)


def move_on_by_one(draft: Draft) -> None:
    """Move sheets on by their spacing, so that most lie where another one lay.

    A copy that comes to lie just where its original lay is that sheet, for all anybody can see.
    """
    rows = [r for r in _look_alike(draft) if all(_is_of_earlier(draft.made[n]) for n in r)]
    row = max(rows, key=len, default=[])
    if row:
        (x0, y0), (x1, y1) = (_centre(draft, n) for n in row[:2])
        every = [*range(len(draft.made))]
        _move(draft, draft.random.choice([row, every]), (x1 - x0, y1 - y0))


ATTACKS = (
    (pass_handles_on,), (move_on_by_one,), (move_group, pass_handles_on),
    (move_on_by_one, delete), (move_on_by_one, add, shift), (mirror, pass_handles_on),
    (delete, add, add, pass_handles_on), (delete_and_give_the_handle_again,) * 3,
    (join, split, join, split), (widen_frame, mirror, renumber, delete),
    (move_group, move_group, renumber), (other_product, other_product, pass_handles_on),
)  # fmt: skip
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


def mixed_steps(random: Random, attack: tuple[Step, ...]) -> tuple[Step, ...]:
    """What is meant to lead astray among what offices do, in any order."""
    steps = [*attack, *random_steps(random)]
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
        everywhere(draft, lambda p, n=n: (p[0] + 20_000.0 * n, p[1]))  # type: ignore[misc]
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
