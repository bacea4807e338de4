"""Floods a mesh through its gates, the widest first, until two sides are joined."""

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from enclosure_app.geometry.openings.gates import Gates

Floats = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]


@dataclass(frozen=True, slots=True)
class Side:
    """The marks of one side: the triangle each lies in and how wide a way may be there, mm."""

    triangles: Ints
    width: Floats


def widest_joint(gates: Gates, outside: Side, inside: Side, wider_than: float) -> float:
    """Return the width of the widest way from side to side (mm), 0 if none is wider than that."""
    number = len(gates.mesh.triangles)
    wide = gates.wider_than(wider_than)
    sides = np.repeat([number, number + 1], [len(outside.triangles), len(inside.triangles)])
    here = np.concatenate([wide // 3, outside.triangles, inside.triangles])
    there = np.concatenate([gates.mesh.twin[wide] // 3, sides])
    width = np.concatenate([gates.width[wide], outside.width, inside.width])
    order = np.argsort(-width)
    joint = first_joining(number + 2, here[order], there[order])
    found = 0.0 if joint is None else float(width[order[joint]])
    return found if found > wider_than else 0.0


def first_joining(number: int, here: Ints, there: Ints) -> int | None:
    """Return which joint joins the last two of `number` nodes, made one after the other.

    Joint i joins nodes here[i] and there[i]; None if even all of them do not do it. Each round
    either keeps the first half of the joints, or makes them and goes on with the second half.
    """
    made, left = 0, len(here)
    label = groups(number, here, there)
    if label[-2] != label[-1]:
        return None
    while left > 1:
        half = left // 2
        label = groups(number, here[:half], there[:half])
        if label[-2] == label[-1]:
            here, there, left = here[:half], there[:half], half
        else:
            here, there = label[here[half:left]], label[there[half:left]]
            made, left = made + half, left - half
            here, there, number = _renumbered(number, here, there, label[-2:])
    return made


def _renumbered(number: int, here: Ints, there: Ints, last: Ints) -> tuple[Ints, Ints, int]:
    """Number the nodes in use anew, the two in `last` last."""
    used = np.zeros(number, dtype=bool)
    used[here] = used[there] = True
    used[last] = False
    new = np.cumsum(used) - 1
    count = int(used.sum())
    new[last] = count, count + 1
    return new[here], new[there], count + 2


def groups(number: int, here: Ints, there: Ints) -> Ints:
    """Return a label for each node; nodes that are joined share theirs.

    The label is the smallest node of the group. After Y. Zhang, A. Azad and Z. Hu, "FastSV: a
    distributed-memory connected component algorithm with fast convergence" (2020).
    """
    label = np.arange(number)
    while True:
        before, root = label, label[label]
        label = root.copy()
        np.minimum.at(label, before[here], root[there])
        np.minimum.at(label, before[there], root[here])
        np.minimum.at(label, here, root[there])
        np.minimum.at(label, there, root[here])
        if np.array_equal(label, before):
            return label
