"""Ends of lines that run on."""

from dataclasses import replace

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.drawing import Units
from enclosure_app.model.edits import End, lengthen, nearest_end, run_on
from enclosure_app.model.place import Area, Line, Points
from enclosure_app.model.project import Project
from enclosure_app.model.section import Piece, Section, Stroke

FRAME = ((0.0, 0.0), (1000.0, 0.0), (1000.0, 1000.0), (0.0, 1000.0))
BOARD = Area(((600.0, 0.0), (612.0, 0.0), (612.0, 500.0), (600.0, 500.0)))


def project(points: Points, *, closed: bool = False) -> Project:
    pieces = (Piece("sheet", "felt", Line(points, closed=closed)), Piece("b", "plywood", BOARD))
    return Project("p", Units.MM, (Section("s", FRAME, pieces, load_products()),))


def points(after: Project) -> Points:
    shape = after.sections[0].by_name["sheet"].shape
    assert isinstance(shape, Line)
    return shape.points


@pytest.mark.parametrize(
    ("end", "expected"),
    [
        (End.END, ((100.0, 300.0), (600.0, 300.0))),
        (End.START, ((0.0, 300.0), (400.0, 300.0))),
    ],
)
def test_it_runs_on_to_the_first_board_or_the_frame(end: End, expected: Points) -> None:
    before = project(((100.0, 300.0), (400.0, 300.0)))
    assert list(points(run_on(before, 0, "sheet", end))) == [pytest.approx(p) for p in expected]
    assert run_on(before, 0, "sheet", end).sections[0].pieces[1] is before.sections[0].pieces[1]


@pytest.mark.parametrize(("given", "x"), [(None, 450.0), ((), 600.0)])
def test_it_runs_on_to_a_line_of_the_offices(given: tuple[Points, ...] | None, x: float) -> None:
    before = project(((100.0, 300.0), (400.0, 300.0)))
    line = Stroke(((450.0, 0.0), (450.0, 900.0)), "A", "1")
    before = replace(before, sections=(replace(before.sections[0], strokes=(line,)),))
    assert points(run_on(before, 0, "sheet", End.END, given))[1] == pytest.approx((x, 300.0))


def test_nothing_in_its_way_is_told() -> None:
    with pytest.raises(EnclosureError, match="meets nothing when it runs straight on"):
        run_on(project(((900.0, 1100.0), (900.0, 1200.0))), 0, "sheet", End.END)


@pytest.mark.parametrize(("by", "x"), [(120.0, 520.0), (-120.0, 280.0)])
def test_it_gets_longer_or_shorter_by_a_length(by: float, x: float) -> None:
    after = lengthen(project(((100.0, 300.0), (400.0, 300.0))), 0, "sheet", End.END, by)
    assert points(after) == ((100.0, 300.0), (x, 300.0))


@pytest.mark.parametrize("by", [-300.0, -1000.0, float("nan")])
def test_it_cannot_get_shorter_than_its_last_stretch(by: float) -> None:
    with pytest.raises(EnclosureError, match="no longer than that"):
        lengthen(project(((100.0, 300.0), (400.0, 300.0))), 0, "sheet", End.END, by)


def test_a_closed_line_has_no_end() -> None:
    ring = ((0.0, 0.0), (9.0, 0.0), (9.0, 9.0))
    with pytest.raises(EnclosureError, match="closed and has no end"):
        run_on(project(ring, closed=True), 0, "sheet", End.END)


def test_the_nearest_end_is_meant() -> None:
    line = Line(((0.0, 0.0), (10.0, 0.0)))
    assert nearest_end(line, (4.0, 3.0)) is End.START
    assert nearest_end(line, (6.0, 3.0)) is End.END
