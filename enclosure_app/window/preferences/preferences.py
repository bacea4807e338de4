"""Preferences: the project's rules and figures, and what is the person's own. All apply at once."""

from dataclasses import replace
from types import MappingProxyType

from PySide6.QtWidgets import QDialog, QDialogButtonBox, QTabWidget, QVBoxLayout, QWidget

from enclosure_app.errors import EnclosureError
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.files.projects import limits_of
from enclosure_app.model.drawing import Units
from enclosure_app.model.edits import set_book, set_figure, set_severity, set_units
from enclosure_app.model.finding import Severity
from enclosure_app.model.project import Project
from enclosure_app.window.document import Document
from enclosure_app.window.preferences.preferences_figures import FiguresPage
from enclosure_app.window.preferences.preferences_own import OwnPage
from enclosure_app.window.preferences.preferences_rules import RulesPage
from enclosure_app.window.settings import Settings
from enclosure_app.window.words.labels import rule_name, word
from enclosure_app.window.words.trade import figure_words

_SIZE = (680, 560)


class Preferences(QDialog):
    """Stands beside the drawing: what is changed is seen there at once, and can be undone."""

    def __init__(self, document: Document, settings: Settings, parent: QWidget | None) -> None:
        super().__init__(parent)
        self._document = document
        self._seen: object = None
        self.setWindowTitle(self.tr("Preferences"))
        self.resize(*_SIZE)
        self.rules, self.figures = RulesPage(self), FiguresPage(self)
        self.own = OwnPage(settings, self)
        self.tabs = QTabWidget(self)
        self.tabs.addTab(self.rules, self.tr("Rules"))
        self.tabs.addTab(self.figures, self.tr("Figures and units"))
        self.tabs.addTab(self.own, self.tr("Your own"))
        closing = QDialogButtonBox(self)
        done = closing.addButton(self.tr("Close"), QDialogButtonBox.ButtonRole.RejectRole)
        done.clicked.connect(self.close)
        column = QVBoxLayout(self)
        column.addWidget(self.tabs)
        column.addWidget(closing)
        self._connect()
        self.show_project()

    def show_project(self) -> None:
        """Show what is in force in the project as it is now."""
        project = self._document.project
        self._seen = _seen_of(project)
        begun = bool(project.sections)
        for page in (self.rules, self.figures):
            page.setEnabled(begun)
        self.own.show_settings()
        try:
            limits = limits_of(project)
        except EnclosureError:  # the book is not there: the usual one, until another is chosen
            limits = limits_of(replace(project, book="", figures=MappingProxyType({})))
        usual = load_limits(limits.book)
        self.rules.show_severities(project.severities, usual.severities)
        self.figures.show_figures(limits, project.figures, project.book, project.units)

    def _follow(self) -> None:
        """Show the project again, if somebody looks and if there is something else to be seen."""
        if self.isVisible() and self._seen != _seen_of(self._document.project):
            self.show_project()

    def _connect(self) -> None:
        self._document.changed.connect(self._follow)
        self.rules.chosen.connect(self._set_severity)
        self.figures.figure.connect(self._set_figure)
        self.figures.book.connect(self._set_book)
        self.figures.units.connect(self._set_units)

    def _set_severity(self, rule: str, severity: Severity | None) -> None:
        loud = word(severity.value) if severity else self.tr("as usual")
        text = self.tr("Rule {}: {}").format(rule_name(rule), loud)
        self._apply(text, set_severity(self._document.project, rule, severity))

    def _set_figure(self, name: str, value: float | None) -> None:
        text = self.tr("Figure: {}").format(figure_words(name))
        self._apply(text, set_figure(self._document.project, name, value))

    def _set_book(self, book: str) -> None:
        if book != (self._document.project.book or load_limits().book):
            self._apply(self.tr("Another rule book"), set_book(self._document.project, book))

    def _set_units(self, units: Units) -> None:
        self._apply(self.tr("Other units"), set_units(self._document.project, units))

    def _apply(self, text: str, after: Project) -> None:
        if after != self._document.project:
            self._document.apply(text, after)


def _seen_of(project: Project) -> object:
    """Return what of a project stands in its preferences."""
    own = project.book, project.figures, project.severities
    return (*own, project.units, bool(project.sections))
