"""One control layer of one section, traced and proved: all that rules ask about it."""

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence, Set
from dataclasses import dataclass, field, replace
from itertools import product

import numpy as np

from enclosure_app.errors import EnclosureError
from enclosure_app.geometry.rims.rims import Bools, Floats, Ints
from enclosure_app.geometry.rims.rows import unlike
from enclosure_app.language import later, say
from enclosure_app.model.limits import Tolerances
from enclosure_app.model.place import Point
from enclosure_app.model.product import Control
from enclosure_app.model.report import Joint, Lift
from enclosure_app.model.section import Section
from enclosure_app.network.airs import Air, airs_of
from enclosure_app.network.fabric.bodies import Bodies
from enclosure_app.network.fabric.fabric import Fabric, break_strip, weave
from enclosure_app.network.fabric.links import (
    TOUCHES,
    Links,
    Meets,
    links_of,
    meets_again,
    meets_of,
)
from enclosure_app.network.fabric.reweaving import Moved, reweave
from enclosure_app.network.joints.joints import Meetings, Seals, meetings, owners_of, seals_of
from enclosure_app.network.joints.laps import Lap, Laps, find_laps
from enclosure_app.network.joints.sealing import Joints, Seams, joints_of
from enclosure_app.network.opening import Opening, find_opening
from enclosure_app.network.opening_again import Drawn, Proof, closed_again
from enclosure_app.network.trace import Trace, find_trace
from enclosure_app.network.walk import Walk, along_walk, follow
from enclosure_app.progress import go_on

NOT_BETWEEN = later(
    "No piece of this layer comes between the inside and the outside mark: "
    "look at what the lines are, or move the marks to the two sides of the layer."
)


@dataclass(frozen=True, slots=True)
class Work:
    """What a layer was found by: where pieces meet, what seals, the traces and walks, and so on."""

    meets: Meets
    seals: Seals
    traced: tuple[tuple[Trace, Walk], ...]
    laps: Laps
    joints: Joints
    proof: Proof


@dataclass(frozen=True, slots=True)
class Layer:
    """One control layer; `trace`, `walk` and `opening` are None where it is absent.

    With several marks on a side, `trace` and `walk` belong to the pair with the widest bottleneck,
    and `lifts` are those of all pairs. `why` says why nothing can be judged, "" where it can.
    `work` is what all this was found by, for the next time.
    """

    control: Control
    fabric: Fabric
    trace: Trace | None = None
    walk: Walk | None = None
    opening: Opening | None = None
    lifts: tuple[Lift, ...] = ()
    laps: tuple[Lap, ...] = ()
    joints: tuple[Joint, ...] = ()
    sealed_laps: frozenset[int] = frozenset()
    why: str = ""
    work: "Work | None" = field(default=None, repr=False, compare=False)
    by_inner: Mapping[str, tuple[Lap, ...]] | None = field(default=None, repr=False, compare=False)

    def __post_init__(self) -> None:
        """Index the laps by their inner sheet, unless that has been done."""
        if self.by_inner is None:
            object.__setattr__(self, "by_inner", _by_inner(self.laps))

    def laps_over(self, name: str) -> tuple[Lap, ...]:
        """Return the laps in which another sheet lies over the piece called `name`."""
        return (self.by_inner or {}).get(name, ())

    def about(self, names: Set[str]) -> "Layer":
        """Return the layer with only those laps and joints that one of the named pieces is part of."""
        if self.work is None:
            return self
        owners = np.array([name in names for name in self.fabric.names], dtype=bool)
        a, b = self.work.joints.seams.meetings.rows[:, :2].astype(np.intp).T
        met = np.flatnonzero(owners[a] | owners[b]).tolist()
        sides = self.fabric.axes.owner[self.fabric.table[:, [0, 3]].astype(np.intp)]
        runs = np.flatnonzero(owners[sides[:, 0]] | owners[sides[:, 1]]).tolist()
        laps = (lap for lap in map(self.work.laps.by_run.__getitem__, runs) if lap is not None)
        return replace(self, laps=tuple(laps), joints=tuple(self.joints[n] for n in met))

    def sealed(self, lap: Lap) -> bool:
        """Whether the joint that a lap makes is sealed."""
        return lap.number in self.sealed_laps

    def along(self, points: Floats) -> Floats:
        """Return how far along the walk (k,) points (k, 2) lie, mm; zeros without a walk."""
        if self.walk is None or not self.walk.steps:
            return np.zeros(len(points))
        return along_walk(self.walk.steps, points)

    @property
    def airs(self) -> tuple[Air, ...]:
        """The open airs that the layer keeps from the inside."""
        return airs_of(self.work.traced) if self.work else ()

    def is_outside(self, points: Floats) -> Bools:
        """Return which points (k, 2) lie in open air, on whichever branch of the layer.

        Raises:
            ValueError: the layer has no trace.
        """
        airs = self.airs
        if not airs:
            raise ValueError("A layer without a trace has no sides.")
        held = np.zeros(len(points), dtype=bool)
        for air in airs:
            held |= air.holds(points)
        return held


def _by_inner(laps: Sequence[Lap]) -> Mapping[str, tuple[Lap, ...]]:
    table: defaultdict[str, list[Lap]] = defaultdict(list)
    for lap in laps:
        table[lap.inner.name].append(lap)
    return {name: tuple(found) for name, found in table.items()}


def _by_inner_again(last: Layer, laps: Sequence[Lap]) -> Mapping[str, tuple[Lap, ...]] | None:
    """Return the index of the laps, from the last one where as many were laps; else None."""
    if last.by_inner is None or len(last.laps) != len(laps):
        return None
    changed = [lap for n in unlike(last.laps, laps) for lap in (last.laps[n], laps[n])]
    names = {lap.inner.name for lap in changed}
    found = _by_inner([lap for lap in laps if lap.inner.name in names] if names else ())
    return {**{n: laps for n, laps in last.by_inner.items() if n not in names}, **found}


def same_layer(layer: Layer, control: Control) -> Layer:
    """Return what was found of `layer` for another control that has the very same pieces."""
    return replace(layer, control=control, fabric=replace(layer.fabric, control=control))


def trace_layer(
    section: Section, control: Control, tolerances: Tolerances, bodies: Bodies | None = None
) -> Layer:
    """Trace one control layer between the marks and prove it from the other side."""
    fabric = weave(section, control, tolerances, bodies)
    go_on()
    if not fabric.pieces:
        return Layer(control, fabric)
    return _traced(fabric, tolerances, meets_of(fabric, tolerances.touch), None)


def trace_again(
    last: Layer, section: Section, moved: Moved, tolerances: Tolerances, bodies: Bodies
) -> Layer | None:
    """Return the layer of a section in which a few pieces have moved since `last` was traced.

    It is the very same that `trace_layer` would return; None where that has to be asked.
    """
    if not last.fabric.pieces:
        return replace(last, fabric=replace(last.fabric, section=section))
    fabric = reweave(last.fabric, section, moved, tolerances, bodies)
    if fabric is None or last.work is None:
        return None
    if fabric.runs == last.fabric.runs and moved.names.isdisjoint(fabric.names):
        return replace(last, fabric=fabric)
    owners = np.array([name in moved.names for name in fabric.names], dtype=bool)
    rims = fabric.rims
    meets = meets_again(last.work.meets, fabric, tolerances.touch, owners[rims.owner[rims.rim]])
    return _traced(fabric, tolerances, meets, (last, owners))


Last = tuple[Layer, Bools]  # what was found the last time, and which owners have moved since


def _traced(fabric: Fabric, tolerances: Tolerances, meets: Meets, last: Last | None) -> Layer:
    control, work = fabric.control, last[0].work if last else None
    links = links_of(fabric, tolerances.touch, meets)
    try:
        proof = _proof(fabric, links, tolerances, work)
    except EnclosureError as error:
        return Layer(control, fabric, why=str(error))
    go_on()
    seals, sealed = seals_of(fabric, links, work.seals if work else None)
    traced = tuple(_traces(fabric, links, (tolerances, sealed), last))
    if not traced:
        return Layer(control, fabric, why=say(NOT_BETWEEN))
    trace, walk = max(traced, key=lambda each: (each[0].bottleneck, each[0].round.lift))
    go_on()
    sides = [(each.curve, marked.outside) for marked, each in traced]
    laps = find_laps(fabric, sides, work.laps if work else None)
    met = meetings(fabric, links, work.joints.seams.meetings if work else None)
    taken = _taken(fabric, links, met, [trace.round.numbers for trace, _ in traced])
    seams = Seams(fabric, met, laps.by_run, taken)
    joints = joints_of(seams, *((work.joints, last[1]) if work and last else ()))
    return Layer(
        control,
        fabric,
        trace=trace,
        walk=walk,
        opening=proof.opening,
        lifts=_all_lifts([walk, *(each for _, each in traced if each is not walk)]),
        laps=laps.laps,
        joints=joints.joints,
        sealed_laps=frozenset(
            meeting.run
            for meeting, joint in zip(met.found, joints.joints, strict=True)
            if joint.sealed
        ),
        by_inner=_by_inner_again(last[0], laps.laps) if last else None,
        work=Work(meets, seals, traced, laps, joints, proof),
    )


def _proof(fabric: Fabric, links: Links, tolerances: Tolerances, last: Work | None) -> Proof:
    """Return the opening, and what it was found between."""
    laps = links.take(links.run != TOUCHES)
    drawn = Drawn(
        fabric.solids,
        np.stack([laps.at_a, laps.at_b], axis=1),
        np.column_stack(owners_of(fabric, laps)),
    )
    again = closed_again(last.proof, drawn, tolerances.touch) if last else None
    return again or Proof(_opening(fabric, links, tolerances), drawn, drawn)


def _opening(fabric: Fabric, links: Links, tolerances: Tolerances) -> Opening:
    section = fabric.section
    return find_opening(
        section.frame,
        [*(piece.shape for piece in fabric.pieces), *map(break_strip, section.breaks)],
        links.bridges(),
        section.outside,
        section.inside,
        tolerances.touch,
    )


def _traces(
    fabric: Fabric, links: Links, given: tuple[Tolerances, Bools], last: Last | None
) -> Iterator[tuple[Trace, Walk]]:
    """Yield the traces between all pairs of marks, each with its walk."""
    (tolerances, sealed), section = given, fabric.section
    work = last[0].work if last else None
    known = (
        {(each.outside, each.inside): (each, walk) for each, walk in work.traced} if work else {}
    )
    for marks in product(section.outside, section.inside):
        old = known.get(marks)
        trace = find_trace(fabric, links, marks, tolerances.touch, sealed, old and old[0])
        if trace is not None:
            again = (old[1], last[1]) if old and last else ()
            yield trace, follow(fabric, trace, *again)


def _all_lifts(walks: list[Walk]) -> tuple[Lift, ...]:
    lifts = [step for walk in walks for step in walk.steps if isinstance(step, Lift)]
    found: dict[frozenset[Point], Lift] = {}
    for lift in lifts:
        found.setdefault(frozenset((lift.start, lift.end)), lift)
    return tuple(found.values())


def _taken(fabric: Fabric, links: Links, met: Meetings, rounds: Sequence[Ints]) -> Bools:
    """Return which meetings the traces go through, by the links that their rounds take."""
    numbers = np.concatenate(rounds)
    own = links.take(numbers[numbers < len(links)])
    low, high = np.sort(owners_of(fabric, own), axis=0)
    a, b, run = met.rows[:, :3].astype(np.intp).T
    count, runs = len(fabric.names), len(fabric.runs) + 1
    return np.isin((a * count + b) * runs + run, (low * count + high) * runs + own.run)
