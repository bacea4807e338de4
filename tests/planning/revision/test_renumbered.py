"""What was said of single lines is said of them again where they are numbered anew."""

from dataclasses import replace

from enclosure_app.model.layer import LayerRow
from enclosure_app.model.place import Points
from enclosure_app.model.project import Project
from enclosure_app.model.section import Stroke
from enclosure_app.planning.revision.renumbered import RowsNow, rows_now
from tests.planning.revision.walls import WALL, project

RUNS: list[Points] = [((100.0 * n, 0.0), (100.0 * n, 500.0 + 40.0 * n)) for n in range(6)]
ROWS = (
    LayerRow("A-*", "osb", handles=("1", "2")),
    LayerRow("A-WALL", "pir", handles=("3",)),
    LayerRow("A-ROOF", "housewrap"),
)


def drawn(names: list[str], *, by: float = 0.0, runs: list[Points] = RUNS) -> Project:
    strokes = tuple(
        Stroke(tuple((x + by, y) for x, y in run), "A-WALL", name)
        for name, run in zip(names, runs, strict=True)
    )
    return replace(project(replace(WALL, pieces=(), taken=strokes)), layers=ROWS)


BEFORE = drawn(["0", "1", "2", "3", "4", "5"])
ANEW = ["3", "A", "B", "C", "1", "2"]  # some are given out again, to other lines


def test_a_line_is_found_again_by_layer_size_and_place() -> None:
    for by in (0.0, 7000.0):
        now = rows_now(BEFORE, drawn(ANEW, by=by))
        assert now.lost == ()
        assert [row.handles for row in now.rows] == [("A", "B"), ("C",), ()]
        assert now.rows[2] == ROWS[2]


def test_where_handles_hold_nothing_is_changed_whatever_else_was() -> None:
    longer = [*RUNS[:3], ((300.0, 0.0), (300.0, 900.0)), *RUNS[4:]]
    assert rows_now(BEFORE, drawn(["0", "1", "2", "3", "4", "5"], runs=longer)) == RowsNow(ROWS)
    bare = replace(BEFORE, layers=ROWS[2:])
    assert rows_now(bare, drawn(ANEW)) == RowsNow(ROWS[2:])


def test_a_row_of_which_no_line_is_left_goes_and_is_never_for_the_whole_layer() -> None:
    fewer = [run for n, run in enumerate(RUNS) if n != 3]
    now = rows_now(BEFORE, drawn(["3", "A", "B", "1", "2"], runs=fewer))
    assert now == RowsNow((replace(ROWS[0], handles=("A", "B")), ROWS[2]), ("3",))


def test_of_two_lines_on_top_of_each_other_nobody_knows_which() -> None:
    twice = [*RUNS, RUNS[3]]
    now = rows_now(BEFORE, drawn([*ANEW, "D"], runs=twice))
    assert now.lost == ("3",)


def test_what_came_in_with_a_block_goes_by_the_blocks_handle() -> None:
    blocks = replace(BEFORE, layers=(LayerRow("A-*", "osb", handles=("9",)),))
    old = drawn(["0", "9/1", "9/2", "3", "4", "5"])
    now = rows_now(replace(old, layers=blocks.layers), drawn(["7", "F/1", "F/2", "A", "B", "C"]))
    assert [row.handles for row in now.rows] == [("F",)]
