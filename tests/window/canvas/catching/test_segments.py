"""Segments in arrays."""

from enclosure_app.model.section import Stroke
from enclosure_app.window.canvas.catching.segments import segments_of, stroke_segments

RUNS = (((0.0, 0.0), (10.0, 0.0), (10.0, 50.0)), (), ((100.0, 100.0), (200.0, 90.0)))


def test_those_near_a_place_are_found_with_whose_they_are() -> None:
    segments = segments_of(RUNS)
    (number,) = segments.near((12.0, 30.0), 3.0)
    assert segments.ends(int(number)) == ((10.0, 0.0), (10.0, 50.0))
    assert segments.owner[number] == 0
    (last,) = segments.near((150.0, 97.0), 1.0)
    assert segments.owner[last] == 2


def test_nothing_is_near_where_nothing_is_drawn() -> None:
    assert len(segments_of(()).near((0.0, 0.0), 1e6)) == 0
    assert len(segments_of(RUNS).near((60.0, 60.0), 5.0)) == 0


def test_lines_of_the_office_keep_their_order() -> None:
    strokes = tuple(Stroke(run, "A", str(i)) for i, run in enumerate(RUNS) if run)
    assert stroke_segments(strokes).owner.tolist() == [0, 0, 1]
