"""The proof that a layer is closed, again, after a few of its pieces have moved.

It goes back to the last time that the whole layer was proved closed, and looks at all places that
have changed since then. Like the proof itself it knows nothing of the graph.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np

from enclosure_app.geometry.openings.resealing import Core, still_closed
from enclosure_app.geometry.rims.rims import Floats, Ints
from enclosure_app.geometry.rims.rows import NEW, same_rows, unlike
from enclosure_app.geometry.rims.solids import Solid, extents_of
from enclosure_app.model.place import Point
from enclosure_app.network.opening import Opening

MARGIN = 10.0  # mm round what has changed; at least three times what counts as touching
AROUND = 250.0  # mm round that: what is further away is not looked at
FEW = 3  # places that changed: with more, the layer is proved as a whole
SMALL = 300  # solids near one of them


@dataclass(frozen=True, eq=False)
class Drawn:
    """What the opening is found between: `solids` (the frame is the last), and bridges over laps.

    `bridges` (k, 2, 2) lead from face to face, `owners` (k, 2) are the solids that they lead to.
    """

    solids: tuple[Solid, ...]
    bridges: Floats
    owners: Ints

    @cached_property
    def extents(self) -> Floats:
        """The extents (n, 2, 2) of all solids but the frame."""
        return extents_of(self.solids[:-1])


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
    moved = [n for n in unlike(last.base.solids, drawn.solids)
             if last.base.solids[n] != drawn.solids[n]]  # fmt: skip
    extents = last.base.extents.copy()
    extents[moved] = extents_of([drawn.solids[n] for n in moved])
    changed = [*last.base.extents[moved], *extents[moved], *_bridges(last.base, drawn)]
    boxes = _merged(changed, max(MARGIN, 3 * touch))
    if len(boxes) > FEW:
        return None
    cores = [_core(drawn, extents, box) for box in boxes]
    if any(len(core.solids) > SMALL for core in cores) or not still_closed(rooms, cores):
        return None
    return Proof(last.opening, drawn, last.base)


def _bridges(base: Drawn, drawn: Drawn) -> Floats:
    """Return the extents (k, 2, 2) of all bridges that have changed, as they were and are."""
    there = same_rows(base.bridges.reshape(-1, 4), drawn.bridges.reshape(-1, 4))
    kept = np.zeros(len(base.bridges) + 1, dtype=bool)  # the last one for `NEW`
    kept[there] = True
    chords = np.concatenate([base.bridges[~kept[:-1]], drawn.bridges[there == NEW]])
    return np.stack([chords.min(axis=1), chords.max(axis=1)], axis=1)


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
