"""Takes in remarks and photographs: read beside the window, then put to what they are about."""

from collections.abc import Sequence
from functools import partial
from pathlib import Path

from PySide6.QtCore import QObject

from enclosure_app.files.photographs import TakenIn, load_photographs
from enclosure_app.model.edits import add_remark, tick
from enclosure_app.model.project import Project
from enclosure_app.model.said.moment import now
from enclosure_app.model.said.photograph import Photograph
from enclosure_app.model.said.site_check import Seen
from enclosure_app.model.standing.site_checks import seen_in
from enclosure_app.model.standing.verdicts import remark_on
from enclosure_app.progress import Progress, listening
from enclosure_app.window.apart.working import Job, Lane, Working
from enclosure_app.window.walk.saying import About, Saying


class TakingIn(QObject):
    """Listens to what is noted on the walk's page.

    Files that cannot be read have a sentence each, the others are taken. What comes too late for
    the drawing it is about is told, never put to something else.
    """

    def __init__(self, saying: Saying, working: Working, parent: QObject) -> None:
        super().__init__(parent)
        self._saying, self._working, self._page = saying, working, saying.page
        self._page.noted.connect(self._note)
        self._page.halted.connect(working.stop)

    def _note(self, words: str, paths: Sequence[Path]) -> None:
        """Put words and photographs to the finding one is at, or to the question that is chosen."""
        about = self._saying.about(self._page.words.look_here.looks.chosen)
        if about is None:
            self._saying.refuse(
                self.tr("A photograph is about one place: go to it, and give it there again.")
            )
        else:
            self._note_about(about, words, tuple(paths))

    def _note_about(self, about: About, words: str, paths: tuple[Path, ...]) -> None:
        """Put it down once it is known who speaks, wherever on the walk one is by then."""
        note = self._page.words.note
        if not self._saying.is_named(lambda: self._note_about(about, words, paths)):
            note.give_back(words, self._draft_of(about))
        elif paths:
            self._read(about, words, paths)
        elif self._put(about, words, ()):
            note.clear(self._draft_of(about))
            self._page.rest()

    def _read(self, about: About, words: str, paths: tuple[Path, ...]) -> None:
        """Read the files beside the window; what was typed with them waits with them."""
        if len(paths) == 1:
            told = self.tr("Taking in {}").format(paths[0].name)
        else:
            told = self.tr("Taking in {} photographs").format(len(paths))
        self._page.words.note.clear(self._draft_of(about))
        self._page.rest()
        self._working.begin(
            Job(
                Lane.TAKING_IN,
                told,
                partial(_loaded, paths),
                then=partial(self._take, about, words),
                stopped=partial(self._stopped, about, words),
            )
        )

    def _take(self, about: About, words: str, taken: TakenIn) -> None:
        done = bool(taken.photographs) and self._put(about, words, taken.photographs)
        if not done:
            self._page.words.note.give_back(words, self._draft_of(about))
        if taken.refused:
            self._saying.refuse("\n".join(taken.refused))

    def _stopped(self, about: About, words: str) -> None:
        self._page.words.note.give_back(words, self._draft_of(about))
        self._saying.refuse(
            self.tr("Nothing was taken in: the photographs are where they were. Take them again.")
        )

    def _draft_of(self, about: About) -> tuple[str, str, str]:
        return (about.project, about.section, about.stop)

    def _put(self, about: About, words: str, pictures: Sequence[Photograph]) -> bool:
        """Make a note one step."""
        return self._saying.put(
            (about,),
            self.tr("Remark"),
            lambda project: self._noted(project, about, words, pictures),
        )

    def _noted(
        self, project: Project, about: About, words: str, pictures: Sequence[Photograph]
    ) -> Project:
        if about.finding is not None:
            remark = remark_on(about.finding, self._saying.who, now(), words)
            return add_remark(project, remark, pictures)
        last = seen_in(project, about.section).get(about.key)
        seen = last.seen if last else Seen.NOT_LOOKED_AT
        if last and seen is not Seen.NOT_LOOKED_AT and last.who != self._saying.who:
            # what another person saw still stands, and stays theirs
            words = self.tr("{} (as {} saw it)").format(words, last.who).strip()
        return tick(project, self._saying.look(about, seen, words), pictures)


def _loaded(paths: tuple[Path, ...], progress: Progress) -> TakenIn:
    with listening(progress.tell):
        return load_photographs(paths)
