"""What closed outlines and filled patches stand for."""

import pytest

from enclosure_app.files.framing.outlines import Region, encloses, shape_of, without_twins
from enclosure_app.model.place import Area, Line, Points
from enclosure_app.model.product import Bond, Kind, Product

SHEET = Product("p", "Sheet", frozenset(), Bond.ADHERED, Kind.SHEET)
BOARD = Product("p", "Board", frozenset(), Bond.RIGID, Kind.BOARD, drawn="area")
BEAD = Product("p", "Bead", frozenset(), Bond.SEALANT, Kind.SEALANT, drawn="either")


def box(x0: float, y0: float, x1: float, y1: float) -> Points:
    return ((x0, y0), (x1, y0), (x1, y1), (x0, y1))


def region(points: Points, handle: str = "1", *, filled: bool = False, width: float = 0) -> Region:
    return Region(points, "p", (handle,), filled=filled, width=width)


@pytest.mark.parametrize("filled", [False, True])
def test_a_thin_outline_of_a_sheet_is_its_run(filled: bool) -> None:
    shape, guessed = shape_of(region(box(0, 0, 4, 200), filled=filled), SHEET)
    assert shape == Line(((2, 0), (2, 200)), width=4)
    assert not guessed


def test_a_run_starts_at_its_left_end_however_it_is_drawn() -> None:
    outline = box(0, 0, 300, 3)
    for ring in (outline, outline[::-1], outline[2:] + outline[:2]):
        assert shape_of(region(ring), SHEET)[0] == Line(((0, 1.5), (300, 1.5)), width=3)


def test_a_filled_band_may_be_thicker_than_an_outline() -> None:
    assert shape_of(region(box(0, 0, 300, 40), filled=True), SHEET)[0] == Line(
        ((0, 20), (300, 20)), width=40
    )
    assert shape_of(region(box(0, 0, 300, 40)), SHEET)[0] == Line(box(0, 0, 300, 40), closed=True)


@pytest.mark.parametrize("product", [BOARD, BEAD])
def test_an_outline_of_what_is_drawn_as_an_area_is_one(product: Product) -> None:
    shape, guessed = shape_of(region(box(0, 0, 300, 3)), product)
    assert shape == Area(box(0, 0, 300, 3))
    assert not guessed


def test_a_loop_drawn_with_a_wide_line_keeps_the_width() -> None:
    shape, _ = shape_of(region(box(0, 0, 300, 200), width=2), SHEET)
    assert shape == Line(box(0, 0, 300, 200), width=2, closed=True)


def test_an_outline_of_no_even_thickness_is_a_guess() -> None:
    shape, guessed = shape_of(region(((0, 0), (300, 0), (300, 28), (0, 2))), SHEET)
    assert isinstance(shape, Area)
    assert guessed


def test_twins_are_one_region_and_the_patch_with_its_holes_stays() -> None:
    hole = box(10, 10, 20, 20)
    patch = Region(box(0.3, 0, 100, 80), "p", ("9",), holes=(hole,), filled=True)
    (both,) = without_twins([region(box(0, 0, 100, 80), "8"), patch])
    assert both.filled
    assert both.holes == (hole,)
    assert set(both.handles) == {"8", "9"}


def test_neighbours_and_other_shapes_are_no_twins() -> None:
    regions = [
        region(box(0, 0, 100, 80), "1"),
        region(box(2, 0, 102, 80), "2"),
        region(((0, 0), (100, 0), (100, 80), (50, 40), (0, 80)), "3"),
    ]
    assert {each.handles for each in without_twins(regions)} == {("1",), ("2",), ("3",)}


def test_a_line_there_and_back_encloses_nothing() -> None:
    assert not encloses(((0, 0), (10, 0), (5, 0)))
    assert encloses(box(0, 0, 1, 1))
