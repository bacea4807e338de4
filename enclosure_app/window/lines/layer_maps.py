"""Layer maps: used on what is open, saved for the office's next drawing, and offered for it."""

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QFileDialog, QWidget

from enclosure_app.errors import EnclosureError
from enclosure_app.files.framing.layers_said import Said, guessed_rows, layers_of, mapped
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.layer_map import LayerMap, load_layer_map
from enclosure_app.files.maps.writing import map_of, save_layer_map
from enclosure_app.language import say, say_count
from enclosure_app.model.layer import row_of
from enclosure_app.model.project import Project
from enclosure_app.window.apart.working import Job, Lane, Working
from enclosure_app.window.document import Document
from enclosure_app.window.settings import Settings

SUFFIX = ".toml"


class LayerMaps(QObject):
    """What is done with layer maps.

    `said`: a sentence; `asked`: a question, and the answers with what each does.
    """

    said = Signal(str)
    asked = Signal(str, object)

    def __init__(
        self, document: Document, settings: Settings, working: Working, window: QWidget
    ) -> None:
        super().__init__(window)
        self._document = document
        self._settings = settings
        self._working = working
        self._window = window

    def ask_and_use(self) -> None:
        """Ask for a layer map, and use it on what is open."""
        kinds = say("Layer maps") + f" (*{SUFFIX})"
        last = self._settings.layer_map or self._beside()
        name, _ = QFileDialog.getOpenFileName(
            self._window, say("Use a layer map"), str(last.parent), kinds
        )
        if name:
            self.use(Path(name))

    def use(self, path: Path) -> None:
        """Use a layer map on what is open, as one step that can be undone."""
        document = self._document
        project, opening = document.project, document.opening
        if not project.layers and not layers_of(project):
            self.said.emit(say("A layer map is for a drawing with layers: open one first."))
            return

        def work(_: object) -> tuple[LayerMap, Said]:
            layer_map = load_layer_map(path, _rule_names())
            return layer_map, mapped(project, layer_map)

        def show(found: tuple[LayerMap, Said]) -> None:
            if document.opening != opening:
                return  # it was for another drawing
            if document.project is not project:
                self.use(path)  # again: what was edited meanwhile stays
                return
            layer_map, done = found
            self._settings.layer_map = path
            document.apply(say("Use {file}", file=path.name), done.project)
            self.said.emit(used_words(path.name, project, layer_map, done.by_hand))

        words = say("Using {file}", file=path.name)
        self._working.begin(Job(Lane.SAYING, words, work, then=show, refused=self._refuse))

    def _refuse(self, error: EnclosureError) -> None:
        self.said.emit(str(error))

    def ask_and_save(self) -> None:
        """Ask where to keep what is said of the layers, and save it as a layer map."""
        kinds = say("Layer maps") + f" (*{SUFFIX})"
        proposed = self._settings.layer_map or self._beside()
        name, _ = QFileDialog.getSaveFileName(
            self._window, say("Save the layer map"), str(proposed), kinds
        )
        if name:
            path = Path(name)
            self.save(path if path.suffix else path.with_suffix(SUFFIX))

    def save(self, path: Path) -> None:
        """Save what is said of the layers, with the office's products, as a layer map."""
        layer_map = map_of(self._document.project)
        try:
            save_layer_map(layer_map, path)
        except EnclosureError as error:
            self.said.emit(str(error))
            return
        self._settings.layer_map = path
        self.said.emit(saved_words(path.name, layer_map))

    def offer(self) -> None:
        """Offer the last layer map for a drawing that was just opened by the names of its layers."""
        project, path = self._document.project, self._settings.layer_map
        if path is None or self._document.path or not is_guessed(project):
            return
        try:
            layer_map = load_layer_map(path, _rule_names())
        except EnclosureError:
            return  # whoever wants it will be told when using it
        known, every = layers_known(project, layer_map), layers_of(project)
        if known and layer_map.rows != project.layers:
            question = say(
                "“{file}” was the last layer map. It says what {known} of the {every} layers of "
                "this drawing are.",
                file=path.name,
                known=len(known),
                every=len(every),
            )
            self.asked.emit(question, {say("Use it"): lambda: self.use(path)})

    def _beside(self) -> Path:
        source = self._document.project.source
        return Path(source).with_suffix(SUFFIX) if source else Path(f"layers{SUFFIX}")


def layers_known(project: Project, layer_map: LayerMap) -> list[str]:
    """Return the layers of a project that a map says something of."""
    return [name for name in layers_of(project) if row_of(layer_map.rows, name)]


def is_guessed(project: Project) -> bool:
    """Whether all that is said of a project's layers is what their names suggest."""
    return bool(project.source) and project.layers == guessed_rows(project)


def used_words(file: str, project: Project, layer_map: LayerMap, by_hand: int) -> str:
    """Return in a few sentences what came of using a map."""
    unknown = [n for n in layers_of(project) if n not in layers_known(project, layer_map)]
    told = say("“{file}” is used.", file=file)
    if unknown:
        told += " " + say_count(
            len(unknown),
            "It says nothing of one layer: {names}.",
            "It says nothing of {count} layers: {names}.",
            names=_listed(unknown),
        )
    if by_hand:
        told += " " + say_count(
            by_hand,
            "One piece stays what it is, because it was given its product by hand.",
            "{count} pieces stay what they are, because they were given their product by hand.",
        )
    return told


def saved_words(file: str, layer_map: LayerMap) -> str:
    """Return in a sentence what a map holds that was saved."""
    rows, own = len(layer_map.rows), _own(layer_map)
    told = say_count(
        rows,
        "“{file}” is saved, with {count} row",
        "“{file}” is saved, with {count} rows",
        file=file,
    )
    if own:
        told += say_count(own, " and one product of your own", " and {count} products of your own")
    return told + ". " + say("It will be offered for the next drawing.")


def _own(layer_map: LayerMap) -> int:
    usual = load_products()
    return sum(usual.get(key) != product for key, product in layer_map.products.items())


def _listed(names: Sequence[str], most: int = 4) -> str:
    shown = ", ".join(names[:most])
    more = len(names) - most
    return say("{names} and {count} more", names=shown, count=more) if more > 0 else shown


def _rule_names() -> list[str]:
    from enclosure_app.rules import RULES  # noqa: PLC0415  after the window is seen

    return [rule.name for rule in RULES]
