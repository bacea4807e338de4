"""Puts pictures and PDF pages under the drawing: read off the window's thread, asked of in place."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QFileDialog, QWidget

from enclosure_app.errors import EnclosureError
from enclosure_app.files.dxf.memory import kept_in_use
from enclosure_app.files.projects import new_project
from enclosure_app.files.underlay.reading import (
    SUFFIXES,
    ReadUnderlay,
    UnderlayFile,
    read_underlay,
    read_underlay_file,
)
from enclosure_app.model.drawing import Units
from enclosure_app.model.edits import add_underlay
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section
from enclosure_app.model.underlay import Underlay
from enclosure_app.progress import Progress
from enclosure_app.window.apart.working import Job, Lane, Working
from enclosure_app.window.canvas.underlay.page_moving import lines_ready
from enclosure_app.window.canvas.workplace import Workplace
from enclosure_app.window.surround.next_step import Step, say
from enclosure_app.window.underlay.underlay_pages import PageChooser

_NEAR = 0.02  # inches by which a page may differ from a size in whole or half inches
_INCH_PAGES = frozenset(
    # ANSI/ASME Y14.1 A to E, and the architects' sizes A to E
    {(8.5, 11.0), (11.0, 17.0), (17.0, 22.0), (22.0, 34.0), (34.0, 44.0)}
    | {(9.0, 12.0), (12.0, 18.0), (18.0, 24.0), (24.0, 36.0), (36.0, 48.0), (30.0, 42.0)}
)


@dataclass(frozen=True, slots=True)
class _Laid:
    """What was read, and the project with it: made of `base`, or of one that was `begun` for it."""

    read: ReadUnderlay
    base: Project
    begun: Project | None
    after: Project


class Underlaying(QObject):
    """Brings files under the drawing.

    `began`: a new project was begun with one; `said`: a sentence; `put`: one is under the drawing.
    """

    began = Signal()
    said = Signal(str)
    put = Signal()

    def __init__(
        self, place: Workplace, chooser: PageChooser, working: Working, window: QWidget
    ) -> None:
        super().__init__(window)
        self._place, self._chooser = place, chooser
        self._working, self._window = working, window
        self._left: list[Path] = []
        chooser.chosen.connect(self._read_page)

    def ask_what_to_put(self) -> None:
        """Ask for a file, and put it under the drawing."""
        endings = " ".join(f"*{suffix} *{suffix.upper()}" for suffix in SUFFIXES)
        kinds = self.tr("Pictures and PDF files") + f" ({endings})"
        title = self.tr("Put a picture or PDF page under the drawing")
        name, _ = QFileDialog.getOpenFileName(self._window, title, "", kinds)
        if name:
            self.open([Path(name)])

    def open(self, paths: Sequence[Path]) -> None:
        """Read files one after the other; one of several pages is asked about."""
        self._chooser.give_up()
        self._left = list(paths)
        self._next()

    def _next(self) -> None:
        if self._left:
            path = self._left.pop(0)
            self._begin(path.name, lambda _: read_underlay_file(path), self._take_file)

    def _begin(
        self, name: str, work: Callable[[Progress], object], then: Callable[[Any], object]
    ) -> None:
        told = self.tr("Reading {}").format(name)
        self._working.begin(Job(Lane.READING, told, work, then=then, refused=self._refuse))

    def _take_file(self, file: UnderlayFile) -> None:
        if len(file.pages) > 1:
            self._chooser.ask(file)
        else:
            self._read_page(file, 0)

    def _read_page(self, file: UnderlayFile, page: int) -> None:
        base, section = self._place.document.project, self._place.section

        def read(progress: Progress) -> _Laid:
            with kept_in_use():
                found = read_underlay(file, page, progress.tell)
                return _laid(base, section, found)

        self._begin(file.name, read, self._take_page)

    def _take_page(self, laid: _Laid) -> None:
        document, read = self._place.document, laid.read
        if document.project is not laid.base:  # something was changed meanwhile
            base, section = document.project, self._place.section
            self._begin(read.underlay.name, lambda _: _laid(base, section, read), self._take_page)
            return
        if laid.begun:
            document.open(laid.begun)
            self.began.emit()
        text = self.tr("Put {} under the drawing").format(read.underlay.name)
        document.apply(text, laid.after)
        self._place.resized.emit()
        if read.notes:
            self.said.emit(" ".join(read.notes))
        self.put.emit()
        self._next()

    def _refuse(self, error: EnclosureError) -> None:
        self.said.emit(str(error))
        self._next()


def _laid(base: Project, section: Section | None, read: ReadUnderlay) -> _Laid:
    """Lay what was read under a section, or under one that is begun for it; takes its time."""
    begun = None
    if section is None:
        units = paper_units(read.underlay, base.units)
        begun = new_project(units, Path(read.underlay.name).stem)
        section = begun.sections[0]
    under = beside_what_is_drawn(replace(read.underlay, section=section.name), section)
    after = lines_ready(lambda: add_underlay(begun or base, under, read.lines))
    return _Laid(read, base, begun, after)


def beside_what_is_drawn(underlay: Underlay, section: Section) -> Underlay:
    """Return an underlay with its lower left corner in that of the section's frame."""
    if not section.frame:
        return underlay
    xs, ys = zip(*section.frame, strict=True)
    return replace(underlay, at=(min(xs), min(ys)))


def paper_units(underlay: Underlay, usual: Units) -> Units:
    """Return inches for a page of a size that is used where drawings are in feet and inches."""
    if not underlay.paper_mm:
        return usual
    short, long = sorted(side * underlay.paper_mm / 25.4 for side in underlay.size)
    near = any(abs(short - a) <= _NEAR and abs(long - b) <= _NEAR for a, b in _INCH_PAGES)
    return Units.IN if near else usual


def scale_step(project: Project, section: Section) -> Step | None:
    """Return the step to bring a picture to scale, while nothing is drawn over one that is not."""
    under = [each for each in project.underlays if each.section in (section.name, "")]
    waits = any(each.shown and not each.to_scale and not each.locked for each in under)
    if section.pieces or not waits:
        return None
    return Step(
        say(
            "The picture is not to scale. Click two places on it and type how far apart they are."
        ),
        "tool_scale",
        say("Set the scale"),
    )
