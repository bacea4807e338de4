"""Where pieces of one control meet, and whether their products seal the place by themselves."""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

import numpy as np

from enclosure_app.geometry.polyline import as_points
from enclosure_app.geometry.rims import Bools
from enclosure_app.model.place import Point
from enclosure_app.model.product import Bond, Kind, Product
from enclosure_app.network.fabric import Fabric
from enclosure_app.network.links import TOUCHES, Links

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


def sealed_by_products(fabric: Fabric, links: Links) -> Bools:
    """Return for each link whether the two products seal it by themselves or a person says so."""
    owner_a = fabric.rims.owner[fabric.rims.rim[links.a]]
    owner_b = fabric.rims.owner[fabric.rims.rim[links.b]]
    keys = np.column_stack([owner_a, owner_b, links.run != TOUCHES])
    distinct, back = np.unique(keys, axis=0, return_inverse=True)
    sealed = [_sealed(fabric, a, b, lapped=bool(lap)) for a, b, lap in distinct.tolist()]
    return np.array(sealed, dtype=bool)[back.reshape(-1)]


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


def meetings(fabric: Fabric, links: Links) -> Iterator[Meeting]:
    """Yield one meeting for each lap, and one for each touching pair that does not lap."""
    count = len(fabric.pieces)
    owner_a = fabric.rims.owner[fabric.rims.rim[links.a]]
    owner_b = fabric.rims.owner[fabric.rims.rim[links.b]]
    apart = (owner_a != owner_b) & (owner_a < count) & (owner_b < count)
    order = np.lexsort((owner_b, owner_a, links.run == TOUCHES))
    seen: set[tuple[int, int]] = set()
    for number in order[apart[order]].tolist():
        pair = (int(owner_a[number]), int(owner_b[number]))
        pair = pair if pair[0] < pair[1] else pair[::-1]
        run = int(links.run[number])
        if run == TOUCHES and pair in seen:
            continue
        seen.add(pair)
        middle = (links.at_a[number] + links.at_b[number]) / 2
        yield Meeting(*pair, as_points(middle[None])[0], run)


def neighbours(found: Iterable[Meeting]) -> Mapping[int, frozenset[int]]:
    """Return for each owner the owners that it meets."""
    table: defaultdict[int, set[int]] = defaultdict(set)
    for meeting in found:
        table[meeting.a].add(meeting.b)
        table[meeting.b].add(meeting.a)
    return {owner: frozenset(others) for owner, others in table.items()}
