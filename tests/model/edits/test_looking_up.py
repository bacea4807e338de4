"""Sections and pieces are found by name or number, and new names are free ones."""

from collections.abc import Callable

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.model import edits
from enclosure_app.model.edits import looking_up
from enclosure_app.model.place import Area, Line
from enclosure_app.model.project import Project

House = Callable[..., Project]

LINE = Line(((0.0, 0.0), (9.0, 0.0), (9.0, 9.0)))
AREA = Area(((0.0, 0.0), (9.0, 0.0), (9.0, 9.0)), (((5.0, 1.0), (6.0, 1.0), (6.0, 2.0)),))


def test_a_section_is_found_by_its_name_and_its_place(house: House) -> None:
    project = house(a=LINE)
    assert edits.index_of(project, "Ridge") == edits.index_of(project, 1) == 1
    assert edits.section_of(project, "Ridge") is project.sections[1]
    assert edits.piece_of(project, 0, "a") is project.sections[0].pieces[0]


def test_names_are_the_first_free_ones_of_each_stem(house: House) -> None:
    section = house(**{"drawn-1": LINE, "drawn-3": LINE, "sill-2": LINE}).sections[0]
    stems = ["drawn", "drawn", "sill", "sill"]
    assert edits.new_names(section, stems) == ["drawn-2", "drawn-4", "sill-1", "sill-3"]


def test_the_runs_of_a_shape_close_its_rings() -> None:
    assert looking_up.runs_of(LINE) == [LINE.points]
    closed = Line(LINE.points, closed=True)
    assert looking_up.runs_of(closed) == [(*LINE.points, LINE.points[0])]
    hole = AREA.holes[0]
    assert looking_up.runs_of(AREA) == [(*AREA.outer, AREA.outer[0]), (*hole, hole[0])]


def test_a_piece_is_replaced_where_it_stands_by_several(house: House) -> None:
    project = house(a=LINE, b=LINE, c=LINE)
    a, b, c = project.sections[0].pieces
    after = looking_up.with_pieces(project, 0, {"b": [c, b], "c": []})
    assert list(map(id, after.sections[0].pieces)) == list(map(id, (a, c, b)))


def test_an_area_is_not_taken_for_a_line(house: House) -> None:
    with pytest.raises(EnclosureError, match='"a" is an area; only a line can be changed'):
        looking_up.line_of(house(a=AREA), 0, "a")
