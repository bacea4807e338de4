"""Where pieces of one control meet, and whether their products seal the place by themselves."""

from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np

from enclosure_app.geometry.rims.rims import Bools, Floats, Ints
from enclosure_app.geometry.rims.rows import NEW, same_rows
from enclosure_app.model.place import Point
from enclosure_app.model.product import Bond, Kind, Product
from enclosure_app.network.fabric.fabric import Fabric
from enclosure_app.network.fabric.links import TOUCHES, Links

WHOLE = frozenset({Kind.GLASS, Kind.OPENING})
"""Frame and pane come joined from the works."""
CAST = frozenset({Kind.CONCRETE})
"""Poured against each other; whether a cold joint needs a waterstop no section can tell."""


@dataclass(frozen=True, slots=True)
class Meeting:
    """One pair of owners meeting at one place; `run` is a run number or `TOUCHES`."""

    a: int
    b: int
    at: Point
    run: int


@dataclass(frozen=True, slots=True)
class Seals:
    """For each pair of owners, lapped or not: a key, in order, and whether its products seal it."""

    keys: Ints
    sealed: Bools


def seals_of(fabric: Fabric, links: Links, last: Seals | None = None) -> tuple[Seals, Bools]:
    """Return which pairs are sealed, and for each link whether it is; `last` tells known pairs."""
    owner_a, owner_b = owners_of(fabric, links)
    count = len(fabric.names)
    every = (owner_a * count + owner_b) * 2 + (links.run != TOUCHES)
    keys, back = np.unique(every, return_inverse=True)
    sealed, known = np.zeros(len(keys), dtype=bool), np.zeros(len(keys), dtype=bool)
    if last is not None and len(last.keys):
        at = np.minimum(np.searchsorted(last.keys, keys), len(last.keys) - 1)
        known = last.keys[at] == keys
        sealed = last.sealed[at]
    for row in np.flatnonzero(~known).tolist():
        pair, lapped = divmod(int(keys[row]), 2)
        sealed[row] = _sealed(fabric, *divmod(pair, count), lapped=bool(lapped))
    return Seals(keys, sealed), sealed[back.reshape(-1)]


def owners_of(fabric: Fabric, links: Links) -> tuple[Ints, Ints]:
    """Return the owners of the two sides of each link."""
    owner = fabric.rims.owner[fabric.rims.rim]
    return owner[links.a], owner[links.b]


def _sealed(fabric: Fabric, a: int, b: int, *, lapped: bool) -> bool:
    if max(a, b) >= len(fabric.pieces) or a == b:
        return True  # at the frame or a break the layer goes on elsewhere
    if declared_sealed(fabric, a, b):
        return True
    first, second = (fabric.section.product(fabric.pieces[number]) for number in (a, b))
    return joined_in_works(first, second) or _bonded(first.bond, second.bond, lapped=lapped)


def declared_sealed(fabric: Fabric, a: int, b: int) -> bool:
    """Whether a person declared the joint of two owners sealed."""
    first, second = sorted((fabric.names[a], fabric.names[b]))
    return (first, second) in fabric.section.sealed


def joined_in_works(first: Product, second: Product) -> bool:
    """Whether two products come as one: panes in frames, concrete against concrete."""
    kinds = {first.kind, second.kind}
    return kinds <= WHOLE or kinds <= CAST


def _bonded(first: Bond, second: Bond, *, lapped: bool) -> bool:
    if lapped:
        return first.seals or second.seals
    return first.seals_edges or second.seals_edges


@dataclass(frozen=True, slots=True)
class Meetings:
    """One meeting for each lap, and one for each touching pair that does not lap.

    `rows` (m, 6) tell of each: both owners, the run, the place, and the run's length (mm).
    """

    rows: Floats
    found: tuple[Meeting, ...]


def meetings(fabric: Fabric, links: Links, last: Meetings | None = None) -> Meetings:
    """Return where pieces meet; those that are the same as in `last` are the very same objects."""
    rows = _meeting_rows(fabric, links)
    source = same_rows(last.rows, rows) if last else np.full(len(rows), NEW)
    known: list[Any] = list(last.found) if last else []
    fresh = np.flatnonzero(source == NEW)
    if len(known) != len(rows):
        known = [known[n] if n != NEW else None for n in source.tolist()]
    for number, (a, b, run, x, y, _) in zip(fresh.tolist(), rows[fresh].tolist(), strict=True):
        known[number] = Meeting(int(a), int(b), (x, y), int(run))
    return Meetings(rows, tuple(known))


def _meeting_rows(fabric: Fabric, links: Links) -> Floats:
    count = len(fabric.pieces)
    owner_a, owner_b = owners_of(fabric, links)
    apart = (owner_a != owner_b) & (owner_a < count) & (owner_b < count)
    order = np.lexsort((owner_b, owner_a, links.run == TOUCHES))
    order = order[apart[order]]
    low, high = np.sort([owner_a[order], owner_b[order]], axis=0)
    _, first = np.unique(low * count + high, return_index=True)
    shown = links.run[order] != TOUCHES  # laps come first, and stand for what touches as well
    shown[first] = True
    order, low, high = order[shown], low[shown], high[shown]
    middle = (links.at_a[order] + links.at_b[order]) / 2
    run = links.run[order]
    length = np.append(fabric.lengths(), 0.0)[run]  # the last one for what only touches
    return np.column_stack([low, high, run, middle, length])


def neighbours(found: Iterable[Meeting]) -> Mapping[int, frozenset[int]]:
    """Return for each owner the owners that it meets."""
    table: defaultdict[int, set[int]] = defaultdict(set)
    for meeting in found:
        table[meeting.a].add(meeting.b)
        table[meeting.b].add(meeting.a)
    return {owner: frozenset(others) for owner, others in table.items()}
