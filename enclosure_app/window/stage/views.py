"""What the window shows a project in: the drawing in the middle, few and quiet panels round it."""

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtGui import QAction
from PySide6.QtWidgets import (
    QDockWidget,
    QHBoxLayout,
    QLabel,
    QMainWindow,
    QMenu,
    QVBoxLayout,
    QWidget,
)

from enclosure_app.window.apart.working import Working
from enclosure_app.window.canvas.canvas import Canvas
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.filing.filing import Filing
from enclosure_app.window.filing.working_bar import WorkingBar
from enclosure_app.window.findings.findings_panel import FindingsPanel
from enclosure_app.window.lines.lines_panel import LinesPanel
from enclosure_app.window.parts.sizes_form import SizesForm
from enclosure_app.window.ribbon.ribbon_view import RibbonStrip
from enclosure_app.window.stage.laid_over import LaidOver
from enclosure_app.window.stage.one_page import OnePage
from enclosure_app.window.surround.bars import MessageBar, StepBar
from enclosure_app.window.surround.docks import made_dock
from enclosure_app.window.surround.elided_label import ElidedLabel
from enclosure_app.window.surround.name_strip import NameStrip
from enclosure_app.window.surround.section_row import SectionRow
from enclosure_app.window.surround.start_page import StartPage
from enclosure_app.window.underlay.underlay_pages import PageChooser
from enclosure_app.window.underlay.underlay_strip import UnderlayStrip
from enclosure_app.window.walk.page import WalkPage

_LEFT = Qt.DockWidgetArea.LeftDockWidgetArea
_RIGHT = Qt.DockWidgetArea.RightDockWidgetArea
_FOOT = Qt.DockWidgetArea.BottomDockWidgetArea


class Views:
    """The parts of a window that show its project, laid out in it."""

    def __init__(
        self, window: QMainWindow, place: Workplace, filing: Filing, working: Working
    ) -> None:
        self.canvas = Canvas(place, window)
        self.lines = LinesPanel(window)
        self.findings = FindingsPanel(window)
        self.ribbon = RibbonStrip(window)
        self.steps, self.messages = StepBar(window), MessageBar(window)
        self.working = WorkingBar(working, window)
        self.start = StartPage(filing.parts, window)
        self.section_row = SectionRow(window)
        self.sections = self.section_row.tabs
        self.hint, self.where = ElidedLabel(window), _coordinates(window)
        self.pages = OnePage(window)
        self.pages.addWidget(self.start)
        self.underlay, self.which_page = UnderlayStrip(place, window), PageChooser(window)
        self.sizes, self.naming = SizesForm(window), NameStrip(window)
        drawing = _row(window, self.canvas, self.sizes)
        work = (self.section_row, self.naming, self.steps, self.underlay, drawing)
        self.pages.addWidget(_column(window, *work))
        self.walk = WalkPage(window)
        self.pages.addWidget(self.walk)
        whole = _column(window, self.messages, self.which_page, self.pages)
        window.setCentralWidget(whole)
        self.working.setParent(whole)
        LaidOver(self.working, (self.steps, self.walk.head.overview, self.start), self.pages)
        self.docks = self._made_docks(window)
        self._lay_out_status(window)

    def _made_docks(self, window: QMainWindow) -> tuple[QDockWidget, ...]:
        docks = (
            made_dock(window, say("What the lines are"), self.lines, _LEFT),
            made_dock(window, say("What is wrong"), self.findings, _RIGHT),
            made_dock(window, say("The layers unrolled"), self.ribbon, _FOOT),
        )
        window.setCorner(Qt.Corner.BottomRightCorner, _RIGHT)
        window.resizeDocks([docks[2]], [150], Qt.Orientation.Vertical)
        return docks

    def _lay_out_status(self, window: QMainWindow) -> None:
        bar = window.statusBar()
        bar.addWidget(self.hint, 1)
        bar.addPermanentWidget(self.where)
        bar.setSizeGripEnabled(False)

    def made_menu_of_panels(self, window: QMainWindow) -> QMenu:
        """Return the menu that shows and hides the panels."""
        panels = QMenu(say("Panels"), window)
        actions: list[QAction] = [dock.toggleViewAction() for dock in self.docks]
        panels.addActions(actions)
        return panels


def _column(window: QMainWindow, *parts: QWidget) -> QWidget:
    """Return widgets one under the other; the last one takes what room there is."""
    whole = QWidget(window)
    column = QVBoxLayout(whole)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(0)
    for part in parts:
        column.addWidget(part)
    column.setStretch(len(parts) - 1, 1)
    return whole


def _row(window: QMainWindow, drawing: QWidget, form: QWidget) -> QWidget:
    """Return the drawing with a form at its right, which takes no room while it is away."""
    whole = QWidget(window)
    row = QHBoxLayout(whole)
    row.setContentsMargins(0, 0, 0, 0)
    row.setSpacing(0)
    row.addWidget(drawing, 1)
    row.addWidget(form)
    return whole


def _coordinates(window: QMainWindow) -> QLabel:
    where = QLabel(window)
    where.setAccessibleName(say("Where the mouse is, in the drawing's units"))
    where.setMinimumWidth(220)
    where.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
    return where


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("Views", text)
