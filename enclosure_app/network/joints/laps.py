"""Laps: two sheets running side by side, which one is outside, which one goes on uphill.

Which sheet is outside is never read off the drawing direction: it is the one whose signed distance
from the trace, counted towards the outside mark, is larger along the lap.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field
from math import hypot, inf

import numpy as np

from enclosure_app.geometry.rims.closed_curve import ClosedCurve, difference
from enclosure_app.geometry.rims.rims import Bools, Floats, Ints
from enclosure_app.geometry.rims.rows import unlike
from enclosure_app.geometry.runs.alongside import SideBySide
from enclosure_app.geometry.runs.foremost import HEM
from enclosure_app.model.place import Line, Point, Points
from enclosure_app.network.fabric.fabric import Fabric

SHARES = (0.0, 0.3, 0.7, 1.0)  # of the length of a lap, where it is looked at
_WITHIN = slice(1, -1)  # the very ends may lie beside other sheets
TOLD_APART = 0.2  # mm: sheets drawn closer than this do not show which is outside
UNDERSIDE = -0.17  # the outward side faces down when its normal drops by more than 10 degrees


@dataclass(frozen=True, slots=True)
class Sheet:
    """One sheet of a lap: its stretch in the lap, and how far it goes on beyond, mm."""

    name: str
    run: Points
    beyond_upper: float
    beyond_lower: float

    @property
    def goes_up(self) -> bool:
        """Whether it goes on beyond the lap's uphill end."""
        return self.beyond_upper > HEM

    @property
    def goes_down(self) -> bool:
        """Whether it goes on beyond the lap's downhill end."""
        return self.beyond_lower > HEM


@dataclass(frozen=True, slots=True)
class Lap:
    """Two sheets side by side; both runs lead from the lap's downhill end to its uphill end.

    `outward` is the unit vector from the inner to the outer sheet, None where the sheets are drawn
    on top of each other; `slope` is rise over run (inf when plumb); `number` is the run's number.
    """

    number: int
    outer: Sheet
    inner: Sheet
    length: float
    distance: float
    slope: float
    outward: Point | None

    @property
    def at(self) -> Point:
        """The middle of the lap."""
        (x, y), (u, v) = _middle(self.outer.run), _middle(self.inner.run)
        return ((x + u) / 2, (y + v) / 2)

    @property
    def upper(self) -> Sheet | None:
        """The sheet that goes on uphill while the other ends; None where neither or both do."""
        sheets = (self.outer, self.inner)
        going = [sheet for sheet in sheets if sheet.goes_up]
        if len(going) != 1:
            return None
        other = self.inner if going[0] is self.outer else self.outer
        return going[0] if other.goes_down else None

    @property
    def underside(self) -> bool:
        """Whether the outward side faces down, as under a soffit."""
        return self.outward is not None and self.outward[1] < UNDERSIDE

    @property
    def is_joint(self) -> bool:
        """Whether one sheet takes over from the other here, in whichever direction."""
        outer, inner = self.outer, self.inner
        return (outer.goes_up and inner.goes_down and not (outer.goes_down and inner.goes_up)) or (
            outer.goes_down and inner.goes_up
        )


Side = tuple[ClosedCurve, Point]  # a trace and the outside mark that it was traced from


@dataclass(frozen=True, slots=True)
class Laps:
    """The runs of two sheets side by side, as laps, and what they were told from.

    `by_run` has None where one of the two is no sheet. `points` (k, 2, m, 2) are places along both
    sides of every run, matched in place; the second side is taken backwards where the two were
    drawn `opposed` (k,). `stands` tell how each trace stands to the inner ones of these, `lead` (k,)
    by how much the first side lies further out than the second, mm.
    """

    runs: tuple[SideBySide, ...] = ()
    by_run: tuple[Lap | None, ...] = ()
    points: Floats = field(default_factory=lambda: np.zeros((0, 2, len(SHARES), 2)))
    opposed: Bools = field(default_factory=lambda: np.zeros(0, dtype=bool))
    stands: tuple["Stand", ...] = ()
    lead: Floats = field(default_factory=lambda: np.zeros(0))

    @property
    def laps(self) -> tuple[Lap, ...]:
        """The laps alone."""
        return tuple(lap for lap in self.by_run if lap is not None)


@dataclass(frozen=True, slots=True)
class Stand:
    """How a trace stands to points: `held` says which it encloses, `away` how far they are, mm."""

    curve: ClosedCurve
    mark_held: bool
    held: Bools
    away: Floats

    def outwardness(self) -> Floats:
        """Return the mean signed distance (k, 2) of points (k, 2, m) from the trace, outside positive."""
        signed = np.where(self.held == self.mark_held, 1.0, -1.0) * self.away
        return np.asarray(signed.mean(axis=2))


def find_laps(fabric: Fabric, traces: Sequence[Side], last: Laps | None = None) -> Laps:
    """Return every run of two sheets side by side as a lap, outer sheet told from the trace.

    `traces` are closed curves, each with the outside mark it was traced from; a lap is told from
    the one that comes nearest to it, since another may run along another branch of the layer.
    `last` are the laps of the same pieces, some of which stood elsewhere.
    """
    if not fabric.runs:
        return Laps()
    last = last if last and len(last.runs) == len(fabric.runs) else None
    fresh = np.array(unlike(last.runs, fabric.runs) if last else range(len(fabric.runs)), np.intp)
    points, opposed = _sampled(fabric, fresh, last)
    stands = _stands(points[:, :, _WITHIN], traces, (fresh, last))
    lead = _lead(stands)
    if last:
        turned = np.flatnonzero(_told(lead) != _told(last.lead))
        fresh = np.union1d(fresh, turned)
    by_run: list[Lap | None] = list(last.by_run) if last else [None] * len(fabric.runs)
    lines = fabric.run_lines(fresh)
    for number, line_a, line_b in zip(fresh.tolist(), *lines, strict=True):
        of_a, of_b = points[number]
        sides = _Sampled(of_a, of_b, (line_a, line_b), opposed=bool(opposed[number]))
        sheets = _are_sheets(fabric, fabric.runs[number])
        by_run[number] = _lap(fabric, number, sides, float(lead[number])) if sheets else None
    return Laps(fabric.runs, tuple(by_run), points, opposed, stands, lead)


def _sampled(fabric: Fabric, fresh: Ints, last: Laps | None) -> tuple[Floats, Bools]:
    """Return places along both sides of every run; the last ones but for the `fresh` runs."""
    of_a, of_b, opposed = fabric.samples(SHARES, fresh)
    points = np.stack([of_a, of_b], axis=1)
    if last is None:
        return points, opposed
    every, turned = last.points.copy(), last.opposed.copy()
    every[fresh], turned[fresh] = points, opposed
    return every, turned


@dataclass(frozen=True, slots=True)
class _Sampled:
    """Matched points (m, 2) along both sides of one run, both sides whole, the way they run."""

    of_a: Floats
    of_b: Floats
    lines: tuple[Points, Points]
    opposed: bool


def _is_sheet(fabric: Fabric, rim: int) -> bool:
    return isinstance(fabric.pieces[fabric.axis_owner(rim)].shape, Line)


def _stands(
    points: Floats, traces: Sequence[Side], given: tuple[Ints, Laps | None]
) -> tuple[Stand, ...]:
    """Tell how each trace stands to points (k, 2, m, 2), from how it stood the last time if it can."""
    fresh, last = given
    known = last.stands if last and len(last.stands) == len(traces) else [None] * len(traces)
    return tuple(
        _stand(points, fresh, side, stood) for side, stood in zip(traces, known, strict=True)
    )


def _stand(points: Floats, fresh: Ints, side: Side, last: Stand | None) -> Stand:
    """Tell how a trace stands to points; only those of the `fresh` runs are others than before."""
    curve, mark = side[0], np.array([side[1]])
    changed = difference(last.curve, curve) if last else None
    if last is None or changed is None:
        held, away = _told_of(curve, points)
        return Stand(curve, bool(curve.encloses(mark)[0]), held, away)
    shape, places = last.held.shape, points.reshape(-1, 2)
    held = changed.encloses(places, last.held.reshape(-1)).reshape(shape)
    away = changed.distance(places, last.away.reshape(-1)).reshape(shape)
    held[fresh], away[fresh] = _told_of(curve, points[fresh])
    mark_held = changed.encloses(mark, np.array([last.mark_held]))
    return Stand(curve, bool(mark_held[0]), held, away)


def _told_of(curve: ClosedCurve, points: Floats) -> tuple[Bools, Floats]:
    places, shape = points.reshape(-1, 2), points.shape[:3]
    return curve.encloses(places).reshape(shape), curve.distance(places).reshape(shape)


def _lead(stands: Sequence[Stand]) -> Floats:
    """Return by how much each first side lies further out than its second, mm (k,)."""
    table = np.array([stand.outwardness() for stand in stands])  # trace, lap, side
    nearest = np.abs(table).min(axis=2).argmin(axis=0)
    a, b = table[nearest, np.arange(table.shape[1])].T
    return np.asarray(a - b)


def _told(lead: Floats) -> Ints:
    return np.where(lead >= 0, 1, 0) + np.where(np.abs(lead) > TOLD_APART, 2, 0)


def _are_sheets(fabric: Fabric, run: SideBySide) -> bool:
    return _is_sheet(fabric, run.a) and _is_sheet(fabric, run.b)


def _lap(fabric: Fabric, number: int, sampled: _Sampled, lead: float) -> Lap:
    run = fabric.runs[number]
    a, b = _sheets(fabric, run, sampled)
    outer, inner = (a, b) if lead >= 0 else (b, a)
    first, last = sampled.of_a[0].tolist(), sampled.of_a[-1].tolist()
    rise, across = abs(last[1] - first[1]), abs(last[0] - first[0])
    x, y = ((sampled.of_a - sampled.of_b).mean(axis=0) * (1 if lead >= 0 else -1)).tolist()
    apart = hypot(x, y)
    return Lap(
        number=number,
        outer=outer,
        inner=inner,
        length=run.length,
        distance=max(run.distance, 0.0),
        slope=rise / across if across > 1e-9 * rise else inf,
        outward=(x / apart, y / apart) if abs(lead) > TOLD_APART and apart > 0 else None,
    )


def _sheets(fabric: Fabric, run: SideBySide, sampled: _Sampled) -> tuple[Sheet, Sheet]:
    (x, y), (u, v) = sampled.of_a[0].tolist(), sampled.of_a[-1].tolist()
    rising = (v, u) >= (y, x)
    line_a, line_b = sampled.lines
    a = _sheet(fabric, run.a, (run.a_from, run.a_to), line_a, up_at_end=rising)
    up_at_end = rising != sampled.opposed
    return a, _sheet(fabric, run.b, (run.b_from, run.b_to), line_b, up_at_end=up_at_end)


def _sheet(
    fabric: Fabric, rim: int, stretch: tuple[float, float], line: Points, *, up_at_end: bool
) -> Sheet:
    before, after = stretch[0], float(fabric.axes.length[rim]) - stretch[1]
    if fabric.axes.ring[rim]:
        before = after = before + after
    name = fabric.names[fabric.axis_owner(rim)]
    if up_at_end:
        return Sheet(name, line, beyond_upper=after, beyond_lower=before)
    return Sheet(name, line[::-1], beyond_upper=before, beyond_lower=after)


def _middle(points: Sequence[Point]) -> Point:
    (x, y), (u, v) = points[0], points[-1]
    return ((x + u) / 2, (y + v) / 2)
