"""Laps: two sheets running side by side, which one is outside, which one goes on uphill.

Which sheet is outside is never read off the drawing direction: it is the one whose signed distance
from the trace, counted towards the outside mark, is larger along the lap.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import hypot, inf

import numpy as np

from enclosure_app.geometry.closed_curve import ClosedCurve
from enclosure_app.geometry.rims import Floats
from enclosure_app.geometry.runs import SideBySide
from enclosure_app.model.place import Line, Point, Points
from enclosure_app.network.fabric import Fabric

SHARES = (0.0, 0.3, 0.7, 1.0)  # of the length of a lap, where it is looked at
HEM = 15.0  # mm: what ends this short behind a lap is a hem, not a sheet that goes on
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


def find_laps(fabric: Fabric, traces: Sequence[tuple[ClosedCurve, Point]]) -> tuple[Lap, ...]:
    """Return every run of two sheets side by side as a lap, outer sheet told from the trace.

    `traces` are closed curves, each with the outside mark it was traced from; a lap is told from
    the one that comes nearest to it, since another may run along another branch of the layer.
    """
    if not fabric.runs:
        return ()
    of_a, of_b, opposed = fabric.samples(SHARES)
    within = slice(1, -1)  # the very ends may lie beside other sheets
    lead = _lead(traces, of_a[:, within], of_b[:, within])
    lines_a, lines_b = fabric.run_lines()
    return tuple(
        _lap(fabric, number, _Sampled(a, b, (line_a, line_b), opposed=back), lead)
        for number, (a, b, line_a, line_b, back, lead) in enumerate(
            zip(of_a, of_b, lines_a, lines_b, opposed.tolist(), lead.tolist(), strict=True)
        )
        if _is_sheet(fabric, fabric.runs[number].a) and _is_sheet(fabric, fabric.runs[number].b)
    )


@dataclass(frozen=True, slots=True)
class _Sampled:
    """Matched points (m, 2) along both sides of one run, both sides whole, the way they run."""

    of_a: Floats
    of_b: Floats
    lines: tuple[Points, Points]
    opposed: bool


def _is_sheet(fabric: Fabric, rim: int) -> bool:
    return isinstance(fabric.pieces[fabric.axis_owner(rim)].shape, Line)


def _lead(traces: Sequence[tuple[ClosedCurve, Point]], of_a: Floats, of_b: Floats) -> Floats:
    """Return by how much each first side (k, m, 2) lies further out than its second, mm (k,)."""
    sides = [[_outwardness(*trace, points) for points in (of_a, of_b)] for trace in traces]
    table = np.array(sides)  # trace, side, lap
    nearest = np.abs(table).min(axis=1).argmin(axis=0)
    a, b = table[nearest, :, np.arange(table.shape[2])].T
    return np.asarray(a - b)


def _outwardness(curve: ClosedCurve, outside: Point, points: Floats) -> Floats:
    """Return the mean signed distance (k,) of points (k, m, 2) from a trace, outside positive."""
    flat = points.reshape(-1, 2)
    same_side = curve.encloses(flat) == curve.encloses(np.array([outside]))[0]
    signed = np.where(same_side, 1.0, -1.0) * curve.distance(flat)
    return np.asarray(signed.reshape(points.shape[:2]).mean(axis=1))


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
