"""Writing a file anew, as offices and their programs do: nothing that is drawn changes."""

from collections.abc import Callable
from dataclasses import replace

from enclosure_app.model.place import Area, Line, Point
from tests.planning.revision.drafts import Draft, mapped, points_of


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


def everywhere(draft: Draft, move: Callable[[Point], Point]) -> None:
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
    everywhere(draft, lambda p: (round(p[0] / 25.4, 3) * 25.4, round(p[1] / 25.4, 3) * 25.4))


def shift(draft: Draft) -> None:
    by = draft.random.choice([1.0, 40.0, 1e3, 1e5])
    dx, dy = (draft.random.uniform(-by, by) for _ in range(2))
    everywhere(draft, lambda p: (p[0] + dx, p[1] + dy))


def mirror(draft: Draft) -> None:
    about = draft.random.uniform(-1e3, 1e3)
    everywhere(draft, lambda p: (2 * about - p[0], p[1]))
    draft.made = [replace(each, by=(-each.by[0], each.by[1])) for each in draft.made]


def rename(draft: Draft) -> None:
    draft.section = replace(draft.section, name=f"Section {draft.random.randrange(99)}")
    draft.made = [
        replace(each, piece=replace(each.piece, layer=f"L{n % 5}"))
        for n, each in enumerate(draft.made)
    ]


WRITTEN = (renumber, swap_handles, write_anew, in_inches, shift, mirror, rename)
