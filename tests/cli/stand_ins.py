"""Small ones that stand in for the reader, the checker and the writers of the command line.

They tell faults by the file's name, so that every way through a command can be walked;
test_bad_input.py walks the real road.
"""

import sys
from dataclasses import dataclass, field
from pathlib import Path
from types import ModuleType
from typing import Any

import pytest

from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.errors import EnclosureError, ListedError
from enclosure_app.model.drawing import Drawing, Units
from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.limits import Limits
from enclosure_app.model.product import Control
from enclosure_app.model.report import Continuity, DrawingResult, LayerResult, SectionResult
from enclosure_app.model.section import Section

FRAME = ((0.0, 0.0), (500.0, 0.0), (500.0, 900.0), (0.0, 900.0))


@dataclass(frozen=True)
class Options:
    """What the command line may ask of the reader."""

    layer_map: Any = None
    units: Units | None = None
    inside: tuple[tuple[float, float], ...] = ()
    outside: tuple[tuple[float, float], ...] = ()
    all_layers: bool = False
    layout: str = "Model"
    plan: bool = False
    linework: bool = False


@dataclass
class Road:
    """What the stand-ins were asked for."""

    options: list[Options] = field(default_factory=list)
    limits: list[Limits] = field(default_factory=list)
    jobs: list[SheetJob] = field(default_factory=list)


def section_result(severity: Severity) -> SectionResult:
    gap = Finding(
        "gap:1.end", "gap", Control.AIR, severity, (10, 20), ("1",), "Sheet stops.", "Carry it on."
    )
    layers = {Control.AIR: LayerResult(Control.AIR, Continuity.BROKEN)}
    return SectionResult(Section("Eave", FRAME, (), {}), layers, findings=(gap,))


FAILURES = {
    "broken": EnclosureError("broken.dxf is not a DXF drawing; export it again."),
    "nameless": EnclosureError("The file is empty; export it again."),
    "listed": ListedError(("listed.dxf: the first.", "listed.dxf: the second.")),
    "bug": KeyError("2F"),
    "stop": KeyboardInterrupt(),
    "far": TimeoutError(110, "Connection timed out"),
}


@pytest.fixture
def road(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> Road:
    """Stand in for the reader, the checker and the PDF, in an empty folder, without a screen."""
    seen = Road()

    def read_drawing(path: Path, options: Options) -> Drawing:
        seen.options.append(options)
        if path.stem in FAILURES:
            raise FAILURES[path.stem]
        drawn_in = Units.IN if "inches" in path.stem else Units.MM
        return Drawing(str(path), options.units or drawn_in, ())

    def check_drawing(drawing: Drawing, limits: Limits) -> DrawingResult:
        seen.limits.append(limits)
        severity = Severity.FAULT if "fault" in drawing.file else Severity.DOUBT
        return DrawingResult(drawing, (section_result(severity),))

    def write_sheets(path: Path, results: tuple[DrawingResult, ...], job: SheetJob) -> None:
        seen.jobs.append(job)
        path.write_text(f"a sheet of {results[0].drawing.file}", encoding="utf-8")

    stand_in(monkeypatch, "files.reading", read_drawing=read_drawing, ReadOptions=Options)
    stand_in(monkeypatch, "checker", check_drawing=check_drawing)
    stand_in(monkeypatch, "reports.pdf.report", write_sheets=write_sheets)
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(name, raising=False)  # there is no screen to open a window on
    monkeypatch.chdir(tmp_path)
    return seen


def stand_in(monkeypatch: pytest.MonkeyPatch, name: str, **names: object) -> None:
    module = ModuleType(f"enclosure_app.{name}")
    vars(module).update(names)
    monkeypatch.setitem(sys.modules, module.__name__, module)
