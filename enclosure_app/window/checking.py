"""Checks the project again after each change: at once, or off the window's own thread where it is slow.

A slow check that a change makes useless is given up, and a person may stop one; what was found last
then stays.
"""

from collections.abc import Callable, Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from dataclasses import dataclass

from PySide6.QtCore import QObject, QTimer, Signal

from enclosure_app.errors import EnclosureError
from enclosure_app.files.projects import limits_of
from enclosure_app.model.limits import Limits
from enclosure_app.model.project import Project
from enclosure_app.model.report import SectionResult
from enclosure_app.progress import Progress, listening
from enclosure_app.window.document import Document
from enclosure_app.window.judging import Checked, judge, judged_before

PAUSE = 50  # ms from a change to the check
SLOW = 0.060  # seconds from which a check runs in a thread of its own
MANY = 60  # pieces from which what was just opened is checked there, since nobody knows how long


@dataclass(eq=False, slots=True)
class _Run:
    """A check under way in a thread."""

    project: Project
    limits: Limits
    opening: int
    progress: Progress

    def serves(self, project: Project, limits: Limits, opening: int) -> bool:
        """Whether what it finds will help to check a project: if no more than a few pieces moved."""
        from enclosure_app.network.again import moved_between  # noqa: PLC0415  after the window is seen

        if self.opening != opening or self.limits is not limits:
            return False
        pairs = list(zip(self.project.sections, project.sections, strict=False))
        return len(self.project.sections) == len(project.sections) and all(
            old is new or moved_between(old, new) is not None for old, new in pairs
        )


def _told(progress: Progress, project: Project, limits: Limits, last: Checked | None) -> Checked:
    """Judge a project in a thread: how far that is, is told, and it ends when it is stopped."""
    with listening(progress.tell):
        return judge(project, limits, last)


class Checking(QObject):
    """Keeps the results of a document up to date.

    `checked` says that there are new ones; `failed` says in a sentence why there are none;
    `working` says whether a slow check is under way, `stopped` that a person stopped it. With
    `apart` off, what was just opened is checked at once, however much it is.
    """

    checked = Signal()
    failed = Signal(str)
    working = Signal(bool)
    stopped = Signal()
    _done = Signal(object, object)

    def __init__(self, document: Document, *, apart: bool = True) -> None:
        super().__init__(document)
        self._document = document
        self._apart = apart
        self._last: Checked | None = None
        self._limits: Limits | None = None
        self._opening = -1
        self._thread: ThreadPoolExecutor | None = None
        self._run: _Run | None = None
        self._given_up: Project | None = None
        self._then: tuple[int, Callable[[], object]] | None = None  # of which opening
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
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

    @property
    def progress(self) -> Progress | None:
        """How far the slow check is that is under way, None without one."""
        return self._run.progress if self._run else None

    @property
    def given_up(self) -> bool:
        """Whether the check of the project as it is now was stopped by a person."""
        return self._given_up is self._document.project

    def once_current(self, then: Callable[[], object]) -> None:
        """Go on with `then` when the results are of the project as it is now; check it before if need be.

        Only what was wanted last is gone on with, and not where a person stops the check, where it
        fails, or where something else is opened meanwhile.
        """
        self._then = self._document.opening, then
        if self.current:
            self._go_on()
        elif not self._run:
            self.check_now()

    def _go_on(self) -> None:
        wanted, self._then = self._then, None
        if wanted and wanted[0] == self._document.opening:
            wanted[1]()

    def stop(self) -> None:
        """Give up the slow check that is under way: what was found before it stays."""
        if self._run:
            self._given_up, self._then = self._document.project, None
            self._drop()
            self.stopped.emit()

    def check_now(self) -> None:
        """Check what changed; in a thread where that will take long."""
        self._timer.stop()
        self._given_up = None
        project = self._document.project
        try:
            limits = self._limits_for(project)
            if self._is_slow():
                self._start(project, limits)
                return
            self._drop()
            self._show(judge(project, limits, self._last))
        except EnclosureError as error:
            self._tell_failed(error)

    def _soon(self) -> None:
        """Check at once where that is quick, else after a pause, counted from the first change."""
        if not self._timer.isActive():
            self._timer.start(PAUSE if self._is_slow() else 0)

    def close(self) -> None:
        """End the thread; its last check is given up, and told to nobody."""
        self._timer.stop()
        if self._run:
            self._run.progress.stop()
            self._run = None
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
        """Whether a check will take long, by how long it took before; of what is new, by its size."""
        project = self._document.project
        if self._last is None or self._opening != self._document.opening:
            return self._apart and sum(len(each.pieces) for each in project.sections) > MANY
        before = judged_before(project, self._last)
        return any(
            len(section.pieces) > MANY
            if old is None
            else old.expected(section, self._last.limits) > SLOW
            for section, old in zip(project.sections, before, strict=True)
        )

    def _start(self, project: Project, limits: Limits) -> None:
        opening = self._document.opening
        if self._run:
            if self._run.serves(project, limits, opening):
                return  # _take looks again when this one is done
            self._run.progress.stop()
        # one thread for what is wanted, and one for what was given up and has not noticed yet
        self._thread = self._thread or ThreadPoolExecutor(2, "checking")
        self._run = run = _Run(project, limits, opening, Progress())
        future = self._thread.submit(_told, run.progress, project, limits, self._last)
        future.add_done_callback(lambda done: self._tell(run, done))
        self.working.emit(True)

    def _drop(self) -> None:
        """Give up the check that is under way, if there is one."""
        if self._run:
            self._run.progress.stop()
            self._run = None
            self.working.emit(False)

    def _tell(self, run: _Run, future: Future[Checked]) -> None:
        """Called in the thread: go on in the window's own."""
        if not future.cancelled() and not run.progress.stopped:
            self._done.emit(run, future)

    def _take(self, run: _Run, future: Future[Checked]) -> None:
        if run is not self._run:
            return  # given up meanwhile
        self._run = None
        self.working.emit(False)
        try:
            self._last = future.result()
        except EnclosureError as error:
            self._tell_failed(error)
            return
        if self.current:
            self._tell_found()
        else:
            self.check_now()

    def _show(self, checked: Checked) -> None:
        self._last = checked
        self._tell_found()

    def _tell_found(self) -> None:
        self._opening = self._document.opening
        self.checked.emit()
        self._go_on()

    def _tell_failed(self, error: EnclosureError) -> None:
        self._then = None
        self.failed.emit(str(error))
