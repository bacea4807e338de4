"""At which scale a section is marked, so that marks are as large as what the office wrote beside it."""

from math import log

from enclosure_app.drawing.placement import Box, box_around
from enclosure_app.drawing.scales import Scale, fits, series
from enclosure_app.drawing.section.flags import capacity
from enclosure_app.model.drawing import Units
from enclosure_app.model.report import SectionResult
from enclosure_app.reports.dxf.room import Room

_PAPER = (300.0, 200.0)  # mm: about the room for a drawing on A3
_NOTE = 2.4  # mm: notes on paper; 2.5 by ISO 3098, 3/32" in American offices (common practice)
_LARGER, _SMALLER = 4.0, 32.0  # so many times off what fits on A3, letters are no notes


def scale_of(result: SectionResult, units: Units, room: Room) -> float:
    """Return how many mm of a section are 1 mm on the paper that it is drawn for.

    The office's letters tell; without any it is the largest scale at which the section fits on A3.
    """
    frame = box_around(result.section.frame)
    ratio = _fitting(frame, units)
    letters = room.letters_near(frame)
    if letters and ratio / _SMALLER <= letters / _NOTE <= ratio * _LARGER:
        ratio = _nearest(letters / _NOTE, units)
    while capacity(on_paper(frame, ratio)) < len(result.findings):
        ratio /= 1.2  # smaller flags, so that all find room around the frame
    return ratio


def _fitting(frame: Box, units: Units) -> float:
    size = frame.width, frame.height
    ratio = next((s.ratio for s in series(units) if fits(size, _PAPER, s)), None)
    return ratio or max(size[0] / _PAPER[0], size[1] / _PAPER[1])


def _nearest(ratio: float, units: Units) -> float:
    """Return the standard scale that is nearest by proportion."""

    def off(scale: Scale) -> float:
        return abs(log(scale.ratio / ratio))

    return min(series(units), key=off).ratio


def on_paper(frame: Box, ratio: float) -> Box:
    """Return the box of a frame on paper."""
    return Box(frame.left / ratio, frame.bottom / ratio, frame.right / ratio, frame.top / ratio)
