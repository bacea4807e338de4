"""The main window: the drawing is the window; the panels round it are few and quiet."""

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtGui import QAction, QCloseEvent, QDragEnterEvent, QDropEvent, QIcon, QKeySequence
from PySide6.QtWidgets import QApplication, QMainWindow, QMenu

from enclosure_app.model.drawing import Units
from enclosure_app.model.project import Project
from enclosure_app.model.report import SectionResult
from enclosure_app.resources import resource
from enclosure_app.window import wiring
from enclosure_app.window.apart.reading import Reader
from enclosure_app.window.apart.working import Working
from enclosure_app.window.bringing import Bringing, can_be_dropped, dropped
from enclosure_app.window.canvas.toolbox import Toolbox
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.checking import Checking
from enclosure_app.window.closing import Closing
from enclosure_app.window.commands import Commands
from enclosure_app.window.commands.fittings import Fittings
from enclosure_app.window.document import Document
from enclosure_app.window.dress import dress, system_is_dark
from enclosure_app.window.filing.filing import Filing
from enclosure_app.window.filing.keeping import Keeping
from enclosure_app.window.filing.units_asking import UnitsAsking
from enclosure_app.window.languages import tongue_of
from enclosure_app.window.lines.layer_maps import LayerMaps
from enclosure_app.window.lines.noting import Noting
from enclosure_app.window.menus.actions import Actions
from enclosure_app.window.menus.language_menu import made_language_menu
from enclosure_app.window.menus.ticks import Ticks
from enclosure_app.window.menus.tool_bar import made_tool_bar
from enclosure_app.window.parts.parts_placing import PartsPlacing
from enclosure_app.window.settings import Settings
from enclosure_app.window.stage.arrangement import Arrangement
from enclosure_app.window.stage.showing import Showing
from enclosure_app.window.stage.stage import Stage
from enclosure_app.window.stage.views import Views
from enclosure_app.window.stage.walking import Walking
from enclosure_app.window.underlay.underlaying import Underlaying
from enclosure_app.window.walk.taking_in import TakingIn


class MainWindow(QMainWindow):
    """The window on one document."""

    def __init__(self, settings: Settings | None = None, working: Working | None = None) -> None:
        super().__init__()
        self.settings = settings or Settings()
        self.working = working or Working(Reader(tongue_of(self.settings.language).code))
        self.document = Document(Project("", Units.MM, ()))
        self.place = Workplace(self.document)
        self.checking = Checking(self.document, apart=self.working.apart)
        self.keeping = Keeping(self.document, self.settings.folder, self.working)
        self.noting = Noting(self.place)
        self.maps = LayerMaps(self.document, self.settings, self.working, self)
        self.filing = Filing(self.document, self.settings, self.working, self)
        self.units = UnitsAsking(self.document, self.filing.open_in_units)
        self.views = Views(self, self.place, self.filing, self.working)
        self.canvas, self.lines = self.views.canvas, self.views.lines
        self.findings, self.ribbon = self.views.findings, self.views.ribbon
        self.messages, self.docks = self.views.messages, self.views.docks
        self.underlaying = Underlaying(self.place, self.views.which_page, self.working, self)
        self.toolbox = Toolbox(self.canvas)
        self.parts = PartsPlacing(self.place, self.toolbox, self.canvas, self.views.sizes)
        self.showing = Showing(self.place, self.checking, self.views)
        self.walking = Walking(
            self.place, self.checking, self.showing, self.views.walk, self.settings
        )
        TakingIn(self.walking.saying, self.working, self)
        self.setAcceptDrops(True)
        self._furnish(self._fittings())

    def _furnish(self, fittings: Fittings) -> None:
        """Give the window its menus and tools, and let it begin."""
        self.commands = Commands(fittings)
        self.actions_by_name = Actions(self, self.commands, self._made_actions())
        self.tools = made_tool_bar(self, self.actions_by_name)
        around = (self.tools, self.statusBar(), *self.docks)
        self.stage = Stage(self.walking, self.views.pages, around, self.actions_by_name.allow)
        self.arrangement = Arrangement(self, self.settings, self.views, self.tools)
        self.ticks = Ticks(self.actions_by_name, self.place, self.settings)
        self.bringing = Bringing(fittings, self.commands)
        self.closing = Closing(fittings, self.commands.files, self.showing)
        self._wire(fittings)
        self._connect()
        self._begin()

    # ---- how it is put together ----------------------------------------------------------------

    def _fittings(self) -> Fittings:
        return Fittings(
            window=self,
            document=self.document,
            place=self.place,
            checking=self.checking,
            filing=self.filing,
            sections=self.views.section_row,
            working=self.working,
            canvas=self.canvas,
            findings=self.findings,
            lines=self.lines,
            messages=self.messages,
            toolbox=self.toolbox,
            sizes=self.views.sizes,
            naming=self.views.naming,
            noting=self.noting,
            underlaying=self.underlaying,
            settings=self.settings,
            keeping=self.keeping,
            show_ground=self.show_ground,
            maps=self.maps,
            units=self.units,
            walking=self.walking,
        )

    def _made_actions(self) -> dict[str, QAction | QMenu]:
        """Make what the table cannot: undo and redo, which name their step, and menus of files."""
        stack = self.document.undo_stack
        undo = stack.createUndoAction(self, self.tr("Undo"))
        redo = stack.createRedoAction(self, self.tr("Redo"))
        undo.setShortcut("Ctrl+Z")
        redo.setShortcuts([QKeySequence("Ctrl+Shift+Z"), QKeySequence("Ctrl+Y")])
        menus = {
            "recent": self.filing.recent,
            "samples": self.filing.samples,
            "parts": self.filing.parts,
            "panels": self.views.made_menu_of_panels(self),
            "languages": made_language_menu(
                self, self.settings, self.messages.ask, self.commands.files.begin_again
            ),
        }
        return {"undo": undo, "redo": redo, **menus}

    def _wire(self, fittings: Fittings) -> None:
        """Let the fittings know of one another."""
        wiring.wire_lines(fittings, self.commands)
        wiring.wire_words(fittings, self.views, self.showing)
        wiring.wire_actions(fittings, self.views, self.do)
        wiring.wire_hand(fittings, self.views, self.showing, self.ticks)
        wiring.give_menus(fittings, self.views, self.actions_by_name)

    def _connect(self) -> None:
        """Connect what happens to the project to what the window as a whole shows of it."""
        self.document.changed.connect(self._show_project)
        self.document.undo_stack.cleanChanged.connect(self._name_window)
        self.walking.asked.connect(self._show_project)
        self.filing.guard = self.commands.files.ask_to_save
        self.filing.opened.connect(self._opened)
        self.filing.opened.connect(self._offer_map)
        self.underlaying.began.connect(self._opened)
        self.filing.part_wanted.connect(self.parts.begin)
        self.parts.begun.connect(self.filing.begin)
        self.parts.added.connect(self.showing.show_added)
        QApplication.styleHints().colorSchemeChanged.connect(self._follow_system)

    def _begin(self) -> None:
        self.setWindowIcon(QIcon(str(resource("icons/enclosure-app.svg"))))
        self.lines.lately = self.settings.lately
        self.lines.show_section(None)
        self.views.hint.tell(self.canvas.tool.hint)
        self.ticks.begin()
        self.show_ground(self.settings.ground)
        self.arrangement.restore_size()
        self._show_project()
        self.keeping.look_for_unsaved()

    # ---- what is shown -------------------------------------------------------------------------

    @property
    def result(self) -> SectionResult | None:
        """What was found in the section in view."""
        return self.showing.result

    def do(self, name: str) -> None:
        """Do the action called `name`."""
        self.actions_by_name[name].trigger()

    def open_files(self, paths: Sequence[Path]) -> None:
        """Open drawings, a project or a layer map, and put pictures and PDF files under them."""
        self.bringing.open(paths)

    def _opened(self) -> None:
        self.walking.end()
        self.keeping.opened()
        self.showing.begin()
        self.bringing.lay_under()

    def _show_project(self) -> None:
        begun = bool(self.document.project.sections)
        self.stage.show(begun=begun)
        for widget in (self.tools, *self.docks):
            widget.setEnabled(begun)
        self.views.hint.setVisible(begun)
        if not begun:
            self.views.start.show_recent(self.settings.recent)
            self.arrangement.clear()
        elif not self.walking.on:
            self.arrangement.furnish()
        self._name_window()

    def _name_window(self) -> None:
        project = self.document.project
        kept = self.document.path.name if self.document.path else project.title
        self.setWindowTitle(f"{kept or self.tr('Enclosure continuity')}[*]")
        self.setWindowModified(self.document.modified)

    def _offer_map(self) -> None:
        """Offer the last layer map, unless something else is asked."""
        if not self.messages.isVisible():
            self.maps.offer()

    def _follow_system(self) -> None:
        self.show_ground(self.settings.ground)

    def show_ground(self, name: str) -> None:
        """Show everything by day, by night, or as the system wants it."""
        dark = system_is_dark() if name == "as_system" else name == "night"
        self.settings.ground = name
        self.actions_by_name[name].setChecked(True)
        application = QApplication.instance()
        if isinstance(application, QApplication):
            dress(application, dark=dark)
        self.showing.show_dark(dark=dark)

    # ---- Qt's events ---------------------------------------------------------------------------

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Take drawings, projects, and what can lie under a drawing."""
        if can_be_dropped(event):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """Open what is dropped, or put it under the drawing."""
        self.bringing.open(dropped(event))

    def closeEvent(self, event: QCloseEvent) -> None:
        """Keep how the window stands, and end all work; what is not saved is asked about first."""
        event.setAccepted(self.closing.may())
        if event.isAccepted():
            self.closing.end(self.arrangement)
