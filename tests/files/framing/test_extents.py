"""The frame of a drawing in which none is drawn."""

from enclosure_app.files.framing.extents import around_all, box_of, frame_around
from enclosure_app.files.framing.marks import Marks
from enclosure_app.model.drawing import NoteLevel
from enclosure_app.model.place import Area, Line, Points
from enclosure_app.model.section import Piece

LINES = frozenset({"sheet"})


def sheet(*points: tuple[float, float]) -> Piece:
    return Piece("1", "sheet", Line(points))


def board(ring: Points) -> Piece:
    return Piece("2", "board", Area(ring))


def box(x0: float, y0: float, x1: float, y1: float) -> Points:
    return ((x0, y0), (x1, y0), (x1, y1), (x0, y1))


def test_sides_with_cut_ends_stay_and_the_others_move_past_the_marks() -> None:
    marks = Marks(inside=((400, 900),), outside=((-20, 100),))
    frame, notes = frame_around([sheet((0, 0), (0, 2000))], LINES, marks)
    assert frame.ring == box(-70, 0, 450, 2000)
    assert frame.marks == marks
    assert not frame.drawn
    assert [(n.level, n.text) for n in notes] == [
        (NoteLevel.GUESSED, "No frame is drawn: the extent of the pieces is the frame.")
    ]


def test_a_mark_beyond_a_cut_end_is_put_just_inside() -> None:
    marks = Marks(inside=((400, 2300),), outside=((-400, 100),))
    frame, notes = frame_around([sheet((0, 0), (0, 2000))], LINES, marks)
    assert frame.ring == box(-450, 0, 450, 2000)
    assert frame.marks.inside == ((400, 1995),)
    assert notes[1].text == ("The inside mark stands beyond the cut ends; it counts at 400,1995.")


def test_a_sheet_that_only_lies_along_a_side_does_not_make_it_a_cut() -> None:
    """An upturn that runs along the left side and ends in the corner cuts the top only."""
    frame, _ = frame_around([sheet((0, 0), (500, 0), (500, 300))], LINES, Marks())
    assert frame.ring == box(0, -50, 550, 300)


def test_ends_of_areas_and_of_other_products_are_no_cuts() -> None:
    frame, _ = frame_around([board(box(0, 0, 100, 900))], LINES, Marks())
    assert frame.ring == box(-50, -50, 150, 950)


def test_marks_far_away_belong_elsewhere() -> None:
    marks = Marks(inside=((90_000, 0),), outside=((-100, 100),))
    frame, notes = frame_around([sheet((0, 0), (0, 2000))], LINES, marks)
    assert frame.marks == Marks(outside=((-100, 100),))
    assert notes[-1].text == "Marks far away from every piece are left out: “90000,0”."


def test_linework_alone_gets_a_frame_with_a_margin() -> None:
    frame = around_all([((0, 0), (100, 40)), ((20, -10), (30, 10))])
    assert frame.ring == box(-50, -60, 150, 90)


def test_the_box_of_several_runs_holds_them_all() -> None:
    assert box_of([((0, 5), (1, 1)), ((-3, 2),)]) == (-3, 1, 1, 5)
