"""Which rows of a table stood in an earlier one: what was worked out for them need not be again."""

from collections.abc import Sequence
from operator import is_

import numpy as np
from numpy.typing import NDArray

from enclosure_app.geometry.rims.rims import Bools, Ints

NEW = -1


def same_rows(old: NDArray[np.float64], new: NDArray[np.float64]) -> Ints:
    """Return for each row (n, k) of `new` the number of the same row in `old`, `NEW` if it is not found.

    Rows are looked for where they stood before; where some were put in or taken out, the ones before
    and behind these are.
    """
    if old.shape == new.shape:
        number = np.arange(len(new))
        return np.where(_same(old, new), number, NEW)
    found = np.full(len(new), NEW)
    least = min(len(old), len(new))
    if not least or old.shape[1:] != new.shape[1:]:
        return found
    head = _leading(_same(old[:least], new[:least]))
    tail = min(_leading(_same(old[::-1][:least], new[::-1][:least])), least - head)
    found[:head] = np.arange(head)
    found[len(new) - tail :] = np.arange(len(old) - tail, len(old))
    return found


def unlike(old: Sequence[object], new: Sequence[object]) -> list[int]:
    """Return the places at which two rows of as many things do not hold the very same object."""
    same = np.fromiter(map(is_, old, new), dtype=bool, count=len(new))
    return np.flatnonzero(~same).tolist()


def _same(old: NDArray[np.float64], new: NDArray[np.float64]) -> Bools:
    same = np.ones(len(new), dtype=bool)
    for column in range(new.shape[1]):  # many times quicker than all of a row at once
        same &= old[:, column] == new[:, column]
    return same


def _leading(same: Bools) -> int:
    return len(same) if same.all() else int(np.argmin(same))
