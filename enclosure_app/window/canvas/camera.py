"""Where the window looks: which part of the section, and how large."""

from dataclasses import dataclass, replace
from math import isfinite

from PySide6.QtCore import QPointF, QRectF, QSizeF
from PySide6.QtGui import QTransform

from enclosure_app.drawing.placement import Box
from enclosure_app.model.place import Point

CLOSEST, FARTHEST = 60.0, 0.0005  # dots for one mm of the section
_ROOM = 0.08  # of the view's side that stays free around what is fitted into it


@dataclass(frozen=True, slots=True)
class Camera:
    """A view of `size` dots with `centre` (mm) in its middle, `zoom` dots for one mm."""

    centre: Point
    zoom: float
    size: QSizeF

    def seen(self, place: Point) -> QPointF:
        """Return where a place of the section stands in the view, in dots from its upper left."""
        return QPointF(
            self.size.width() / 2 + (place[0] - self.centre[0]) * self.zoom,
            self.size.height() / 2 - (place[1] - self.centre[1]) * self.zoom,
        )

    def place(self, dot: QPointF) -> Point:
        """Return the place of the section at a dot of the view."""
        return (
            self.centre[0] + (dot.x() - self.size.width() / 2) / self.zoom,
            self.centre[1] - (dot.y() - self.size.height() / 2) / self.zoom,
        )

    @property
    def window(self) -> Box:
        """The part of the section that is seen."""
        half_width = self.size.width() / 2 / self.zoom
        half_height = self.size.height() / 2 / self.zoom
        x, y = self.centre
        return Box(x - half_width, y - half_height, x + half_width, y + half_height)

    def transform(self, origin: Point = (0.0, 0.0)) -> QTransform:
        """Return the way from mm, counted from `origin`, to dots."""
        at = self.seen(origin)
        return QTransform(self.zoom, 0.0, 0.0, -self.zoom, at.x(), at.y())

    def zoomed(self, factor: float, about: QPointF) -> "Camera":
        """Return a closer or wider look that leaves the place at the dot `about` where it is."""
        zoom = min(max(self.zoom * factor, FARTHEST), CLOSEST)
        x, y = self.place(about)
        dx = (about.x() - self.size.width() / 2) / zoom
        dy = (about.y() - self.size.height() / 2) / zoom
        return replace(self, centre=(x - dx, y + dy), zoom=zoom)

    def panned(self, by: QPointF) -> "Camera":
        """Return the look with everything moved by so many dots."""
        x, y = self.centre
        return replace(self, centre=(x - by.x() / self.zoom, y + by.y() / self.zoom))

    def resized(self, size: QSizeF) -> "Camera":
        """Return the look in a view of another size, with the same place in its middle."""
        return replace(self, size=size)

    def fitted(self, box: Box) -> "Camera":
        """Return the look that shows all of `box`, as large as it fits."""
        if not all(map(isfinite, (box.left, box.bottom, box.right, box.top))):
            return self
        free = 1 - 2 * _ROOM
        across = self.size.width() * free / max(box.width, 1.0)
        up = self.size.height() * free / max(box.height, 1.0)
        zoom = min(max(min(across, up), FARTHEST), CLOSEST)
        return replace(self, centre=box.centre, zoom=zoom)

    def target(self, other: "Camera") -> QRectF:
        """Return the rectangle, in dots of this view, that another look at the section fills."""
        window = other.window
        upper_left = self.seen((window.left, window.top))
        lower_right = self.seen((window.right, window.bottom))
        return QRectF(upper_left, lower_right)
