"""Laying a revised drawing over the one that is open."""

from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QFileDialog

from enclosure_app.errors import EnclosureError
from enclosure_app.files.project.named import is_project
from enclosure_app.model.project import Project
from enclosure_app.model.said import moment
from enclosure_app.planning.revision import Same, likeness
from enclosure_app.progress import Progress
from enclosure_app.window.apart.working import Job, Lane
from enclosure_app.window.commands.fittings import Fittings
from enclosure_app.window.filing.filing import read_here
from enclosure_app.window.revising.laying import (
    Choices,
    Laid,
    is_named_as_revision,
    laid_over,
    read_revised,
    something_was_said,
    with_answers,
)
from enclosure_app.window.revising.left_open import left_open_words
from enclosure_app.window.revising.revised import Revised


class RevisionCommands(QObject):
    """Reads a revised drawing, shows what became of everything, and takes it over as one step."""

    def __init__(self, fittings: Fittings) -> None:
        super().__init__(fittings.window)
        self._fittings = fittings
        fittings.filing.offer = self.offer
        fittings.filing.offer_read = self.offer_read
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
        """Ask about a drawing that is by its name a later one of what is open; return whether it is."""
        if len(paths) != 1 or not is_named_as_revision(paths[0], self._fittings.document.project):
            return False
        filing = self._fittings.filing
        question = self.tr(
            "{} looks like a revision of the drawing that is open. Laid over it, what was said "
            "stays with its findings."
        )
        opens = partial(filing.open, paths[0], asked=True)
        self._ask(question, paths, partial(filing.guard, opens))
        return True

    def offer_read(
        self, paths: Sequence[Path], project: Project, opens: Callable[[], object]
    ) -> bool:
        """Ask about a drawing that is a later one of what is open by what is drawn in it."""
        before = self._fittings.document.project
        drawings = all(not is_project(path) for path in paths)
        if not drawings or not before.source or not something_was_said(before):
            return False
        same = likeness(before, project).same
        if same is Same.NO:
            return False
        likely = self.tr(
            "Most of what is open is drawn in {}, too: it looks like a revision. Laid over it, "
            "what was said stays with its findings."
        )
        doubtful = self.tr(
            "Some of what is open is drawn in {}, too. Is it a revision? Laid over it, what was "
            "said stays with its findings; before that you see what becomes of each."
        )
        self._ask(likely if same is Same.LIKELY else doubtful, paths, opens)
        return True

    def _ask(self, question: str, paths: Sequence[Path], opens: Callable[[], object]) -> None:
        self._fittings.messages.ask(
            question.format(", ".join(path.name for path in paths)),
            {
                self.tr("Lay it over"): partial(self.lay_over_from, tuple(paths)),
                self.tr("Open it by itself"): opens,
            },
        )

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

        self._compare(work)

    def _compare(self, work: Callable[[Progress], Laid]) -> None:
        messages = self._fittings.messages
        names = ", ".join(path.name for path in self._paths)
        self._fittings.working.begin(
            Job(
                Lane.READING,
                self.tr("Comparing {}").format(names),
                work,
                self._show,
                refused=lambda error: messages.say(str(error)),
            )
        )

    def _compare_with(self, file: str) -> None:
        """Let it take the place of another drawing of the project."""
        if laid := self._dialog().laid:
            self._compare(lambda _: laid_over(laid.before, laid.revised, file))

    def _let_stay(self) -> None:
        """Let the sections stay that were not found again: they are of other drawings."""
        if laid := self._dialog().laid:
            file = laid.place.file if laid.place else None
            stay = laid.kept | {*laid.missing}
            self._compare(lambda _: laid_over(laid.before, laid.revised, file, stay))

    def _show(self, laid: Laid) -> None:
        fittings, dialog = self._fittings, self._dialog()
        dialog.show_laid(laid, fittings.canvas.overlay.look, fittings.settings.who)
        dialog.show()
        dialog.activateWindow()

    def _dialog(self) -> Revised:
        if self.shown is None:
            self.shown = Revised(self._fittings.window)
            self.shown.taken.connect(self._take)
            self.shown.head.place_chosen.connect(self._compare_with)
            self.shown.head.stay_wanted.connect(self._let_stay)
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
            after = with_answers(laid.revision.project, choices, (who, moment.now()))
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
