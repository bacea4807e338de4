"""Writes figures of the rule book as builders read them, and reads them back as they are typed.

A length is in the units shown, a slope is a rise to a run (``3:12``, ``1:48``), a per cent or an
angle, a setting is yes or no. What is written reads back as the same figure.
"""

import re
from math import atan, degrees, isclose, radians, tan

from PySide6.QtCore import QCoreApplication

from enclosure_app.drawing.lengths import format_length
from enclosure_app.errors import EnclosureError
from enclosure_app.language import written
from enclosure_app.model.drawing import Units
from enclosure_app.model.limits import Limit
from enclosure_app.window.typed.typed_length import read_length

_RATIO = re.compile(r"(\d+(?:[.,]\d+)?)\s*[:/]\s*(\d+(?:[.,]\d+)?)")
_PLAIN = re.compile(r"(\d+(?:[.,]\d+)?)\s*(%|°|deg)?", re.IGNORECASE)
_RUN = 12.0  # the run that roofs are told by where feet and inches are used
_STEEPEST = 89.0  # degrees
_SAME = 1e-4


def written_figure(value: float, unit: str, units: Units) -> str:
    """Return a figure (mm, a slope as rise over run, or 1 and 0) as it is read and typed."""
    if unit == "setting":
        return say("yes") if value else say("no")
    return _written_slope(value, units) if unit == "slope" else _written_length(value, units)


def read_figure(text: str, limit: Limit, units: Units) -> float:
    """Return a typed figure of the kind of `limit`: mm, rise over run, or 1 and 0.

    Raises:
        EnclosureError: it is none.
    """
    plain = text.strip()
    if limit.unit == "setting":
        return _read_choice(plain)
    return _read_slope(plain) if limit.unit == "slope" else read_length(plain, units)


def _written_length(mm: float, units: Units) -> str:
    """Return a length without rounding what was typed: 50.8 mm stays 50.8 mm."""
    if units.imperial:
        sixteenths = mm / 25.4 * 16
        if isclose(sixteenths, round(sixteenths), abs_tol=_SAME):
            return format_length(mm, units)
        return written(f"{mm:.6g} mm")
    return written(f"{mm / units.in_mm:.6g} {units.value}")


def _written_slope(slope: float, units: Units) -> str:
    rise = slope * _RUN
    quarters = rise * 4
    if units.imperial and isclose(quarters, round(quarters), abs_tol=_SAME):
        return written(f"{rise:.6g}:12")
    if slope and isclose(1 / slope, round(1 / slope), abs_tol=_SAME):
        return f"1:{1 / slope:.0f}"
    return written(f"{degrees(atan(slope)):.8g}°")


def _read_slope(text: str) -> float:
    if ratio := _RATIO.fullmatch(text):
        run = _number(ratio[2])
        if run:
            return _number(ratio[1]) / run
    if plain := _PLAIN.fullmatch(text):
        value = _number(plain[1])
        if plain[2] == "%":
            return value / 100
        if value <= _STEEPEST:
            return tan(radians(value))
    raise EnclosureError(say("“{}” is no slope: type it as in 3:12, 2 % or 18.5°.").format(text))


def _read_choice(text: str) -> float:
    answers = {"1": 1.0, "0": 0.0, "yes": 1.0, "no": 0.0, say("yes"): 1.0, say("no"): 0.0}
    if text.casefold() in answers:
        return answers[text.casefold()]
    raise EnclosureError(say("“{}” is neither yes nor no: type one of them.").format(text))


def _number(text: str) -> float:
    return float(text.replace(",", "."))


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("TypedFigure", text)
