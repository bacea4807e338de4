"""Holds the search for unused objects off while very many are made that all stay in use.

A drawing of 50 000 entities is some millions of objects; looking through all of them again and
again while they come in costs up to a third of the reading time and never finds anything.
"""

import gc
from collections.abc import Iterator
from contextlib import contextmanager


@contextmanager
def kept_in_use() -> Iterator[None]:
    """Switch the cyclic garbage collector off, and on again if it was on."""
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()


def set_aside() -> None:
    """Leave what there is now out of every later search: it stays in use until it is let go of.

    Looking through a hundred thousand lines would stop all threads for a tenth of a second.
    """
    gc.freeze()
