"""Finds the triangles that chords run through."""

import numpy as np
import numpy.typing as npt

from enclosure_app.geometry.openings.triangles import Mesh

Floats = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]

SLACK = 1e-6  # mm; a chord this near to a triangle runs through it


def crossed(mesh: Mesh, chords: Ints) -> Ints:
    """Return the triangles that any of `chords` (rows of two points of `mesh`) runs through.

    Triangles that a chord only grazes may be among them.
    """
    order = np.argsort(mesh.starts, kind="stable")
    first = np.searchsorted(mesh.starts[order], chords[:, 0], side="left")
    last = np.searchsorted(mesh.starts[order], chords[:, 0], side="right")
    found: set[int] = set()
    for chord, low, high in zip(chords.tolist(), first.tolist(), last.tolist(), strict=True):
        found |= _along(mesh, chord, (order[low:high] // 3).tolist())
    return np.array(sorted(found), dtype=np.int64)


def _along(mesh: Mesh, chord: list[int], around: list[int]) -> set[int]:
    """Spread from the triangles round the chord's start over every edge that it meets."""
    start, end = (complex(*mesh.points[place]) for place in chord)
    found, waiting = set(around), list(around)
    while waiting:
        triangle = waiting.pop()
        corners = [complex(*mesh.points[corner]) for corner in mesh.triangles[triangle]]
        for side in range(3):
            beyond = int(mesh.twin[3 * triangle + side]) // 3
            edge = corners[side], corners[(side + 1) % 3]
            if beyond >= 0 and beyond not in found and _meet(start, end, *edge):
                found.add(beyond)
                waiting.append(beyond)
    return found


def _meet(p: complex, q: complex, a: complex, b: complex) -> bool:
    """Tell whether the segments pq and ab meet or nearly meet."""
    return _astride(p, q, a, b) and _astride(a, b, p, q) and _overlap(p, q, a, b)


def _astride(p: complex, q: complex, a: complex, b: complex) -> bool:
    along = (q - p) / abs(q - p)
    left, right = (along.conjugate() * (a - p)).imag, (along.conjugate() * (b - p)).imag
    return min(left, right) <= SLACK and max(left, right) >= -SLACK


def _overlap(p: complex, q: complex, a: complex, b: complex) -> bool:
    """Tell whether the boxes round the segments overlap, which decides for parallel ones."""
    return (
        min(p.real, q.real) - SLACK <= max(a.real, b.real)
        and min(a.real, b.real) - SLACK <= max(p.real, q.real)
        and min(p.imag, q.imag) - SLACK <= max(a.imag, b.imag)
        and min(a.imag, b.imag) - SLACK <= max(p.imag, q.imag)
    )
