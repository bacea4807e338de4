"""One leg of a sheet that is traced: the ways it may take, and which of them it takes."""

from collections.abc import Iterator
from dataclasses import dataclass

from enclosure_app.errors import EnclosureError
from enclosure_app.model.place import Point
from enclosure_app.planning.tracing.guiding import legs, on_line
from enclosure_app.planning.tracing.tracing import LineworkGraph, Way

REACH = 24.0  # dots from a click to the line that it means


@dataclass(slots=True)
class Leg:
    """The ways that were asked for, those to come, and which one is taken."""

    ways: list[Way]
    more: Iterator[Way]
    at: int = 0

    @property
    def way(self) -> Way:
        """The way that is taken."""
        return self.ways[self.at]

    def turn(self, step: int) -> None:
        """Take the next way, or the one before; the first comes after the last."""
        if step > 0 and self.at == len(self.ways) - 1:
            self.ways += [way for way in [next(self.more, None)] if way]
        self.at = (self.at + step) % len(self.ways)


def leg_to(net: LineworkGraph, start: Point, end: Point) -> Leg:
    """Return the leg between two places on drawn lines.

    Raises:
        EnclosureError: both are one place, or nothing joins them.
    """
    found = legs(net, start, end)
    return Leg([next(found)], found)


def leg_shown(net: LineworkGraph, start: Point, aim: tuple[Point, float]) -> Leg | None:
    """Return the leg to where the mouse is, within a reach (mm), None where there is none.

    Why there is none is said when it is clicked.
    """
    try:
        return leg_to(net, start, on_line(net, *aim))
    except EnclosureError:
        return None
