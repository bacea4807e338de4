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
from enclosure_app.window.commands.parts import Parts
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

    def __init__(self, parts: Parts) -> None:
        super().__init__(parts.window)
        self._parts = parts
        parts.filing.offer = self.offer
        self._paths: tuple[Path, ...] = ()
        self.shown: Revised | None = None

    def lay_over(self) -> None:
        """Ask for the revised drawing, and lay it over the one that is open."""
        parts = self._parts
        if not parts.document.project.sections:
            parts.messages.say(self.tr("Open the earlier drawing or its project first."))
            return
        title = self.tr("Lay a revised drawing over this one")
        source = parts.filing.source
        folder = str(source.parent) if source else ""
        kinds = self.tr("Drawings (*.dxf *.DXF)")
        names, _ = QFileDialog.getOpenFileNames(parts.window, title, folder, kinds)
        if names:
            self.lay_over_from(tuple(map(Path, names)))

    def offer(self, paths: Sequence[Path]) -> bool:
        """Ask about a drawing that is clearly a later one of what is open; return whether it is."""
        parts = self._parts
        if len(paths) != 1 or not is_revision_of(paths[0], parts.document.project):
            return False
        question = self.tr(
            "{} looks like a revision of the drawing that is open. Laid over it, what was said "
            "stays with its findings."
        )
        parts.messages.ask(
            question.format(paths[0].name),
            {
                self.tr("Lay it over"): partial(self.lay_over_from, tuple(paths)),
                self.tr("Open it by itself"): partial(self._open, paths[0]),
            },
        )
        return True

    def lay_over_from(self, paths: tuple[Path, ...]) -> None:
        """Read a revised drawing, or several that are one project, and show what became of all."""
        working, messages = self._parts.working, self._parts.messages
        before = self._parts.document.project
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
        filing = self._parts.filing
        filing.guard(partial(filing.open, path))

    def _show(self, laid: Laid) -> None:
        parts, dialog = self._parts, self._dialog()
        dialog.show_laid(laid, parts.canvas.overlay.look, parts.settings.who)
        dialog.show()
        dialog.activateWindow()

    def _dialog(self) -> Revised:
        if self.shown is None:
            self.shown = Revised(self._parts.window)
            self.shown.taken.connect(self._take)
        return self.shown

    def _take(self, choices: Choices, who: str) -> None:
        """Let the revised drawing take the place of the earlier one, which undo brings back."""
        parts, dialog = self._parts, self._dialog()
        laid = dialog.laid
        if laid is None:
            return
        if parts.document.project is not laid.before:
            self.lay_over_from(self._paths)
            parts.messages.say(
                self.tr("The project was changed meanwhile: it is compared again. Look once more.")
            )
            return
        try:
            after = with_choices(laid, choices, (who, moment.now()))
        except EnclosureError as error:
            parts.place.refuse(error)
            return
        self._put_in_place(after, who if choices else "")
        dialog.close()

    def _put_in_place(self, after: Project, who: str) -> None:
        if who:
            self._parts.settings.who = who
        place = self._parts.place
        place.turn_to(min(place.index, len(after.sections) - 1))
        place.pick(())
        self._parts.document.apply(self.tr("Lay a revised drawing over"), after)
        if told := left_open_words(after):
            self._parts.messages.say(told)
