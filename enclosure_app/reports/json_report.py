"""The report as JSON, for other programs; the contract is ``resources/report.schema.json``.

Lengths and coordinates are millimetres in the drawing's own coordinates. A number that does not
exist (a rule that measures nothing, a layer that is absent) is null, never NaN and never a
made-up zero. The same report always gives the same text.
"""

import json
from math import isfinite
from pathlib import Path
from typing import Any

from enclosure_app import __version__
from enclosure_app.errors import EnclosureError
from enclosure_app.files.atomic import write_atomically
from enclosure_app.model.drawing import Note
from enclosure_app.model.finding import Finding
from enclosure_app.model.place import Point
from enclosure_app.model.product import Control
from enclosure_app.model.report import DrawingResult, LayerResult, Report, SectionResult

SCHEMA = 1
_DECIMALS = 6  # a millionth of a millimetre: hides the noise of binary fractions, nothing else


def to_json(report: Report) -> dict[str, Any]:
    """Return the report as plain dictionaries, lists, strings and numbers."""
    return {
        "schema": SCHEMA,
        "program": f"enclosure-app {__version__}",
        "drawings": [_drawing(drawing) for drawing in report.drawings],
        "findings": [
            _finding(finding, drawing, section)
            for drawing in report.drawings
            for section in drawing.sections
            for finding in section.findings
        ],
    }


def json_text(report: Report) -> str:
    """Return the report as JSON text in plain ASCII, which every stream can take."""
    return json.dumps(to_json(report), indent=2, allow_nan=False) + "\n"


def write_json(path: Path, text: str) -> None:
    """Write a report's text to `path`, whole or not at all where that is a file.

    Raises:
        EnclosureError: `path` cannot be written.
    """
    if path.is_file() or not path.exists():
        write_atomically(path, text.encode("utf-8"))
        return
    try:
        path.write_text(text, encoding="utf-8")  # a pipe or a device cannot be replaced
    except OSError as error:
        reason = error.strerror or str(error)
        raise EnclosureError(
            f"{path}: the JSON report cannot be written there ({reason}); name a file."
        ) from error


def _drawing(result: DrawingResult) -> dict[str, Any]:
    return {
        "file": _text(result.drawing.file),
        "units": result.drawing.units.value,
        "notes": [_note(note) for note in result.drawing.notes],
        "sections": [_section(section) for section in result.sections],
    }


def _note(note: Note) -> dict[str, str]:
    return {"level": note.level.value, "text": _text(note.text)}


def _section(result: SectionResult) -> dict[str, Any]:
    return {
        "name": _text(result.section.name),
        "controls": {
            control.value: _layer(result.layers[control])
            for control in Control
            if control in result.layers
        },
    }


def _layer(layer: LayerResult) -> dict[str, Any]:
    widths = [lift.width for lift in layer.lifts]
    walked = bool(layer.walk)  # without a trace there is nothing to count, and 0 would be a lie
    return {
        "verdict": layer.continuity.value,
        "lifts": len(widths) if walked else None,
        "total_lift_mm": _number(sum(widths)) if walked else None,
        "largest_lift_mm": _number(max(widths, default=0.0)) if walked else None,
        "bottleneck_mm": _number(layer.bottleneck),
        "opening_mm": _number(layer.opening),
        "trace": [_text(name) for name in layer.pieces],
    }


def _finding(finding: Finding, drawing: DrawingResult, section: SectionResult) -> dict[str, Any]:
    return {
        "key": _text(finding.key),
        "rule": finding.rule,
        "control": finding.control.value if finding.control else None,
        "severity": finding.severity.value,
        "drawing": _text(drawing.drawing.file),
        "section": _text(section.section.name),
        "at": _point(finding.at),
        "pieces": [_text(name) for name in finding.pieces],
        "measured_mm": _number(finding.measured),
        "required_mm": _number(finding.required),
        "message": _text(finding.message),
        "advice": _text(finding.advice),
        "basis": _text(finding.basis),
    }


def _point(point: Point) -> list[float]:
    return [_rounded(point[0]), _rounded(point[1])]


def _number(value: float | None) -> float | None:
    return None if value is None or not isfinite(value) else _rounded(value)


def _rounded(value: float) -> float:
    return round(float(value), _DECIMALS) + 0.0  # adding zero turns -0.0 into 0.0


def _text(text: str) -> str:
    """Return `text` without lone surrogates, which damaged layer names hold and JSON may not."""
    return text.encode("utf-16", "surrogatepass").decode("utf-16", "replace")
