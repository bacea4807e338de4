"""Walks the section in view: shows its stops on the page, as they are now."""

from dataclasses import replace
from operator import is_not

from PySide6.QtCore import QObject, Signal

from enclosure_app.model.project import Project
from enclosure_app.model.report import SectionResult
from enclosure_app.model.section import Section
from enclosure_app.model.standing.sign_offs import Signed, signed
from enclosure_app.model.standing.site_checks import seen_in
from enclosure_app.planning.site_list.listing import SiteList, site_list
from enclosure_app.window.canvas.underlay.layer import lying_under
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.checking import Checking
from enclosure_app.window.settings import Settings
from enclosure_app.window.stage.showing import Showing
from enclosure_app.window.walk.history import contest, photographs_of, said_lines, said_of
from enclosure_app.window.walk.keys import give_keys
from enclosure_app.window.walk.page import WalkPage
from enclosure_app.window.walk.putting_down import PuttingDown
from enclosure_app.window.walk.saying import Saying
from enclosure_app.window.walk.stops import Round, round_of
from enclosure_app.window.walk.words_column import Shown


class Walking(QObject):
    """The walk through the section in view.

    `asked`: another page of the window is wanted. `ended`: the drawing is seen again.
    """

    asked = Signal()
    ended = Signal()

    def __init__(
        self,
        place: Workplace,
        checking: Checking,
        showing: Showing,
        page: WalkPage,
        settings: Settings,
    ) -> None:
        super().__init__(place)
        self._place, self._checking, self._showing = place, checking, showing
        self.page, self._settings = page, settings
        self.on = False
        self._listed: tuple[tuple[object, ...], SiteList] | None = None
        self._signed: tuple[tuple[object, ...], tuple[Signed, ...]] | None = None
        give_keys(page)
        place.document.changed.connect(self.show)
        place.turned.connect(self._turned)
        showing.shown.connect(self.show)
        checking.stopped.connect(self.show)
        checking.working.connect(self.show)
        page.check_wanted.connect(checking.check_now)
        page.moved.connect(self.show)
        page.closed.connect(self.end)
        self.saying = Saying(place, page, settings)
        PuttingDown(place, self.saying, settings).undone.connect(self.show)
        page.words.signing.next_section.clicked.connect(lambda: self._turn(1))

    def begin(self) -> None:
        """Begin to walk the section in view, at the finding that is chosen, if any is."""
        if self._place.section is None:
            refusal = self.tr("There is nothing to walk yet: open a drawing, or draw a sheet.")
            self._place.refused.emit(refusal)
        if self._place.section is None or self.on:
            return
        self.on = True
        self.page.forget()
        self.page.begin(self._showing.chosen_key)
        self.asked.emit()
        self.show()
        self.page.rest()

    def end(self) -> None:
        """Go back to the drawing, to the place one was at."""
        if self.on:
            stop, self.on = self.page.stop, False
            self.asked.emit()
            if stop is not None:
                self._showing.go_to(stop.at)
            self.ended.emit()

    def show(self) -> None:
        """Show the walk as it is now."""
        section, result = self._place.section, self._showing.result
        if not self.on or section is None or result is None:
            return
        project = self._place.document.project
        walked = round_of(result, self._list(result), seen_in(project, section.name))
        if not result.layers:  # nothing is known of it yet
            walked = replace(walked, stops=())
        self._show(project, section, walked)

    def _show(self, project: Project, section: Section, walked: Round) -> None:
        self.page.stand_at(walked)
        stop = self.page.stop
        said = said_of(project, section.name, stop) if stop else ()
        sides = contest(project, section.name, stop) if stop else ()
        self.page.show_walk(
            Shown(
                walked=walked,
                look=replace(self._showing.look, units=project.units, only=None),
                under=lying_under(project, section),
                signed=self._signatures(project, section),
                said=(*sides, *said_lines(said, stop)),
                photographs=photographs_of(project, said),
                who=self._settings.who,
                project=project.id,
                judged=self._is_judged(walked.result, section),
                stopped=self._checking.given_up,
                section=(self._place.index + 1, len(project.sections)),
            )
        )

    def _list(self, result: SectionResult) -> SiteList:
        """Return the site list of a result; the same one while nothing in it changed."""
        of = (result.section, result.layers, self._checking.limits)
        last = self._listed
        if last is None or any(map(is_not, last[0], of)):
            last = self._listed = of, site_list(result, self._checking.limits)
        return last[1]

    def _is_judged(self, result: SectionResult, section: Section) -> bool:
        """Whether it is known what there is to look at: nothing, where nothing can be judged."""
        return self._checking.current or (result.section is section and bool(result.layers))

    def _signatures(self, project: Project, section: Section) -> tuple[Signed, ...]:
        """Return who signed the section; all of it is looked through only where something changed."""
        of = (section, project.sign_offs, project.carried, project.revision)
        last = self._signed
        if last is None or any(map(is_not, last[0], of)):
            last = self._signed = of, signed(project, section)
        return last[1]

    def _turned(self) -> None:
        if self.on:
            self.page.forget()
            self.show()

    def _turn(self, by: int) -> None:
        self._showing.turn_to(self._place.index + by)
