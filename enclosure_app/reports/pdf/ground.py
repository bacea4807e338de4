"""From places on a sheet to places on a page of a PDF."""

from pikepdf import Page

from enclosure_app.drawing.placement import Box
from enclosure_app.model.place import Point

POINTS = 72 / 25.4
"""Points of a PDF to the mm."""


class Ground:
    """The way from mm on a page, y up, to its points."""

    def __init__(self, page: Page, height: float) -> None:
        left, bottom, right, top = (float(edge) for edge in page.mediabox)
        self.left, self.bottom, self.right, self.top = left, bottom, right, top
        self._height = height

    def point(self, place: Point) -> tuple[float, float]:
        """Return where a place is; Qt paints down from the upper edge of the page."""
        x = self.left + place[0] * POINTS
        return round(x, 3), round(self.top - (self._height - place[1]) * POINTS, 3)

    def box(self, box: Box) -> tuple[float, float, float, float]:
        """Return the left, bottom, right and top of a box."""
        return (*self.point((box.left, box.bottom)), *self.point((box.right, box.top)))
