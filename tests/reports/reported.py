"""What a check says of one drawing with one section, an eave."""

from collections.abc import Iterable

from enclosure_app.model.drawing import Drawing, Note, NoteLevel, Units
from enclosure_app.model.finding import Finding
from enclosure_app.model.report import DrawingResult, LayerResult, Report, SectionResult
from enclosure_app.model.section import Section

FRAME = ((0.0, 0.0), (500.0, 0.0), (500.0, 900.0), (0.0, 900.0))
GUESS = Note(NoteLevel.GUESSED, "Layer MEMB taken for a wall sheet.")


def reported(
    layers: Iterable[LayerResult],
    findings: Iterable[Finding],
    units: Units = Units.IN,
    file: str = "eave.dxf",
    title: str = "",
) -> Report:
    """Return the report on a drawing whose reader guessed what one layer is."""
    section = Section("Eave", FRAME, (), {})
    result = SectionResult(
        section, {each.control: each for each in layers}, findings=tuple(findings)
    )
    drawing = Drawing(file, units, (section,), (GUESS,), title=title)
    return Report((DrawingResult(drawing, (result,)),))
