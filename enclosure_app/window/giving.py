"""Says what picked lines are made of: pieces change their product, linework becomes pieces."""

from collections.abc import Collection
from dataclasses import replace
from math import dist

from enclosure_app.model.edits import index_of, replace_section, set_product
from enclosure_app.model.place import Area, Line, Points, Shape
from enclosure_app.model.product import Product
from enclosure_app.model.project import Project
from enclosure_app.model.section import Piece, Section, Stroke

_CLOSED = 0.5  # mm between the ends of an outline that is drawn closed


def given_product(
    project: Project,
    which: int,
    picked: tuple[Collection[str], Collection[str]],
    product: str,
) -> Project:
    """Return the project with picked pieces and lines made of a product.

    Args:
        project: The project.
        which: The section.
        picked: Names of pieces, and handles of lines of the office's linework.
        product: The product's key.

    Raises:
        EnclosureError: there is no such piece, or no such product in the section.
    """
    names, handles = picked
    if names:
        project = set_product(project, which, names, product)
    section = project.sections[index_of(project, which)]
    chosen = [stroke for stroke in section.strokes if stroke.handle in handles]
    if not chosen:
        return project
    return replace_section(project, which, _with_pieces(section, chosen, product))


def _with_pieces(section: Section, chosen: list[Stroke], product: str) -> Section:
    taken = set(section.by_name)
    made: list[Piece] = []
    for run, strokes in _chained(chosen):
        first = strokes[0]
        name = _new_name(first.handle or "line", taken)
        taken.add(name)
        handles = tuple(dict.fromkeys(stroke.handle for stroke in strokes))
        shape = _shape(run, section.products[product])
        made.append(Piece(name, product, shape, handles, first.layer))
    gone = {id(stroke) for stroke in chosen}
    left = tuple(stroke for stroke in section.strokes if id(stroke) not in gone)
    return replace(section, pieces=(*section.pieces, *made), strokes=left)


def _chained(strokes: list[Stroke]) -> list[tuple[Points, list[Stroke]]]:
    """Join lines that meet end to end into runs."""
    runs: list[tuple[Points, list[Stroke]]] = []
    left = list(strokes)
    while left:
        stroke = left.pop(0)
        run, used = stroke.points, [stroke]
        while True:
            found = next(((s, joined) for s in left if (joined := _joined(run, s.points))), None)
            if found is None:
                break
            other, run = found
            used.append(other)
            left.remove(other)
        runs.append((run, used))
    return runs


def _joined(run: Points, other: Points) -> Points:
    """Return the two runs end to end, () where they do not meet."""
    if _meet(run[-1], run[0]):
        return ()
    for ahead in (other, other[::-1]):
        if _meet(run[-1], ahead[0]):
            return (*run, *ahead[1:])
        if _meet(ahead[-1], run[0]):
            return (*ahead[:-1], *run)
    return ()


def _meet(a: tuple[float, float], b: tuple[float, float]) -> bool:
    return dist(a, b) <= _CLOSED


def _shape(run: Points, product: Product) -> Shape:
    closed = len(run) > 3 and _meet(run[0], run[-1])
    if closed and product.drawn != "line":
        return Area(run[:-1])
    return Line(run[:-1], closed=True) if closed else Line(run)


def _new_name(stem: str, taken: set[str]) -> str:
    if stem not in taken:
        return stem
    number = 2
    while f"{stem}-{number}" in taken:
        number += 1
    return f"{stem}-{number}"
