"""Large arrays worked on a few thousand rows at a time.

What numpy and shapely do in one call keeps every other thread of the program waiting, so that a
window would stand still while a hundred thousand lines are made ready in a thread.
"""

from collections.abc import Callable, Iterable, Sequence
from typing import Any

import numpy as np
import shapely
from numpy.typing import NDArray

ROWS = 4000  # rows worked on in one call: one to three ms

Point = tuple[float, float]


def made(make: Callable[[Any], Any], rows: NDArray[np.float64]) -> NDArray[np.object_]:
    """Return the shapes (n) that `make` makes of rows (n, ...)."""
    parts = [np.asarray(make(rows[at : at + ROWS])) for at in range(0, len(rows), ROWS)]
    return np.concatenate(parts) if parts else np.zeros(0, dtype=object)


def asked(
    tree: shapely.STRtree,
    shapes: NDArray[np.object_],
    **how: Any,  # noqa: ANN401  of the query
) -> tuple[NDArray[np.intp], NDArray[np.intp]]:
    """Return the pairs of a shape and of what it finds in the tree, by their numbers."""
    found = [np.zeros((2, 0), dtype=np.intp)]
    for at in range(0, len(shapes), ROWS):
        pairs = tree.query(shapes[at : at + ROWS], **how)
        pairs[0] += at
        found.append(pairs)
    first, second = np.concatenate(found, axis=1)
    return first, second


def listed(array: NDArray[Any]) -> list[Any]:
    """Return an array as a list of plain numbers, or of lists of them."""
    plain: list[Any] = []
    for at in range(0, len(array), ROWS):
        plain += array[at : at + ROWS].tolist()
    return plain


def placed(runs: Iterable[Sequence[Point]]) -> NDArray[np.float64]:
    """Return the places of all runs one after the other, shape (n, 2)."""
    one_by_one = (number for run in runs for place in run for number in place)
    return np.fromiter(one_by_one, dtype=np.float64).reshape(-1, 2)
