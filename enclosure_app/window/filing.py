"""Opens and saves: DXF drawings, projects, samples, what was open lately; layer maps over a drawing."""

from dataclasses import replace
from itertools import count
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QObject, Signal
from PySide6.QtWidgets import QFileDialog, QMenu, QWidget

from enclosure_app.errors import EnclosureError
from enclosure_app.files.catalogue import load_products
from enclosure_app.files.layer_map import load_layer_map
from enclosure_app.files.project_file import SUFFIX, load_project, save_project
from enclosure_app.model.drawing import Units
from enclosure_app.model.edits import add_section
from enclosure_app.model.project import Project
from enclosure_app.planning.parts import PARTS, part
from enclosure_app.resources import sample
from enclosure_app.window.document import Document
from enclosure_app.window.opening import Wish, new_project, read_project
from enclosure_app.window.settings import Settings
from enclosure_app.window.start_page import SAMPLES

_UNITS_ASKED = (Units.MM, Units.CM, Units.M, Units.IN, Units.FT)


class Filing(QObject):
    """What File in the menu does.

    `opened`: a project is open; `added`: so is a new section, at this place; `failed`: why one is
    not. `asked_units`: the drawing at this path does not say its units, in the words of the reader.
    """

    opened = Signal()
    added = Signal(int)
    failed = Signal(str)
    asked_units = Signal(str, str)

    def __init__(self, document: Document, settings: Settings, window: QWidget) -> None:
        super().__init__(window)
        self._document = document
        self._settings = settings
        self._window = window
        self._wish = Wish()
        self._source: Path | None = None
        self.recent = QMenu(say("Open lately"), window)
        self.recent.aboutToShow.connect(self._fill_recent)
        self.parts = QMenu(say("Add a ready-made part"), window)
        for each in PARTS:
            action = self.parts.addAction(say(each.title))
            action.triggered.connect(lambda _=False, name=each.name: self.add_part(name))
        self.samples = QMenu(say("Samples"), window)
        for file, layers, told in SAMPLES:
            action = self.samples.addAction(say(told))
            action.triggered.connect(
                lambda _=False, one=file, with_map=layers: self.open_sample(one, with_map)
            )

    def ask_what_to_open(self) -> None:
        """Ask for a file, and open it."""
        kinds = say("Drawings and projects") + f" (*.dxf *.DXF *{SUFFIX})"
        folder = str(self._source.parent) if self._source else ""
        name, _ = QFileDialog.getOpenFileName(self._window, say("Open"), folder, kinds)
        if name:
            self.open(Path(name))

    def open(self, path: Path, wish: Wish | None = None) -> bool:
        """Open a drawing or a project; say whether that was possible."""
        wish = wish or Wish()
        is_project = path.name.endswith(".json")
        try:
            project = load_project(path) if is_project else read_project(path, wish)
        except EnclosureError as error:
            self._tell(path, wish, str(error))
            return False
        self._wish = wish
        self._source = path
        self._settings.opened(path)
        self._document.open(project, path if is_project else None)
        self.opened.emit()
        return True

    def open_sample(self, file: str, layers: str) -> None:
        """Open one of the samples with its office's layer map."""
        self._with_map(sample(file), sample(layers))

    def new_sheet(self) -> None:
        """Begin with an empty section, in the units of what was open."""
        units = self._document.project.units
        self._source = None
        self._document.open(new_project(units, say("New section")))
        self.opened.emit()

    def add_part(self, name: str) -> None:
        """Add a ready-made part as a section of its own; without a project it begins one."""
        document = self._document
        project = document.project
        section = part(name, load_products())
        taken = {each.name for each in project.sections}
        numbers = (f"{section.name} {n}" for n in count(2))
        free = (
            section.name
            if section.name not in taken
            else next(n for n in numbers if n not in taken)
        )
        section = replace(section, name=free)
        if not project.sections:
            self._source = None
            document.open(Project(title=free, units=project.units, sections=(section,)))
            self.opened.emit()
            return
        document.apply(say("Add {}").format(free), add_section(project, section))
        self.added.emit(len(project.sections))

    def use_layer_map(self) -> None:
        """Ask for a layer map, and read the drawing again with it."""
        if self._source is None or self._source.name.endswith(".json"):
            self.failed.emit(say("A layer map is for a DXF drawing: open the drawing first."))
            return
        kinds = say("Layer maps") + " (*.toml)"
        folder = str(self._source.parent)
        name, _ = QFileDialog.getOpenFileName(self._window, say("Use a layer map"), folder, kinds)
        if name:
            self._with_map(self._source, Path(name))

    def open_in_units(self, path: Path, units: Units) -> None:
        """Open a drawing that does not say its units."""
        self.open(path, Wish(self._wish.layer_map, units))

    def save(self) -> bool:
        """Save the project where it is kept, or ask where; say whether it was saved."""
        path = self._document.path
        return self._save(path) if path else self.save_as()

    def save_as(self) -> bool:
        """Ask where to keep the project."""
        project = self._document.project
        stem = self._document.path or (self._source and self._source.with_suffix(SUFFIX))
        proposed = str(stem or Path(f"{project.title or 'section'}{SUFFIX}"))
        kinds = say("Projects") + f" (*{SUFFIX})"
        name, _ = QFileDialog.getSaveFileName(self._window, say("Save as"), proposed, kinds)
        if not name:
            return False
        path = Path(name)
        return self._save(path if path.name.endswith(".json") else path.with_name(name + SUFFIX))

    def _save(self, path: Path) -> bool:
        project: Project = self._document.project
        try:
            save_project(project, path)
        except EnclosureError as error:
            self.failed.emit(str(error))
            return False
        self._document.saved(path)
        self._settings.opened(path)
        return True

    def _with_map(self, path: Path, layers: Path) -> None:
        from enclosure_app.rules import RULES  # noqa: PLC0415  after the window is seen

        try:
            layer_map = load_layer_map(layers, [rule.name for rule in RULES])
        except EnclosureError as error:
            self.failed.emit(str(error))
            return
        self.open(path, Wish(layer_map, self._wish.units if path == self._source else None))

    def _tell(self, path: Path, wish: Wish, sentence: str) -> None:
        """Say why a file is not open; a drawing that lacks its units is asked about."""
        if wish.units is None and "--units" in sentence:
            self._wish = wish
            self.asked_units.emit(str(path), sentence)
        else:
            self.failed.emit(sentence)

    def _fill_recent(self) -> None:
        self.recent.clear()
        for path in self._settings.recent:
            action = self.recent.addAction(path)
            action.triggered.connect(lambda _=False, one=path: self.open(Path(one)))
        if self.recent.isEmpty():
            self.recent.addAction(say("Nothing yet")).setEnabled(False)


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("Filing", text)
