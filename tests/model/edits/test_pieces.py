"""Edits of pieces: what they change, what they leave alone, and what they refuse."""

from collections.abc import Callable
from math import inf, nan

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from enclosure_app.errors import EnclosureError
from enclosure_app.geometry.runs.editing import turned
from enclosure_app.model import edits
from enclosure_app.model.place import Area, Line, Points, Shape
from enclosure_app.model.project import Project
from enclosure_app.model.section import Piece

House = Callable[..., Project]

SHEET = Line(((0.0, 0.0), (0.0, 100.0), (50.0, 100.0)), 1.5)
BOARD = Area(
    ((10.0, 0.0), (20.0, 0.0), (20.0, 90.0), (10.0, 90.0)),
    (((12.0, 40.0), (18.0, 40.0), (15.0, 50.0)),),
)
TAPE = Line(((-1.0, 95.0), (-1.0, 105.0)))

coordinates = st.floats(-1e5, 1e5)
places = st.tuples(coordinates, coordinates)
chosen = st.sampled_from([["sheet"], ["board"], ["sheet", "board"]])


def _shape(project: Project, name: str) -> Shape:
    return edits.piece_of(project, "Eave", name).shape


def _points(project: Project) -> list[float]:
    runs: list[Points] = []
    for name in ("sheet", "board", "tape"):
        shape = _shape(project, name)
        runs += [shape.points] if isinstance(shape, Line) else [shape.outer, *shape.holes]
    return [value for run in runs for point in run for value in point]


def _near(project: Project, other: Project) -> bool:
    return _points(project) == pytest.approx(_points(other), abs=1e-9, rel=1e-12)


@given(chosen, places)
@settings(max_examples=60)
def test_pieces_moved_there_and_back_are_where_they_were(
    house: House, names: list[str], by: tuple[float, float]
) -> None:
    before = house(sheet=SHEET, board=BOARD, tape=TAPE)
    there = edits.move_pieces(before, "Eave", names, by)
    after = edits.move_pieces(there, "Eave", names, (-by[0], -by[1]))
    assert _near(after, before)
    _only_these_changed(before, there, names)


@given(chosen, st.tuples(st.floats(-500, 500), st.floats(-500, 500)), st.floats(-720, 720))
@settings(max_examples=60)
def test_pieces_turned_there_and_back_are_where_they_were(
    house: House, names: list[str], about: tuple[float, float], degrees: float
) -> None:
    before = house(sheet=SHEET, board=BOARD, tape=TAPE)
    there = edits.rotate_pieces(before, "Eave", names, about, degrees)
    assert _near(edits.rotate_pieces(there, "Eave", names, about, -degrees), before)
    _only_these_changed(before, there, names)


@given(chosen, st.tuples(st.floats(-500, 500), st.floats(-500, 500)), st.floats(0, 360))
@settings(max_examples=60)
def test_pieces_mirrored_twice_are_where_they_were(
    house: House, names: list[str], a: tuple[float, float], degrees: float
) -> None:
    before = house(sheet=SHEET, board=BOARD, tape=TAPE)
    (b,) = turned(((a[0] + 100.0, a[1]),), a, degrees)
    there = edits.mirror_pieces(before, "Eave", names, (a, b))
    assert _near(edits.mirror_pieces(there, "Eave", names, (a, b)), before)
    _only_these_changed(before, there, names)


def _only_these_changed(before: Project, after: Project, names: list[str]) -> None:
    assert after.sections[1] is before.sections[1]
    for old, new in zip(before.sections[0].pieces, after.sections[0].pieces, strict=True):
        assert old.name == new.name
        assert (old is new) == (old.name not in names)
    assert after.sections[0].products is before.sections[0].products


def test_a_turn_by_a_quarter_is_exact_and_anticlockwise(house: House) -> None:
    after = edits.rotate_pieces(house(sheet=SHEET), "Eave", ["sheet"], (0.0, 0.0), 90)
    assert _shape(after, "sheet") == Line(((0.0, 0.0), (-100.0, 0.0), (-100.0, 50.0)), 1.5)


def test_a_mirrored_piece_stands_on_the_other_side_of_the_line(house: House) -> None:
    before = house(sheet=SHEET)
    after = edits.mirror_pieces(before, "Eave", ["sheet"], ((10.0, 0.0), (10.0, 1.0)))
    assert _shape(after, "sheet") == Line(((20.0, 0.0), (20.0, 100.0), (-30.0, 100.0)), 1.5)
    with pytest.raises(EnclosureError, match="mirror line are the same: give two places"):
        edits.mirror_pieces(before, "Eave", ["sheet"], ((1.0, 1.0), (1.0, 1.0)))


def test_a_new_piece_comes_last_with_a_name_that_is_free(house: House) -> None:
    before = house(sheet=SHEET, **{"drawn-2": TAPE})
    first = edits.add_piece(before, 0, "osb", TAPE)
    second = edits.add_piece(first, 0, "osb", TAPE)
    assert [piece.name for piece in second.sections[0].pieces] == [
        "sheet",
        "drawn-2",
        "drawn-1",
        "drawn-3",
    ]
    assert second.sections[0].pieces[0] is before.sections[0].pieces[0]
    named = edits.add_piece(second, 0, "osb", TAPE, stem="sill")
    assert named.sections[0].pieces[-1] == Piece("sill-1", "osb", TAPE)


def test_several_new_pieces_of_one_stem_are_numbered(house: House) -> None:
    parts = [Piece("sill", "osb", TAPE, layer="X"), Piece("sill", "osb", SHEET)]
    pieces = edits.add_pieces(house(), "Eave", parts).sections[0].pieces
    assert [(piece.name, piece.shape) for piece in pieces] == [("sill-1", TAPE), ("sill-2", SHEET)]
    assert pieces[0].layer == "X"


def test_copies_come_last_without_handles_and_the_originals_stay(house: House) -> None:
    before = house(sheet=SHEET, board=BOARD, tape=TAPE)
    after = edits.copy_pieces(before, "Eave", ["tape", "sheet"], (600.0, 0.0))
    pieces = after.sections[0].pieces
    assert pieces[:3] == before.sections[0].pieces
    assert pieces[3] == Piece(
        "copy-1",
        "housewrap",
        Line(((600.0, 0.0), (600.0, 100.0), (650.0, 100.0)), 1.5),
        (),
        "A-WALL",
    )
    assert pieces[4].shape == Line(((599.0, 95.0), (599.0, 105.0)))
    assert all(new is old for new, old in zip(pieces, before.sections[0].pieces, strict=False))


def test_removed_pieces_are_gone_with_what_was_said_about_their_joints(house: House) -> None:
    before = edits.declare_sealed(house(sheet=SHEET, board=BOARD, tape=TAPE), 0, "tape", "sheet")
    before = edits.declare_sealed(before, 0, "board", "sheet")
    after = edits.remove_pieces(before, 0, ["tape"])
    assert [piece.name for piece in after.sections[0].pieces] == ["sheet", "board"]
    assert after.sections[0].sealed == {("board", "sheet")}
    assert after.sections[0].pieces[0] is before.sections[0].pieces[0]


def test_the_product_of_pieces_changes_and_nothing_else(house: House) -> None:
    before = house(sheet=SHEET, board=BOARD, tape=TAPE)
    after = edits.set_product(before, "Eave", ["sheet", "tape"], "self-adhered-sheet")
    assert [p.product for p in after.sections[0].pieces] == [
        "self-adhered-sheet",
        "osb",
        "self-adhered-sheet",
    ]
    _only_these_changed(before, after, ["sheet", "tape"])
    assert _points(after) == _points(before)


def test_points_of_a_line_are_moved_inserted_and_deleted(house: House) -> None:
    before = house(sheet=SHEET, tape=TAPE)
    moved = edits.move_point(before, "Eave", "sheet", 1, (5.0, 90.0))
    assert _shape(moved, "sheet") == Line(((0.0, 0.0), (5.0, 90.0), (50.0, 100.0)), 1.5)
    more = edits.insert_point(moved, "Eave", "sheet", 2, (60.0, 100.0))
    assert _shape(more, "sheet") == Line(
        ((0.0, 0.0), (5.0, 90.0), (50.0, 100.0), (60.0, 100.0)), 1.5
    )
    fewer = edits.delete_point(more, "Eave", "sheet", 0)
    assert _shape(fewer, "sheet") == Line(((5.0, 90.0), (50.0, 100.0), (60.0, 100.0)), 1.5)
    _only_these_changed(before, moved, ["sheet"])


def test_points_of_an_area_are_told_by_ring_and_number(house: House) -> None:
    before = house(board=BOARD)
    outer = edits.move_point(before, 0, "board", (0, 2), (25.0, 95.0))
    assert _shape(outer, "board") == Area(
        ((10.0, 0.0), (20.0, 0.0), (25.0, 95.0), (10.0, 90.0)), BOARD.holes
    )
    hole = edits.move_point(before, 0, "board", (1, 2), (15.0, 60.0))
    assert _shape(hole, "board") == Area(
        BOARD.outer, (((12.0, 40.0), (18.0, 40.0), (15.0, 60.0)),)
    )


@pytest.mark.parametrize(
    ("edit", "sentence"),
    [
        (lambda p: edits.move_pieces(p, "Attic", [], (0, 0)), 'There is no section "Attic"'),
        (
            lambda p: edits.move_pieces(p, "Attic", ["a"], (0, 0)),
            'There is no section "Attic"; the sections are: "Eave", "Ridge".',
        ),
        (
            lambda p: edits.remove_pieces(p, 2, ["a"]),
            'There is no section "2"; the sections are: "Eave", "Ridge".',
        ),
        (
            lambda p: edits.move_pieces(p, "Eave", ["sheet", "gone"], (0, 0)),
            'There is no piece "gone" in section "Eave"; pick one that is drawn.',
        ),
        (lambda p: edits.copy_pieces(p, 0, ["gone"], (0, 0)), 'There is no piece "gone" in'),
        (lambda p: edits.add_piece(p, 0, "gold", TAPE), 'There is no product "gold" in section'),
        (lambda p: edits.set_product(p, 0, ["sheet"], "gold"), 'There is no product "gold" in'),
        (lambda p: edits.move_pieces(p, 0, ["sheet"], (nan, 0)), "A coordinate is not a finite"),
        (lambda p: edits.rotate_pieces(p, 0, ["sheet"], (0, 0), inf), "A coordinate is not a"),
        (lambda p: edits.move_point(p, 0, "sheet", 0, (inf, 0)), "A coordinate is not a finite"),
        (lambda p: edits.move_point(p, 0, "sheet", 3, (0, 0)), '"sheet" has no such point: pick'),
        (lambda p: edits.move_point(p, 0, "sheet", -1, (0, 0)), '"sheet" has no such point'),
        (lambda p: edits.move_point(p, 0, "board", (2, 0), (0, 0)), '"board" has no such point'),
        (lambda p: edits.delete_point(p, 0, "tape", 0), "A line needs at least two points that"),
        (lambda p: edits.move_point(p, 0, "tape", 0, (-1.0, 105.0)), "A line needs at least two"),
        (lambda p: edits.delete_point(p, 0, "board", (1, 0)), "An area needs three corners or"),
        (
            lambda p: edits.move_point(p, 0, "board", 0, (30.0, 50.0)),
            "An area needs three corners or more, and its outline must not cross itself",
        ),
        (lambda p: edits.add_piece(p, 0, "osb", Line(())), "A line needs at least two points"),
        (
            lambda p: edits.add_piece(p, 0, "osb", Line(TAPE.points, closed=True)),
            "A line needs at least three points that are apart",
        ),
        (
            lambda p: edits.add_piece(p, 0, "osb", Line(TAPE.points, -1.0)),
            "A line cannot be -1 mm thick: give 0 or more.",
        ),
    ],
)
def test_what_cannot_be_done_is_said(
    house: House, edit: Callable[[Project], Project], sentence: str
) -> None:
    project = house(sheet=SHEET, board=BOARD, tape=TAPE)
    with pytest.raises(EnclosureError) as caught:
        edit(project)
    assert str(caught.value).startswith(sentence)
