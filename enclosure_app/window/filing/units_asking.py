"""Asks which units a drawing is in, once and in place, and shows what each answer would mean."""

from collections.abc import Callable, Iterator, Mapping, Sequence
from functools import partial
from pathlib import Path

from PySide6.QtCore import QObject, Signal

from enclosure_app.drawing.lengths import format_length
from enclosure_app.files.units.evidence import Evidence
from enclosure_app.files.units.judging import UnitsError, likely_units
from enclosure_app.files.units.written import called
from enclosure_app.language import say
from enclosure_app.model.drawing import Units
from enclosure_app.model.edits.rescaling import correct_units
from enclosure_app.model.place import Point
from enclosure_app.model.project import Project
from enclosure_app.window.document import Document

Open = Callable[[Path, Units], object]

_SHORT = 1000.0  # mm: shorter is told in mm, longer in metres


class UnitsAsking(QObject):
    """Asks about the units of a drawing that is to be opened, or that is open.

    `asked`: a question, and the answers with what each does.
    """

    asked = Signal(str, object)

    def __init__(self, document: Document, open_in: Open) -> None:
        super().__init__(document)
        self._document = document
        self._open_in = open_in

    def ask(self, file: str, why: object) -> None:
        """Ask about a drawing that does not say its units, or says what it does not show.

        Args:
            file: The drawing's path.
            why: What the reader said: an `EnclosureError`, or its words.
        """
        path = Path(file)
        evidence = why.evidence if isinstance(why, UnitsError) else Evidence(file)
        words = str(why).replace(file, path.name).partition("--units")[0].rpartition(":")[0]
        question = say("Which units is {file} drawn in?", file=path.name)
        if words:
            question = say("{what_the_file_says}. It is drawn in:", what_the_file_says=words)
        does = {unit: partial(self._open_in, path, unit) for unit in Units}
        self.asked.emit(question, answers(evidence, does))

    def ask_again(self) -> None:
        """Ask what the units of the open drawing should have been."""
        project = self._document.project
        if not project.sections:
            return
        evidence = evidence_of(project)
        question = say(
            "The drawing is read in {units}. It is really drawn in:", units=called(project.units)
        )
        others = {
            unit: partial(self._correct, unit) for unit in Units if unit is not project.units
        }
        self.asked.emit(question, answers(evidence, others))

    def _correct(self, units: Units) -> None:
        after = correct_units(self._document.project, units)
        self._document.apply(say("Read the drawing in {units}", units=called(units)), after)


def answers(
    evidence: Evidence, does: Mapping[Units, Callable[[], object]]
) -> dict[str, Callable[[], object]]:
    """Return the answers, the likeliest first: each names a unit and how large things would be."""
    ranked = [unit for unit in likely_units(evidence) if unit in does]
    return {answer_words(evidence, unit): does[unit] for unit in ranked}


def answer_words(evidence: Evidence, unit: Units) -> str:
    """Return one answer: ``inches: 8' 0" high``."""
    if evidence.high > 0:
        size = size_words(evidence.high * unit.in_mm, imperial=unit.imperial)
        return say("{units}: {size} high", units=called(unit), size=size)
    if evidence.extent > 0:
        size = size_words(evidence.extent * unit.in_mm, imperial=unit.imperial)
        return say("{units}: {size} wide", units=called(unit), size=size)
    return called(unit)


def size_words(mm: float, *, imperial: bool) -> str:
    """Return a size to compare at a glance: ``2.4 m``, ``94 mm``, ``8' 0"``."""
    if imperial:
        inch = 25.4
        return format_length(round(mm / inch) * inch if mm > 12 * inch else mm, Units.IN)
    if mm < _SHORT:
        return format_length(mm, Units.MM)
    return f"{mm / 1000:,.3g} m" if mm < 1e6 else f"{mm / 1e6:,.3g} km"


def evidence_of(project: Project) -> Evidence:
    """Return how large an open project's drawing is, in its own units."""
    points = [*_points(project)]
    if not points:
        return Evidence(project.source)
    xs, ys = zip(*points, strict=True)
    wide, high = (max(xs) - min(xs)), (max(ys) - min(ys))
    unit = project.units.in_mm
    return Evidence(project.source, extent=max(wide, high) / unit, high=high / unit)


def _points(project: Project) -> Iterator[Point]:
    """Yield the corners of the highest drawn frame, or of what stands for the whole drawing."""
    sections = project.sections
    if any(section.frame_drawn for section in sections):
        sections = (max(sections, key=lambda section: _high(section.frame)),)
    for section in sections:
        yield from section.frame


def _high(ring: Sequence[Point]) -> float:
    return max(y for _, y in ring) - min(y for _, y in ring)
