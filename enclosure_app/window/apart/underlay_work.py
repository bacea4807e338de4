"""Work on a file that would keep the window waiting: done off its own thread, told of, stopped."""

from collections.abc import Callable
from concurrent.futures import Future, ThreadPoolExecutor
from functools import cache
from typing import Any

from PySide6.QtCore import QObject, Signal

from enclosure_app.errors import EnclosureError

Tell = Callable[[float], None]
"""Is told what share is done; stops the work where nobody wants it any more."""


class _StoppedError(Exception):
    """Nobody wants the work any more."""


class Work(QObject):
    """One thing to be done. `done` has what came of it, `failed` a sentence, `went` the share done.

    `ended` says that nothing more will come of it.
    """

    done = Signal(object)
    failed = Signal(str)
    went = Signal(float)
    _ended = Signal(object)

    def __init__(self, does: Callable[[Tell], Any]) -> None:
        super().__init__()
        self._does = does
        self._stopped = False
        self.ended = False
        self._ended.connect(self._take)

    def start(self) -> "Work":
        """Begin; works are done one after the other."""
        _thread().submit(self._run).add_done_callback(self._end)
        return self

    def stop(self) -> None:
        """Give up: nothing more is heard of it."""
        self._stopped = self.ended = True

    def _run(self) -> Any:  # noqa: ANN401  whatever comes of it
        """Called in the thread."""
        self._tell(0.0)
        return self._does(self._tell)

    def _tell(self, share: float) -> None:
        """Called in the thread."""
        if self._stopped:
            raise _StoppedError
        self.went.emit(share)

    def _end(self, future: "Future[Any]") -> None:
        """Called in the thread: go on in the window's own."""
        self._ended.emit(future)

    def _take(self, future: "Future[Any]") -> None:
        self.ended = True
        if self._stopped:
            return
        try:
            self.done.emit(future.result())
        except EnclosureError as error:
            self.failed.emit(str(error))


@cache
def _thread() -> ThreadPoolExecutor:
    return ThreadPoolExecutor(1, "underlays")
