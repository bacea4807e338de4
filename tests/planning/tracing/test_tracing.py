"""Guided tracing in a section: words when it cannot be done, pieces' edges, sheets beside lines."""

from pathlib import Path

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.files.reading import ReadOptions, read_drawing
from enclosure_app.model.place import Area, Line
from enclosure_app.model.section import Piece, Section, Stroke
from enclosure_app.planning.tracing.tracing import NotJoinedError, beside, graph_of, traced

FRAME = ((-50, -50), (500, -50), (500, 500), (-50, 500))


def section(*strokes: Stroke, pieces: tuple[Piece, ...] = ()) -> Section:
    return Section("one", FRAME, pieces, {}, strokes=strokes)


def test_lines_and_the_edges_of_pieces_are_followed_as_one() -> None:
    board = Piece("b", "plywood", Area(((0, 0), (12, 0), (12, 200), (0, 200))))
    graph = graph_of(section(Stroke(((0, 200), (-30, 230))), pieces=(board,)))
    (way,) = traced(graph, (-1, 10), (-30, 230))
    assert way.points == ((0, 10), (0, 200), (-30, 230))


def test_a_closed_line_is_followed_over_its_seam() -> None:
    ring = Piece("r", "housewrap", Line(((0, 0), (100, 0), (100, 100), (0, 100)), closed=True))
    (way,) = traced(graph_of(section(pieces=(ring,))), (0, 80), (20, 0))
    assert way.points == ((0, 80), (0, 0), (20, 0))


def test_places_that_are_not_joined_are_said_with_the_gap_between_them() -> None:
    graph = graph_of(section(Stroke(((0, 0), (100, 0))), Stroke(((140, 0), (200, 0)))))
    with pytest.raises(NotJoinedError, match=r"not joined by drawn lines.* than 40 mm") as told:
        traced(graph, (10, 0), (190, 0))
    assert told.value.gap == ((100, 0), (140, 0))


def test_two_clicks_on_one_place_are_said() -> None:
    graph = graph_of(section(Stroke(((0, 0), (100, 0)))))
    with pytest.raises(EnclosureError, match="one place"):
        traced(graph, (50, 5), (50, -5))


def test_a_sheet_of_paper_without_lines_is_said() -> None:
    with pytest.raises(EnclosureError, match="no drawn lines to follow"):
        traced(graph_of(section()), (0, 0), (1, 1))


def test_a_sheet_beside_the_traced_line_is_mitred_at_corners() -> None:
    run = ((0.0, 0.0), (0.0, 100.0), (80.0, 100.0))
    assert beside(run, (-20.0, 50.0)) == ((-3, 0), (-3, 103), (80, 103))
    assert beside(run, (40.0, 50.0)) == ((3, 0), (3, 97), (80, 97))


def test_a_line_that_turns_too_tightly_for_the_distance_is_said() -> None:
    """A slot 4 mm wide has no room inside for a sheet 30 mm off its sides."""
    slot = ((0.0, 0.0), (0.0, 20.0), (4.0, 20.0), (4.0, 0.0))
    with pytest.raises(EnclosureError, match="too tightly for a sheet 30 mm off it"):
        beside(slot, (2.0, 10.0), 30.0)


def test_a_real_house_is_traced_from_footing_to_ridge_in_four_clicks(
    office_drawings: Path,
) -> None:
    """Footing to wall head, and roof deck over the wall to ridge; between them nothing is drawn."""
    path = office_drawings / "sections" / "house_section.dxf"
    drawing = read_drawing(path, ReadOptions(linework=True, require_marks=False))
    graph = graph_of(drawing.sections[0])
    (wall,) = traced(graph, (3645, -1225), (3629, 3580))
    (roof,) = traced(graph, (3605, 3722), (7493, 6975))
    rounded = [(round(x), round(y)) for x, y in wall.points]
    assert rounded == [(3648, -1225), (3648, 762), (3629, 762), (3629, 3580)]
    assert [(round(x), round(y)) for x, y in roof.points[1:]] == [
        (5213, 5060), (5213, 5075), (7493, 6975)
    ]  # fmt: skip
    assert (wall.gaps, roof.gaps) == ((), ())
