"""One earlier finding, or place of the site list, that nobody could place: what may it be now?"""

from collections.abc import Iterator, Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QLabel, QVBoxLayout, QWidget

from enclosure_app.model.project import Project
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.question import Question
from enclosure_app.planning.revision import LookedAt
from enclosure_app.planning.site_list.listing import SiteList
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.revising.asking import Asking
from enclosure_app.window.revising.laying import About
from enclosure_app.window.revising.rows import Told, now_of, number_in, section_named
from enclosure_app.window.revising.said_words import of_earlier
from enclosure_app.window.revising.side import Side

_HEIGHT = 250  # dots

Held = tuple[Sequence[SectionResult], Sequence[SiteList]]
"""What is found in each section, and its site list."""


class OpenCard(QFrame):
    """Asks one question again, of a place all at once. `changed`: the person said something of it."""

    changed = Signal()

    def __init__(self, questions: Sequence[Question], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self.questions = tuple(questions)
        self.question = self.questions[0]
        self.title = QLabel(self)
        self.title.setObjectName("panel-title")
        self.said = QLabel(self)
        for label in (self.title, self.said):
            label.setWordWrap(True)
            label.setTextFormat(Qt.TextFormat.PlainText)
        self.side = Side(self)
        self.side.title.hide()
        self.asking = Asking(self)
        self._asked: tuple[Told, ...] = ()
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 8, 12, 10)
        for part in (self.title, self.said, self.side, self.asking):
            column.addWidget(part)
        self.asking.answered.connect(self._show_answer)

    @property
    def now(self) -> dict[About, tuple[str, str]]:
        """The section and key that each is now, key "" where it is gone; none while it is open."""
        answer = self.asking.answer
        if answer is None:
            return {}
        section = self.question.section or self.question.earlier.section
        abouts = (About(each.earlier, each.on_list) for each in self.questions)
        return {about: now_of(about, answer, section) for about in abouts}

    def show_in(self, project: Project, held: Held, look: Look) -> None:
        """Show where it would be in the drawing as it is now."""
        results = tuple(held[0])
        here = section_named(results, self.question.section)
        self._show_words(project)
        told = {each.key: each for each in self._may_be(held)}
        self._asked = tuple(told[key] for key in self._keys() if key in told)
        gone = self.tr("It is to be looked at again") if self.question.on_list else ""
        self.asking.ask([(each, number_in(results, each)) for each in self._asked], None, gone)
        first = self._asked[0].section if self._asked else ""
        result = here or section_named(results, first)
        self.side.show_section(project, result, look)
        self.side.setMinimumHeight(_HEIGHT if result else 0)
        self.side.setVisible(result is not None)
        self._show_place()

    def _show_words(self, project: Project) -> None:
        section = self.question.section or self.question.earlier.section
        place, _, asked = self.question.about.partition(": ")
        about = place if self.question.on_list and asked else self.question.about
        self.title.setText(f"{section} · {about}")
        lines = (line for each in self.questions for line in _said(project, each, about))
        self.said.setText("\n".join(lines))

    def _may_be(self, held: Held) -> Iterator[Told]:
        """Yield what is in the section that it is asked of, or in any where nobody knows which."""
        section = self.question.section
        if not self.question.on_list:
            for result in held[0]:
                if section in ("", result.section.name):
                    yield from result.findings
            return
        for listed in held[1]:
            if section in ("", listed.section):
                for place in listed.places:
                    keys = tuple(key for key, _ in place.items)
                    told = place.key, listed.section, place.at, place.title, place.extent, keys
                    yield LookedAt(*told)

    def _keys(self) -> dict[str, None]:
        """Return the keys that are asked about, of findings or of places, nearest first."""
        keys = (key for each in self.questions for key in each.asked)
        places = self.question.on_list
        return dict.fromkeys(key.rpartition(":")[0] if places else key for key in keys)

    def _show_answer(self) -> None:
        self._show_place()
        self.changed.emit()

    def _show_place(self) -> None:
        answer = self.asking.answer
        shown = None if answer is None or isinstance(answer, str) else answer
        if answer is None and self._asked:
            shown = self._asked[0]
        if shown:
            self.side.show_finding(shown, shown.message)
        else:
            self.side.show_nothing(self.question.at, "")


def _said(project: Project, question: Question, about: str) -> Iterator[str]:
    """Yield what was said of one thing; of an item of a place after what was asked there."""
    asked = question.about.removeprefix(about).removeprefix(": ")
    for told in of_earlier(project, [About(question.earlier, question.on_list)]):
        yield f"{asked} {told}" if asked else told
