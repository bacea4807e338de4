"""What the window remembers between days: its layout, its colours, the files that were open."""

from math import isfinite
from pathlib import Path

from PySide6.QtCore import QByteArray, QSettings, QStandardPaths

from enclosure_app.drawing.sheet.setup import SheetSetup
from enclosure_app.window.canvas.catching.aids import Aids

_KEPT = 8
_SHEETS = ("project", "paper", "scale", "revision", "who", "cover")
_COPY_AFTER = 20  # seconds
SOONEST_COPY, LATEST_COPY = 5, 600  # seconds


class Settings:
    """The window's memory, in the place where the system keeps such things."""

    def __init__(self, store: QSettings | None = None) -> None:
        self._store = store or QSettings("enclosure-app", "enclosure-app")

    @property
    def folder(self) -> Path:
        """The folder in which work that was never saved is kept."""
        if self._store.format() is QSettings.Format.IniFormat:
            return Path(self._store.fileName()).parent
        data = QStandardPaths.StandardLocation.AppDataLocation
        return Path(QStandardPaths.writableLocation(data))

    @property
    def recent(self) -> list[str]:
        """The files that were open lately, the last one first; some may be there no more."""
        kept = self._store.value("recent", [])
        paths = kept if isinstance(kept, list) else [kept]  # some stores give one path as a text
        return [path for path in map(str, paths) if path]

    def opened(self, path: Path) -> None:
        """Remember a file that was opened."""
        name = str(path.resolve())
        others = [other for other in self.recent if other != name]
        self._store.setValue("recent", [name, *others][:_KEPT])

    def forget(self, path: Path) -> None:
        """Forget a file that is there no more."""
        self._store.setValue("recent", [other for other in self.recent if other != str(path)])

    @property
    def ground(self) -> str:
        """``day``, ``night`` or ``as_system``."""
        return str(self._store.value("ground", "as_system"))

    @ground.setter
    def ground(self, name: str) -> None:
        self._store.setValue("ground", name)

    @property
    def language(self) -> str:
        """The code of the language that was chosen, "" for that of the system."""
        return str(self._store.value("language", ""))

    @language.setter
    def language(self, code: str) -> None:
        self._store.setValue("language", code)

    @property
    def who(self) -> str:
        """The name that is put beside verdicts, "" while nobody gave one."""
        return str(self._store.value("who", ""))

    @who.setter
    def who(self, name: str) -> None:
        self._store.setValue("who", name.strip())

    @property
    def motion(self) -> str:
        """Whether drops run: ``on``, ``off`` or ``as_system``."""
        return str(self._store.value("motion", "as_system"))

    @motion.setter
    def motion(self, name: str) -> None:
        self._store.setValue("motion", name)

    @property
    def copy_after(self) -> int:
        """Seconds from the first change that is not saved to a copy of it."""
        kept = str(self._store.value("copy_after", _COPY_AFTER))
        seconds = int(kept) if kept.isdecimal() else _COPY_AFTER
        return min(max(seconds, SOONEST_COPY), LATEST_COPY)

    @copy_after.setter
    def copy_after(self, seconds: int) -> None:
        self._store.setValue("copy_after", seconds)

    @property
    def lately(self) -> list[str]:
        """The keys of the products that were given last, the last one first."""
        kept = self._store.value("lately", []) or []
        return list(map(str, kept if isinstance(kept, list) else [kept]))

    @lately.setter
    def lately(self, keys: list[str]) -> None:
        self._store.setValue("lately", keys)

    @property
    def layer_map(self) -> Path | None:
        """The layer map that was used or saved last, where it is still there."""
        kept = str(self._store.value("layer_map", ""))
        return Path(kept) if kept and Path(kept).is_file() else None

    @layer_map.setter
    def layer_map(self, path: Path) -> None:
        self._store.setValue("layer_map", str(path.resolve()))

    def sheets(self, project: str) -> SheetSetup:
        """Return how sheets were set up last; revision and scale where it was this project's.

        Whoever issues them is whoever gives verdicts here, unless another name was set up.
        """
        kept = {name: str(self._store.value(f"sheets/{name}", "")) for name in _SHEETS}
        own = kept if kept["project"] == project else dict.fromkeys(_SHEETS, "")
        cover = {"always": True, "never": False}.get(own["cover"])
        return SheetSetup(
            kept["paper"], own["scale"], own["revision"], kept["who"] or self.who, cover
        )

    def keep_sheets(self, project: str, setup: SheetSetup) -> None:
        """Keep how the sheets of a project were set up."""
        cover = "" if setup.cover is None else "always" if setup.cover else "never"
        who = "" if setup.who == self.who else setup.who
        kept = (project, setup.paper, setup.scale, setup.revision, who, cover)
        for name, value in zip(_SHEETS, kept, strict=True):
            self._store.setValue(f"sheets/{name}", value)

    @property
    def aids(self) -> Aids:
        """What helps a hand to draw, as it was left; each sheet is laid anew by whoever traces."""
        usual = Aids()
        return Aids(
            beside=self._number("beside", usual.beside),
            grid=self._number("grid", usual.grid),
            grid_shown=self._switch("grid_shown"),
            step=self._number("step", usual.step),
            kept=self._switch("kept"),
            bead=self._number("bead", usual.bead),
        )

    @aids.setter
    def aids(self, aids: Aids) -> None:
        for name in ("beside", "grid", "grid_shown", "step", "kept", "bead"):
            self._store.setValue(f"aids/{name}", getattr(aids, name))

    def _number(self, name: str, usual: float) -> float:
        """Return what was kept, which some stores give as a text; the usual where it is no number."""
        try:
            kept = float(str(self._store.value(f"aids/{name}", usual)))
        except ValueError:
            return usual
        return kept if isfinite(kept) and kept >= 0 else usual

    def _switch(self, name: str) -> bool:
        return str(self._store.value(f"aids/{name}", False)).lower() == "true"

    def layout(self) -> tuple[QByteArray, QByteArray] | None:
        """Return the kept geometry and layout of the window, None the first time."""
        kept = self._store.value("geometry"), self._store.value("layout")
        sound = all(isinstance(part, QByteArray) for part in kept)
        return (kept[0], kept[1]) if sound else None

    def keep_layout(self, geometry: QByteArray, layout: QByteArray) -> None:
        """Keep geometry and layout of the window."""
        self._store.setValue("geometry", geometry)
        self._store.setValue("layout", layout)
