"""The main window: the drawing is the window; the panels round it are few and quiet."""

from functools import partial
from pathlib import Path

from PySide6.QtCore import QByteArray, QPoint, Qt
from PySide6.QtGui import QAction, QCloseEvent, QDragEnterEvent, QDropEvent, QIcon, QKeySequence
from PySide6.QtWidgets import (
    QApplication,
    QDockWidget,
    QLabel,
    QMainWindow,
    QMenu,
    QStackedWidget,
    QTabBar,
    QVBoxLayout,
    QWidget,
)

from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.place import Point
from enclosure_app.model.project import Project
from enclosure_app.model.report import SectionResult
from enclosure_app.resources import resource
from enclosure_app.window.actions import Actions
from enclosure_app.window.bars import MessageBar, StepBar
from enclosure_app.window.canvas.canvas import Canvas
from enclosure_app.window.canvas.look import Look
from enclosure_app.window.canvas.tools.tool import Pointer
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.checking import Checking, unjudged
from enclosure_app.window.commands import Commands, Parts
from enclosure_app.window.docks import made_dock
from enclosure_app.window.document import Document
from enclosure_app.window.filing import Filing
from enclosure_app.window.findings_panel import FindingsPanel
from enclosure_app.window.keeping import Keeping
from enclosure_app.window.lines_panel import LinesPanel
from enclosure_app.window.look import dress, system_is_dark
from enclosure_app.window.next_step import next_step
from enclosure_app.window.noting import Noting
from enclosure_app.window.ribbon_view import RibbonStrip
from enclosure_app.window.settings import Settings
from enclosure_app.window.start_page import StartPage
from enclosure_app.window.tool_bar import made_tool_bar
from enclosure_app.window.toolbox import Toolbox
from enclosure_app.window.words import coordinate, severity_count

_STATE = 2  # of the layout that is kept; another number forgets an older one


class MainWindow(QMainWindow):
    """The window on one document."""

    def __init__(self, settings: Settings | None = None) -> None:
        super().__init__()
        self.settings = settings or Settings()
        self.document = Document(Project("", Units.MM, ()))
        self.place = Workplace(self.document)
        self.checking = Checking(self.document)
        self.keeping = Keeping(self.document, self.settings.folder)
        self.noting = Noting(self.place)
        self.filing = Filing(self.document, self.settings, self)
        self.canvas = Canvas(self.place, self)
        self.lines = LinesPanel(self)
        self.findings = FindingsPanel(self)
        self.ribbon = RibbonStrip(self)
        self.steps, self.messages = StepBar(self), MessageBar(self)
        self.start = StartPage(self.filing.parts, self)
        self.sections = QTabBar(self)
        self.toolbox = Toolbox(self.canvas)
        self._look = Look()
        self._fit_next = True
        self.setAcceptDrops(True)
        self.setWindowIcon(QIcon(str(resource("icons/enclosure-app.svg"))))
        self._lay_out()
        self.commands = Commands(self._parts())
        self.actions_by_name = Actions(self, self.commands, self._made_actions())
        self.tools = made_tool_bar(self, self.actions_by_name)
        self._lay_out_status()
        self._connect()
        self.show_ground(self.settings.ground)
        self._restore_place()
        self._show_project()
        self.keeping.look_for_unsaved()

    # ---- how it is put together ----------------------------------------------------------------

    def _lay_out(self) -> None:
        self.sections.setDrawBase(False)
        self.sections.setExpanding(False)
        self.sections.setAccessibleName(self.tr("Sections"))
        work = QWidget(self)
        column = QVBoxLayout(work)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        for part in (self.sections, self.steps):
            column.addWidget(part)
        column.addWidget(self.canvas, 1)
        self.pages = QStackedWidget(self)
        self.pages.addWidget(self.start)
        self.pages.addWidget(work)
        middle = QWidget(self)
        outer = QVBoxLayout(middle)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.setSpacing(0)
        outer.addWidget(self.messages)
        outer.addWidget(self.pages, 1)
        self.setCentralWidget(middle)
        left, right = Qt.DockWidgetArea.LeftDockWidgetArea, Qt.DockWidgetArea.RightDockWidgetArea
        foot = Qt.DockWidgetArea.BottomDockWidgetArea
        self.docks: tuple[QDockWidget, ...] = (
            made_dock(self, self.tr("What the lines are"), self.lines, left),
            made_dock(self, self.tr("What is wrong"), self.findings, right),
            made_dock(self, self.tr("The layers unrolled"), self.ribbon, foot),
        )
        self.setCorner(Qt.Corner.BottomRightCorner, right)
        self.resizeDocks(list(self.docks[:2]), [300, 350], Qt.Orientation.Horizontal)
        self.resizeDocks([self.docks[2]], [150], Qt.Orientation.Vertical)

    def _parts(self) -> Parts:
        return Parts(
            window=self,
            document=self.document,
            place=self.place,
            checking=self.checking,
            filing=self.filing,
            canvas=self.canvas,
            findings=self.findings,
            messages=self.messages,
            toolbox=self.toolbox,
            noting=self.noting,
            show_ground=self.show_ground,
        )

    def _made_actions(self) -> dict[str, QAction | QMenu]:
        """Make what the table cannot: undo and redo, which name their step, and menus of files."""
        stack = self.document.undo_stack
        undo = stack.createUndoAction(self, self.tr("Undo"))
        redo = stack.createRedoAction(self, self.tr("Redo"))
        undo.setShortcut("Ctrl+Z")
        redo.setShortcuts([QKeySequence("Ctrl+Shift+Z"), QKeySequence("Ctrl+Y")])
        panels = QMenu(self.tr("Panels"), self)
        for dock in self.docks:
            panels.addAction(dock.toggleViewAction())
        menus = {
            "recent": self.filing.recent,
            "samples": self.filing.samples,
            "parts": self.filing.parts,
            "panels": panels,
        }
        return {"undo": undo, "redo": redo, **menus}

    def _lay_out_status(self) -> None:
        self.hint, self.where = QLabel(self), QLabel(self)
        self.where.setAccessibleName(self.tr("Where the mouse is, in the drawing's units"))
        self.where.setMinimumWidth(220)
        self.where.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self.statusBar().addWidget(self.hint, 1)
        self.statusBar().addPermanentWidget(self.where)
        self.statusBar().setSizeGripEnabled(False)

    def _connect(self) -> None:
        self.document.changed.connect(self._show_project)
        self.document.undo_stack.cleanChanged.connect(self._name_window)
        self.checking.checked.connect(self._show_results)
        self.checking.failed.connect(self.messages.say)
        self.filing.opened.connect(self._opened)
        self.filing.added.connect(self._added)
        self.filing.failed.connect(self.messages.say)
        for who in (self.keeping, self.noting):
            who.asked.connect(self.messages.ask)
            who.said.connect(self.messages.say)
        self.noting.shown.connect(self._go_to_place)
        self.filing.asked_units.connect(self._ask_units)
        self.place.turned.connect(self._show_results)
        self.place.refused.connect(self.messages.say)
        self.place.picked_changed.connect(self._show_picked)
        self._connect_views()

    def _connect_views(self) -> None:
        self.findings.asked.connect(self._go_to_finding)
        self.findings.chosen.connect(self.place.show_only)
        self.ribbon.view.walked.connect(self._go_to_place)
        self.canvas.pointed.connect(self._point)
        self.canvas.asked_menu.connect(self._show_menu)
        self.toolbox.hinted.connect(self.hint.setText)
        self.toolbox.taken.connect(
            lambda name: self.actions_by_name[f"tool_{name}"].setChecked(True)
        )
        self.steps.taken.connect(self.do)
        self.start.wanted.connect(self.do)
        self.start.sample.connect(self.filing.open_sample)
        self.start.recent.connect(lambda path: self.filing.open(Path(path)))
        self.sections.currentChanged.connect(self._turn_to)
        self.lines.lit.connect(self._light)
        self.lines.chosen.connect(lambda key: setattr(self.place, "product", key))
        self.lines.given.connect(self.commands.give_product)
        self.lines.picked.connect(self.commands.pick_layer)
        self.lines.show_section(None)
        self.hint.setText(self.canvas.tool.hint)
        self.actions_by_name["catching"].setChecked(True)
        self.actions_by_name["tool_select"].setChecked(True)
        QApplication.styleHints().colorSchemeChanged.connect(
            lambda _: self.show_ground(self.settings.ground)
        )

    # ---- what is shown -------------------------------------------------------------------------

    @property
    def result(self) -> SectionResult | None:
        """What was found in the section in view; of its latest state once that is checked."""
        section, results = self.place.section, self.checking.results
        if section is None:
            return None
        at = self.place.index
        return results[at] if at < len(results) else unjudged(section)

    def do(self, name: str) -> None:
        """Do the action called `name`."""
        self.actions_by_name[name].trigger()

    def _opened(self) -> None:
        self.messages.hide()
        self.keeping.opened()
        self.place.index = 0
        self._fit_next = True
        self.checking.check_now()
        self.canvas.setFocus()

    def _added(self, index: int) -> None:
        """Turn to a section that was added."""
        self.checking.check_now()
        self._turn_to(index)

    def _show_project(self) -> None:
        project = self.document.project
        self.pages.setCurrentIndex(1 if project.sections else 0)
        for widget in (self.tools, *self.docks):
            widget.setEnabled(bool(project.sections))
        self.hint.setVisible(bool(project.sections))
        if not project.sections:
            self.start.show_recent(self.settings.recent)
            for dock in self.docks:
                dock.hide()
            self.tools.hide()
        elif self.tools.isHidden():
            self._show_panels()
        self.lines.show_section(self.place.section)
        self._name_window()
        self.canvas.update()

    def _show_results(self) -> None:
        result = self.result
        if result is None:
            return
        dark = self._look.dark
        self._look = Look(self.document.project.units, dark, self.place.only)
        self._show_sections()
        self.canvas.show_result(result, self._look)
        self.findings.show_result(result, self._look)
        self.ribbon.view.show_result(result, self._look)
        self.steps.offer(next_step(result))
        self.lines.show_section(self.place.section)
        only = self.place.only.value if self.place.only else "all"
        self.actions_by_name[f"only_{only}"].setChecked(True)
        if self._fit_next:
            self._fit_next = False
            self.canvas.fit()

    def _show_sections(self) -> None:
        """Name the sections on tabs, with how many faults each has; a single one needs none."""
        self.sections.blockSignals(True)
        results = self.checking.results
        while self.sections.count() > len(results):
            self.sections.removeTab(self.sections.count() - 1)
        for number, result in enumerate(results):
            if number == self.sections.count():
                self.sections.addTab("")
            faults = sum(f.severity is Severity.FAULT for f in result.findings)
            told = f"  ·  {severity_count(Severity.FAULT, faults)}" if faults else ""
            self.sections.setTabText(number, f"{result.section.name}{told}")
        self.sections.setCurrentIndex(self.place.index)
        self.sections.setVisible(len(results) > 1)
        self.sections.blockSignals(False)

    def _name_window(self) -> None:
        project = self.document.project
        kept = self.document.path.name if self.document.path else project.title
        self.setWindowTitle(f"{kept or self.tr('Enclosure continuity')}[*]")
        self.setWindowModified(self.document.modified)

    def _go_to_finding(self, finding: Finding) -> None:
        self.canvas.overlay.place_gone_to = finding.at
        self.canvas.go_to(finding.at)
        self.ribbon.view.show_place(finding.at, finding.control)

    def _go_to_place(self, at: Point) -> None:
        self.canvas.overlay.place_gone_to = at
        self.canvas.go_to(at)

    def _point(self, at: Point | None) -> None:
        units = self.document.project.units
        if at is None:
            self.where.setText("")
            return
        x, y = (coordinate(value, units) for value in at)
        self.where.setText(f"x {x}   y {y} {units.value}")

    def _turn_to(self, index: int) -> None:
        self.canvas.overlay.place_gone_to = None
        self._fit_next = True
        self.place.turn_to(index)

    def _light(self, layers: frozenset[str]) -> None:
        self.canvas.overlay.lit = layers
        self.canvas.update()

    def _show_picked(self) -> None:
        self.lines.show_picked(len(self.place.picked) + len(self.place.picked_lines))
        section = self.place.section
        if section and len(self.place.picked) == 1:
            piece = section.by_name[next(iter(self.place.picked))]
            self.lines.choose(piece.product)

    def _show_menu(self, at: QPoint, pointer: Pointer) -> None:
        del pointer
        menu = QMenu(self)
        for name in ("give_product", "pick_same", "tool_points", "delete"):
            menu.addAction(self.actions_by_name[name])
        menu.addSeparator()
        for name in ("tool_sheet", "tool_inside", "tool_outside", "fit"):
            menu.addAction(self.actions_by_name[name])
        menu.popup(at)

    def _ask_units(self, path: str, sentence: str) -> None:
        """Ask once which units a drawing is in that does not say so."""
        answers = {
            units.value: partial(self.filing.open_in_units, Path(path), units) for units in Units
        }
        self.messages.ask(sentence.partition("--units")[0].rstrip(" :;,"), answers)

    def show_ground(self, name: str) -> None:
        """Show everything by day, by night, or as the system wants it."""
        dark = system_is_dark() if name == "as_system" else name == "night"
        self.settings.ground = name
        self.actions_by_name[name].setChecked(True)
        application = QApplication.instance()
        if isinstance(application, QApplication):
            dress(application, dark=dark)
        self._look = Look(self._look.units, dark, self._look.only)
        self.canvas.overlay.look = self._look
        self._show_results()

    def _restore_place(self) -> None:
        self.resize(1366, 768)
        kept = self.settings.layout()
        if kept:
            self.restoreGeometry(kept[0])

    def _show_panels(self) -> None:
        """Show the panels as the person left them; the first-run page, which has none, is past."""
        kept = self.settings.layout()
        for part in (self.tools, *self.docks):
            part.show()
        if kept:
            self.restoreState(kept[1], _STATE)

    def _layout_of_work(self) -> QByteArray:
        """Return how the panels stand, or stood when a drawing was last open."""
        kept = self.settings.layout()
        if self.tools.isHidden():
            return kept[1] if kept else QByteArray()
        return self.saveState(_STATE)

    # ---- Qt's events ---------------------------------------------------------------------------

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Take drawings and projects."""
        names = [url.toLocalFile() for url in event.mimeData().urls()]
        if any(name.lower().endswith((".dxf", ".json")) for name in names):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """Open what is dropped."""
        self.filing.open(Path(event.mimeData().urls()[0].toLocalFile()))

    def closeEvent(self, event: QCloseEvent) -> None:
        """Keep the layout, and end the thread; what is not saved is asked about first."""
        if self.document.modified and not self.commands.leaving:
            event.ignore()
            self.commands.ask_to_save(self.commands.leave)
            return
        self.settings.keep_layout(self.saveGeometry(), self._layout_of_work())
        self.document.undo_stack.cleanChanged.disconnect(self._name_window)
        self.checking.close()
        self.keeping.close()
        event.accept()
