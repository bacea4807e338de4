"""The window unit that sill and head share."""

import pytest

from enclosure_app.model.place import Area
from enclosure_app.model.product import Control
from enclosure_app.planning.parts.assembly import Sketch, box
from enclosure_app.planning.parts.opening import OUT, UNIT, Parameters, unit


def outline(edge: float, cut: float) -> tuple[Sketch, tuple[tuple[float, float], ...]]:
    sketch = Sketch("one", box(-200, -400, 200, 400), (150, 0), (-150, 0))
    unit(sketch, Parameters().back, (edge, edge), cut)
    shape = sketch.pieces[0].shape
    assert isinstance(shape, Area)
    return sketch, shape.outer


@pytest.mark.parametrize(("edge", "cut"), [(40.0, 400.0), (-20.0, -400.0)])
def test_the_unit_reaches_from_its_rail_to_where_the_frame_cuts_the_pane(
    edge: float, cut: float
) -> None:
    _, points = outline(edge, cut)
    assert {min(y for _, y in points), max(y for _, y in points)} == {edge, cut}
    assert min(x for x, _ in points) == OUT
    assert max(x for x, _ in points) == Parameters().back


def test_the_unit_keeps_all_four_apart_and_comes_with_the_section() -> None:
    sketch, _ = outline(40.0, 400.0)
    assert sketch.section({}).products == {"window-unit": UNIT}
    assert UNIT.controls == set(Control)


def test_the_rail_sheds_water_to_both_sides() -> None:
    _, points = outline(40.0, 400.0)
    outer = [y for x, y in points if x == OUT]
    pane = sorted(y for x, y in points if OUT < x < Parameters().back)
    assert max(outer) < pane[0]
