"""Drafting breaks: where a long run was cut short between two break lines.

Words: a *break line* is a straight line with a zigzag in its middle, or any open path that the
layer map calls a break; its *chord* joins its ends; the *strip* lies between two break lines.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import dist, hypot, radians, sin

import numpy as np
from numpy.typing import NDArray

from enclosure_app.geometry.outlines.clipping import sampled, without_strip
from enclosure_app.language import say
from enclosure_app.model.drawing import Note, NoteLevel
from enclosure_app.model.place import Line, Point, Points
from enclosure_app.model.section import Break, Piece

ALONG = 0.02  # of the chord: so far off it the ends of a break line may run
KINK = (0.01, 0.4)  # of the chord: so far off it the zigzag reaches
PARALLEL = sin(radians(10))
BESIDE = 0.7  # so much of the shorter chord lies across from the longer one
SLOP = 2.0  # mm: so close to a break line a run ends on it
STEP = 20.0  # mm between the places at which runs are looked at

Segments = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class _Chord:
    start: Point
    end: Point
    reach: float  # how far the break line strays from its chord

    @property
    def length(self) -> float:
        return dist(self.start, self.end)

    @property
    def middle(self) -> Point:
        return (self.start[0] + self.end[0]) / 2, (self.start[1] + self.end[1]) / 2

    def place(self, x: Segments, y: Segments) -> tuple[Segments, Segments]:
        """Return how far along the chord, and to its left, points lie."""
        ux = (self.end[0] - self.start[0]) / self.length
        uy = (self.end[1] - self.start[1]) / self.length
        dx, dy = x - self.start[0], y - self.start[1]
        return dx * ux + dy * uy, dy * ux - dx * uy


def is_break_line(points: Points) -> bool:
    """Whether a path is straight with two opposite kinks in its middle and nothing else."""
    if not 6 <= len(points) <= 8 or dist(points[0], points[-1]) == 0:
        return False
    chord = _chord(points)
    run = np.array(points)
    along, left = chord.place(run[:, 0], run[:, 1])
    near = ALONG * chord.length
    kinks = np.flatnonzero(np.abs(left) > near)
    if len(kinks) != 2 or kinks[1] != kinks[0] + 1 or not 2 <= kinks[0] <= len(points) - 4:
        return False
    first, second = left[kinks]
    low, high = (share * chord.length for share in KINK)
    middle = along[kinks].mean() / chord.length
    forward = bool((np.diff(along[[0, kinks[0] - 1, kinks[1] + 1, -1]]) > 0).all())
    opposite = first * second < 0 and max(abs(first), abs(second)) <= high
    return bool(forward and opposite and min(abs(first), abs(second)) > low and 0.2 < middle < 0.8)


def find_breaks(
    lines: Sequence[Points], runs: Sequence[Points]
) -> tuple[tuple[Break, ...], tuple[Points, ...]]:
    """Pair break lines, and return the pairs and the lines that are left single.

    Two are a pair if they run side by side and no one of `runs` (what is drawn, mm) goes through
    both.
    """
    chords = [_chord(line) for line in lines]
    crossing = [_crossing(chord, runs) for chord in chords]
    gaps = sorted(
        (gap, i, j)
        for i in range(len(chords))
        for j in range(i + 1, len(chords))
        for gap in [_gap(chords[i], chords[j])]
        if gap is not None and not crossing[i] & crossing[j]
    )
    paired: set[int] = set()
    breaks = []
    for _, i, j in gaps:
        if not paired & {i, j}:
            paired |= {i, j}
            breaks.append(_break(chords[i], chords[j]))
    return tuple(breaks), tuple(line for i, line in enumerate(lines) if i not in paired)


def ended_on(pieces: Sequence[Piece], lines: Sequence[Points]) -> tuple[Piece, ...]:
    """Return the pieces with the ends that lie on the zigzag of a break line moved to its chord."""
    chords = [_chord(line) for line in lines]
    return tuple(_ended(piece, chords) for piece in pieces) if chords else tuple(pieces)


def cut_off(ring: Points, line: Points, runs: Sequence[Points]) -> tuple[Points, tuple[Note, ...]]:
    """Return the frame without what lies beyond a single break line.

    Beyond is the side on which none of `runs` goes on; if they do on both, the frame stays as it
    is and a note says so.
    """
    chord = _chord(line)
    here = sampled(runs, STEP)
    along, left = chord.place(here[:, 0], here[:, 1])
    across = (along > 0) & (along < chord.length)
    clear = chord.reach + SLOP
    drawn = [bool((across & (left > clear)).any()), bool((across & (left < -clear)).any())]
    if all(drawn):
        x, y = chord.middle
        text = say(
            "The break line at {x:.0f},{y:.0f} has no second one; material goes on beyond it.",
            x=x,
            y=y,
        )
        return ring, (Note(NoteLevel.IGNORED, text),)
    if not any(drawn):
        return ring, ()
    return without_strip(ring, _strip(chord, ring, to_left=not drawn[0])), ()


def _ended(piece: Piece, chords: Sequence[_Chord]) -> Piece:
    shape = piece.shape
    if not isinstance(shape, Line) or shape.closed:
        return piece
    first, second, *_ = shape.points
    *_, last_but_one, last = shape.points
    start, end = _moved(first, second, chords), _moved(last, last_but_one, chords)
    if (start, end) == (first, last):
        return piece
    return replace(piece, shape=replace(shape, points=(start, *shape.points[1:-1], end)))


def _moved(end: Point, before: Point, chords: Sequence[_Chord]) -> Point:
    """Return the end of a run, moved along the run to the chord that it stops close to."""
    run = np.array([end, before])
    for chord in chords:
        (at, _), (left, left_before) = chord.place(run[:, 0], run[:, 1])
        off = chord.reach + SLOP
        if 0 < at < chord.length and abs(left) <= off < abs(left_before):
            share = float(left / (left - left_before))
            return (
                end[0] + share * (before[0] - end[0]),
                end[1] + share * (before[1] - end[1]),
            )
    return end


def _chord(points: Points) -> _Chord:
    bare = _Chord(points[0], points[-1], 0.0)
    run = np.array(points)
    left = bare.place(run[:, 0], run[:, 1])[1]
    return _Chord(points[0], points[-1], float(np.abs(left).max()))


def _gap(one: _Chord, other: _Chord) -> float | None:
    """Return how wide the strip between two chords is, None where they are no pair."""
    ends = np.array([other.start, other.end])
    along, left = one.place(ends[:, 0], ends[:, 1])
    if abs(left[1] - left[0]) > PARALLEL * other.length:
        return None
    low, high = max(0.0, float(along.min())), min(one.length, float(along.max()))
    if high - low < BESIDE * min(one.length, other.length):
        return None
    gap = abs(float(left.mean()))
    return gap if 0 < gap <= max(one.length, other.length) else None


def _break(one: _Chord, other: _Chord) -> Break:
    dx, dy = one.end[0] - one.start[0], one.end[1] - one.start[1]
    same = dx * (other.end[0] - other.start[0]) + dy * (other.end[1] - other.start[1]) > 0
    far = (other.start, other.end) if same else (other.end, other.start)
    return Break((one.start, one.end), far)


def _crossing(chord: _Chord, runs: Sequence[Points]) -> frozenset[int]:
    """Return which runs go from one side of the chord to the other, within its length."""
    if not runs:
        return frozenset()
    index = np.concatenate([np.full(len(run) - 1, i) for i, run in enumerate(runs)])
    a = np.concatenate([np.array(run[:-1]) for run in runs])
    b = np.concatenate([np.array(run[1:]) for run in runs])
    along_a, left_a = chord.place(a[:, 0], a[:, 1])
    along_b, left_b = chord.place(b[:, 0], b[:, 1])
    through = left_a * left_b < 0
    share = left_a / np.where(through, left_a - left_b, 1.0)
    met = along_a + share * (along_b - along_a)
    return frozenset(index[through & (met > 0) & (met < chord.length)].tolist())


def _strip(chord: _Chord, ring: Points, *, to_left: bool) -> Points:
    deep = hypot(*(max(p[k] for p in ring) - min(p[k] for p in ring) for k in (0, 1))) * 2
    sign = deep / chord.length if to_left else -deep / chord.length
    nx, ny = chord.start[1] - chord.end[1], chord.end[0] - chord.start[0]
    far = [(x + sign * nx, y + sign * ny) for x, y in (chord.end, chord.start)]
    return (chord.start, chord.end, *far)
