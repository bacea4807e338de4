"""Joints that a person declared sealed: a square with a tick, on the sheet and in the window."""

from collections.abc import Iterator

from enclosure_app.drawing.marks import Mark, Stroke, overlays_of
from enclosure_app.drawing.placement import Placement
from enclosure_app.drawing.theme import Theme
from enclosure_app.model.place import Point
from enclosure_app.model.product import Control
from enclosure_app.model.report import SectionResult

SIDE = 2.2  # mm on paper
_TICK = ((-0.65, 0.0), (-0.2, -0.6), (0.75, 0.7))


def said_sealed(result: SectionResult) -> dict[Point, tuple[Control, ...]]:
    """Return the places of joints that a person declared sealed, with the controls they join."""
    found: dict[Point, tuple[Control, ...]] = {}
    for layer in result.layers.values() if result.section.sealed else ():
        for joint in layer.joints:
            if (min(joint.a, joint.b), max(joint.a, joint.b)) in result.section.sealed:
                found[joint.at] = (*found.get(joint.at, ()), layer.control)
    return found


def sealed_marks(result: SectionResult, placement: Placement, theme: Theme) -> Iterator[Mark]:
    """Yield the mark of each joint that a person declared sealed."""
    for at, controls in said_sealed(result).items():
        yield from sealed_mark(placement.point(at), theme, controls)


def sealed_mark(
    centre: Point, theme: Theme, controls: tuple[Control, ...] = ()
) -> Iterator[Stroke]:
    """Yield a square with a tick in it, on a clear ground so that it is seen over lines."""
    x, y = centre
    half = SIDE / 2
    square = (
        (x - half, y - half),
        (x + half, y - half),
        (x + half, y + half),
        (x - half, y + half),
    )
    tick = tuple((x + dx, y + dy) for dx, dy in _TICK)
    pen, on = theme.pen("glyph"), overlays_of(*controls)
    yield Stroke(square, theme.halo_pen(pen.width), "sealed", closed=True, overlays=on)
    yield Stroke(square, pen, "sealed", closed=True, overlays=on)
    yield Stroke(tick, pen, "sealed", overlays=on)
