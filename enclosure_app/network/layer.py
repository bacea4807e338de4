"""One control layer of one section, traced and proved: all that rules ask about it."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace
from itertools import product

import numpy as np

from enclosure_app.errors import EnclosureError
from enclosure_app.geometry.rims import Bools, Floats
from enclosure_app.language import later, say
from enclosure_app.model.limits import Tolerances
from enclosure_app.model.place import Point
from enclosure_app.model.product import Control, layer_words
from enclosure_app.model.report import Joint, Lift
from enclosure_app.model.section import Section
from enclosure_app.network.bodies import Bodies
from enclosure_app.network.fabric import Fabric, break_strip, weave
from enclosure_app.network.joints import meetings, sealed_by_products
from enclosure_app.network.laps import Lap, find_laps
from enclosure_app.network.links import Links, links_of
from enclosure_app.network.opening import Opening, find_opening
from enclosure_app.network.sealing import Seams, joints_of
from enclosure_app.network.trace import Trace, find_trace
from enclosure_app.network.walk import Walk, along_walk, follow

NOT_BETWEEN = later(
    "No piece of the {layer} comes between the inside and the outside mark: "
    "look at what the lines are, or move the marks to the two sides of the layer."
)


@dataclass(frozen=True, slots=True)
class Layer:
    """One control layer; `trace`, `walk` and `opening` are None where it is absent.

    With several marks on a side, `trace` and `walk` belong to the pair with the widest bottleneck,
    and `lifts` are those of all pairs. `why` says why nothing can be judged, "" where it can.
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
    by_inner: Mapping[str, tuple[Lap, ...]] = field(
        init=False, repr=False, compare=False, default_factory=dict
    )

    def __post_init__(self) -> None:
        """Index the laps by their inner sheet."""
        table: dict[str, tuple[Lap, ...]] = {}
        for lap in self.laps:
            table[lap.inner.name] = (*table.get(lap.inner.name, ()), lap)
        object.__setattr__(self, "by_inner", table)

    def laps_over(self, name: str) -> tuple[Lap, ...]:
        """Return the laps in which another sheet lies over the piece called `name`."""
        return self.by_inner.get(name, ())

    def sealed(self, lap: Lap) -> bool:
        """Whether the joint that a lap makes is sealed."""
        return lap.number in self.sealed_laps

    def along(self, points: Floats) -> Floats:
        """Return how far along the walk (k,) points (k, 2) lie, mm; zeros without a walk."""
        if self.walk is None or not self.walk.steps:
            return np.zeros(len(points))
        return along_walk(self.walk.steps, points)

    def is_outside(self, points: Floats) -> Bools:
        """Return which points (k, 2) lie on the outside mark's side of the trace."""
        if self.trace is None or self.walk is None:
            raise ValueError("A layer without a trace has no sides.")
        mark = np.array([self.trace.outside])
        return np.asarray(self.walk.curve.encloses(points) == self.walk.curve.encloses(mark)[0])


def same_layer(layer: Layer, control: Control) -> Layer:
    """Return what was found of `layer` for another control that has the very same pieces."""
    return replace(layer, control=control, fabric=replace(layer.fabric, control=control))


def trace_layer(
    section: Section, control: Control, tolerances: Tolerances, bodies: Bodies | None = None
) -> Layer:
    """Trace one control layer between the marks and prove it from the other side."""
    fabric = weave(section, control, tolerances, bodies)
    if not fabric.pieces:
        return Layer(control, fabric)
    links = links_of(fabric, tolerances.touch)
    try:
        opening = _opening(fabric, links, tolerances)
    except EnclosureError as error:
        return Layer(control, fabric, why=str(error))
    traced = list(_traces(fabric, links, tolerances))
    if not traced:
        return Layer(control, fabric, why=say(NOT_BETWEEN, layer=layer_words(control)))
    trace, walk = max(traced, key=lambda each: (each[0].bottleneck, each[0].round.lift))
    laps = find_laps(fabric, [(each.curve, marked.outside) for marked, each in traced])
    taken = {number for _, each in traced for number in each.links}
    seams = _seams(fabric, links, laps, taken)
    joints = tuple(joints_of(seams))
    return Layer(
        control,
        fabric,
        trace=trace,
        walk=walk,
        opening=opening,
        lifts=_all_lifts([walk, *(each for _, each in traced if each is not walk)]),
        laps=laps,
        joints=joints,
        sealed_laps=frozenset(
            meeting.run
            for meeting, joint in zip(seams.meetings, joints, strict=True)
            if joint.sealed
        ),
    )


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


def _traces(fabric: Fabric, links: Links, tolerances: Tolerances) -> Iterator[tuple[Trace, Walk]]:
    sealed = sealed_by_products(fabric, links)
    for marks in product(fabric.section.outside, fabric.section.inside):
        trace = find_trace(fabric, links, marks, tolerances.touch, sealed)
        if trace is not None:
            yield trace, follow(fabric, trace)


def _all_lifts(walks: list[Walk]) -> tuple[Lift, ...]:
    lifts = [step for walk in walks for step in walk.steps if isinstance(step, Lift)]
    found: dict[frozenset[Point], Lift] = {}
    for lift in lifts:
        found.setdefault(frozenset((lift.start, lift.end)), lift)
    return tuple(found.values())


def _seams(fabric: Fabric, links: Links, laps: tuple[Lap, ...], taken: set[int]) -> Seams:
    owner_a = fabric.rims.owner[fabric.rims.rim[links.a]]
    owner_b = fabric.rims.owner[fabric.rims.rim[links.b]]
    passed = [
        (*sorted((int(owner_a[number]), int(owner_b[number]))), int(links.run[number]))
        for number in taken
        if number < len(links)
    ]
    return Seams(
        fabric=fabric,
        meetings=tuple(meetings(fabric, links)),
        laps={lap.number: lap for lap in laps},
        taken=frozenset((a, b, run) for a, b, run in passed),
    )
