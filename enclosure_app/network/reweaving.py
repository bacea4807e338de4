"""A fabric again, after a few of its pieces have moved: what they do not come near stays as it was.

All numbers (of owners, rims and segments) stay the same; where they would not, the fabric has to be
woven anew.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from enclosure_app.geometry.foremost import open_parts
from enclosure_app.geometry.rims import Bools, Floats, Ints, Rims, patched
from enclosure_app.geometry.runs import SideBySide, runs_of
from enclosure_app.model.limits import Tolerances
from enclosure_app.model.section import Section
from enclosure_app.network.bodies import Bodies
from enclosure_app.network.fabric import Fabric, hiding, laps_in, middles, parted_by_none, table_of

Shown = tuple[SideBySide, ...] | None


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
    (tolerances, bodies), few = given, set(rims.tolist())
    kept = [
        (run, shown)
        for run, shown in zip(fabric.beside, fabric.shown, strict=True)
        if run.a not in few and run.b not in few
    ]
    gone = [run for run in fabric.beside if run.a in few or run.b in few]
    fresh = runs_of(fabric.axes, fabric.half, tolerances.lap_reach, tolerances.touch, rims)
    clear = parted_by_none(bodies, fabric.axes, fresh)
    new: list[tuple[SideBySide, Shown]] = [
        (run, (run,) if free else None) for run, free in zip(fresh, clear, strict=True)
    ]
    turned = _parted_otherwise(fabric.axes, bodies, kept, moved.areas)
    for number in turned:
        run, shown = kept[number]
        kept[number] = (run, (run,) if shown is None else None)
    touched = {
        rim for run in (*gone, *fresh, *(kept[n][0] for n in turned)) for rim in (run.a, run.b)
    }
    every = sorted([*kept, *new], key=lambda each: (each[0].a, each[0].b))
    left = _shown(fabric, every, touched)
    runs = laps_in(left, tolerances.touch)
    beside = tuple(run for run, _ in every)
    return replace(fabric, beside=beside, shown=left, runs=runs, table=_table(fabric, runs))


def _table(last: Fabric, runs: Sequence[SideBySide]) -> Floats:
    """Return the table of `runs`, most of which are the very same as those of the last fabric."""
    if len(runs) != len(last.runs):
        return table_of(runs)
    new = [n for n, (run, old) in enumerate(zip(runs, last.runs, strict=True)) if run is not old]
    table = last.table.copy()
    table[new] = table_of([runs[n] for n in new])
    return table


def _parted_otherwise(
    axes: Rims, bodies: Bodies, kept: Sequence[tuple[SideBySide, Shown]], areas: Floats
) -> list[int]:
    """Return which runs have come to be parted, or no longer are, by areas that moved."""
    if not len(areas) or not kept:
        return []
    near = np.flatnonzero(_meet(middles(axes, [run for run, _ in kept]), areas)).tolist()
    clear = parted_by_none(bodies, axes, [kept[n][0] for n in near])
    return [n for n, free in zip(near, clear, strict=True) if free != (kept[n][1] is not None)]


def _meet(chords: Floats, boxes: Floats) -> Bools:
    """Return which chords (k, 2, 2) come into any of the boxes (m, 2, 2)."""
    low, high = chords.min(axis=1)[:, None], chords.max(axis=1)[:, None]
    meet = (low <= boxes[:, 1] + 1.0) & (high >= boxes[:, 0] - 1.0)
    return np.asarray(meet.all(axis=2).any(axis=1))


def _shown(
    fabric: Fabric, every: Sequence[tuple[SideBySide, Shown]], touched: set[int]
) -> tuple[Shown, ...]:
    """Return what is left of each run; only what shares a line with a `touched` rim is asked anew."""
    shown = [each for _, each in every]
    asked = {
        n for n, (run, each) in enumerate(every)
        if each is not None and (run.a in touched or run.b in touched)
    }  # fmt: skip
    lines = {rim for n in asked for rim in (every[n][0].a, every[n][0].b)}
    near = [
        n for n, (run, each) in enumerate(every)
        if each is not None and (run.a in lines or run.b in lines)
    ]  # fmt: skip
    hides = hiding(fabric.section, fabric.pieces, fabric.axes) if near else np.zeros(0, dtype=bool)
    parts = open_parts(fabric.axes, [every[n][0] for n in near], hides)
    for n, left in zip(near, parts, strict=True):
        if n in asked:
            shown[n] = left
    return tuple(shown)
