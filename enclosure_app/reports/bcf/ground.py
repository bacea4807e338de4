"""What is drawn of a section around several places, made once for the pictures of all of them."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from math import inf

import numpy as np
from numpy.typing import NDArray

from enclosure_app.drawing.marks import Fill, Label, Mark, Stroke
from enclosure_app.drawing.placement import Box, box_around
from enclosure_app.drawing.section.details import trimmed, window_of
from enclosure_app.drawing.section.laps import shown_sheets
from enclosure_app.drawing.section.section_marks import View, glyph_marks, section_marks
from enclosure_app.drawing.section.sides import Sides, sides_of
from enclosure_app.drawing.typeface import text_width
from enclosure_app.model.finding import Finding
from enclosure_app.model.place import Points
from enclosure_app.model.report import SectionResult

_SPREAD = 4.0  # boxes are taken together while the box around them is so many times as large


def together(boxes: Sequence[Box]) -> Iterator[Sequence[int]]:
    """Yield the numbers of boxes that are worth being drawn at once, in their order.

    Those lie near to each other: what is drawn between them would be drawn for nothing.
    """
    group: list[int] = []
    around, sum_of = Box(0, 0, 0, 0), 0.0
    for number, box in enumerate(boxes):
        grown, more = around_all((around, box)) if group else box, sum_of + _area(box)
        if group and _area(grown) > _SPREAD * more:
            yield group
            group, grown, more = [], box, _area(box)
        group, around, sum_of = [*group, number], grown, more
    if group:
        yield group


def around_all(boxes: Iterable[Box]) -> Box:
    """Return the smallest box that holds others, of which there is at least one."""
    return box_around(corner for box in boxes for corner in box.ring)


def _area(box: Box) -> float:
    return box.width * box.height


@dataclass(frozen=True, slots=True)
class Ground:
    """The marks of a part of a section without its findings, each with its box, in sheet mm."""

    view: View
    sides: Sides
    shown: Mapping[str, Points]
    marks: Sequence[Mark]
    boxes: NDArray[np.float64]

    @classmethod
    def of(cls, result: SectionResult, view: View, boxes: Sequence[Box]) -> "Ground":
        """Return what is drawn in and between `boxes`, which are on the sheet of `view`."""
        window = window_of(view.placement, around_all(boxes))
        part = replace(trimmed(result, window), findings=())
        sides = sides_of(part, view.placement)
        shown = shown_sheets(part, view.placement, sides)
        marks = section_marks(part, view)
        return cls(view, sides, shown, marks, np.array([*map(_box, marks)]).reshape(-1, 4))

    def around(self, box: Box) -> list[Mark]:
        """Return what is drawn in a box, and some of what is beyond it."""
        rows = self.boxes
        across = (rows[:, 0] <= box.right) & (rows[:, 2] >= box.left)
        near = across & (rows[:, 1] <= box.top) & (rows[:, 3] >= box.bottom)
        return [self.marks[number] for number in np.flatnonzero(near).tolist()]

    def glyph(self, finding: Finding) -> list[Mark]:
        """Return the glyph of one finding."""
        return list(glyph_marks(finding, self.view, self.sides, self.shown))


def _box(mark: Mark) -> tuple[float, float, float, float]:
    match mark:
        case Stroke(points=points) if points:
            box = box_around(points)
        case Fill(rings=rings) if any(rings):
            box = box_around(point for ring in rings for point in ring)
        case Label(text=text, at=(x, y), size=size, bold=bold):
            reach = text_width(text, size, bold=bold)
            return x - reach, y - reach, x + reach, y + reach
        case _:
            return -inf, -inf, inf, inf
    return box.left, box.bottom, box.right, box.top
