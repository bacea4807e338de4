"""Notes read: what each note of the drawing names, and the line that its leader points at."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from enclosure_app.geometry.outlines.clipping import within
from enclosure_app.geometry.rims.closest import foot
from enclosure_app.model.place import Area, Line, Point, Points
from enclosure_app.model.product import Product
from enclosure_app.model.section import Piece, Section
from enclosure_app.planning.notes.leaders import Leader, leaders_of, notes_of
from enclosure_app.planning.notes.words import named_in

SHEET = 5.0  # mm: a sheet this near to a tip is meant before the area that the tip lies in
TOUCH = 1.0  # text heights between a tip and the line that it means
HEADED, BARE = 1.0, 0.9  # how far a leader with and without an arrow head is trusted
NOTHING_THERE = 0.4  # and one whose tip touches nothing


@dataclass(frozen=True, slots=True)
class Proposal:
    """What a note says about what its leader points at.

    `text` is the note; `product` the key of what it names, "" where it names none that is known;
    `tip` where its arrow ends; `strokes` indices into the section's strokes and `pieces` names of
    pieces that are meant, the nearest first; `confidence` from 0 to 1.
    """

    text: str
    product: str
    confidence: float
    tip: Point
    strokes: tuple[int, ...] = ()
    pieces: tuple[str, ...] = ()


def proposals(
    section: Section, products: Mapping[str, Product] | None = None
) -> tuple[Proposal, ...]:
    """Return one proposal for each leader whose note names a product, the surest first."""
    known = section.products if products is None else products
    made = [each for each in all_notes(section, known) if each.product]
    return tuple(sorted(made, key=lambda each: -each.confidence))


def all_notes(section: Section, products: Mapping[str, Product]) -> tuple[Proposal, ...]:
    """Return what is read from every leader, those whose note names no product among them."""
    leaders = leaders_of(notes_of(section.texts), section.strokes)
    own = {i for leader in leaders for i in leader.strokes}
    layers = {section.strokes[i].layer for i in own}
    drawn = [
        (i, stroke.points)
        for i, stroke in enumerate(section.strokes)
        if i not in own and stroke.layer not in layers
    ]
    strokes = _Found([points for _, points in drawn])
    pieces = _Found([_run(piece) for piece in section.pieces])
    numbers = [i for i, _ in drawn]
    return tuple(
        _read(leader, section, products, (strokes, numbers, pieces)) for leader in leaders
    )


def _read(
    leader: Leader,
    section: Section,
    products: Mapping[str, Product],
    found: tuple["_Found", Sequence[int], "_Found"],
) -> Proposal:
    strokes, numbers, pieces = found
    reach = TOUCH * leader.note.height
    meant = tuple(numbers[i] for i in strokes.near(leader.tip, reach))
    named = named_in(leader.note.text, products)
    touched = _pieces(section.pieces, pieces, leader.tip, reach)
    trust = HEADED if leader.headed else BARE
    if not (meant or touched):
        trust *= NOTHING_THERE
    return Proposal(
        leader.note.text,
        named.product if named else "",
        round(trust * named.confidence, 3) if named else 0.0,
        leader.tip,
        meant,
        touched,
    )


def _pieces(every: Sequence[Piece], found: "_Found", tip: Point, reach: float) -> tuple[str, ...]:
    """Return the pieces that a tip may mean: sheets at it, areas that hold it, what else is near."""
    near = [every[i] for i in found.near(tip, reach)]
    close = [every[i] for i in found.near(tip, min(SHEET, reach))]
    sheets = [piece.name for piece in close if isinstance(piece.shape, Line)]
    holding = [piece.name for piece in every if _holds(piece, tip)]
    return tuple(dict.fromkeys([*sheets, *holding, *(piece.name for piece in near)]))


def _holds(piece: Piece, tip: Point) -> bool:
    shape = piece.shape
    return (
        isinstance(shape, Area)
        and bool(within((tip,), shape.outer)[0])
        and not any(within((tip,), hole)[0] for hole in shape.holes)
    )


def _run(piece: Piece) -> Points:
    shape = piece.shape
    ring = shape.outer if isinstance(shape, Area) else shape.points
    return (*ring, ring[0]) if isinstance(shape, Area) or shape.closed else ring


class _Found:
    """Runs to look for near a place."""

    def __init__(self, runs: Sequence[Points]) -> None:
        self.owner = np.repeat(np.arange(len(runs)), [len(run) - 1 for run in runs])
        self.start = np.array([p for run in runs for p in run[:-1]], dtype=float).reshape(-1, 2)
        self.end = np.array([p for run in runs for p in run[1:]], dtype=float).reshape(-1, 2)

    def near(self, place: Point, reach: float) -> list[int]:
        """Return the runs within `reach` mm of a place, the nearest first."""
        here = np.broadcast_to(np.array(place), self.start.shape)
        away = np.hypot(*(foot(here, self.start, self.end) - here).T)
        order = np.argsort(away, kind="stable")
        return list(dict.fromkeys(self.owner[order[away[order] <= reach]].tolist()))
