"""A flashing that leaves the wall between two sheets."""

import pytest

from enclosure_app.model.place import Line
from enclosure_app.planning.parts.assembly import Sketch, Wall, box
from enclosure_app.planning.parts.flashed import FALL, flashed, shelf_at
from enclosure_app.planning.parts.parameters import WallSizes


def nest() -> dict[str, Line]:
    sketch = Sketch("one", box(-400, -300, 200, 600), (100, 0), (-380, 0))
    flashed(sketch, Wall(WallSizes()), 100.0, ((-0.8, 300), (-0.8, -300)))
    shapes = {piece.name: piece.shape for piece in sketch.pieces}
    assert all(isinstance(shape, Line) for shape in shapes.values())
    return shapes


def test_the_shelf_falls_to_the_outside() -> None:
    (x0, y0), (x1, y1) = shelf_at(0, -10), shelf_at(0, -80)
    assert (y0 - y1) / (x0 - x1) == pytest.approx(FALL)


def test_the_leg_stands_between_the_lower_and_the_upper_sheet() -> None:
    shapes = nest()
    lower = shapes["self-adhered-sheet-1"].points[0][0]
    leg = shapes["base-flashing-1"].points[0][0]
    upper = shapes["self-adhered-sheet-2"].points[-1][0]
    assert upper < leg < lower


def test_the_upper_sheet_comes_down_over_the_leg_and_stops_above_the_shelf() -> None:
    shapes = nest()
    head, foot = (shapes["base-flashing-1"].points[i][1] for i in (0, 1))
    end = shapes["self-adhered-sheet-2"].points[-1][1]
    assert foot < end < foot + 30
    assert head - end > 150
