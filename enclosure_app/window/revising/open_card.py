"""One finding of an earlier drawing that nobody could place: where it would be, and what it may be."""

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFrame, QLabel, QVBoxLayout, QWidget

from enclosure_app.model.finding import Finding
from enclosure_app.model.project import Project
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.question import Question
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.revising.asking import Asking
from enclosure_app.window.revising.rows import number_in, section_named
from enclosure_app.window.revising.side import Side

_HEIGHT = 250  # dots


class OpenCard(QFrame):
    """Asks one question again. `changed`: the person said something of it."""

    changed = Signal()

    def __init__(self, question: Question, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self.question = question
        section = question.section or question.earlier.section
        self.title = QLabel(f"{section} · {question.about}", self)
        self.title.setObjectName("panel-title")
        self.title.setWordWrap(True)
        self.side = Side(self)
        self.side.title.hide()
        self.asking = Asking(self)
        self._asked: tuple[Finding, ...] = ()
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 8, 12, 10)
        for part in (self.title, self.side, self.asking):
            column.addWidget(part)
        self.asking.answered.connect(self._show_answer)

    @property
    def now(self) -> tuple[str, str] | None:
        """The section and key that it is now, key "" where it is gone, None where it stays open."""
        answer = self.asking.answer
        if answer is None:
            return None
        if isinstance(answer, Finding):
            return (answer.section, answer.key)
        return (self.question.section or self.question.earlier.section, "")

    def show_in(self, project: Project, found: Sequence[SectionResult], look: Look) -> None:
        """Show where it would be in the drawing as it is now."""
        results = tuple(found)
        here = section_named(results, self.question.section)
        near = [here] if here else results
        findings = {each.key: each for result in near for each in result.findings}
        self._asked = tuple(findings[key] for key in self.question.asked if key in findings)
        self.asking.ask([(each, number_in(results, each)) for each in self._asked], None)
        first = self._asked[0].section if self._asked else ""
        result = here or section_named(results, first)
        self.side.show_section(project, result, look)
        self.side.setMinimumHeight(_HEIGHT if result else 0)
        self.side.setVisible(result is not None)
        self._show_place()

    def _show_answer(self) -> None:
        self._show_place()
        self.changed.emit()

    def _show_place(self) -> None:
        answer = self.asking.answer
        shown = answer if isinstance(answer, Finding) else None
        if answer is None and self._asked:
            shown = self._asked[0]
        if shown:
            self.side.show_finding(shown, shown.message)
        else:
            self.side.show_nothing(self.question.at, "")
