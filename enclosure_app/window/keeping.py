"""Keeps work safe: copies of what is not saved, a lock on what is open, and the way back after a crash."""

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject, QTimer, Signal

from enclosure_app.errors import EnclosureError
from enclosure_app.files.autosave import Recovery, autosave, discard_autosave, find_recovery
from enclosure_app.files.lock import HeldError, Lock
from enclosure_app.files.project_file import SUFFIX
from enclosure_app.window.document import Document

PAUSE = 20_000  # ms from the first change that is not saved to the copy of it


class Keeping(QObject):
    """Watches over one document.

    `asked`: a question with its answers; `said`: a sentence. What was never saved is kept in
    `folder`.
    """

    asked = Signal(str, object)
    said = Signal(str)

    def __init__(self, document: Document, folder: Path) -> None:
        super().__init__(document)
        self._document = document
        self._nameless = folder / f"unsaved{SUFFIX}"
        self._lock: Lock | None = None
        self._copied: Path | None = None
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(PAUSE)
        self._timer.timeout.connect(self.copy)
        document.changed.connect(self._changed)
        document.undo_stack.cleanChanged.connect(self._clean_changed)

    def opened(self) -> None:
        """Take the lock of the project that was opened, and look for unsaved work on it."""
        self._release()
        path = self._document.path
        if path is None:
            return
        try:
            self._lock = Lock.take(path)
            if self._lock.note:
                self.said.emit(self._lock.note)
        except HeldError as error:
            self.said.emit(str(error))
        self._offer(path)

    def look_for_unsaved(self) -> None:
        """Offer what was drawn and never saved when the program last ended."""
        self._offer(self._nameless)

    def copy(self) -> None:
        """Keep a copy of what is not saved."""
        self._timer.stop()
        if not self._document.modified:
            return
        path = self._document.path or self._nameless
        try:
            path.parent.mkdir(parents=True, exist_ok=True)
            autosave(self._document.project, path)
            self._copied = path
        except (EnclosureError, OSError) as error:
            self.said.emit(str(error))

    def close(self) -> None:
        """Let go: nothing is left to be recovered, since the person decided what to keep."""
        self._timer.stop()
        self._discard()
        self._release()

    def _offer(self, path: Path) -> None:
        try:
            found = find_recovery(path)
        except EnclosureError as error:
            self.said.emit(str(error))
            return
        if found is None:
            return
        when = f"{found.when.astimezone():%Y-%m-%d %H:%M}"
        question = self.tr("The program ended before the work of {} was saved.").format(when)
        answers: dict[str, Callable[[], object]] = {
            self.tr("Take it up again"): lambda: self._take_up(found),
            self.tr("Throw it away"): found.discard,
        }
        self.asked.emit(question, answers)

    def _take_up(self, found: Recovery) -> None:
        try:
            project = found.load()
        except EnclosureError as error:
            self.said.emit(str(error))
            return
        self._document.apply(self.tr("Take up unsaved work"), project)

    def _changed(self) -> None:
        if not self._timer.isActive():  # whether it is modified is known only afterwards
            self._timer.start()

    def _clean_changed(self, clean: bool) -> None:
        """Throw the copy away when the project is saved, and lock it where it is kept now."""
        if not clean:
            return
        self._timer.stop()
        self._discard()
        path = self._document.path
        if path and path.exists() and (self._lock is None or self._lock.path != path):
            self._release()
            try:
                self._lock = Lock.take(path)
            except HeldError as error:
                self.said.emit(str(error))

    def _discard(self) -> None:
        copied, self._copied = self._copied, None
        if copied is None:
            return
        try:
            discard_autosave(copied)
        except EnclosureError as error:
            self.said.emit(str(error))

    def _release(self) -> None:
        lock, self._lock = self._lock, None
        if lock:
            lock.release()
