"""What the pointer catches."""

from types import MappingProxyType

import pytest

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.place import Area, Line
from enclosure_app.model.section import Piece, Section, Stroke
from enclosure_app.window.canvas.catching.snapping import Ask, Kind, Snapper

FRAME = ((-500.0, -500.0), (500.0, -500.0), (500.0, 500.0), (-500.0, 500.0))


@pytest.fixture
def snapper() -> Snapper:
    strokes = (Stroke(((0.0, 0.0), (100.0, 0.0))), Stroke(((30.0, -40.0), (30.0, 60.0))))
    pieces = (Piece("a", "felt", Line(((0.0, 200.0), (100.0, 200.0)))),)
    return Snapper(
        Section("s", FRAME, pieces, MappingProxyType(dict(load_products())), strokes=strokes)
    )


@pytest.mark.parametrize(
    ("near", "at", "kind"),
    [
        ((1.0, 2.0), (0.0, 0.0), Kind.END),
        ((51.0, 2.0), (50.0, 0.0), Kind.MIDDLE),
        ((29.0, 2.0), (30.0, 0.0), Kind.CROSSING),
        ((70.0, 3.0), (70.0, 0.0), Kind.LINE),
        ((99.0, 201.0), (100.0, 200.0), Kind.END),
    ],
)
def test_it_catches(snapper: Snapper, near: tuple, at: tuple, kind: Kind) -> None:
    found = snapper.catch(Ask(near, 5.0))
    assert found is not None
    assert found.kind is kind
    assert found.at == pytest.approx(at)


def test_it_catches_nothing_out_of_reach(snapper: Snapper) -> None:
    assert snapper.catch(Ask((70.0, 30.0), 5.0)) is None


def test_a_line_from_a_place_is_caught_square_to_another(snapper: Snapper) -> None:
    found = snapper.catch(Ask((71.0, 1.0), 5.0, anchor=(70.0, 80.0)))
    assert found is not None
    assert (found.kind, found.at) == (Kind.SQUARE, (70.0, 0.0))


@pytest.mark.parametrize("side", [1.0, -1.0])
def test_a_sheet_is_caught_three_mm_beside_a_board_on_the_side_of_the_mouse(
    snapper: Snapper, side: float
) -> None:
    found = snapper.catch(Ask((70.0, 3.4 * side), 1.0, beside=3.0))
    assert found is not None
    assert found.kind is Kind.OFF_LINE
    assert found.at == pytest.approx((70.0, 3.0 * side))


def test_a_piece_that_moves_does_not_catch_itself() -> None:
    pieces = (Piece("a", "felt", Line(((0.0, 200.0), (100.0, 200.0)))),)
    section = Section("s", FRAME, pieces, MappingProxyType(dict(load_products())))
    assert Snapper(section, frozenset({"a"})).catch(Ask((1.0, 201.0), 5.0)) is None


@pytest.mark.parametrize("turn", [1, -1])
def test_a_sheet_lies_outside_a_board_whichever_way_its_corners_were_given(turn: int) -> None:
    corners = ((0.0, 0.0), (12.0, 0.0), (12.0, 500.0), (0.0, 500.0))[::turn]
    pieces = (Piece("b", "plywood", Area(corners)),)
    snapper = Snapper(Section("s", FRAME, pieces, MappingProxyType(dict(load_products()))))
    found = snapper.catch(Ask((-5.0, 300.0), 6.0, beside=3.0))
    assert found is not None
    assert found.at == pytest.approx((-3.0, 300.0))
    inside = snapper.catch(Ask((6.0, 300.0), 2.0, beside=3.0))
    assert inside is None


def test_a_hundred_thousand_lines_of_the_office_are_gathered_once() -> None:
    strokes = tuple(Stroke(((float(i), 0.0), (float(i), 5.0))) for i in range(500))
    section = Section("s", FRAME, (), MappingProxyType({}), strokes=strokes)
    first, again = Snapper(section), Snapper(section, frozenset({"x"}))
    assert first._blocks[-1][1] is again._blocks[-1][1]  # noqa: SLF001  the very same arrays
