"""Answering another day what a revised drawing or a merge left open."""

from PySide6.QtCore import QObject

from enclosure_app.errors import EnclosureError
from enclosure_app.files.projects import limits_of
from enclosure_app.model.project import Project
from enclosure_app.model.said import moment
from enclosure_app.model.standing.questions import open_questions
from enclosure_app.planning.site_list.listing import SiteList, site_list
from enclosure_app.window.apart.working import Job, Lane
from enclosure_app.window.commands.fittings import Fittings
from enclosure_app.window.judging import Checked, judge
from enclosure_app.window.revising.laying import Choices, with_answers
from enclosure_app.window.revising.left_open import LeftOpen, left_open_words


class OpenQuestionCommands(QObject):
    """Shows what is open, and puts down what a person says of it as one step."""

    def __init__(self, fittings: Fittings) -> None:
        super().__init__(fittings.window)
        self._fittings = fittings
        self.shown: LeftOpen | None = None

    def answer_open(self) -> None:
        """Ask about everything that is open, with its place in the drawing as it is now."""
        fittings = self._fittings
        project = fittings.document.project
        if not open_questions(project):
            fittings.messages.say(
                self.tr("Nothing is open: it is known where all that was said belongs.")
            )
            return
        fittings.messages.hide()
        fittings.working.begin(
            Job(
                Lane.LOOKING_UP,
                self.tr("Looking for the places"),
                lambda _: _looked_up(project),
                self._show,
                refused=lambda error: fittings.messages.say(str(error)),
            )
        )

    def _show(self, found: tuple[Checked, list[SiteList]]) -> None:
        fittings, dialog = self._fittings, self._dialog()
        look, who = fittings.canvas.overlay.look, fittings.settings.who
        checked, lists = found
        dialog.show_questions(checked.project, (checked.results, lists), look, who)
        dialog.show()
        dialog.activateWindow()

    def _dialog(self) -> LeftOpen:
        if self.shown is None:
            self.shown = LeftOpen(self._fittings.window)
            self.shown.taken.connect(self._take)
        return self.shown

    def _take(self, said: Choices, who: str) -> None:
        """Put down what was said; of a drawing that took this one's place it is asked anew."""
        fittings = self._fittings
        project = fittings.document.project
        shown = self._dialog().project
        if shown is None or shown.revision != project.revision:
            self.answer_open()
            return
        try:
            project = with_answers(project, said, (who, moment.now()))
        except EnclosureError as error:
            fittings.place.refuse(error)
            return
        fittings.settings.who = who
        fittings.document.apply(self.tr("Answer what was left open"), project)
        self._dialog().close()
        if told := left_open_words(project):
            fittings.messages.say(told)
        else:
            fittings.messages.hide()


def _looked_up(project: Project) -> tuple[Checked, list[SiteList]]:
    """Return what is found in a project, and its site lists."""
    limits = limits_of(project)
    checked = judge(project, limits)
    return checked, [site_list(each, limits) for each in checked.results]
