"""Long work off the window's thread: told in words while it lasts, and ended when it is not wanted.

Work of one lane goes one after another. In most lanes a newer wish ends the older one, which then
comes to nothing; what keeps the person's work waits its turn instead.
"""

from collections.abc import Callable
from concurrent.futures import CancelledError, Future, ThreadPoolExecutor
from dataclasses import dataclass, field
from enum import StrEnum
from typing import Any

from PySide6.QtCore import QObject, Signal

from enclosure_app.errors import EnclosureError
from enclosure_app.progress import Progress, StoppedError
from enclosure_app.window.apart.reading import Reader


class Lane(StrEnum):
    """What kinds of work there are."""

    READING = "reading"
    KEEPING = "keeping"
    ISSUING = "issuing"
    SAYING = "saying"
    LOOKING_UP = "looking up"
    TAKING_IN = "taking in"


_ONE_BY_ONE = frozenset({Lane.KEEPING, Lane.TAKING_IN})
"""Lanes in which a newer wish waits for the older one: each keeps something of the person's."""


def _nothing(_: object = None) -> None:
    """What comes of work that nobody waits for."""


@dataclass(eq=False, slots=True)
class Job:
    """One piece of work.

    `words` say what is done, as in "Reading eave.dxf" ("" for work that is not worth telling);
    `work` is done in a thread; then one of the others is called in the window's own.
    """

    lane: Lane
    words: str
    work: Callable[[Progress], Any]
    then: Callable[[Any], object] = _nothing
    refused: Callable[[EnclosureError], object] = _nothing
    stopped: Callable[[], object] = _nothing
    progress: Progress = field(default_factory=Progress)


class Working(QObject):
    """Does long work. `changed`: something began or ended.

    `apart` off does all work at once in the thread that asks for it, for tests of something else.
    """

    changed = Signal()
    _done = Signal(object, object)

    def __init__(self, reader: Reader | None = None, *, apart: bool = True) -> None:
        super().__init__()
        self.apart = apart
        self.reader = reader or Reader()
        self.writer = Reader(self.reader.language)
        self._jobs: list[Job] = []
        self._threads: dict[Lane, ThreadPoolExecutor] = {}
        self._done.connect(self._take)

    @property
    def jobs(self) -> tuple[Job, ...]:
        """What is under way or waits its turn."""
        return tuple(self._jobs)

    def busy(self, lane: Lane) -> bool:
        """Whether there is work in a lane."""
        return any(job.lane is lane for job in self._jobs)

    def begin(self, job: Job) -> None:
        """Do a piece of work, now or when its turn comes."""
        if job.lane not in _ONE_BY_ONE:
            self._drop([other for other in self._jobs if other.lane is job.lane])
        self._jobs.append(job)
        if self.apart:
            future = self._thread(job.lane).submit(job.work, job.progress)
            future.add_done_callback(lambda done: self._done.emit(job, done))
            self.changed.emit()
        else:
            self._take(job, _done_here(job))

    def stop(self) -> None:
        """End what the person is told of; work that is past ending comes to its end."""
        told = [job for job in self._jobs if job.words]
        self._drop([job for job in told if job.lane is not Lane.KEEPING])
        for job in told:
            job.progress.stop()

    def close(self) -> None:
        """End all work but what keeps the person's work, and wait for that."""
        self._drop([job for job in self._jobs if job.lane is not Lane.KEEPING])
        self.reader.close()
        self.writer.close()
        for thread in self._threads.values():
            thread.shutdown(wait=True, cancel_futures=False)
        self._threads.clear()

    def _drop(self, jobs: list[Job]) -> None:
        """End work without waiting for its end."""
        for job in jobs:
            self._jobs.remove(job)
            job.progress.stop()
            job.stopped()
        if jobs:
            self.changed.emit()

    def _thread(self, lane: Lane) -> ThreadPoolExecutor:
        if lane not in self._threads:
            # one for what is wanted, and one for what it replaced and has not noticed yet
            several = 1 if lane in _ONE_BY_ONE else 2
            self._threads[lane] = ThreadPoolExecutor(several, str(lane))
        return self._threads[lane]

    def _take(self, job: Job, future: "Future[Any]") -> None:
        if job not in self._jobs:
            return  # dropped meanwhile
        self._jobs.remove(job)
        self.changed.emit()
        try:
            result = future.result()
        except (StoppedError, CancelledError):
            job.stopped()
        except EnclosureError as error:
            job.refused(error)
        else:
            job.then(result)


def _done_here(job: Job) -> "Future[Any]":
    future: Future[Any] = Future()
    try:
        future.set_result(job.work(job.progress))
    except (StoppedError, EnclosureError) as error:
        future.set_exception(error)
    return future
