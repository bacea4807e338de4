"""Shows the document and what was found in it, in every view, and takes each view to a place."""

from PySide6.QtCore import QObject, QTimer, Signal

from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.place import Point
from enclosure_app.model.product import Control
from enclosure_app.model.report import SectionResult
from enclosure_app.model.standing.verdicts import with_verdicts
from enclosure_app.window.canvas.flag_hand import FlagHand
from enclosure_app.window.canvas.ink.layer_preview import Lit
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.checking import Checking
from enclosure_app.window.judging import unjudged
from enclosure_app.window.stage.views import Views
from enclosure_app.window.surround.next_step import next_step, stopped_step
from enclosure_app.window.underlay.underlaying import scale_step
from enclosure_app.window.words.labels import coordinate, severity_count

_LATE = 200  # ms of checking after which what is drawn is shown unjudged


class Showing(QObject):
    """Keeps the views of one window up to date.

    `shown`: the results of the section in view are on the screen.
    """

    shown = Signal()

    def __init__(self, place: Workplace, checking: Checking, views: Views) -> None:
        super().__init__(place)
        self._place, self._checking, self._views = place, checking, views
        self._look = Look()
        self._fit_next = True
        self._pointed: Point | None = None
        self.flags = FlagHand(views.canvas)
        self._late = QTimer(self)
        self._late.setSingleShot(True)
        self._late.setInterval(_LATE)
        self._connect()

    def _connect(self) -> None:
        views, place = self._views, self._place
        place.document.changed.connect(self.show_project)
        place.turned.connect(self.show_results)
        place.picked_changed.connect(self._show_picked)
        self._checking.checked.connect(self.show_results)
        self._checking.working.connect(self._tell_check)
        self._checking.stopped.connect(self._show_unjudged)
        views.working.check_stopped.connect(self._checking.stop)
        self._late.timeout.connect(self._show_unjudged)
        views.findings.asked.connect(self._go_to_finding)
        views.findings.chosen.connect(place.show_only)
        views.ribbon.view.walked.connect(self.go_to)
        views.canvas.pointed.connect(self._point)
        self.flags.taken.connect(self._show_flagged)
        views.section_row.turned.connect(self.turn_to)
        views.lines.lit.connect(self._light)

    @property
    def result(self) -> SectionResult | None:
        """What was found in the section in view; of its latest state once that is checked."""
        section, results = self._place.section, self._checking.results
        if section is None:
            return None
        at = self._place.index
        judged = at < len(results) and self._checking.of_this_document
        found = results[at] if judged else unjudged(section)
        return with_verdicts(found, self._place.document.project)

    @property
    def look(self) -> Look:
        """How everything looks: by day or by night, in the units of the project."""
        return self._look

    @property
    def chosen_key(self) -> str:
        """The key of the finding that is chosen, "" without one."""
        finding = self._views.findings.current
        return finding.key if finding else ""

    def begin(self) -> None:
        """Show a project that was just opened: its first section, whole."""
        self._views.messages.hide()
        self._place.index = 0
        self._fit_next = True
        self._checking.check_now()
        if not self._checking.current:
            self.show_results()  # the drawing is seen while it is judged
        self._views.canvas.setFocus()

    def close(self) -> None:
        """Show nothing more: the window is gone."""
        self._late.stop()

    def show_added(self, index: int) -> None:
        """Turn to a section that was added."""
        self._checking.check_now()
        self.turn_to(index)

    def turn_to(self, index: int) -> None:
        """Turn to another section."""
        self._views.canvas.overlay.place_gone_to = None
        self._fit_next = True
        self._place.turn_to(index)

    def show_dark(self, *, dark: bool) -> None:
        """Show everything light or dark."""
        self._look = Look(self._look.units, dark, self._look.only)
        self._views.canvas.overlay.look = self._look
        self.show_results()

    def show_project(self) -> None:
        """Show the project as it is now, before it is judged."""
        views = self._views
        views.lines.show_section(self._place.section, self._place.document.project)
        views.canvas.update()

    def show_results(self) -> None:
        """Show what was found in the section in view."""
        result = self.result
        if result is None:
            return
        self._place.result = result
        views = self._views
        self._look = Look(self._place.document.project.units, self._look.dark, self._place.only)
        self._name_sections()
        views.canvas.show_result(result, self._look)
        self.flags.show_result(result, self._look)
        views.findings.show_result(result, self._look)
        views.ribbon.view.show_result(result, self._look)
        self._offer_step(result)
        views.lines.show_section(self._place.section, self._place.document.project)
        if self._fit_next:
            self._fit_next = False
            views.canvas.fit()
        self.shown.emit()

    def _offer_step(self, result: SectionResult) -> None:
        scale = scale_step(self._place.document.project, result.section)
        known = self._checking.of_this_document
        stopped = stopped_step(known=known) if self._checking.given_up else None
        self._views.steps.offer(scale or stopped or next_step(result))

    def _tell_check(self, on: bool) -> None:
        """Say that a check takes long; what was drawn since the last one is shown before it ends."""
        number = len(self._place.document.project.sections)
        several = self.tr("Checking {} sections").format(number)
        words = several if number > 1 else self.tr("Checking the section")
        self._views.working.tell_check(words if on else "", self._checking.progress)
        self._late.start() if on else self._late.stop()

    def _show_unjudged(self) -> None:
        section = self._place.section
        if section is not None and not self._checking.current:
            self._views.canvas.show_result(unjudged(section), self._look)
            self._offer_step(unjudged(section))
            self._views.findings.show_checking(stopped=self._checking.given_up)

    def go_to(self, at: Point) -> None:
        """Take the drawing to a place."""
        self._views.canvas.overlay.place_gone_to = at
        self._views.canvas.go_to(at)

    def _go_to_finding(self, finding: Finding) -> None:
        self.go_to(finding.at)
        self._views.ribbon.view.show_place(finding.at, finding.control)
        if finding.control is Control.WATER:
            self._views.canvas.rain.start()

    def _show_flagged(self, key: str) -> None:
        """Choose the finding whose flag was clicked in the drawing, in the list and in the band."""
        self._views.findings.choose(key)
        finding = self._views.findings.current
        if finding:
            self._views.ribbon.view.show_place(finding.at, finding.control)

    def _name_sections(self) -> None:
        """Name the sections, with how many faults each has; a single one needs no name."""
        place, results = self._place, self._checking.results
        judged = results if self._checking.of_this_document else ()
        names = [
            _told(judged[at]) if at < len(judged) else section.name
            for at, section in enumerate(place.document.project.sections)
        ]
        self._views.section_row.show_sections(names, place.index)

    def _point(self, at: Point | None) -> None:
        self._pointed = at or self._pointed
        units = self._place.document.project.units
        if at is None:
            self._views.where.setText("")
            return
        x, y = (coordinate(value, units) for value in at)
        self._views.where.setText(f"x {x}   y {y} {units.value}")

    def _light(self, lit: tuple[Lit, ...]) -> None:
        self._views.canvas.overlay.lit = lit
        self._views.canvas.update()

    def _show_picked(self) -> None:
        place = self._place
        count = len(place.picked) + len(place.picked_lines)
        self._views.lines.show_picked(count, place.picked_layers)
        if place.section and len(place.picked) == 1:
            piece = place.section.by_name[next(iter(place.picked))]
            self._views.lines.choose(piece.product)
            self._views.ribbon.view.show_piece(piece.name, self._pointed)


def _told(result: SectionResult) -> str:
    faults = sum(finding.severity is Severity.FAULT for finding in result.findings)
    told = f"  ·  {severity_count(Severity.FAULT, faults)}" if faults else ""
    return f"{result.section.name}{told}"
