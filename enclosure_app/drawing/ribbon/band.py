"""The band of a ribbon: where a layer that is laid out straight stands on the sheet."""

from dataclasses import dataclass

from enclosure_app.drawing.marks import Stroke
from enclosure_app.drawing.placement import Box
from enclosure_app.drawing.ribbon.unrolled import Unrolled
from enclosure_app.drawing.theme import Pen, Theme
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Points
from enclosure_app.model.report import LayerResult, SectionResult

HEIGHT = 25.6  # mm, of one ribbon with its words, flags and ticks
BAND = 4.6  # mm, of the band itself
HAIR = 0.6  # a lift is never shown narrower than this


@dataclass(frozen=True, slots=True)
class Ribbon:
    """One ribbon in its place on the sheet; x of the sheet is `left` + mm along the walk × `per_mm`."""

    result: SectionResult
    layer: LayerResult
    laid: Unrolled
    box: Box
    units: Units
    theme: Theme

    @property
    def top(self) -> float:
        """The upper edge of the band."""
        return self.box.top - 7.4

    @property
    def bottom(self) -> float:
        """The lower edge of the band."""
        return self.top - BAND

    def block(self, start: float, end: float) -> Points:
        """Return the ring of the band between two places along the walk."""
        return Box(self.x(start), self.bottom, self.x(end), self.top).ring

    def across(self, along: float, pen: Pen) -> Stroke:
        """Return a line across the band."""
        x = self.x(along)
        return Stroke(((x, self.bottom), (x, self.top)), pen)

    def x(self, along: float) -> float:
        """Return where a place along the walk stands on the sheet."""
        return self.box.left + along / max(self.laid.length, 1e-9) * self.box.width
