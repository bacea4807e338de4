"""Which of several sayings stand: those that no later one takes the place of.

Each saying has an `id` and names in `after` what it takes the place of. That tells, without clocks
and without a common past, who knew of what: in two copies of a project that are brought together
two sayings stand side by side, until somebody says a third after both.
"""

from collections.abc import Callable, Iterable, Sequence
from graphlib import CycleError, TopologicalSorter
from typing import Protocol, TypeVar
from uuid import UUID, uuid5

from enclosure_app.model.said.moment import instant

_OURS = UUID("6f0e9a52-3b5c-4d7e-9a61-58c1f7d2b904")  # any one will do, as long as it stays


class Saying(Protocol):
    """Something that was said at a time, after others."""

    @property
    def id(self) -> str:
        """Its own name for good."""

    @property
    def when(self) -> str:
        """The moment it was said."""

    @property
    def after(self) -> tuple[str, ...]:
        """The names of those that it takes the place of."""


S = TypeVar("S", bound=Saying)


def new_id(*parts: object) -> str:
    """Return a name (a UUID of version 5) for what has these parts; the same parts, the same name."""
    return uuid5(_OURS, "\x1f".join(map(str, parts))).hex


def standing(sayings: Iterable[S]) -> tuple[S, ...]:
    """Return the sayings that no other one of them takes the place of, in their order."""
    every = tuple(sayings)
    past = {name for each in every for name in each.after}
    return tuple(each for each in every if not each.id or each.id not in past)


def in_order(sayings: Sequence[S], told: Callable[[S], str] = lambda each: each.when) -> list[S]:
    """Return sayings so that each comes after those it takes the place of, else by their moments.

    Sayings of one instant are put in the order of their names: the order they come in never
    matters. `told` gives the moment of one.
    """
    named = {each.id: each for each in sayings}
    by_time = {
        name: at
        for at, name in enumerate(
            sorted(named, key=lambda name: (instant(told(named[name])), name))
        )
    }
    sorter = TopologicalSorter(
        {name: set(each.after) & set(named) for name, each in named.items()}
    )
    try:
        sorter.prepare()
    except CycleError:  # only in a file that was written by hand
        return [named[name] for name in sorted(named, key=by_time.__getitem__)]
    return [named[name] for name in _drained(sorter, by_time)]


def _drained(sorter: "TopologicalSorter[str]", by_time: dict[str, int]) -> list[str]:
    order: list[str] = []
    ready: list[str] = []
    while sorter.is_active():
        ready = sorted([*ready, *sorter.get_ready()], key=by_time.__getitem__)
        first = ready.pop(0)
        order.append(first)
        sorter.done(first)
    return order
