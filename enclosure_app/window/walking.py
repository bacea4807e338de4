"""Walks a section: shows the page, and puts down in the project what was touched there."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from operator import is_not
from pathlib import Path

from PySide6.QtCore import QObject, Qt, Signal

from enclosure_app.drawing.verdict_words import state_word
from enclosure_app.errors import EnclosureError
from enclosure_app.files.photographs import load_photograph
from enclosure_app.language import say
from enclosure_app.model.edits import add_remark, set_decision, sign, tick, withdraw
from enclosure_app.model.moment import now
from enclosure_app.model.photograph import Photograph
from enclosure_app.model.project import Project, State
from enclosure_app.model.report import SectionResult
from enclosure_app.model.section import Section
from enclosure_app.model.sign_off import SignOff
from enclosure_app.model.sign_offs import signed
from enclosure_app.model.site_check import Seen, SiteCheck
from enclosure_app.model.site_checks import seen_in
from enclosure_app.model.verdicts import remark_on, verdict_on
from enclosure_app.planning.site_list import SiteList, site_list
from enclosure_app.window.canvas.underlay_layer import lying_under
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.checking import Checking
from enclosure_app.window.settings import Settings
from enclosure_app.window.showing import Showing
from enclosure_app.window.walk.history import contest, photographs_of, said_lines, said_of
from enclosure_app.window.walk.keys import give_keys
from enclosure_app.window.walk.page import WalkPage
from enclosure_app.window.walk.stops import Round, Stop, round_of
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
        give_keys(page)
        place.document.changed.connect(self.show)
        place.turned.connect(self._turned)
        showing.shown.connect(self.show)
        page.moved.connect(self.show)
        page.closed.connect(self.end)
        page.noted.connect(self._note)
        page.words.finding.verdict.decided.connect(self._decide)
        page.words.look_here.looks.answered.connect(self._answer)
        page.words.look_here.looks.all_answered.connect(self._answer_all)
        page.words.signing.signed.connect(self._sign)
        page.words.signing.taken_back.connect(self._take_back)
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
        self.page.foot.onward.setFocus(Qt.FocusReason.OtherFocusReason)

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
                signed=signed(project, section),
                said=(*sides, *said_lines(said)),
                photographs=photographs_of(project, said),
                who=self._settings.who,
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

    def _turned(self) -> None:
        if self.on:
            self.page.forget()
            self.show()

    def _turn(self, by: int) -> None:
        self._showing.turn_to(self._place.index + by)

    # ---- what is put down ----------------------------------------------------------------------

    def _decide(self, state: State, reason: str, who: str) -> None:
        stop = self.page.stop
        if stop is not None and stop.finding is not None:
            self._settings.who = who or self._settings.who
            verdict = verdict_on(stop.finding, state, who, now(), reason)
            words = self.tr("Verdict: {}").format(state_word(state))
            self._apply(words, lambda project: set_decision(project, verdict))

    def _answer(self, key: str, seen: Seen) -> None:
        self._look([(key, seen)])

    def _answer_all(self) -> None:
        """Say of every question of a place that nobody answered that it is in order."""
        looks = self.page.words.look_here.looks
        left = [(key, Seen.IN_ORDER) for key, row in looks.rows.items() if not row.is_answered]
        self._look(left)

    def _look(self, looks: Sequence[tuple[str, Seen]]) -> None:
        made = [check for key, seen in looks if (check := self._check(key, seen))]
        if not self._named() or not made:
            self.show()  # what was touched goes back
            return

        def after(project: Project) -> Project:
            for check in made:
                project = tick(project, check)
            return project

        self._apply(self.tr("What was seen on site"), after)

    def _named(self) -> bool:
        """Whether it is known who speaks; else the name is asked for in place."""
        name = self._settings.who or self.page.words.who.text().strip()
        self._settings.who = name
        if not name:
            self._place.refused.emit(say("Type your name: it is put beside what you say."))
            self.page.words.who.setFocus()
            self.page.words.ensureWidgetVisible(self.page.words.who)
        return bool(name)

    def _check(self, key: str, seen: Seen) -> SiteCheck | None:
        stop, section = self.page.stop, self._place.section
        if stop is None or stop.place is None or section is None:
            return None
        asked = dict(stop.place.items).get(key)
        about = f"{stop.place.title}: {asked.text}" if asked else stop.place.title
        who = self._settings.who or self.page.words.who.text().strip()
        return SiteCheck(key, seen, who, now(), section=section.name, about=about)

    def _note(self, words: str, paths: Iterable[Path]) -> None:
        """Put words and photographs to the stop one is at."""
        stop = self.page.stop
        if not self._named():
            return
        try:
            pictures = [load_photograph(path) for path in paths]
        except EnclosureError as error:
            self._place.refuse(error)
            return
        if stop is not None and stop.finding is not None:
            remark = remark_on(stop.finding, self._settings.who, now(), words)
            done = self._apply(
                self.tr("Remark"), lambda project: add_remark(project, remark, pictures)
            )
        else:
            done = self._note_look(stop, words, pictures)
        if done:
            self.page.words.note.clear()

    def _note_look(self, stop: Stop | None, words: str, pictures: list[Photograph]) -> bool:
        """Put words and photographs to a look: to what is not in order there, else to the first."""
        key = self._noted_item(stop)
        if key is None or stop is None or stop.place is None:
            return False
        seen = self.page.words.look_here.looks.rows[key].seen
        check = self._check(key, seen)
        if check is None:
            return False
        check = replace(check, remark=words)
        return self._apply(self.tr("Remark"), lambda project: tick(project, check, pictures))

    def _noted_item(self, stop: Stop | None) -> str | None:
        if stop is None or stop.place is None:
            return None
        rows = self.page.words.look_here.looks.rows
        amiss = [key for key, row in rows.items() if row.seen is Seen.NOT_IN_ORDER]
        return next(iter((*amiss, *rows)), None)

    def _sign(self, who: str, remark: str) -> None:
        self._settings.who = who
        at, when = self._place.index, now()
        self._apply(
            self.tr("Signed by {}").format(who),
            lambda project: sign(project, at, who, when, remark),
        )

    def _take_back(self, sign_off: SignOff) -> None:
        at, when = self._place.index, now()
        self._apply(
            self.tr("The name of {} taken back").format(sign_off.who),
            lambda project: withdraw(project, at, sign_off.who, when),
        )

    def _apply(self, words: str, edit: Callable[[Project], Project]) -> bool:
        """Make an edit one step, or say why it cannot be done."""
        document = self._place.document
        try:
            after = edit(document.project)
        except EnclosureError as error:
            self._place.refuse(error)
            return False
        document.apply(words, after)
        return True
