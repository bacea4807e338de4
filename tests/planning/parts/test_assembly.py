"""The shared make-up: where leaves stand, what a sketch becomes."""

from math import hypot

import pytest

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.product import Control
from enclosure_app.model.section import DOWN
from enclosure_app.planning.parts import PARTS, Part, part
from enclosure_app.planning.parts.assembly import Roof, Sketch, Wall, box
from enclosure_app.planning.parts.parameters import DeckSizes, WallSizes

PRODUCTS = load_products()


def test_the_leaves_of_the_wall_follow_each_other_without_holes() -> None:
    wall = Wall(WallSizes(insulation=100, studs=140, board=12, cavity=25))
    assert (wall.board, wall.studs, wall.room) == (12, 152, 164.5)
    assert (wall.outer, wall.vent, wall.face) == (-112, -137, -157)


@pytest.mark.parametrize("pitch", [0.0, 0.5, 1.2])
def test_places_off_the_deck_are_measured_square_to_it(pitch: float) -> None:
    roof = Roof(DeckSizes(), pitch)
    (x0, y0), (x1, y1) = roof.at(0), roof.at(100, 50)
    away = abs(pitch * (x1 - x0) - (y1 - y0)) / hypot(1, pitch)
    assert away == pytest.approx(50)


def test_pieces_of_one_product_have_names_of_their_own() -> None:
    sketch = Sketch("one", box(0, 0, 100, 100), (10, 10), (90, 90))
    sketch.area("plywood", box(0, 0, 12, 100))
    sketch.area("plywood", box(50, 0, 62, 100))
    section = sketch.section(PRODUCTS)
    assert [piece.name for piece in section.pieces] == ["plywood-1", "plywood-2"]
    assert (section.inside, section.outside) == (((10, 10),), ((90, 90),))
    assert section.frame_drawn


@pytest.mark.parametrize("each", PARTS, ids=lambda each: each.name)
def test_every_part_is_a_whole_section(each: Part) -> None:
    """All four controls, products that exist, names of their own, everything in the frame."""
    section = part(each.name, PRODUCTS)
    assert section.gravity == DOWN
    assert {c for p in section.pieces for c in section.product(p).controls} == set(Control)
    assert len(section.by_name) == len(section.pieces)
    xs, ys = zip(*section.frame, strict=True)
    for piece in section.pieces:
        shape = piece.shape
        for x, y in getattr(shape, "points", None) or shape.outer:
            assert min(xs) - 1e-6 <= x <= max(xs) + 1e-6, piece.name
            assert min(ys) - 1e-6 <= y <= max(ys) + 1e-6, piece.name


def test_no_two_parts_have_one_name() -> None:
    assert [each.name for each in PARTS] == [
        "wall-base", "window-sill", "window-head", "eave", "eave-flush", "rake", "ridge",
        "parapet", "roof-wall",
    ]  # fmt: skip
