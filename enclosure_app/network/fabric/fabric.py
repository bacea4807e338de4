"""The pieces of one control as numbers: solids, their rims, the axes of sheets, runs side by side."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from enclosure_app.geometry.rims.between import not_parted
from enclosure_app.geometry.rims.rims import Bools, Floats, Ints, Rims, rims_of
from enclosure_app.geometry.rims.solids import Solid, line_solid
from enclosure_app.geometry.runs.alongside import SideBySide, is_lap, runs_between
from enclosure_app.geometry.runs.foremost import parts_left
from enclosure_app.model.limits import Tolerances
from enclosure_app.model.place import Area, Line, Points
from enclosure_app.model.product import Control, is_glued_on
from enclosure_app.model.section import Break, Piece, Section
from enclosure_app.network.fabric.bodies import Bodies, bodies_of, solid_of

FRAME = ""


@dataclass(frozen=True, slots=True, eq=False)
class Beside:
    """All runs side by side, before any is left out.

    `rims` (k, 2) are their two rims; `clear` (k,) says which have no solid between the two, and
    `parts` what is left of each that is seen and long enough. `hides` (r,) are the rims that hide
    what is behind them.
    """

    runs: tuple[SideBySide, ...]
    rims: Ints
    clear: Bools
    parts: tuple[tuple[SideBySide, ...], ...]
    hides: Bools


@dataclass(frozen=True, slots=True)
class Fabric:
    """One control's pieces in a section.

    Owners are numbered: the pieces in drawing order, then break strips, then the frame last.
    `rims` are the boundaries of the solids; `axes` the bare run of each sheet and the boundary of
    each area, with `half` the drawn half width; `runs` are in terms of `axes`. `beside` are all
    runs of which these are parts; `table` holds the rims and stretches of `runs` as numbers, and
    where their sheets lie on each other (`table_of`).
    """

    control: Control
    section: Section
    pieces: tuple[Piece, ...]
    names: tuple[str, ...]
    solids: tuple[Solid, ...]
    rims: Rims
    axes: Rims
    half: Floats
    runs: tuple[SideBySide, ...]
    table: Floats
    beside: "Beside"

    @property
    def frame(self) -> int:
        """The owner number of the frame."""
        return len(self.names) - 1

    def axis_owner(self, rim: int) -> int:
        """Return which owner an axis rim belongs to."""
        return int(self.axes.owner[rim])

    def samples(self, shares: Sequence[float], which: Ints) -> tuple[Floats, Floats, Bools]:
        """Return points at shares (0 to 1) of some runs, and which pairs are drawn opposed.

        The points (k, m, 2) of the two sides are matched in place: those of the second side are
        taken backwards where the two were drawn in opposite directions (k,).
        """
        of_a = self._on_axes(self.table[which, :3], shares)
        of_b = self._on_axes(self.table[which, 3:], shares)
        heading_a, heading_b = of_a[:, -1] - of_a[:, 0], of_b[:, -1] - of_b[:, 0]
        opposed = (heading_a * heading_b).sum(axis=1) < 0
        of_b[opposed] = of_b[opposed, ::-1]
        return of_a, of_b, opposed

    def run_lines(self, which: Ints) -> tuple[list[Points], list[Points]]:
        """Return the two sides of some runs as polylines, each the way it was drawn."""
        table = self.table[which]
        a, b = table[:, 0].astype(np.intp), table[:, 3].astype(np.intp)
        return (
            self.axes.stretches(a, table[:, 1], table[:, 2]),
            self.axes.stretches(b, table[:, 4], table[:, 5]),
        )

    def lengths(self) -> Floats:
        """Return the length of every run, mm, as `SideBySide.length`."""
        table = self.table
        return np.asarray(np.minimum(table[:, 2] - table[:, 1], table[:, 5] - table[:, 4]))

    def _on_axes(self, stretches: Floats, shares: Sequence[float]) -> Floats:
        at = stretches[:, 1:2] + (stretches[:, 2:3] - stretches[:, 1:2]) * np.asarray(shares)
        rim = np.repeat(stretches[:, 0].astype(np.intp), len(shares))
        return self.axes.locate(rim, at.reshape(-1))[1].reshape(-1, len(shares), 2)


def table_of(runs: Sequence[SideBySide]) -> Floats:
    """Return rows (k, 8) of each run's two rims and stretches: a, from, to; b, from, to.

    The last two are the places along a and b in the middle of where nothing lies between them.
    """
    rows = [
        (r.a, r.a_from, r.a_to, r.b, r.b_from, r.b_to,
         (bare.a_from + bare.a_to) / 2, (bare.b_from + bare.b_to) / 2)
        for r in runs
        for bare in [r.bare or r]
    ]  # fmt: skip
    return np.array(rows, dtype=np.float64).reshape(-1, 8)


def weave(
    section: Section, control: Control, tolerances: Tolerances, bodies: Bodies | None = None
) -> Fabric:
    """Gather the pieces of `control` in `section`; `bodies` are made if they are not given."""
    bodies = bodies or bodies_of(section)
    pieces = section.layer(control)
    strips = [break_strip(each) for each in section.breaks]
    solids = [bodies.solids[piece.name] for piece in pieces]
    solids += [*map(solid_of, strips), line_solid(section.frame, closed=True)]
    axes = rims_of([bodies.axes[piece.name] for piece in pieces])
    glued = np.array([is_glued_on(section.product(piece)) for piece in pieces], dtype=bool)
    hides = ~glued[axes.owner]
    widths = [p.shape.width / 2 if isinstance(p.shape, Line) else 0.0 for p in pieces]
    half = np.asarray(widths, dtype=np.float64)[axes.owner]
    runs = runs_between(axes, half, tolerances.lap_reach, tolerances.touch)
    beside = _beside(axes, runs, parted_by_none(bodies, axes, runs), (hides, tolerances))
    laps = tuple(part for parts in beside.parts for part in parts)
    return Fabric(
        control=control,
        section=section,
        pieces=pieces,
        names=(
            *(piece.name for piece in pieces),
            *(f"break {number}" for number in range(1, len(strips) + 1)),
            FRAME,
        ),
        solids=tuple(solids),
        rims=rims_of(solids),
        axes=axes,
        half=half,
        runs=laps,
        table=table_of(laps),
        beside=beside,
    )


def _beside(
    axes: Rims, runs: Sequence[SideBySide], clear: Bools, given: tuple[Bools, Tolerances]
) -> Beside:
    hides, tolerances = given
    seen = np.flatnonzero(clear).tolist()
    left = parts_left(axes, [runs[number] for number in seen], hides)
    parts: list[tuple[SideBySide, ...]] = [()] * len(runs)
    for number, each in zip(seen, left, strict=True):
        parts[number] = laps_in(each, tolerances.touch)
    rims = np.array([(run.a, run.b) for run in runs], dtype=np.intp).reshape(-1, 2)
    return Beside(tuple(runs), rims, clear, tuple(parts), hides)


def laps_in(parts: Sequence[SideBySide], touch: float) -> tuple[SideBySide, ...]:
    """Return which parts of a run are long enough for a lap."""
    return tuple(part for part in parts if is_lap(part, touch))


def break_strip(each: Break) -> Area:
    """Return the blank strip between two break lines: outside the section, crossed by every layer."""
    (a, b), (c, d) = each.near, each.far
    along = (b[0] - a[0]) * (d[0] - c[0]) + (b[1] - a[1]) * (d[1] - c[1])
    return Area((a, b, d, c) if along > 0 else (a, b, c, d))


def parted_by_none(bodies: Bodies, axes: Rims, runs: Sequence[SideBySide]) -> Bools:
    """Return which runs have no board or other solid between the two, so that the sheets lap."""
    if not runs:
        return np.zeros(0, dtype=bool)
    return not_parted(middles(axes, runs), bodies.areas)


def middles(axes: Rims, runs: Sequence[SideBySide]) -> Floats:
    """Return the chord (k, 2, 2) across the middle of each run."""
    a = axes.locate(
        np.array([run.a for run in runs]), np.array([(r.a_from + r.a_to) / 2 for r in runs])
    )
    b = axes.locate(
        np.array([run.b for run in runs]), np.array([(r.b_from + r.b_to) / 2 for r in runs])
    )
    return np.stack([a[1], b[1]], axis=1)
