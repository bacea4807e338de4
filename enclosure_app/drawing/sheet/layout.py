"""How the paper is divided: the drawing has it, text has one column, the ribbons run along the foot."""

from dataclasses import dataclass

from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.ribbon.band import HEIGHT as RIBBON
from enclosure_app.drawing.section.flags import LANE
from enclosure_app.drawing.sheet.job import border

_RULE = 3.0  # from the rule between drawing and column to the column
_GUTTER = 4.0  # between the edges of the drawing's side and what stands there
_HEADING = 9.0  # the section's name above the drawing
_FOOT = 8.0  # the scale bar below it


@dataclass(frozen=True, slots=True)
class Areas:
    """How the paper is divided: everything stays in its own box."""

    border: Box
    drawing: Box  # the drawing itself, inside its margin lanes
    heading: Box
    foot: Box
    ribbons: tuple[Box, ...]
    column: Box


def areas(size: tuple[float, float], ribbons: int) -> Areas:
    """Divide a paper of `size` mm: drawing with lanes, column on the right, ribbons along the foot."""
    frame = border(size)
    column = Box(frame.right - column_width(frame), frame.bottom, frame.right, frame.top).inset(
        _RULE
    )
    right = column.left - _RULE - _GUTTER
    left = frame.left + _GUTTER
    strips = tuple(
        Box(left, frame.bottom + 3.0 + k * RIBBON, right, frame.bottom + 3.0 + (k + 1) * RIBBON)
        for k in reversed(range(ribbons))
    )
    bottom = frame.bottom + 3.0 + ribbons * RIBBON
    foot = Box(left, bottom + 1.0, right, bottom + 1.0 + _FOOT)
    heading = Box(left, frame.top - 2.0 - _HEADING, right, frame.top - 2.0)
    drawing = Box(frame.left, foot.top, column.left - _RULE, heading.bottom).inset(LANE)
    return Areas(frame, drawing, heading, foot, strips, column)


def column_width(frame: Box) -> float:
    """Return the breadth of the column on the right: what 70 letters need, less on small paper."""
    return min(max(frame.width * 0.26, 84.0), 112.0)
