"""The document: the one project that the window shows, and how it changes.

The project is an immutable value. Whoever wants it changed makes another one (model/edits) and
hands it over with the words that the Edit menu shows: undo and redo show the one or the other.
"""

from collections.abc import Callable
from itertools import count
from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QUndoCommand, QUndoStack

from enclosure_app.model.project import Project

_KEPT_STEPS = 500

_gestures = count(1)


def new_gesture() -> int:
    """Return a number that no gesture had before; changes that share one undo as one step."""
    return next(_gestures)


class Document(QObject):
    """The project that is open, where it is kept, and its way back.

    `path` is the project file it was opened from or saved to, None for one that was never saved.
    `opening` counts how often another project took the place of the one before. `kept` is what
    stood in its file: as it was opened, and whenever it was saved.
    """

    changed = Signal()

    def __init__(self, project: Project, path: Path | None = None) -> None:
        super().__init__()
        self._project = project
        self.path = path
        self.opening = 0
        self.kept: tuple[Project, ...] = (project,)
        self.undo_stack = QUndoStack(self)
        self.undo_stack.setUndoLimit(_KEPT_STEPS)

    @property
    def project(self) -> Project:
        """The project as it is now."""
        return self._project

    @property
    def modified(self) -> bool:
        """Whether something was changed since the last save."""
        return not self.undo_stack.isClean()

    def apply(self, text: str, after: Project, *, gesture: int = -1) -> None:
        """Make `after` the project; changes of one gesture undo as one step."""
        if after is self._project:
            return
        self.undo_stack.push(_Change(text, (self._project, after), gesture, self._show))

    def open(self, project: Project, path: Path | None = None) -> None:
        """Show another project, which has no way back yet."""
        self.path = path
        self.opening += 1
        self.kept = (project,)
        self.undo_stack.clear()
        self._show(project)

    def saved(self, path: Path, project: Project | None = None) -> None:
        """Say that `project`, or the one as it is now, is kept in `path`.

        Where that is no more the one as it is now, what was changed since is still to be saved.
        """
        self.path = path
        self.kept = (*self.kept, project or self._project)
        if project is None or project is self._project:
            self.undo_stack.setClean()
        self.changed.emit()

    def keep_at(self, path: Path | None) -> None:
        """Say where the project is kept from now on; None: saving asks."""
        self.path = path
        self.changed.emit()

    def close(self) -> None:
        """Be heard no more: as it goes, Qt's stack would still call itself clean to who is gone."""
        self.undo_stack.blockSignals(True)

    def _show(self, project: Project) -> None:
        self._project = project
        self.changed.emit()


class _Change(QUndoCommand):
    """One step: the project before it and the project after it."""

    def __init__(
        self,
        text: str,
        projects: tuple[Project, Project],
        gesture: int,
        show: Callable[[Project], None],
    ) -> None:
        super().__init__(text)
        self._before, self._after = projects
        self._gesture = gesture
        self._show = show

    def redo(self) -> None:
        """Show the project after the step."""
        self._show(self._after)

    def undo(self) -> None:
        """Show the project before the step."""
        self._show(self._before)

    def id(self) -> int:
        """Return the gesture's number: Qt merges steps that share one."""
        return self._gesture

    def mergeWith(self, other: QUndoCommand) -> bool:
        """Take over what a later change of the same gesture made."""
        if not isinstance(other, _Change):
            return False
        self._after = other._after  # noqa: SLF001  another of the same kind
        self.setText(other.text())
        self.setObsolete(self._after is self._before)  # taken back by the hand itself: no step
        return True
