"""Making one of the project that is open and another copy of it."""

from functools import partial
from pathlib import Path

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QFileDialog

from enclosure_app.errors import EnclosureError
from enclosure_app.files.project.file import SUFFIX, load_project
from enclosure_app.model.project import Project
from enclosure_app.model.said import moment
from enclosure_app.model.states import remembering
from enclosure_app.progress import Progress
from enclosure_app.window.apart.working import Job, Lane
from enclosure_app.window.commands.fittings import Fittings
from enclosure_app.window.merging.joining import Chosen, Joined, Settled, as_chosen, joined
from enclosure_app.window.merging.merge_window import MergeWindow
from enclosure_app.window.revising.left_open import left_open_words


class MergeCommands(QObject):
    """Reads another copy, shows where the two differ, and makes them one as one step."""

    def __init__(self, fittings: Fittings) -> None:
        super().__init__(fittings.window)
        self._fittings = fittings
        self._path = Path()
        self._ours = fittings.document.project
        self.shown: MergeWindow | None = None

    def merge_copy(self) -> None:
        """Ask for another copy of the project, and show what the two come to."""
        fittings = self._fittings
        if not fittings.document.project.sections:
            fittings.messages.say(self.tr("Open one copy of the project first."))
            return
        title = self.tr("Merge another copy of this project")
        folder = str(fittings.document.path.parent) if fittings.document.path else ""
        kinds = self.tr("Projects") + f" (*{SUFFIX})"
        name, _ = QFileDialog.getOpenFileName(fittings.window, title, folder, kinds)
        if name:
            self.merge_from(Path(name))

    def merge_from(self, path: Path) -> None:
        """Read another copy, and show what the two come to."""
        fittings = self._fittings
        ours, kept = fittings.document.project, fittings.document.kept
        fittings.messages.hide()
        self._path = path

        def work(progress: Progress) -> Joined:
            theirs = load_project(path)
            progress.go_on()
            return joined(remembering(ours, kept), theirs)

        fittings.working.begin(
            Job(
                Lane.READING,
                self.tr("Reading {}").format(path.name),
                work,
                partial(self._show, path, ours),
                refused=lambda error: fittings.messages.say(str(error)),
            )
        )

    def _show(self, path: Path, ours: Project, of: Joined) -> None:
        fittings = self._fittings
        self._ours = ours
        if of.nothing_new:
            told = self.tr("{} holds nothing that is not here already.")
            fittings.messages.say(told.format(path.name))
            return
        dialog = self._dialog()
        dialog.show_joined(of, path.name, fittings.canvas.overlay.look, fittings.settings.who)
        dialog.show()
        dialog.activateWindow()

    def _dialog(self) -> MergeWindow:
        if self.shown is None:
            self.shown = MergeWindow(self._fittings.window)
            self.shown.taken.connect(self._take)
        return self.shown

    def _take(self, chosen: Chosen, settled: Settled, who: str) -> None:
        """Put one project in the place of ours, which undo brings back."""
        fittings, dialog = self._fittings, self._dialog()
        of = dialog.joined
        if of is None:
            return
        if fittings.document.project is not self._ours:
            self.merge_from(self._path)
            fittings.messages.say(
                self.tr("The project was changed meanwhile: it is compared again. Look once more.")
            )
            return
        try:
            after = as_chosen(of, chosen, settled, (who, moment.now()))
        except EnclosureError as error:
            fittings.place.refuse(error)
            return
        if settled:
            fittings.settings.who = who
        fittings.place.turn_to(min(fittings.place.index, len(after.sections) - 1))
        fittings.place.pick(())
        fittings.document.apply(self.tr("Merge another copy"), after)
        dialog.close()
        if told := left_open_words(after):
            fittings.messages.say(told)
