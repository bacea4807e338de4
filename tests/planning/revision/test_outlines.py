"""Pieces as they are compared."""

from dataclasses import replace

from enclosure_app.model.place import Area, Line
from enclosure_app.model.section import Piece
from enclosure_app.planning.revision.outlines import Motion, moved_shape, outline
from tests.planning.revision.walls import BOARD, LEDGE

HOLE = ((4.0, 100.0), (10.0, 100.0), (10.0, 200.0))


def test_a_motion_moves_and_mirrors() -> None:
    assert Motion((10.0, 5.0)).place((1.0, 2.0)) == (11.0, 7.0)
    assert Motion((10.0, 5.0), mirrored=True).place((1.0, 2.0)) == (9.0, 7.0)
    assert Motion((0.3, -0.4)).stays
    assert not Motion((0.0, 0.6)).stays
    assert not Motion(mirrored=True).stays


def test_shapes_are_moved_with_width_and_holes() -> None:
    motion = Motion((100.0, 0.0), mirrored=True)
    assert moved_shape(Line(((1.0, 0.0), (2.0, 0.0)), 1.5), motion) == Line(
        ((99.0, 0.0), (98.0, 0.0)), 1.5
    )
    area = moved_shape(Area(((0.0, 0.0), (9.0, 0.0), (9.0, 9.0)), (HOLE,)), motion)
    assert isinstance(area, Area)
    assert area.holes[0][0] == (96.0, 100.0)


def test_a_piece_drawn_the_other_way_round_lies_as_it_lay() -> None:
    shape = LEDGE.shape
    assert isinstance(shape, Line)
    back = replace(LEDGE, name="9", handles=("9",), shape=Line(shape.points[::-1]))
    moved = replace(back, shape=moved_shape(back.shape, Motion((500.0, 0.2))))
    assert outline(LEDGE).lies_as(outline(moved), Motion((500.0, 0.0)))
    assert not outline(LEDGE).lies_as(outline(moved), Motion((498.0, 0.0)))
    assert not outline(LEDGE).lies_as(outline(back), Motion(mirrored=True))


def test_another_product_or_other_holes_is_another_piece() -> None:
    assert not outline(LEDGE).lies_as(outline(replace(LEDGE, product="osb")), Motion())
    assert isinstance(BOARD.shape, Area)
    pierced = replace(BOARD, shape=replace(BOARD.shape, holes=(HOLE,)))
    assert not outline(BOARD).lies_as(outline(pierced), Motion())
    again = replace(pierced, shape=replace(pierced.shape, holes=(HOLE[::-1],)))
    assert outline(pierced).lies_as(outline(again), Motion())


def test_a_piece_without_handles_is_known_by_its_name() -> None:
    drawn = Piece("drawn-1", "housewrap", Line(((0.0, 0.0), (0.0, 9.0))))
    assert outline(drawn).names == {"drawn-1"}
    assert outline(LEDGE).names == {"22"}
