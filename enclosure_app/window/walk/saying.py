"""What the hands of the walk need: who speaks, about what, and one step for what is put down."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from enclosure_app.errors import EnclosureError
from enclosure_app.language import say
from enclosure_app.model.finding import Finding
from enclosure_app.model.project import Project
from enclosure_app.model.said.moment import now
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.settings import Settings
from enclosure_app.window.walk.page import WalkPage


@dataclass(frozen=True, slots=True)
class About:
    """What something is said about: a finding, or with `key` a question of the site list.

    `words` is the question with its place, as it was asked; `project` and `revision` are those
    that were open then, `section` the name of the section, `stop` where on the walk it is.
    """

    project: str
    revision: str
    section: str
    stop: str
    finding: Finding | None = None
    key: str = ""
    words: str = ""


class Saying:
    """Knows who speaks and where they stand, and makes what they say one step of the document."""

    def __init__(self, place: Workplace, page: WalkPage, settings: Settings) -> None:
        self._place, self.page, self._settings = place, page, settings
        self._then: Callable[[], object] | None = None
        page.words.who.returnPressed.connect(self._take_name)

    @property
    def project(self) -> Project:
        """The project as it is now."""
        return self._place.document.project

    @property
    def who(self) -> str:
        """Who speaks, "" while nobody gave a name."""
        return self._settings.who or self.page.words.who.text().strip()

    def is_named(self, then: Callable[[], object]) -> bool:
        """Whether it is known who speaks; else the name is asked for in place.

        `then` is done once Enter ends the name: what was touched before need not be touched again.
        """
        self._settings.who = self.who
        self._then = None if self.who else then
        if not self.who:
            self.page.words.ask_name(say("Type your name: it is put beside what you say."))
        return bool(self.who)

    def _take_name(self) -> None:
        """Take the name that was typed, and do what waited for it."""
        then, self._then = self._then, None
        if self.who:
            self._settings.who = self.who
            self.page.rest()
            self.page.moved.emit()  # the line for the name is needed no more
            if then is not None:
                then()

    def about(self, key: str = "") -> About | None:
        """Return the finding one is at, or a question of the place one is at, None elsewhere."""
        stop, section = self.page.stop, self._place.section
        if stop is None or section is None:
            return None
        here = (self.project.id, self.project.revision, section.name, stop.key)
        if stop.finding is not None:
            return About(*here, finding=stop.finding)
        asked = dict(stop.place.items).get(key) if stop.place else None
        if stop.place is None or asked is None:
            return None
        return About(*here, key=key, words=f"{stop.place.title}: {asked.text}")

    def look(self, about: About, seen: Seen, remark: str = "") -> SiteCheck:
        """Return what was seen of a question."""
        return SiteCheck(
            about.key, seen, self.who, now(), remark, section=about.section, about=about.words
        )

    def is_there(self, about: About) -> bool:
        """Whether the drawing and the section that something is said about are still open."""
        project = self.project
        here = (project.id, project.revision) == (about.project, about.revision)
        return here and any(section.name == about.section for section in project.sections)

    def put(self, about: Sequence[About], words: str, edit: Callable[[Project], Project]) -> bool:
        """Make what is said about something one step, unless its drawing is not there any more."""
        gone = next((each for each in about if not self.is_there(each)), None)
        if gone is None:
            return self.apply(words, edit)
        told = say(
            "What was noted at “{}” was not put down: another drawing is open, or the section "
            "bears another name. Go there and note it again."
        )
        self.refuse(told.format(gone.section))
        return False

    def apply(self, words: str, edit: Callable[[Project], Project]) -> bool:
        """Make an edit one step, or say why it cannot be done."""
        try:
            after = edit(self.project)
        except EnclosureError as error:
            self._place.refuse(error)
            return False
        self._place.document.apply(words, after)
        return True

    def refuse(self, sentence: str) -> None:
        """Say why something is not done."""
        self._place.refused.emit(sentence)
