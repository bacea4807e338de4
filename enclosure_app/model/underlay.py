"""A picture or a page under the drawing."""

from dataclasses import dataclass
from math import cos, radians, sin

from enclosure_app.model.place import Point, Points


@dataclass(frozen=True, slots=True)
class Underlay:
    """A picture under the drawing: `data` is the file's bytes, `kind` ``png``, ``jpeg`` or ``pdf``.

    It is drawn with its lower left corner `at` (mm), `mm_per_pixel` large, turned by `angle`
    degrees anticlockwise; a pixel of a PDF page is a point of 1/72 inch. `size` is its width and
    height in pixels, and `paper_mm` what one pixel measures on its paper, 0 where nobody knows.
    Until somebody says how large it is, it is not `to_scale`.

    It lies under the section called `section`, "" for all of them. Lines and notes of its page have
    handles that begin with `key` and a colon. `strength` is 0 to 1: how much of the usual paleness
    it is painted with. One that is `locked` is not changed by accident.
    """

    name: str
    kind: str
    data: bytes
    at: Point = (0.0, 0.0)
    mm_per_pixel: float = 1.0
    angle: float = 0.0
    page: int = 0
    size: tuple[float, float] = (0.0, 0.0)
    paper_mm: float = 0.0
    to_scale: bool = False
    section: str = ""
    key: str = ""
    shown: bool = True
    locked: bool = False
    strength: float = 1.0

    @property
    def outline(self) -> Points:
        """Its four corners in mm, anticlockwise from the lower left."""
        x, y = self.at
        across = self.mm_per_pixel * cos(radians(self.angle))
        up = self.mm_per_pixel * sin(radians(self.angle))
        wide, high = self.size
        corners = ((0.0, 0.0), (wide, 0.0), (wide, high), (0.0, high))
        return tuple((x + across * u - up * v, y + up * u + across * v) for u, v in corners)
