"""Sizes as a form asks for them: written in the drawing's units, read again, and held to a range."""

from dataclasses import dataclass
from math import atan, degrees

from enclosure_app.drawing.lengths import format_length
from enclosure_app.errors import EnclosureError
from enclosure_app.language import say, written
from enclosure_app.model.drawing import Units
from enclosure_app.window.typed.typed_length import read_angle, read_length, read_pitch


@dataclass(frozen=True, slots=True)
class Asked:
    """One size that is asked for; `unit` is ``"mm"``, ``"slope"`` (rise over run) or ``"degrees"``."""

    name: str
    words: str
    value: float
    low: float
    high: float
    unit: str = "mm"


def written_size(asked: Asked, value: float, units: Units) -> str:
    """Return a size as it stands in the form: ``150 mm``, ``5 7/8"``, ``26.6°``, ``6 in 12``."""
    if asked.unit == "mm":
        return format_length(value, units)
    if asked.unit == "degrees":
        return written(f"{value:g}°")
    in_words = f"{value * 12:.4g} in 12" if units.imperial else f"{degrees(atan(value)):.1f}°"
    return written(in_words)


def read_size(asked: Asked, text: str, units: Units) -> float:
    """Return a size that was typed; one that was not changed is the very same.

    A bare number is in the drawing's units, but inches where they are feet: sizes are written so.

    Raises:
        EnclosureError: it cannot be read, or lies outside its range.
    """
    if text.strip() == written_size(asked, asked.value, units):
        return asked.value
    if asked.unit == "mm":
        value = read_length(text, Units.IN if units is Units.FT else units)
    else:
        value = read_pitch(text) if asked.unit == "slope" else read_angle(text)
    if not asked.low <= value <= asked.high:
        raise EnclosureError(
            say(
                "{what} is {value}: choose between {low} and {high}.",
                what=asked.words,
                value=written_size(asked, value, units),
                low=written_size(asked, asked.low, units),
                high=written_size(asked, asked.high, units),
            )
        )
    return value


def range_words(asked: Asked, units: Units) -> str:
    """Return the range of a size in words."""
    return say(
        "Between {low} and {high}",
        low=written_size(asked, asked.low, units),
        high=written_size(asked, asked.high, units),
    )
