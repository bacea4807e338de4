"""The proof that a layer is closed, again, after a few of its pieces have moved.

It goes back to the last time that the whole layer was proved closed, and looks at all places that
have changed since then. Like the proof itself it knows nothing of the graph.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from enclosure_app.geometry.resealing import Core, still_closed
from enclosure_app.geometry.rims import Floats, Ints
from enclosure_app.geometry.rows import NEW, same_rows
from enclosure_app.geometry.solids import Solid, extents_of
from enclosure_app.model.place import Point
from enclosure_app.network.opening import Opening

MARGIN = 10.0  # mm round what has changed; at least three times what counts as touching
AROUND = 250.0  # mm round that: what is further away is not looked at
FEW = 3  # places that changed: with more, the layer is proved as a whole
SMALL = 300  # solids near one of them


@dataclass(frozen=True, slots=True, eq=False)
class Drawn:
    """What the opening is found between: `solids` (the frame is the last), and bridges over laps.

    `bridges` (k, 2, 2) lead from face to face, `owners` (k, 2) are the solids that they lead to.
    """

    solids: tuple[Solid, ...]
    bridges: Floats
    owners: Ints


@dataclass(frozen=True, slots=True, eq=False)
class Proof:
    """An opening, what it was found between, and the `base` that its rooms belong to."""

    opening: Opening
    drawn: Drawn
    base: Drawn


def closed_again(last: Proof, drawn: Drawn, touch: float) -> Proof | None:
    """Return the proof that a layer is closed still; None where it has to be asked as a whole."""
    rooms = last.opening.rooms
    if rooms is None:
        return None
    boxes = _merged(_changed(last.base, drawn), max(MARGIN, 3 * touch))
    if len(boxes) > FEW:
        return None
    extents = extents_of(drawn.solids[:-1])
    cores = [_core(drawn, extents, box) for box in boxes]
    if any(len(core.solids) > SMALL for core in cores) or not still_closed(rooms, cores):
        return None
    return Proof(last.opening, drawn, last.base)


def _changed(base: Drawn, drawn: Drawn) -> list[Floats]:
    """Return the extents (2, 2) of all solids and bridges that have changed, as they were and are."""
    pairs = zip(base.solids, drawn.solids, strict=True)
    solids = [each for old, new in pairs if old is not new and old != new for each in (old, new)]
    there = same_rows(base.bridges.reshape(-1, 4), drawn.bridges.reshape(-1, 4))
    gone = np.setdiff1d(np.arange(len(base.bridges)), there)
    chords = np.concatenate([base.bridges[gone], drawn.bridges[there == NEW]])
    return [
        *(extents_of(solids) if solids else ()),
        *np.stack([chords.min(axis=1), chords.max(axis=1)], axis=1),
    ]


def _merged(boxes: Sequence[Floats], margin: float) -> list[Floats]:
    """Return boxes with a margin around them, those that meet taken together."""
    apart: list[Floats] = []
    for box in boxes:
        grown = np.array([box[0] - margin, box[1] + margin])
        while True:
            met = [each for each in apart if _meet(each, grown)]
            if not met:
                break
            apart = [each for each in apart if not _meet(each, grown)]
            every = np.array([*met, grown])
            grown = np.array([every[:, 0].min(axis=0), every[:, 1].max(axis=0)])
        apart.append(grown)
    return apart


def _meet(one: Floats, other: Floats) -> bool:
    return bool((one[0] <= other[1]).all() and (one[1] >= other[0]).all())


def _core(drawn: Drawn, extents: Floats, box: Floats) -> Core:
    """Return a core with all that lies near it; a bridge counts only where both its ends do."""
    near = ((extents[:, 0] <= box[1] + AROUND) & (extents[:, 1] >= box[0] - AROUND)).all(axis=1)
    both = near[drawn.owners].all(axis=1)
    bridges: list[tuple[Point, Point]] = [
        ((ax, ay), (bx, by)) for (ax, ay), (bx, by) in drawn.bridges[both].tolist()
    ]
    solids = [drawn.solids[number] for number in np.flatnonzero(near).tolist()]
    return Core(box, solids, bridges)
