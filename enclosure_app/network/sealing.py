"""Joints as the model tells them: their kind, and whether they are sealed."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from math import dist

from enclosure_app.model.place import Line, Point
from enclosure_app.model.product import Bond, Product
from enclosure_app.model.report import Joint, JointKind
from enclosure_app.network.fabric import Fabric
from enclosure_app.network.joints import Meeting, declared_sealed, joined_in_works, neighbours
from enclosure_app.network.laps import Lap
from enclosure_app.network.links import TOUCHES

NEARBY = 60.0  # mm: how far from a joint the tape or bead that seals it may touch its two sides
AT_END = 3.0  # mm: a place this near to a sheet's end is its end


@dataclass(frozen=True, slots=True)
class Seams:
    """The meetings of one layer with what is needed to judge them.

    `laps` are by run number; `taken` says which (a, b, run) the traces go through.
    """

    fabric: Fabric
    meetings: Sequence[Meeting]
    laps: Mapping[int, Lap]
    taken: frozenset[tuple[int, int, int]]


def joints_of(seams: Seams) -> Iterator[Joint]:
    """Yield every joint of the layer."""
    around = neighbours(seams.meetings)
    places = _places(seams)
    for meeting in seams.meetings:
        beads = around[meeting.a] & around[meeting.b]
        sealed = _sealed(seams, meeting) or any(
            _bridges(seams.fabric, places, meeting, bead) for bead in beads
        )
        yield _joint(seams, meeting, sealed=sealed)


def _joint(seams: Seams, meeting: Meeting, *, sealed: bool) -> Joint:
    fabric, lap = seams.fabric, seams.laps.get(meeting.run)
    on_trace = (meeting.a, meeting.b, meeting.run) in seams.taken
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
    lap = seams.laps.get(meeting.run)
    if lap is None or lap.outward is None:
        return Bond.ADHERED in (first.bond, second.bond)
    outer = first if lap.outer.name == fabric.names[meeting.a] else second
    return outer.bond is Bond.ADHERED  # its glue is on its back, towards the inner sheet


Places = Mapping[tuple[int, int], Sequence[tuple[Point, float]]]


def _places(seams: Seams) -> Places:
    """Return for each pair where it meets, and how far that reaches to either side, mm."""
    table: dict[tuple[int, int], list[tuple[Point, float]]] = {}
    for meeting in seams.meetings:
        place = (meeting.at, _length(seams.fabric, meeting) / 2)
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
