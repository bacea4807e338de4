"""Puts down in the project what was touched on the walk, each as one step that can be undone."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QObject, Signal

from enclosure_app.drawing.verdict_words import state_word
from enclosure_app.errors import EnclosureError
from enclosure_app.files.photographs import load_photograph
from enclosure_app.language import say
from enclosure_app.model.edits import add_remark, set_decision, sign, tick, withdraw
from enclosure_app.model.project import Project
from enclosure_app.model.said.decision import State
from enclosure_app.model.said.moment import now
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.model.said.sign_off import SignOff
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.model.standing.verdicts import remark_on, verdict_on
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.settings import Settings
from enclosure_app.window.walk.page import WalkPage
from enclosure_app.window.walk.stops import Stop


class PuttingDown(QObject):
    """Listens to the walk's page. `undone`: what was touched could not be put down."""

    undone = Signal()

    def __init__(self, place: Workplace, page: WalkPage, settings: Settings) -> None:
        super().__init__(place)
        self._place, self._page, self._settings = place, page, settings
        words = page.words
        page.noted.connect(self._note)
        words.finding.verdict.decided.connect(self._decide)
        words.look_here.looks.answered.connect(self._answer)
        words.look_here.looks.all_answered.connect(self._answer_all)
        words.signing.signed.connect(self._sign)
        words.signing.taken_back.connect(self._take_back)

    def _decide(self, state: State, reason: str, who: str) -> None:
        stop = self._page.stop
        if stop is not None and stop.finding is not None:
            self._settings.who = who or self._settings.who
            verdict = verdict_on(stop.finding, state, who, now(), reason)
            words = self.tr("Verdict: {}").format(state_word(state))
            if self._apply(words, lambda project: set_decision(project, verdict)):
                self._page.rest()

    def _answer(self, key: str, seen: Seen) -> None:
        self._look([(key, seen)])

    def _answer_all(self) -> None:
        """Say of every question of a place that nobody answered that it is in order."""
        looks = self._page.words.look_here.looks
        left = [(key, Seen.IN_ORDER) for key, row in looks.rows.items() if not row.is_answered]
        if self._look(left):
            self._page.rest()

    def _look(self, looks: Sequence[tuple[str, Seen]]) -> bool:
        made = [check for key, seen in looks if (check := self._check(key, seen))]
        if not self._named() or not made:
            self.undone.emit()  # what was touched goes back
            return False

        def after(project: Project) -> Project:
            for check in made:
                project = tick(project, check)
            return project

        return self._apply(self.tr("What was seen on site"), after)

    def _named(self) -> bool:
        """Whether it is known who speaks; else the name is asked for in place."""
        name = self._settings.who or self._page.words.who.text().strip()
        self._settings.who = name
        if not name:
            self._place.refused.emit(say("Type your name: it is put beside what you say."))
            self._page.words.who.setFocus()
            self._page.words.ensureWidgetVisible(self._page.words.who)
        return bool(name)

    def _check(self, key: str, seen: Seen) -> SiteCheck | None:
        stop, section = self._page.stop, self._place.section
        if stop is None or stop.place is None or section is None:
            return None
        asked = dict(stop.place.items).get(key)
        about = f"{stop.place.title}: {asked.text}" if asked else stop.place.title
        who = self._settings.who or self._page.words.who.text().strip()
        return SiteCheck(key, seen, who, now(), section=section.name, about=about)

    def _note(self, words: str, paths: Iterable[Path]) -> None:
        """Put words and photographs to the stop one is at."""
        stop = self._page.stop
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
            self._page.words.note.clear()
            self._page.rest()

    def _note_look(self, stop: Stop | None, words: str, pictures: list[Photograph]) -> bool:
        """Put words and photographs to a look: to what is not in order there, else to the first."""
        key = self._noted_item(stop)
        if key is None or stop is None or stop.place is None:
            return False
        seen = self._page.words.look_here.looks.rows[key].seen
        check = self._check(key, seen)
        if check is None:
            return False
        check = replace(check, remark=words)
        return self._apply(self.tr("Remark"), lambda project: tick(project, check, pictures))

    def _noted_item(self, stop: Stop | None) -> str | None:
        if stop is None or stop.place is None:
            return None
        rows = self._page.words.look_here.looks.rows
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
