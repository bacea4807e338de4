"""Making one of the project that is open and another copy of it."""

from functools import partial
from pathlib import Path

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QFileDialog

from enclosure_app.errors import EnclosureError
from enclosure_app.files.project.file import SUFFIX, load_project
from enclosure_app.model.said import moment
from enclosure_app.progress import Progress
from enclosure_app.window.apart.working import Job, Lane
from enclosure_app.window.commands.parts import Parts
from enclosure_app.window.merging.joining import Chosen, Joined, Settled, as_chosen, joined
from enclosure_app.window.merging.merge_window import MergeWindow
from enclosure_app.window.revising.left_open import left_open_words


class MergeCommands(QObject):
    """Reads another copy, shows where the two differ, and makes them one as one step."""

    def __init__(self, parts: Parts) -> None:
        super().__init__(parts.window)
        self._parts = parts
        self._path = Path()
        self.shown: MergeWindow | None = None

    def merge_copy(self) -> None:
        """Ask for another copy of the project, and show what the two come to."""
        parts = self._parts
        if not parts.document.project.sections:
            parts.messages.say(self.tr("Open one copy of the project first."))
            return
        title = self.tr("Merge another copy of this project")
        folder = str(parts.document.path.parent) if parts.document.path else ""
        kinds = self.tr("Projects") + f" (*{SUFFIX})"
        name, _ = QFileDialog.getOpenFileName(parts.window, title, folder, kinds)
        if name:
            self.merge_from(Path(name))

    def merge_from(self, path: Path) -> None:
        """Read another copy, and show what the two come to."""
        parts = self._parts
        ours = parts.document.project
        parts.messages.hide()
        self._path = path

        def work(progress: Progress) -> Joined:
            theirs = load_project(path)
            progress.go_on()
            return joined(ours, theirs)

        parts.working.begin(
            Job(
                Lane.READING,
                self.tr("Reading {}").format(path.name),
                work,
                partial(self._show, path),
                refused=lambda error: parts.messages.say(str(error)),
            )
        )

    def _show(self, path: Path, of: Joined) -> None:
        parts = self._parts
        if of.nothing_new:
            told = self.tr("{} holds nothing that is not here already.")
            parts.messages.say(told.format(path.name))
            return
        dialog = self._dialog()
        dialog.show_joined(of, path.name, parts.canvas.overlay.look, parts.settings.who)
        dialog.show()
        dialog.activateWindow()

    def _dialog(self) -> MergeWindow:
        if self.shown is None:
            self.shown = MergeWindow(self._parts.window)
            self.shown.taken.connect(self._take)
        return self.shown

    def _take(self, chosen: Chosen, settled: Settled, who: str) -> None:
        """Put one project in the place of ours, which undo brings back."""
        parts, dialog = self._parts, self._dialog()
        of = dialog.joined
        if of is None:
            return
        if parts.document.project is not of.ours:
            self.merge_from(self._path)
            parts.messages.say(
                self.tr("The project was changed meanwhile: it is compared again. Look once more.")
            )
            return
        try:
            after = as_chosen(of, chosen, settled, (who, moment.now()))
        except EnclosureError as error:
            parts.place.refuse(error)
            return
        if settled:
            parts.settings.who = who
        parts.place.turn_to(min(parts.place.index, len(after.sections) - 1))
        parts.place.pick(())
        parts.document.apply(self.tr("Merge another copy"), after)
        dialog.close()
        if told := left_open_words(after):
            parts.messages.say(told)
