"""Every piece as a solid, made once."""

import pytest
import shapely

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.place import Area, Line
from enclosure_app.model.section import Piece, Section
from enclosure_app.network.fabric.bodies import Bodies, bodies_of, solid_of

SQUARE = ((0.0, 0.0), (100.0, 0.0), (100.0, 50.0), (0.0, 50.0))


def bodies(**shapes: Line | Area) -> Bodies:
    pieces = tuple(Piece(name, "felt", shape) for name, shape in shapes.items())
    return bodies_of(Section("all", SQUARE, pieces, load_products()))


def test_a_bare_sheet_is_its_own_axis() -> None:
    made = bodies(sheet=Line(((0, 0), (30, 40))))
    assert made.solids["sheet"].length == made.axes["sheet"].length == 50
    assert made.areas == ()


def test_a_sheet_drawn_with_a_width_is_a_band_round_its_axis() -> None:
    made = bodies(sheet=Line(((0, 0), (0, 100)), width=4))
    assert made.solids["sheet"].bounds == (-2, 0, 2, 100)
    assert made.axes["sheet"].bounds == (0, 0, 0, 100)


def test_a_closed_sheet_comes_back_to_its_start() -> None:
    made = bodies(sheet=Line(SQUARE, closed=True))
    assert made.solids["sheet"].length == pytest.approx(300)


def test_areas_keep_their_holes() -> None:
    hole = ((10.0, 10.0), (20.0, 10.0), (20.0, 20.0), (10.0, 20.0))
    made = bodies(plain=Area(SQUARE), holed=Area(SQUARE, (hole,)))
    assert made.solids["plain"].area == 5000
    assert made.solids["holed"].area == 4900
    assert [solid.area for solid in made.areas] == [5000, 4900]


def test_a_ring_that_crosses_itself_is_mended() -> None:
    bow = Area(((0, 0), (10, 10), (10, 0), (0, 10)))
    made = bodies(bow=bow)
    assert made.solids["bow"].is_valid
    assert made.solids["bow"].area == pytest.approx(50)


def test_many_at_once_are_the_same_as_one_by_one() -> None:
    shapes = {"a": Line(((0, 0), (9, 9))), "b": Area(SQUARE), "c": Line(SQUARE, closed=True)}
    made = bodies(**shapes)
    for name, shape in shapes.items():
        assert shapely.equals_exact(made.solids[name], solid_of(shape))


def test_a_sheet_without_length_is_a_mistake() -> None:
    with pytest.raises(ValueError, match="two different points"):
        bodies(dot=Line(((5, 5), (5, 5))))
