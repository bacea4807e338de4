"""A fabric again, after a few of its pieces have moved: what they do not come near stays as it was.

All numbers (of owners, rims and segments) stay the same; where they would not, the fabric has to be
woven anew.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import chain

import numpy as np

from enclosure_app.geometry.rims.rims import Bools, Floats, Ints, Rims, patched
from enclosure_app.geometry.rims.rows import unlike
from enclosure_app.geometry.runs.alongside import SideBySide, runs_of
from enclosure_app.geometry.runs.foremost import parts_left
from enclosure_app.model.limits import Tolerances
from enclosure_app.model.section import Section
from enclosure_app.network.fabric.bodies import Bodies
from enclosure_app.network.fabric.fabric import (
    Beside,
    Fabric,
    laps_in,
    middles,
    parted_by_none,
    table_of,
)


@dataclass(frozen=True, slots=True)
class Moved:
    """What moved in a section: the pieces' names, and the extents (k, 2, 2) of areas, old and new."""

    names: frozenset[str]
    areas: Floats


def reweave(
    last: Fabric, section: Section, moved: Moved, tolerances: Tolerances, bodies: Bodies
) -> Fabric | None:
    """Return the fabric of the section as it is now; None where it has to be woven anew."""
    owners = [n for n, piece in enumerate(last.pieces) if piece.name in moved.names]
    if not owners and not len(moved.areas):
        return replace(last, section=section)
    by_name = section.by_name
    axes = patched(last.axes, {n: bodies.axes[last.names[n]] for n in owners})
    rims = patched(last.rims, {n: bodies.solids[last.names[n]] for n in owners})
    if axes is None or rims is None:
        return None
    solids, pieces = list(last.solids), list(last.pieces)
    for n in owners:
        solids[n], pieces[n] = bodies.solids[last.names[n]], by_name[last.names[n]]
    changed = replace(
        last, section=section, pieces=tuple(pieces), solids=tuple(solids), rims=rims, axes=axes
    )
    return _lapped(
        changed, np.flatnonzero(np.isin(axes.owner, owners)), moved, (tolerances, bodies)
    )


def _lapped(fabric: Fabric, rims: Ints, moved: Moved, given: tuple[Tolerances, Bodies]) -> Fabric:
    """Return the fabric with its runs put right: those of the moved `rims`, and what these hide."""
    (tolerances, bodies), old, count = given, fabric.beside, len(fabric.axes.owner)
    few = np.zeros(count, dtype=bool)
    few[rims] = True
    gone = np.flatnonzero(few[old.rims[:, 0]] | few[old.rims[:, 1]])
    new = runs_of(fabric.axes, fabric.half, tolerances.lap_reach, tolerances.touch, rims)
    clear = old.clear.copy()
    turned = _parted_otherwise(fabric.axes, bodies, old, (gone, moved.areas))
    clear[turned] ^= True
    touched = np.zeros(count, dtype=bool)
    touched[old.rims[[*gone.tolist(), *turned]]] = True
    touched[[rim for run in new for rim in (run.a, run.b)]] = True
    changed = replace(old, clear=clear)
    beside = _exchanged(changed, gone, new, parted_by_none(bodies, fabric.axes, new))
    beside = _seen(fabric.axes, beside, touched, tolerances.touch)
    runs = tuple(chain.from_iterable(beside.parts))
    return replace(fabric, beside=beside, runs=runs, table=_table(fabric, runs))


def _exchanged(old: Beside, gone: Ints, new: Sequence[SideBySide], clear: Bools) -> Beside:
    """Return the runs without those that are `gone`, and with `new` ones in their places."""
    runs, parts = list(old.runs), list(old.parts)
    for number in reversed(gone.tolist()):
        del runs[number], parts[number]
    kept = np.delete(old.rims, gone, axis=0)
    rims = np.array([(run.a, run.b) for run in new], dtype=np.intp).reshape(-1, 2)
    count = len(old.hides)
    places = np.searchsorted(kept[:, 0] * count + kept[:, 1], rims[:, 0] * count + rims[:, 1])
    for number, (place, run) in enumerate(zip(places.tolist(), new, strict=True)):
        runs.insert(place + number, run)
        parts.insert(place + number, ())
    return Beside(
        tuple(runs),
        np.insert(kept, places, rims, axis=0),
        np.insert(np.delete(old.clear, gone), places, clear),
        tuple(parts),
        old.hides,
    )


def _seen(axes: Rims, beside: Beside, touched: Bools, touch: float) -> Beside:
    """Tell what is left of each run that shares a line with a `touched` rim."""
    a, b = beside.rims.T
    asked = touched[a] | touched[b]
    lines = np.zeros(len(touched), dtype=bool)
    lines[beside.rims[asked & beside.clear]] = True
    near = np.flatnonzero((lines[a] | lines[b]) & beside.clear)
    parts = list(beside.parts)
    for number in np.flatnonzero(asked).tolist():
        parts[number] = ()
    left = parts_left(axes, [beside.runs[number] for number in near.tolist()], beside.hides)
    for number, each in zip(near.tolist(), left, strict=True):
        if asked[number]:
            parts[number] = laps_in(each, touch)
    return replace(beside, parts=tuple(parts))


def _table(last: Fabric, runs: Sequence[SideBySide]) -> Floats:
    """Return the table of `runs`, most of which are the very same as those of the last fabric."""
    if len(runs) != len(last.runs):
        return table_of(runs)
    new = unlike(last.runs, runs)
    table = last.table.copy()
    table[new] = table_of([runs[n] for n in new])
    return table


def _parted_otherwise(
    axes: Rims, bodies: Bodies, beside: Beside, given: tuple[Ints, Floats]
) -> list[int]:
    """Return which runs that are not `gone` areas that moved have come, or no longer come, between."""
    gone, areas = given
    kept = np.delete(np.arange(len(beside.runs)), gone)
    if not len(areas) or not len(kept):
        return []
    chords = middles(axes, [beside.runs[number] for number in kept.tolist()])
    near = kept[_meet(chords, areas)]
    clear = parted_by_none(bodies, axes, [beside.runs[number] for number in near.tolist()])
    turned: list[int] = near[clear != beside.clear[near]].tolist()
    return turned


def _meet(chords: Floats, boxes: Floats) -> Bools:
    """Return which chords (k, 2, 2) come into any of the boxes (m, 2, 2)."""
    low, high = chords.min(axis=1)[:, None], chords.max(axis=1)[:, None]
    meet = (low <= boxes[:, 1] + 1.0) & (high >= boxes[:, 0] - 1.0)
    return np.asarray(meet.all(axis=2).any(axis=1))
