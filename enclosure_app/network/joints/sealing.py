"""Joints as the model tells them: their kind, and whether they are sealed."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import dist

import numpy as np

from enclosure_app.geometry.rims.rims import Bools
from enclosure_app.geometry.rims.rows import unlike
from enclosure_app.model.place import Line, Point
from enclosure_app.model.product import Bond, Product
from enclosure_app.model.report import Joint, JointKind
from enclosure_app.network.fabric.fabric import Fabric
from enclosure_app.network.fabric.links import TOUCHES
from enclosure_app.network.joints.joints import (
    Meeting,
    Meetings,
    declared_sealed,
    joined_in_works,
    neighbours,
)
from enclosure_app.network.joints.laps import Lap

NEARBY = 60.0  # mm: how far from a joint the tape or bead that seals it may touch its two sides
AT_END = 3.0  # mm: a place this near to a sheet's end is its end


@dataclass(frozen=True, slots=True)
class Seams:
    """The meetings of one layer with what is needed to judge them.

    `laps` are by run number; `taken` (m,) says which meetings the traces go through.
    """

    fabric: Fabric
    meetings: Meetings
    laps: Sequence[Lap | None]
    taken: Bools

    def lap(self, meeting: Meeting) -> Lap | None:
        """Return the lap that a meeting is, None where it is none of two sheets."""
        return self.laps[meeting.run] if meeting.run != TOUCHES else None


@dataclass(frozen=True, slots=True)
class Joints:
    """The joints of a layer, one for each meeting of its `seams`."""

    seams: Seams
    joints: tuple[Joint, ...]


def joints_of(seams: Seams, last: Joints | None = None, moved: Bools | None = None) -> Joints:
    """Return every joint of the layer.

    A joint depends on what its two pieces meet, and on nothing else: those of `last` of which
    neither piece has `moved` (o,) nor meets anything in another way stay as they are.
    """
    found = seams.meetings.found
    if last is None or moved is None or len(last.joints) != len(found):
        fresh, known = list(range(len(found))), {}
    else:
        fresh, known = _stale(seams, last.seams, moved), dict(enumerate(last.joints))
    near = _meeting_any(seams, fresh)
    around, places = neighbours(near), _places(seams.fabric, near)
    for number in fresh:
        meeting = found[number]
        beads = around[meeting.a] & around[meeting.b]
        sealed = _sealed(seams, meeting) or any(
            _bridges(seams.fabric, places, meeting, bead) for bead in beads
        )
        on_trace = bool(seams.taken[number])
        known[number] = _joint(seams, meeting, sealed=sealed, on_trace=on_trace)
    return Joints(seams, tuple(known.values()))


def _stale(seams: Seams, last: Seams, moved: Bools) -> list[int]:
    """Return the numbers of the joints that have to be told anew."""
    changed = np.zeros(len(seams.meetings.found), dtype=bool)
    changed[unlike(last.meetings.found, seams.meetings.found)] = True
    told = np.zeros(len(seams.laps) + 1, dtype=bool)  # the last one for what only touches
    if len(seams.laps) == len(last.laps):
        told[unlike(last.laps, seams.laps)] = True
    else:
        told[:-1] = True
    changed |= told[seams.meetings.rows[:, 2].astype(np.intp)]
    dirty = moved.copy()
    for owners in (seams.meetings.rows[changed, :2], last.meetings.rows[changed, :2]):
        dirty[owners.astype(np.intp).reshape(-1)] = True
    a, b = seams.meetings.rows[:, :2].astype(np.intp).T
    stale = dirty[a] | dirty[b] | (seams.taken != last.taken)
    return np.flatnonzero(stale).tolist()


def _meeting_any(seams: Seams, numbers: list[int]) -> list[Meeting]:
    """Return every meeting of the pieces that some meetings are of."""
    owners = seams.meetings.rows[:, :2].astype(np.intp)
    asked = np.zeros(len(seams.fabric.names), dtype=bool)
    asked[owners[numbers].reshape(-1)] = True
    near = np.flatnonzero(asked[owners].any(axis=1)).tolist()
    return [seams.meetings.found[number] for number in near]


def _joint(seams: Seams, meeting: Meeting, *, sealed: bool, on_trace: bool) -> Joint:
    fabric, lap = seams.fabric, seams.lap(meeting)
    names = (fabric.names[meeting.a], fabric.names[meeting.b])
    if lap is None:
        kind = _kind(fabric, meeting)
        return Joint(*names, kind, meeting.at, sealed, on_trace=on_trace)
    swapped = lap.outer.name != names[0]
    first, second = (lap.inner, lap.outer) if swapped else (lap.outer, lap.inner)
    upper = lap.upper
    return Joint(
        *names,
        _kind(fabric, meeting),
        lap.at,
        sealed,
        length=lap.length,
        run_a=first.run,
        run_b=second.run,
        over=lap.outer.name if lap.outward else "",
        upper=upper.name if upper and not lap.underside else "",
        on_trace=on_trace,
    )


def _kind(fabric: Fabric, meeting: Meeting) -> JointKind:
    bonds = {product.bond for product in _products(fabric, meeting)}
    if bonds & {Bond.TAPE, Bond.SEALANT}:
        return JointKind.BRIDGE
    lines = [isinstance(fabric.pieces[n].shape, Line) for n in (meeting.a, meeting.b)]
    if meeting.run != TOUCHES and any(lines):  # two boards side by side only butt
        return JointKind.LAP
    ends = [_is_end(fabric, owner, meeting.at) for owner in (meeting.a, meeting.b)]
    return JointKind.TEE if any(lines) and not all(ends) else JointKind.BUTT


def _is_end(fabric: Fabric, owner: int, at: Point) -> bool:
    shape = fabric.pieces[owner].shape
    if not isinstance(shape, Line) or shape.closed:
        return False
    slop = AT_END + shape.width / 2
    return min(dist(at, shape.points[0]), dist(at, shape.points[-1])) <= slop


def _products(fabric: Fabric, meeting: Meeting) -> tuple[Product, Product]:
    first, second = (fabric.pieces[number] for number in (meeting.a, meeting.b))
    return fabric.section.product(first), fabric.section.product(second)


def _sealed(seams: Seams, meeting: Meeting) -> bool:
    fabric = seams.fabric
    first, second = _products(fabric, meeting)
    if declared_sealed(fabric, meeting.a, meeting.b) or joined_in_works(first, second):
        return True
    if first.bond.seals_edges or second.bond.seals_edges:
        return True
    if meeting.run == TOUCHES:
        return False
    lap = seams.lap(meeting)
    if lap is None or lap.outward is None:
        return Bond.ADHERED in (first.bond, second.bond)
    outer = first if lap.outer.name == fabric.names[meeting.a] else second
    return outer.bond is Bond.ADHERED  # its glue is on its back, towards the inner sheet


Places = Mapping[tuple[int, int], Sequence[tuple[Point, float]]]


def _places(fabric: Fabric, found: Sequence[Meeting]) -> Places:
    """Return for each pair where it meets, and how far that reaches to either side, mm."""
    table: dict[tuple[int, int], list[tuple[Point, float]]] = {}
    for meeting in found:
        place = (meeting.at, _length(fabric, meeting) / 2)
        table.setdefault((meeting.a, meeting.b), []).append(place)
    return table


def _length(fabric: Fabric, meeting: Meeting) -> float:
    return fabric.runs[meeting.run].length if meeting.run != TOUCHES else 0.0


def _bridges(fabric: Fabric, places: Places, joint: Meeting, bead: int) -> bool:
    """Whether a third piece that seals touches both sides near the joint."""
    if not fabric.section.product(fabric.pieces[bead]).bond.seals:
        return False
    reach = NEARBY + _length(fabric, joint)
    return all(
        any(
            dist(at, joint.at) <= reach + half
            for at, half in places[min(bead, side), max(bead, side)]
        )
        for side in (joint.a, joint.b)
    )
