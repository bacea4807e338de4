"""Opens and saves: DXF drawings, projects, samples, what was open lately; layer maps over a drawing."""

from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QObject, Signal
from PySide6.QtWidgets import QFileDialog, QMenu, QWidget

from enclosure_app.errors import EnclosureError
from enclosure_app.files.atomic import write_atomically
from enclosure_app.files.dxf.memory import set_aside
from enclosure_app.files.project.file import SUFFIX, project_bytes
from enclosure_app.files.project.named import is_project
from enclosure_app.files.projects import Wish, new_project
from enclosure_app.model.drawing import Units
from enclosure_app.model.project import Project
from enclosure_app.model.states import remembering
from enclosure_app.planning.parts import PARTS
from enclosure_app.progress import Progress
from enclosure_app.resources import sample
from enclosure_app.window.apart.orders import NotReadError, Order, read_order
from enclosure_app.window.apart.working import Job, Lane, Working
from enclosure_app.window.canvas.catching.segments import stroke_segments
from enclosure_app.window.canvas.made_ready import make_ready
from enclosure_app.window.canvas.picture.linework import Linework
from enclosure_app.window.document import Document
from enclosure_app.window.lines.layers_told import layers_by_handle
from enclosure_app.window.settings import Settings
from enclosure_app.window.surround.start_page import SAMPLES

DRAWINGS, MAPS = (".dxf", ".json"), (".toml",)

_VERY_MANY = 20_000  # lines that are looked through again and again if they are not set aside

Then = Callable[[], object]


class Filing(QObject):
    """What File in the menu does.

    `opened`: a project is open; `failed`: why one is not. `part_wanted`: the name of a ready-made
    part that is to be added.
    `asked_units`: the drawing at this path does not say its units, and what the reader said.
    `map_dropped`: the layer map at this path is to be used on what is open.
    `guard` asks what is to become of unsaved work before something else takes its place. `offer`
    asks about files that may be wanted otherwise than opened, and returns whether it did;
    `offer_read` does once they are read, and is told how they are opened after all.
    """

    opened = Signal()
    part_wanted = Signal(str)
    failed = Signal(str)
    asked_units = Signal(str, object)
    map_dropped = Signal(object)

    def __init__(
        self, document: Document, settings: Settings, working: Working, window: QWidget
    ) -> None:
        super().__init__(window)
        self._document = document
        self._settings = settings
        self._working = working
        self._window = window
        self._order = Order(())
        self._asked = Order(())
        self.guard: Callable[[Then], object] = _go_on
        self.offer: Callable[[Sequence[Path]], bool] = _never
        self.offer_read: Callable[[Sequence[Path], Project, Then], bool] = _not_read
        self.recent = QMenu(say("Open lately"), window)
        self.recent.aboutToShow.connect(self._fill_recent)
        self.parts = QMenu(say("Add a ready-made part"), window)
        for each in PARTS:
            action = self.parts.addAction(say(each.title))
            action.triggered.connect(lambda _=False, one=each.name: self.part_wanted.emit(one))
        self.samples = QMenu(say("Samples"), window)
        for file, layers, told in SAMPLES:
            action = self.samples.addAction(say(told))
            action.triggered.connect(
                lambda _=False, one=file, with_map=layers: self.guard(
                    partial(self.open_sample, one, with_map)
                )
            )

    @property
    def source(self) -> Path | None:
        """The file that is open, the first of several; None for a sheet that was begun empty."""
        return self._order.paths[0] if self._order.paths else None

    def ask_what_to_open(self) -> None:
        """Ask for a file or several drawings, and open them."""
        kinds = say("Drawings and projects") + f" (*.dxf *.DXF *{SUFFIX})"
        folder = str(self.source.parent) if self.source else ""
        names, _ = QFileDialog.getOpenFileNames(self._window, say("Open"), folder, kinds)
        paths = [Path(name) for name in names]
        if paths and not self.offer(paths):
            self.open_all(paths)

    def open(self, path: Path, wish: Wish | None = None, *, asked: bool = False) -> None:
        """Open a drawing or a project; `asked`: the person was asked whether it is a revision."""
        self._read(Order((path,), wish or Wish()), asked=asked)

    def open_all(self, paths: Sequence[Path]) -> None:
        """Open a project, or drawings as the sections of one project; a layer map is for these."""
        wanted = [path for path in paths if path.suffix.casefold() in DRAWINGS]
        maps = [path for path in paths if path.suffix.casefold() in MAPS]
        projects = [path for path in wanted if is_project(path)]
        if not wanted and maps:
            self.map_dropped.emit(maps[0])
        elif not wanted:
            self.failed.emit(say("Only DXF drawings, projects and layer maps can be opened."))
        elif projects:
            self.open(projects[0])
            if len(paths) > 1:
                self.failed.emit(
                    say("A project opens alone: only {} is opened.").format(projects[0].name)
                )
        else:
            self._read(Order(tuple(wanted), layers=maps[0] if maps else None))

    def open_lately(self, path: Path) -> None:
        """Open a file that was open lately, or say that it is there no more."""
        if path.is_file():
            self.guard(partial(self.open, path))
            return
        self._settings.forget(path)
        gone = say(
            "{} is not in {} any more: it was moved, renamed or deleted, or its disk is off."
        )
        self.failed.emit(gone.format(path.name, path.parent))

    def open_sample(self, file: str, layers: str) -> None:
        """Open one of the samples with its office's layer map."""
        self._read(Order((sample(file),), layers=sample(layers)))

    def new_sheet(self) -> None:
        """Begin with an empty section, in the units of what was open."""
        self.begin(new_project(self._document.project.units, say("New section")))

    def begin(self, project: Project) -> None:
        """Begin with a project that comes from no file."""
        self._order = Order(())
        self._document.open(project)
        self.opened.emit()

    def open_in_units(self, path: Path, units: Units) -> None:
        """Open a drawing that does not say its units."""
        asked = self._asked if path in self._asked.paths else Order((path,))
        self._read(asked.in_units(path, units))

    def save(self, then: Then | None = None) -> None:
        """Save the project where it is kept, or ask where; go on with `then` once it is saved."""
        path = self._document.path
        if path:
            self._save(path, then)
        else:
            self.save_as(then)

    def save_as(self, then: Then | None = None) -> None:
        """Ask where to keep the project."""
        project = self._document.project
        stem = self._document.path or (self.source and self.source.with_suffix(SUFFIX))
        proposed = str(stem or Path(f"{project.title or 'section'}{SUFFIX}"))
        kinds = say("Projects") + f" (*{SUFFIX})"
        name, _ = QFileDialog.getSaveFileName(self._window, say("Save as"), proposed, kinds)
        if name:
            path = Path(name)
            whole = path if is_project(path) else path.with_name(path.name + SUFFIX)
            self._save(whole, then)

    def _read(self, order: Order, *, asked: bool = False) -> None:
        """Read files while the window goes on; what is open stays until they are read."""
        before = self._document.project
        read = self._working.reader.read if self._working.apart else read_here
        names = ", ".join(path.name for path in order.paths)

        def work(progress: Progress) -> Project:
            project = read(order, progress)
            make_ready(project, Linework, stroke_segments, layers_by_handle)
            if sum(len(section.strokes) for section in project.sections) > _VERY_MANY:
                set_aside()
            return project

        def show(project: Project) -> None:
            def opens() -> None:
                """Open it; what was drawn since it was wanted is not thrown away unasked."""
                shows = partial(self._show, order, project)
                shows() if self._document.project is before else self.guard(shows)

            if asked or not self.offer_read(order.paths, project, opens):
                opens()

        self._working.begin(
            Job(
                Lane.READING,
                say("Reading {}").format(names),
                work,
                then=show,
                refused=partial(self._tell, order),
            )
        )

    def _show(self, order: Order, project: Project) -> None:
        """Show what was read."""
        path = order.paths[0]
        self._order = order
        for each in order.paths:
            self._settings.opened(each)
        self._document.open(project, path if is_project(path) else None)
        self.opened.emit()

    def _save(self, path: Path, then: Then | None) -> None:
        """Save the project as it is now, while the window goes on."""
        document, project, kept = self._document, self._document.project, self._document.kept
        opening = document.opening

        def work(progress: Progress) -> None:
            data = project_bytes(remembering(project, kept), path.name)
            progress.go_on()
            write_atomically(path, data)

        def saved(_: object) -> None:
            self._settings.opened(path)
            if document.opening == opening:
                document.saved(path, project)
            if then:
                self.guard(then)  # what was drawn while it was saved is asked about

        told = say("Saving {}").format(path.name)
        refused = self._refuse
        self._working.begin(Job(Lane.KEEPING, told, work, then=saved, refused=refused))

    def _refuse(self, error: EnclosureError) -> None:
        self.failed.emit(str(error))

    def _tell(self, order: Order, error: EnclosureError) -> None:
        """Say why a file is not open; a drawing that lacks its units is asked about."""
        path = error.path if isinstance(error, NotReadError) else None
        said = dict(order.units).get(path) if path else None
        if path and said is None and order.wish.units is None and "--units" in str(error):
            self._asked = order
            why = error.why if isinstance(error, NotReadError) else error
            self.asked_units.emit(str(path), why)
        else:
            self.failed.emit(str(error))

    def _fill_recent(self) -> None:
        self.recent.clear()
        for path in self._settings.recent:
            there = path if Path(path).is_file() else say("{}  (not there any more)").format(path)
            action = self.recent.addAction(there)
            action.triggered.connect(lambda _=False, one=path: self.open_lately(Path(one)))
        if self.recent.isEmpty():
            self.recent.addAction(say("Nothing yet")).setEnabled(False)


def read_here(order: Order, progress: Progress) -> Project:
    """Read an order in the thread that asks for it.

    Raises:
        EnclosureError: a file of it cannot be read.
    """
    progress.go_on()
    return read_order(order)


def _never(_: Sequence[Path]) -> bool:
    return False


def _not_read(_: Sequence[Path], __: Project, ___: Then) -> bool:
    return False


def _go_on(then: Then) -> None:
    then()


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("Filing", text)
