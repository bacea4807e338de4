"""What a check has to say: how each control layer runs, its joints, rain, and the findings."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum
from math import dist
from types import MappingProxyType

from enclosure_app.model.drawing import Drawing
from enclosure_app.model.finding import Finding
from enclosure_app.model.place import Point, Points
from enclosure_app.model.product import Control
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.section import Section
from enclosure_app.model.underlay import Underlay


class Continuity(StrEnum):
    """What is said of one control layer in one section."""

    CONTINUOUS = "continuous"
    BROKEN = "broken"
    UNSURE = "unsure"
    ABSENT = "absent"


@dataclass(frozen=True, slots=True)
class Run:
    """The pen follows one piece along `points`."""

    piece: str
    points: Points


@dataclass(frozen=True, slots=True)
class Lift:
    """The pen leaves piece `a` at `start` and lands on piece `b` at `end`; "" is the frame."""

    a: str
    b: str
    start: Point
    end: Point

    @property
    def width(self) -> float:
        """The width of the gap, mm."""
        return dist(self.start, self.end)


class JointKind(StrEnum):
    """How two pieces meet."""

    LAP = "lap"
    BUTT = "butt"
    TEE = "tee"
    BRIDGE = "bridge"


@dataclass(frozen=True, slots=True)
class Joint:
    """Where two pieces of one control meet.

    For a lap, `length` is its run in mm and `run_a`, `run_b` the lapped stretches of the two
    sheets; `over` names the outer sheet and `upper` the one that goes on uphill ("" where that
    cannot be told or does not apply).
    """

    a: str
    b: str
    kind: JointKind
    at: Point
    sealed: bool
    length: float = 0.0
    run_a: Points = ()
    run_b: Points = ()
    over: str = ""
    upper: str = ""
    on_trace: bool = False


class RouteEnd(StrEnum):
    """Where a drop ends up."""

    OUTSIDE = "outside"
    INSIDE = "inside"
    STANDS = "stands"


@dataclass(frozen=True, slots=True)
class RainRoute:
    """The way of a drop from where it lands to where it leaves, with the pieces it runs on."""

    points: Points
    pieces: tuple[str, ...]
    end: RouteEnd


@dataclass(frozen=True, slots=True)
class LayerResult:
    """How one control layer runs through one section.

    `walk` is the least-lift trace from cut end to cut end. `bottleneck` is the smallest largest
    lift any trace can have and `opening` its proof from the other side, both mm, None where the
    layer is absent or the marks are missing. `way_in` is the opening's path from outside to inside.
    `why` says why the layer is unsure, "" where it is so since the trace and its proof disagree.
    """

    control: Control
    continuity: Continuity
    walk: tuple[Run | Lift, ...] = ()
    joints: tuple[Joint, ...] = ()
    bottleneck: float | None = None
    opening: float | None = None
    way_in: Points = ()
    why: str = ""

    @property
    def disagrees(self) -> bool:
        """Whether the trace and the opening differ on how wide the widest gap is."""
        known = self.bottleneck is not None and self.opening is not None
        return known and self.continuity is Continuity.UNSURE

    @property
    def lifts(self) -> tuple[Lift, ...]:
        """Every place where the pen has to leave the layer, in walking order."""
        return tuple(step for step in self.walk if isinstance(step, Lift))

    @property
    def pieces(self) -> tuple[str, ...]:
        """The names of the pieces that the pen follows, in walking order."""
        return tuple(step.piece for step in self.walk if isinstance(step, Run))


@dataclass(frozen=True, slots=True)
class SectionResult:
    """What was found in one section; `order` lists the sheets as they go on, if they can.

    `decisions` are what people decided about findings of this section, by the finding's key; a
    check knows nothing of them.
    """

    section: Section
    layers: Mapping[Control, LayerResult]
    rain: tuple[RainRoute, ...] = ()
    order: tuple[str, ...] = ()
    findings: tuple[Finding, ...] = ()
    decisions: Mapping[str, Decision] = field(default_factory=lambda: MappingProxyType({}))

    def state(self, finding: Finding) -> State:
        """Return what was decided about a finding."""
        decision = self.decisions.get(finding.key)
        return decision.state if decision else State.OPEN

    @property
    def undecided(self) -> tuple[Finding, ...]:
        """The findings about which nothing was decided."""
        return tuple(f for f in self.findings if self.state(f) is State.OPEN)

    @property
    def no_longer_found(self) -> tuple[Decision, ...]:
        """What was decided about findings that are not found any more, in the order decided."""
        found = {finding.key for finding in self.findings}
        decided = (d for key, d in self.decisions.items() if key not in found)
        return tuple(d for d in decided if d.state is not State.OPEN)

    @property
    def unjudged(self) -> tuple[LayerResult, ...]:
        """The layers of which nothing can be said: that nothing was found there proves nothing."""
        return tuple(
            layer for layer in self.layers.values() if layer.continuity is Continuity.UNSURE
        )


@dataclass(frozen=True, slots=True)
class DrawingResult:
    """What was found in one drawing; `underlays` are the pictures that lie under it."""

    drawing: Drawing
    sections: tuple[SectionResult, ...]
    underlays: tuple[Underlay, ...] = ()


@dataclass(frozen=True, slots=True)
class Report:
    """What was found in all drawings of one run."""

    drawings: tuple[DrawingResult, ...]

    @property
    def findings(self) -> tuple[Finding, ...]:
        """All findings, ordered along the traces."""
        return tuple(f for d in self.drawings for s in d.sections for f in s.findings)
