"""Laying a revised drawing over the one that is open."""

from collections.abc import Sequence
from functools import partial
from pathlib import Path

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QFileDialog

from enclosure_app.errors import EnclosureError
from enclosure_app.model.project import Project
from enclosure_app.model.said import moment
from enclosure_app.progress import Progress
from enclosure_app.window.apart.working import Job, Lane
from enclosure_app.window.commands.fittings import Fittings
from enclosure_app.window.filing.filing import read_here
from enclosure_app.window.revising.laying import (
    Choices,
    Laid,
    is_revision_of,
    laid_over,
    read_revised,
    with_choices,
)
from enclosure_app.window.revising.left_open import left_open_words
from enclosure_app.window.revising.revised import Revised


class RevisionCommands(QObject):
    """Reads a revised drawing, shows what became of everything, and takes it over as one step."""

    def __init__(self, fittings: Fittings) -> None:
        super().__init__(fittings.window)
        self._fittings = fittings
        fittings.filing.offer = self.offer
        self._paths: tuple[Path, ...] = ()
        self.shown: Revised | None = None

    def lay_over(self) -> None:
        """Ask for the revised drawing, and lay it over the one that is open."""
        fittings = self._fittings
        if not fittings.document.project.sections:
            fittings.messages.say(self.tr("Open the earlier drawing or its project first."))
            return
        title = self.tr("Lay a revised drawing over this one")
        source = fittings.filing.source
        folder = str(source.parent) if source else ""
        kinds = self.tr("Drawings (*.dxf *.DXF)")
        names, _ = QFileDialog.getOpenFileNames(fittings.window, title, folder, kinds)
        if names:
            self.lay_over_from(tuple(map(Path, names)))

    def offer(self, paths: Sequence[Path]) -> bool:
        """Ask about a drawing that is clearly a later one of what is open; return whether it is."""
        fittings = self._fittings
        if len(paths) != 1 or not is_revision_of(paths[0], fittings.document.project):
            return False
        question = self.tr(
            "{} looks like a revision of the drawing that is open. Laid over it, what was said "
            "stays with its findings."
        )
        fittings.messages.ask(
            question.format(paths[0].name),
            {
                self.tr("Lay it over"): partial(self.lay_over_from, tuple(paths)),
                self.tr("Open it by itself"): partial(self._open, paths[0]),
            },
        )
        return True

    def lay_over_from(self, paths: tuple[Path, ...]) -> None:
        """Read a revised drawing, or several that are one project, and show what became of all."""
        working, messages = self._fittings.working, self._fittings.messages
        before = self._fittings.document.project
        read = working.reader.read if working.apart else read_here
        self._paths = paths
        messages.hide()

        def work(progress: Progress) -> Laid:
            revised = read_revised(before, paths, read, progress)
            progress.go_on()
            return laid_over(before, revised)

        names = ", ".join(path.name for path in paths)
        working.begin(
            Job(
                Lane.READING,
                self.tr("Comparing {}").format(names),
                work,
                self._show,
                refused=lambda error: messages.say(str(error)),
            )
        )

    def _open(self, path: Path) -> None:
        filing = self._fittings.filing
        filing.guard(partial(filing.open, path))

    def _show(self, laid: Laid) -> None:
        fittings, dialog = self._fittings, self._dialog()
        dialog.show_laid(laid, fittings.canvas.overlay.look, fittings.settings.who)
        dialog.show()
        dialog.activateWindow()

    def _dialog(self) -> Revised:
        if self.shown is None:
            self.shown = Revised(self._fittings.window)
            self.shown.taken.connect(self._take)
        return self.shown

    def _take(self, choices: Choices, who: str) -> None:
        """Let the revised drawing take the place of the earlier one, which undo brings back."""
        fittings, dialog = self._fittings, self._dialog()
        laid = dialog.laid
        if laid is None:
            return
        if fittings.document.project is not laid.before:
            self.lay_over_from(self._paths)
            fittings.messages.say(
                self.tr("The project was changed meanwhile: it is compared again. Look once more.")
            )
            return
        try:
            after = with_choices(laid, choices, (who, moment.now()))
        except EnclosureError as error:
            fittings.place.refuse(error)
            return
        self._put_in_place(after, who if choices else "")
        dialog.close()

    def _put_in_place(self, after: Project, who: str) -> None:
        if who:
            self._fittings.settings.who = who
        place = self._fittings.place
        place.turn_to(min(place.index, len(after.sections) - 1))
        place.pick(())
        self._fittings.document.apply(self.tr("Lay a revised drawing over"), after)
        if told := left_open_words(after):
            self._fittings.messages.say(told)
