"""Checks the project again after each change: soon, off the window's own thread where it is slow.

A section that did not change is the very same object and keeps its result. What a slow check says
of a project that has changed since is dropped.
"""

from collections.abc import Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from dataclasses import dataclass
from time import perf_counter
from types import MappingProxyType

from PySide6.QtCore import QObject, QTimer, Signal

from enclosure_app.errors import EnclosureError
from enclosure_app.model.limits import Limits
from enclosure_app.model.project import Project
from enclosure_app.model.report import SectionResult
from enclosure_app.model.section import Section
from enclosure_app.window.document import Document
from enclosure_app.window.opening import limits_of

PAUSE = 50  # ms from a change to the check
SLOW = 0.060  # seconds from which a check runs in a thread of its own
MANY = 60  # pieces from which what was just opened is checked there, since nobody knows how long


@dataclass(frozen=True, slots=True)
class Checked:
    """The results of one project, one for each section, and how long each check took (s)."""

    project: Project
    limits: Limits
    results: tuple[SectionResult, ...] = ()
    seconds: tuple[float, ...] = ()


def unjudged(section: Section) -> SectionResult:
    """Return the result of a section of which nothing can be said yet."""
    return SectionResult(section, MappingProxyType({}))


def judge(project: Project, limits: Limits, last: Checked | None = None) -> Checked:
    """Check every section that is not the same as in `last`."""
    known = {}
    if last and last.limits is limits:
        pairs = zip(last.results, last.seconds, strict=True)
        known = {id(result.section): (result, took) for result, took in pairs}
    found = [known.get(id(section)) or _timed(section, limits) for section in project.sections]
    return Checked(
        project, limits, tuple(result for result, _ in found), tuple(took for _, took in found)
    )


def _timed(section: Section, limits: Limits) -> tuple[SectionResult, float]:
    from enclosure_app.checker import check_section  # noqa: PLC0415  after the window is seen

    start = perf_counter()
    sound = len(section.frame) > 2 and bool(section.pieces)
    result = check_section(section, limits) if sound else unjudged(section)
    return result, perf_counter() - start


class Checking(QObject):
    """Keeps the results of a document up to date.

    `checked` says that there are new ones; `failed` says in a sentence why there are none;
    `working` says whether a slow check is under way. With `apart` off, what was just opened is
    checked at once, however much it is.
    """

    checked = Signal()
    failed = Signal(str)
    working = Signal(bool)
    _done = Signal(object)

    def __init__(self, document: Document, *, apart: bool = True) -> None:
        super().__init__(document)
        self._document = document
        self._apart = apart
        self._last: Checked | None = None
        self._limits: Limits | None = None
        self._opening = self._running_for = -1
        self._thread: ThreadPoolExecutor | None = None
        self._running: Future[Checked] | None = None
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(PAUSE)
        self._timer.timeout.connect(self.check_now)
        self._done.connect(self._take)
        document.changed.connect(self._soon)

    @property
    def results(self) -> Sequence[SectionResult]:
        """The latest results, one for each section as it was when they were made."""
        return self._last.results if self._last else ()

    @property
    def limits(self) -> Limits:
        """The rule book in force for the project as it is now."""
        return self._limits_for(self._document.project)

    @property
    def current(self) -> bool:
        """Whether the results are those of the project as it is now."""
        return self._last is not None and self._last.project is self._document.project

    @property
    def of_this_document(self) -> bool:
        """Whether the results are of what is open now, though maybe of an earlier state of it."""
        return self._opening == self._document.opening

    def check_now(self) -> None:
        """Check what changed; in a thread where the last check of it was slow."""
        self._timer.stop()
        project = self._document.project
        try:
            limits = self._limits_for(project)
            if self._is_slow():
                self._start(project, limits)
                return
            self._show(judge(project, limits, self._last))
        except EnclosureError as error:
            self.failed.emit(str(error))

    def _soon(self) -> None:
        """Check after a pause, counted from the first change, so that a drag is judged as it goes."""
        if not self._timer.isActive():
            self._timer.start()

    def close(self) -> None:
        """End the thread; its last check is not waited for longer than it takes."""
        self._timer.stop()
        if self._thread:
            self._thread.shutdown(wait=True, cancel_futures=True)
            self._thread = None

    def _limits_for(self, project: Project) -> Limits:
        """Return the same limits for as long as the figures of the project stay the same."""
        last = self._last.project if self._last else None
        same = last and (last.book, last.figures, last.severities) == (
            project.book,
            project.figures,
            project.severities,
        )
        if self._limits is None or not same:
            self._limits = limits_of(project)
        return self._limits

    def _is_slow(self) -> bool:
        """Whether a check may take long: the last one did, or much was opened just now."""
        if self._last is None or self._opening != self._document.opening:
            sections = self._document.project.sections
            return self._apart and sum(len(section.pieces) for section in sections) > MANY
        return max(self._last.seconds, default=0.0) > SLOW

    def _start(self, project: Project, limits: Limits) -> None:
        under_way = self._running is not None and not self._running.done()
        if under_way and self._running_for == self._document.opening:
            return  # _take looks again when this one is done
        # one thread for what is open, and one for what was open before and comes to nothing
        self._thread = self._thread or ThreadPoolExecutor(2, "checking")
        self._running_for = self._document.opening
        self._running = self._thread.submit(judge, project, limits, self._last)
        self._running.add_done_callback(self._tell)
        self.working.emit(True)

    def _tell(self, future: Future[Checked]) -> None:
        """Called in the thread: go on in the window's own."""
        if not future.cancelled():
            self._done.emit(future)

    def _take(self, future: Future[Checked]) -> None:
        if future is not self._running:
            return  # of what was open before
        self.working.emit(False)
        try:
            self._last = future.result()
        except EnclosureError as error:
            self.failed.emit(str(error))
            return
        if self.current:
            self._opening = self._document.opening
            self.checked.emit()
        else:
            self.check_now()

    def _show(self, checked: Checked) -> None:
        self._last = checked
        self._opening = self._document.opening
        self.checked.emit()
