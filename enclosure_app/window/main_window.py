"""The main window: the drawing is the window; the panels round it are few and quiet."""

from collections.abc import Sequence
from functools import partial
from pathlib import Path

from PySide6.QtCore import QByteArray, QPoint, Qt, QTimer
from PySide6.QtGui import QAction, QCloseEvent, QDragEnterEvent, QDropEvent, QIcon, QKeySequence
from PySide6.QtWidgets import QApplication, QMainWindow, QMenu

from enclosure_app.files.underlay.reading import SUFFIXES, can_lie_under
from enclosure_app.model.drawing import Units
from enclosure_app.model.project import Project
from enclosure_app.model.report import SectionResult
from enclosure_app.model.section import DOWN
from enclosure_app.resources import resource
from enclosure_app.window.apart.reading import Reader
from enclosure_app.window.apart.working import Lane, Working
from enclosure_app.window.canvas.toolbox import Toolbox
from enclosure_app.window.canvas.tools.tool import Pointer
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.checking import Checking
from enclosure_app.window.commands import Commands
from enclosure_app.window.commands.parts import Parts
from enclosure_app.window.document import Document
from enclosure_app.window.filing.filing import DRAWINGS, MAPS, Filing
from enclosure_app.window.filing.keeping import Keeping
from enclosure_app.window.filing.units_asking import UnitsAsking
from enclosure_app.window.languages import tongue_of
from enclosure_app.window.lines.layer_maps import LayerMaps
from enclosure_app.window.lines.noting import Noting
from enclosure_app.window.look import dress, system_is_dark
from enclosure_app.window.menus import context_menus
from enclosure_app.window.menus.actions import Actions
from enclosure_app.window.menus.context_menus import give_menu, made_menu_of_drawing
from enclosure_app.window.menus.language_menu import made_language_menu
from enclosure_app.window.menus.tool_bar import made_tool_bar
from enclosure_app.window.parts.parts_placing import PartsPlacing
from enclosure_app.window.settings import Settings
from enclosure_app.window.stage.showing import Showing
from enclosure_app.window.stage.stage import Stage
from enclosure_app.window.stage.views import Views
from enclosure_app.window.stage.walking import Walking
from enclosure_app.window.underlay.underlaying import Underlaying

_STATE = 2  # of the layout that is kept; another number forgets an older one


class MainWindow(QMainWindow):
    """The window on one document."""

    def __init__(self, settings: Settings | None = None, working: Working | None = None) -> None:
        super().__init__()
        self.settings = settings or Settings()
        self.working = working or Working(Reader(tongue_of(self.settings.language).code))
        self._closing = self._closed = False
        self._under_next: list[Path] = []
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
        self.setAcceptDrops(True)
        self.commands = Commands(self._parts())
        self.actions_by_name = Actions(self, self.commands, self._made_actions())
        self.tools = made_tool_bar(self, self.actions_by_name)
        self.stage = Stage(
            self.walking,
            self.views.pages,
            (self.tools, self.statusBar(), *self.docks),
            self.actions_by_name.allow,
        )
        self._connect()
        self._connect_asking()
        self._begin()

    # ---- how it is put together ----------------------------------------------------------------

    def _parts(self) -> Parts:
        return Parts(
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

    def _connect(self) -> None:
        """Connect what the document does to the window, and what the views ask for to what does it."""
        views = self.views
        self.document.changed.connect(self._show_project)
        self.document.undo_stack.cleanChanged.connect(self._name_window)
        self.filing.guard = self.commands.files.ask_to_save
        self.filing.opened.connect(self._opened)
        self.walking.asked.connect(self._show_project)
        self.walking.ended.connect(self.canvas.setFocus)
        self.underlaying.began.connect(self._opened)
        views.underlay.wanted.connect(self.do)
        self.filing.part_wanted.connect(self.parts.begin)
        self.parts.begun.connect(self.filing.begin)
        self.parts.added.connect(self.showing.show_added)
        self.showing.shown.connect(self._check_only)
        self.canvas.asked_menu.connect(self._show_menu)
        self.toolbox.hinted.connect(views.hint.setText)
        self.toolbox.taken.connect(self._check_tool)
        views.steps.taken.connect(self.do)
        views.start.wanted.connect(self.do)
        views.start.sample.connect(self.filing.open_sample)
        views.start.recent.connect(self._open_lately)
        self.working.changed.connect(self._close_at_last)
        self._connect_lines()
        self._give_menus()

    def _connect_lines(self) -> None:
        """Connect what is asked for in the panel of lines to what does it."""
        self.lines.chosen.connect(lambda key: setattr(self.place, "product", key))
        self.lines.given.connect(self.commands.editing.give_product)
        self.lines.picked.connect(self.commands.editing.pick_layers)
        self.lines.sought.connect(self.commands.editing.pick_drawn)
        self.lines.changed.connect(self.commands.layers.give_drawn)
        self.lines.said.connect(self.commands.layers.say_layers)
        self.lines.made.connect(self.commands.layers.put_product)
        self.lines.removed.connect(self.commands.layers.drop_product)
        self.commands.layers.given.connect(self.lines.was_given)
        self.commands.editing.given.connect(self.lines.was_given)

    def _give_menus(self) -> None:
        give_menu(self.lines.list.list, context_menus.PRODUCTS, self.actions_by_name)
        give_menu(self.findings.list, context_menus.FINDINGS, self.actions_by_name)
        give_menu(self.views.sections, context_menus.SECTIONS, self.actions_by_name)
        give_menu(self.ribbon.view, context_menus.RIBBON, self.actions_by_name)

    def _connect_asking(self) -> None:
        """Connect whoever has something to say or to ask to the bar that says it."""
        naming = self.views.naming
        naming.closed.connect(self.canvas.setFocus)
        self.views.sections.tabBarDoubleClicked.connect(lambda _: self.do("name_section"))
        asked = (self.checking.failed, self.filing.failed, self.place.refused, naming.refused)
        for refused in asked:
            refused.connect(self.messages.say)
        for who in (self.keeping, self.noting):
            who.asked.connect(self.messages.ask)
            who.said.connect(self.messages.say)
        self.underlaying.said.connect(self.messages.say)
        self.canvas.below.failed.connect(self.messages.say)
        self.place.asked.connect(self.messages.ask)
        self.noting.shown.connect(self.showing.go_to)
        self.filing.asked_units.connect(self.units.ask)
        self.filing.map_dropped.connect(self.maps.use)
        self.filing.opened.connect(self._offer_map)
        self.units.asked.connect(self.messages.ask)
        self.maps.asked.connect(self.messages.ask)
        self.maps.said.connect(self.messages.say)
        QApplication.styleHints().colorSchemeChanged.connect(self._follow_system)

    def _begin(self) -> None:
        self.setWindowIcon(QIcon(str(resource("icons/enclosure-app.svg"))))
        self.lines.lately = self.settings.lately
        self.lines.show_section(None)
        self.views.hint.setText(self.canvas.tool.hint)
        self.actions_by_name["catching"].setChecked(True)
        self._help_as_before()
        self.actions_by_name["tool_select"].setChecked(True)
        self.show_ground(self.settings.ground)
        self._restore_place()
        self._show_project()
        self.keeping.look_for_unsaved()

    def _help_as_before(self) -> None:
        """Let the grid, angles and distances be what they were when the window was last open."""
        aids = self.settings.aids
        self.place.aids = aids
        self.actions_by_name["grid_shown"].setChecked(aids.grid_shown)
        self.actions_by_name["keep_angles"].setChecked(aids.kept)
        self.place.aided.connect(self._keep_aids)

    def _keep_aids(self) -> None:
        self.settings.aids = self.place.aids

    # ---- what is shown -------------------------------------------------------------------------

    @property
    def result(self) -> SectionResult | None:
        """What was found in the section in view."""
        return self.showing.result

    def do(self, name: str) -> None:
        """Do the action called `name`."""
        self.actions_by_name[name].trigger()

    def open_files(self, paths: Sequence[Path]) -> None:
        """Open drawings, a project or a layer map, and put pictures and PDF files under them.

        What is not saved is asked about before another drawing takes its place.
        """
        under = [path for path in paths if can_lie_under(path)]
        others = [path for path in paths if path not in under]
        if others and not under and self.commands.revising.offer(others):
            return
        if others:
            self._under_next = under
            self.commands.files.ask_to_save(partial(self.filing.open_all, others))
        else:
            self.underlaying.open(under)

    def _opened(self) -> None:
        self.walking.end()
        self.keeping.opened()
        self.showing.begin()
        under, self._under_next = self._under_next, []
        if under:
            self.underlaying.open(under)

    def _show_project(self) -> None:
        begun = bool(self.document.project.sections)
        self.stage.show(begun=begun)
        for widget in (self.tools, *self.docks):
            widget.setEnabled(begun)
        self.views.hint.setVisible(begun)
        if not begun:
            self._show_start()
        elif self.tools.isHidden() and not self.walking.on:
            self._show_panels()
        self._name_window()

    def _show_start(self) -> None:
        self.views.start.show_recent(self.settings.recent)
        for part in (self.tools, *self.docks):
            part.hide()

    def _name_window(self) -> None:
        project = self.document.project
        kept = self.document.path.name if self.document.path else project.title
        self.setWindowTitle(f"{kept or self.tr('Enclosure continuity')}[*]")
        self.setWindowModified(self.document.modified)

    def _check_tool(self, name: str) -> None:
        """Show which tool is in hand: none of the bar's while one hangs from the mouse for a moment."""
        group = self.actions_by_name["tool_select"].actionGroup()
        group.setExclusive(False)
        for action in group.actions():
            action.setChecked(action.objectName() == f"tool_{name}")
        group.setExclusive(True)
        self._check_gravity()

    def _check_gravity(self) -> None:
        gravity = self.place.section.gravity if self.place.section else DOWN
        name = {DOWN: "hangs_down", None: "is_plan"}.get(gravity, "hangs_askew")
        self.actions_by_name[name].setChecked(True)

    def _check_only(self) -> None:
        only = self.place.only.value if self.place.only else "all"
        self.actions_by_name[f"only_{only}"].setChecked(True)
        self._check_gravity()

    def _show_menu(self, at: QPoint, pointer: Pointer) -> None:
        """Show what can be done with what the mouse is on."""
        made_menu_of_drawing(self, self.place, self.actions_by_name, pointer).popup(at)

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
        elif height := self.ribbon.wished_height(self.height()):
            self.resizeDocks([self.docks[2]], [height], Qt.Orientation.Vertical)

    def _layout_of_work(self) -> QByteArray:
        """Return how the panels stand, or stood when a drawing was last open."""
        kept = self.settings.layout()
        if self.tools.isHidden():
            return kept[1] if kept else QByteArray()
        return self.saveState(_STATE)

    def _open_lately(self, path: str) -> None:
        """Open a file of the first page; one that is there no more is there no more."""
        self.filing.open_lately(Path(path))
        self.views.start.show_recent(self.settings.recent)

    def _close_at_last(self) -> None:
        """Close when what is being saved is saved, if that was wished meanwhile."""
        if self._closing and not self.working.busy(Lane.KEEPING):
            self._closing = False
            QTimer.singleShot(0, self.close)

    # ---- Qt's events ---------------------------------------------------------------------------

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Take drawings, projects, and what can lie under a drawing."""
        if any(
            path.suffix.casefold() in (*DRAWINGS, *MAPS, *SUFFIXES) for path in _dropped(event)
        ):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """Open what is dropped, or put it under the drawing."""
        self.open_files(_dropped(event))

    def closeEvent(self, event: QCloseEvent) -> None:
        """Keep the layout, and end all work; what is not saved is asked about first."""
        if self.working.busy(Lane.KEEPING) and not self.commands.files.leaving:
            event.ignore()
            self._closing = True
            return
        if self.document.modified and not self.commands.files.leaving:
            event.ignore()
            self.commands.files.ask_to_save(self.commands.files.leave)
            return
        event.accept()
        if self._closed:
            return
        self._closed = True
        self.walking.end()
        self.settings.keep_layout(self.saveGeometry(), self._layout_of_work())
        self.settings.lately = self.lines.lately
        self.document.undo_stack.cleanChanged.disconnect(self._name_window)
        self.hide()  # what has to come to its end does so unseen
        self.checking.close()
        self.showing.close()
        self.keeping.close()
        self.working.close()


def _dropped(event: QDropEvent) -> list[Path]:
    return [Path(url.toLocalFile()) for url in event.mimeData().urls() if url.isLocalFile()]
