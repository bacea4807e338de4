"""How far long work is, told by whoever does it and heard by whoever waits; stopped when asked.

What reads a file or checks a section calls `tell` with the share that is done, or `go_on` where it
only asks whether it is still wanted, and knows nothing of who listens. Nobody listens unless
`listening` says so.
"""

import io
from collections.abc import Callable, Iterable, Iterator, Sized
from contextlib import contextmanager
from contextvars import ContextVar
from pathlib import Path
from threading import Event
from typing import TYPE_CHECKING, TextIO, TypeVar

if TYPE_CHECKING:
    from _typeshed import WriteableBuffer as Buffer

_Item = TypeVar("_Item")
_BLOCK = 65_536  # bytes between two tellings
_EACH = 500  # items between two tellings

_listener: ContextVar[Callable[[float], object] | None] = ContextVar("listener", default=None)


class StoppedError(Exception):
    """The person, or a newer wish, stopped the work: nothing is to come of it."""


class Progress:
    """One piece of work: the share that is done (None: not known), and whether it is still wanted.

    One thread does the work and tells; another looks and may stop it.
    """

    def __init__(self) -> None:
        self.share: float | None = None
        self._stopped = Event()
        self._stops: Callable[[], object] | None = None

    @property
    def stopped(self) -> bool:
        """Whether the work is wanted no more."""
        return self._stopped.is_set()

    def tell(self, share: float) -> None:
        """Say how much is done, from 0 to 1; what was said before is never taken back.

        Raises:
            StoppedError: the work is wanted no more.
        """
        self.go_on()
        self.share = max(share, self.share or 0.0)

    def go_on(self) -> None:
        """Go on, if the work is still wanted.

        Raises:
            StoppedError: it is not.
        """
        if self.stopped:
            raise StoppedError

    def stop(self) -> None:
        """Say that the work is wanted no more."""
        self._stopped.set()
        if self._stops:
            self._stops()

    def when_stopped(self, do: Callable[[], object]) -> None:
        """Have this called when the work is stopped; at once if it is already."""
        self._stops = do
        if self.stopped:
            do()


@contextmanager
def listening(listener: Callable[[float], object]) -> Iterator[None]:
    """Hear what is told within."""
    token = _listener.set(listener)
    try:
        yield
    finally:
        _listener.reset(token)


@contextmanager
def part(start: float, end: float) -> Iterator[None]:
    """Take what is told within for the part of the work between two shares."""
    whole = _listener.get()
    if whole is None:
        yield
        return
    with listening(lambda share: whole(start + (end - start) * share)):
        yield


def tell(share: float) -> None:
    """Say how much of the work is done, from 0 to 1, to whoever listens."""
    listener = _listener.get()
    if listener:
        listener(share)


def go_on() -> None:
    """Go on with long work, if whoever listens still wants it.

    Raises:
        StoppedError: it is wanted no more.
    """
    tell(0.0)  # what was told of it before is never taken back


def gone_through(
    items: Iterable[_Item], start: float, end: float, each: int = _EACH
) -> Iterator[_Item]:
    """Yield the items; tell how far that is between two shares, where their number is known.

    It is told at every item whose number can be divided by `each`.
    """
    count = len(items) if isinstance(items, Sized) else 0
    for number, item in enumerate(items):
        if count and number % each == 0:
            tell(start + (end - start) * number / count)
        yield item


@contextmanager
def told_text(path: Path, encoding: str, errors: str, end: float) -> Iterator[TextIO]:
    """Open a text file; tell as it is read how far that is, from 0 to `end`."""
    with path.open("rb") as file:
        size = max(path.stat().st_size, 1)
        told = _ToldFile(file, lambda at: tell(end * at / size))
        whole = io.BufferedReader(told, _BLOCK)
        yield io.TextIOWrapper(whole, encoding=encoding, errors=errors)


class _ToldFile(io.RawIOBase):
    """A file that says how far it was read; a reader above it asks for some kilobytes at a time."""

    def __init__(self, file: io.BufferedReader, told: Callable[[int], object]) -> None:
        self._file, self._told = file, told

    def readable(self) -> bool:
        """Say yes."""
        return True

    def readinto(self, into: "Buffer") -> int:
        """Read as much as there is room for."""
        size = self._file.readinto(into)
        self._told(self._file.tell())
        return size
