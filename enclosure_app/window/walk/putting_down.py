"""Puts down in the project what was touched on the walk, each as one step that can be undone."""

from collections.abc import Sequence

from PySide6.QtCore import QObject, Signal

from enclosure_app.drawing.verdict_words import state_word
from enclosure_app.model.edits import set_decision, sign, tick, withdraw
from enclosure_app.model.project import Project
from enclosure_app.model.said.decision import State
from enclosure_app.model.said.moment import now
from enclosure_app.model.said.sign_off import SignOff
from enclosure_app.model.said.site_check import Seen
from enclosure_app.model.standing.verdicts import verdict_on
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.settings import Settings
from enclosure_app.window.walk.saying import About, Saying


class PuttingDown(QObject):
    """Listens to the walk's page. `undone`: what was touched could not be put down."""

    undone = Signal()

    def __init__(self, place: Workplace, saying: Saying, settings: Settings) -> None:
        super().__init__(place)
        self._place, self._saying, self._settings = place, saying, settings
        self._page = saying.page
        words = self._page.words
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
            if self._saying.apply(words, lambda project: set_decision(project, verdict)):
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
        about = [(here, seen) for key, seen in looks if (here := self._saying.about(key))]
        return self._look_at(about)

    def _look_at(self, about: Sequence[tuple[About, Seen]]) -> bool:
        """Put looks down once it is known who speaks, wherever on the walk one is by then."""
        if not about or not self._saying.is_named(lambda: self._look_at(about)):
            self.undone.emit()  # what was touched goes back
            return False

        def after(project: Project) -> Project:
            for here, seen in about:
                project = tick(project, self._saying.look(here, seen))
            return project

        places = [here for here, _ in about]
        return self._saying.put(places, self.tr("What was seen on site"), after)

    def _sign(self, who: str, remark: str) -> None:
        self._settings.who = who
        at, when = self._place.index, now()
        self._saying.apply(
            self.tr("Signed by {}").format(who),
            lambda project: sign(project, at, who, when, remark),
        )
        self._page.rest()

    def _take_back(self, sign_off: SignOff) -> None:
        at, when = self._place.index, now()
        self._saying.apply(
            self.tr("The name of {} taken back").format(sign_off.who),
            lambda project: withdraw(project, at, sign_off.who, when),
        )
