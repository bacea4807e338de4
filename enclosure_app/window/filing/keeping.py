"""Keeps work safe: copies of what is not saved, a lock on what is open, and the way back after a crash."""

from collections.abc import Callable
from functools import partial
from itertools import count
from pathlib import Path

from PySide6.QtCore import QObject, QTimer, Signal

from enclosure_app.errors import EnclosureError
from enclosure_app.files.project.autosave import (
    Recovery,
    autosave,
    discard_autosave,
    find_recovery,
)
from enclosure_app.files.project.file import SUFFIX
from enclosure_app.files.project.lock import HeldError, Lock
from enclosure_app.model.project import Project
from enclosure_app.progress import Progress
from enclosure_app.window.apart.working import Job, Lane, Working
from enclosure_app.window.document import Document

PAUSE = 20_000  # ms from the first change that is not saved to the copy of it
_SEVERAL = 50  # windows that may have unsaved work without a name at one time


class Keeping(QObject):
    """Watches over one document.

    `asked`: a question with its answers; `said`: a sentence. What was never saved is kept in
    `folder`, under a name that no other running window uses.
    """

    asked = Signal(str, object)
    said = Signal(str)

    def __init__(self, document: Document, folder: Path, working: Working) -> None:
        super().__init__(document)
        self._document = document
        self._working = working
        self._folder = folder
        self._nameless: Lock | None = None
        self._lock: Lock | None = None
        self._copied: set[Path] = set()
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(PAUSE)
        self._timer.timeout.connect(self.copy)
        document.changed.connect(self._changed)
        document.undo_stack.cleanChanged.connect(self._clean_changed)

    def copy_after(self, seconds: int) -> None:
        """Copy what is not saved so long after its first change."""
        self._timer.setInterval(1000 * seconds)

    @property
    def copied_after(self) -> float:
        """Seconds from the first change that is not saved to its copy."""
        return self._timer.interval() / 1000

    def opened(self) -> None:
        """Take the lock of the project that was opened, and look for unsaved work on it."""
        self._discard()  # what was not saved of the one before was given up
        self._release()
        path = self._document.path
        if path is not None and self._take(path):
            self._offer(path)

    def look_for_unsaved(self) -> None:
        """Offer what was drawn and never saved when the program last ended."""
        for number in range(1, _SEVERAL):
            path = self._nameless_path(number)
            if not path.with_name(f".{path.name}.autosave").exists():
                continue
            try:
                self._nameless = Lock.take(path)
            except HeldError:
                continue  # a window that runs has it
            self._offer(path)
            return

    def copy(self) -> None:
        """Keep a copy of what is not saved."""
        self._timer.stop()
        if not self._document.modified:
            return
        project = self._document.project
        try:
            path = self._document.path or self._own_place()
        except OSError as error:
            self.said.emit(self.tr("No copy of your work can be kept ({}).").format(error))
            return
        self._copied.add(path)

        def work(progress: Progress) -> None:
            progress.go_on()
            autosave(project, path)

        self._begin(work)

    def close(self) -> None:
        """Let go: nothing is left to be recovered, since the person decided what to keep."""
        self._timer.stop()
        self._discard()
        self._release()
        if self._nameless:
            lock, self._nameless = self._nameless, None
            self._begin(lambda _: lock.release())

    def _begin(self, work: Callable[[Progress], object]) -> None:
        """Have something done where saving is done, after what is to be saved before it."""
        told = self._tell
        self._working.begin(Job(Lane.KEEPING, "", work, refused=told))

    def _tell(self, error: EnclosureError) -> None:
        self.said.emit(str(error))

    def _nameless_path(self, number: int) -> Path:
        return self._folder / f"unsaved-{number}{SUFFIX}"

    def _own_place(self) -> Path:
        """Return where this window keeps what has no name yet.

        Raises:
            OSError: there is no such folder, and none can be made.
        """
        self._folder.mkdir(parents=True, exist_ok=True)
        for number in count(1):
            if self._nameless:
                break
            path = self._nameless_path(number)
            if path.with_name(f".{path.name}.autosave").exists():
                continue  # what a crash left there is not written over
            try:
                self._nameless = Lock.take(path)
            except HeldError:
                continue
        if self._nameless is None:
            raise AssertionError("The search for a place ends only with one.")
        return self._nameless.path

    def _offer(self, path: Path) -> None:
        found = self._ask
        look = Job(Lane.KEEPING, "", lambda _: find_recovery(path), then=found, refused=self._tell)
        self._working.begin(look)

    def _ask(self, found: Recovery | None) -> None:
        if found is None:
            return
        when = f"{found.when.astimezone():%Y-%m-%d %H:%M}"
        question = self.tr("The program ended before the work of {} was saved.").format(when)
        answers: dict[str, Callable[[], object]] = {
            self.tr("Take it up again"): lambda: self._take_up(found),
            self.tr("Throw it away"): lambda: self._begin(lambda _: found.discard()),
        }
        self.asked.emit(question, answers)

    def _take_up(self, found: Recovery) -> None:
        self._copied.add(found.path)

        def show(project: Project) -> None:
            self._document.apply(self.tr("Take up unsaved work"), project)

        words = self.tr("Taking up unsaved work")
        self._working.begin(
            Job(Lane.READING, words, lambda _: found.load(), then=show, refused=self._tell)
        )

    def _take(self, path: Path, *, by_force: bool = False) -> bool:
        """Lock the project that is open; say whether it is ours, and ask what to do if not."""
        try:
            self._lock = Lock.take(path, by_force=by_force)
        except HeldError as error:
            self._document.keep_at(None)  # until it is said otherwise, saving asks where to
            answers: dict[str, Callable[[], object]] = {
                self.tr("Work on a copy"): lambda: None,
                self.tr("Work on it all the same"): lambda: self._share(path),
            }
            self.asked.emit(str(error), answers)
            return False
        if self._lock.note:
            self.said.emit(self._lock.note)
        return True

    def _share(self, path: Path) -> None:
        """Work on a project that somebody else has open too."""
        self._document.keep_at(path)
        self._take(path, by_force=True)

    def _changed(self) -> None:
        if not self._timer.isActive():  # whether it is modified is known only afterwards
            self._timer.start()

    def _clean_changed(self, clean: bool) -> None:
        """Throw the copy away when the project is saved, and lock it where it is kept now."""
        if not clean:
            return
        self._timer.stop()
        path = self._document.path
        if path and path.exists():
            self._discard()
            if self._lock is None or self._lock.path != path:
                self._release()
                self._take(path)

    def _discard(self) -> None:
        """Throw copies away, after any that is still being written."""
        copied, self._copied = self._copied, set()
        for path in copied:
            self._begin(partial(_thrown_away, path))

    def _release(self) -> None:
        lock, self._lock = self._lock, None
        if lock:
            lock.release()


def _thrown_away(path: Path, _: Progress) -> None:
    discard_autosave(path)
