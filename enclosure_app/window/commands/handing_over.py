"""Handing over what was found: marks in the office's own drawing, tables, a file for a coordinator.

What is drawn now is checked before, where that is not done yet.
"""

from collections.abc import Callable, Sequence
from pathlib import Path, PureWindowsPath
from typing import TYPE_CHECKING, TypeVar

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QFileDialog

from enclosure_app.model.project import drawing_of
from enclosure_app.model.report import DrawingResult
from enclosure_app.progress import Progress, listening
from enclosure_app.reports.dxf.source import drawing_of_project, marked_names
from enclosure_app.window.apart.working import Job, Lane
from enclosure_app.window.commands.fittings import Fittings

if TYPE_CHECKING:
    from enclosure_app.window.filing.handing import Open

_Made = TypeVar("_Made")


class HandOverCommands(QObject):
    """Writing what others take in."""

    def __init__(self, fittings: Fittings) -> None:
        super().__init__(fittings.window)
        self._fittings = fittings

    def mark_drawing(self) -> None:
        """Ask for what to write, and mark the drawings that the project was read from."""
        self._fittings.checking.once_current(self._mark_drawing)

    def _mark_drawing(self) -> None:
        sources = self._sources()
        if len(sources) == 1:
            self._mark_one(sources[0])
        elif sources:
            title = self.tr("Folder for the drawings with what was found marked in them")
            begin = str(sources[0].parent)
            name = QFileDialog.getExistingDirectory(self._fittings.window, title, begin)
            if name:
                self.mark_to(marked_names(sources, Path(name)), sources)

    def _mark_one(self, source: Path) -> None:
        proposed = str(*marked_names([source], source.parent))
        title = self.tr("Write the drawing with what was found marked in it")
        path = self._asked(title, proposed, (".dxf",), "DXF (*.dxf)")
        if path:
            self.mark_to([path], [source])

    def mark_to(self, paths: Sequence[Path], sources: Sequence[Path]) -> None:
        """Write the drawings of the project again with what was found marked in them."""
        from enclosure_app.window.filing import handing  # noqa: PLC0415  after the window is seen

        def tell(left_out: Sequence[str]) -> None:
            told = self._marked(paths)
            if left_out:
                names = ", ".join(left_out)
                told += " " + self.tr("Not drawn in it, so left out: {}.").format(names)
            self._fittings.messages.say(told)

        self._issue(paths[0], lambda opened: handing.mark(paths, sources, opened), tell)

    def _marked(self, paths: Sequence[Path]) -> str:
        if len(paths) == 1:
            return self.tr("The marked drawing is written: {}").format(paths[0])
        names = ", ".join(path.name for path in paths)
        told = self.tr("The marked drawings are written to {}: {}.")
        return told.format(paths[0].parent, names)

    def write_table(self) -> None:
        """Ask where, and write the findings and the site list as a table."""
        title = self.tr("Write the findings as a table")
        workbook = self.tr("Workbook with the site list") + " (*.xlsx)"
        kinds = f"{workbook};;{self.tr('The findings alone')} (*.csv)"
        path = self._asked(title, self._stem(".xlsx"), (".xlsx", ".csv"), kinds)
        if path:
            self.write_table_to(path)

    def write_table_to(self, path: Path) -> None:
        """Write the findings and the site list as a table, with photographs in a folder beside it."""
        from enclosure_app.window.filing import handing  # noqa: PLC0415  after the window is seen

        def tell(folder: Path | None) -> None:
            told = self.tr("The table is written: {}").format(path)
            if folder:
                told += " " + self.tr("Its photographs are in {}.").format(folder.name)
            self._fittings.messages.say(told)

        self._issue(path, lambda opened: handing.tabulate(path, opened), tell)

    def write_bcf(self) -> None:
        """Ask where, and write the findings for a coordinator's program."""
        title = self.tr("Write the findings for a coordinator")
        path = self._asked(title, self._stem(".bcf"), (".bcf", ".bcfzip"), "BCF 2.1 (*.bcf)")
        if path:
            self.write_bcf_to(path)

    def write_bcf_to(self, path: Path) -> None:
        """Write the findings as BCF."""
        from enclosure_app.window.filing import handing  # noqa: PLC0415  after the window is seen

        told = self.tr("The findings are written: {}").format(path)
        self._issue(
            path,
            lambda opened: handing.exchange(path, opened),
            lambda _: self._fittings.messages.say(told),
        )

    def _opened(self) -> "Open":
        """Return what is open as it is now."""
        from enclosure_app.window.filing.handing import Open  # noqa: PLC0415  after the window is seen

        fittings = self._fittings
        return Open(fittings.document.project, tuple(fittings.checking.results))

    def _sources(self) -> list[Path]:
        """Return the drawings to be marked; one that is not where it was is asked for.

        There are none where the person did not say where one is.
        """
        sources: list[Path] = []
        for name in self._drawings():
            source = drawing_of_project(name, self._fittings.filing.source) or self._ask_for(name)
            if source is None:
                return []
            sources.append(source)
        return sources

    def _drawings(self) -> list[str]:
        """Return the drawings of the project as they were named, "" where there is none."""
        from enclosure_app.reports.handed_over import by_drawing  # noqa: PLC0415  as above

        drawing = drawing_of(self._fittings.document.project)
        found = tuple(each for each in self._fittings.checking.results if each.section.pieces)
        return [each.drawing.file for each in by_drawing(DrawingResult(drawing, found))]

    def _ask_for(self, name: str) -> Path | None:
        title = self.tr("Which drawing is to be marked?")
        if name:
            title = self.tr("Where is {}, which is to be marked?").format(
                PureWindowsPath(name).name
            )
        kinds = self.tr("Drawings") + " (*.dxf *.DXF)"
        chosen, _ = QFileDialog.getOpenFileName(self._fittings.window, title, "", kinds)
        return Path(chosen) if chosen else None

    def _stem(self, ending: str) -> str:
        """Return the name that is proposed: the drawing's, beside it."""
        project = self._fittings.document.project
        path = Path(project.source or project.title or "section").with_suffix(ending)
        return str(path) if path.parent.is_dir() else path.name

    def _asked(
        self, title: str, proposed: str, endings: tuple[str, ...], kinds: str
    ) -> Path | None:
        """Ask where to write, and see to it that the name ends as it should."""
        window = self._fittings.window
        name, kind = QFileDialog.getSaveFileName(window, title, proposed, kinds)
        if not name:
            return None
        path = Path(name)
        if path.suffix.casefold() in endings:
            return path
        meant = next((each for each in endings if f"*{each}" in kind), endings[0])
        return path.with_name(path.name + meant)

    def _issue(
        self, path: Path, work: Callable[["Open"], _Made], then: Callable[[_Made], object]
    ) -> None:
        """Write what is open, once it is checked, while the window goes on."""
        self._fittings.checking.once_current(lambda: self._begin(path, work, then))

    def _begin(
        self, path: Path, work: Callable[["Open"], _Made], then: Callable[[_Made], object]
    ) -> None:
        """Begin to write; what stands in the way is said."""
        messages, opened = self._fittings.messages, self._opened()
        messages.hide()

        def heard(progress: Progress) -> _Made:
            with listening(progress.tell):
                return work(opened)

        words = self.tr("Writing {}").format(path.name)
        self._fittings.working.begin(
            Job(Lane.ISSUING, words, heard, then, refused=lambda error: messages.say(str(error)))
        )
