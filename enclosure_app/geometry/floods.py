"""Floods a mesh: which triangles are joined, at what width, and by which way."""

from heapq import heappop, heappush
from itertools import count
from math import inf

import numpy as np
import numpy.typing as npt

from enclosure_app.geometry.triangles import Mesh

Floats = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]


def gates(mesh: Mesh, wider_than: float) -> Ints:
    """Return the open edges longer than `wider_than` mm, one half-edge each, longest first."""
    first = mesh.twin > np.arange(len(mesh.twin))
    found = np.flatnonzero(first & ~mesh.wall & ~mesh.bridge & (mesh.length > wider_than))
    longest: Ints = found[np.argsort(-mesh.length[found])]
    return longest


def regions(mesh: Mesh, open_gates: Ints) -> Ints:
    """Return a label for each triangle; triangles joined by `open_gates` share theirs.

    The label is the smallest triangle of the region. After Y. Zhang, A. Azad and Z. Hu, "FastSV:
    a distributed-memory connected component algorithm with fast convergence" (2020).
    """
    here, there = open_gates // 3, mesh.twin[open_gates] // 3
    label = np.arange(len(mesh.triangles))
    while True:
        before = label.copy()
        root = label[label]
        np.minimum.at(label, before[here], root[there])
        np.minimum.at(label, before[there], root[here])
        label = np.minimum(label, root)
        label[here] = np.minimum(label[here], root[there])
        label[there] = np.minimum(label[there], root[here])
        if np.array_equal(label, before):
            return label


def widest_joint(mesh: Mesh, starts: Ints, goals: Ints, wider_than: float) -> float:
    """Return the width of the widest way from `starts` to `goals` (rows of triangles), mm.

    0 where nothing wider than `wider_than` joins them, infinity where they share a triangle.
    """
    if np.isin(starts, goals).any():
        return inf
    ordered = gates(mesh, wider_than)
    label = regions(mesh, ordered)
    if not np.isin(label[starts], label[goals]).any():
        return 0.0
    ordered = ordered[np.isin(label[ordered // 3], label[starts])]
    parent = list(range(len(mesh.triangles)))
    for group in (starts, goals):
        for triangle in group.tolist():
            parent[triangle] = int(group[0])
    start, goal = int(starts[0]), int(goals[0])
    here, there = (ordered // 3).tolist(), (mesh.twin[ordered] // 3).tolist()
    for a, b, width in zip(here, there, mesh.length[ordered].tolist(), strict=True):
        root_a, root_b = _root(parent, a), _root(parent, b)
        if root_a != root_b:
            parent[root_b] = root_a
            if _root(parent, start) == _root(parent, goal):
                return float(width)
    return 0.0


def _root(parent: list[int], node: int) -> int:
    while parent[node] != node:
        parent[node] = node = parent[parent[node]]
    return node


def shortest(mesh: Mesh, starts: Ints, goals: Ints, width: float) -> list[int]:
    """Return the half-edges that a short way from `starts` to `goals` crosses, all `width` wide.

    Lengths are taken from middle to middle of the edges crossed.
    """
    wide = (~mesh.wall & ~mesh.bridge & (mesh.length >= width) & (mesh.twin >= 0)).tolist()
    twin: list[int] = mesh.twin.tolist()
    middle: list[complex] = _middles(mesh)
    ends = set(goals.tolist())
    came: dict[int, int] = {}
    ticket = count()
    queue: list[tuple[float, int, int, int]] = [
        (0.0, next(ticket), -1, triangle) for triangle in starts.tolist()
    ]
    done: set[int] = set()
    while queue:
        length, _, entry, triangle = heappop(queue)
        if triangle in done:
            continue
        done.add(triangle)
        if triangle in ends:
            return _back(came, twin, entry)
        for edge in range(3 * triangle, 3 * triangle + 3):
            if wide[edge] and twin[edge] // 3 not in done:
                step = abs(middle[edge] - middle[entry]) if entry >= 0 else 0.0
                came[edge] = entry
                heappush(queue, (length + step, next(ticket), edge, twin[edge] // 3))
    return []


def _middles(mesh: Mesh) -> list[complex]:
    middles = (mesh.points[mesh.starts] + mesh.points[mesh.ends]) / 2
    found: list[complex] = (middles[:, 0] + 1j * middles[:, 1]).tolist()
    return found


def _back(came: dict[int, int], _twin: list[int], entry: int) -> list[int]:
    crossed: list[int] = []
    while entry >= 0:
        crossed.append(entry)
        entry = came[entry]
    return crossed[::-1]
