"""Break lines are looked for only where a run stops and goes on in the same line."""

from time import process_time

from enclosure_app.files.dxf.raw import RawPath, Tag
from enclosure_app.files.framing.gaps import break_lines_at, gaps_in
from enclosure_app.model.place import Line, Points
from enclosure_app.model.section import Piece

ZIGZAG: Points = ((0, 0), (110, 0), (115, 12), (125, -12), (130, 0), (240, 0))


def sheet(name: str, *points: tuple[float, float], product: str = "sheet") -> Piece:
    return Piece(name, product, Line(points))


def lines(points: Points, layer: str = "THIN") -> list[RawPath]:
    """One entity for each segment, as exploded drawings have it."""
    return [
        RawPath(Tag("LINE", f"{i}", layer), points[i : i + 2][:: (-1) ** i])
        for i in range(len(points) - 1)
    ]


def test_ends_that_face_each_other_in_one_line_are_a_gap() -> None:
    pieces = [sheet("1", (5, 0), (5, 100)), sheet("2", (8, 900), (5, 130))]
    assert [set(gap) for gap in gaps_in(pieces)] == [{(5, 100), (5, 130)}]


def test_other_products_sides_and_directions_are_no_gap() -> None:
    pieces = [
        sheet("1", (5, 0), (5, 100)),
        sheet("2", (5, 900), (5, 130), product="tape"),
        sheet("3", (45, 900), (45, 130)),
        sheet("4", (5, 160), (90, 160)),
        sheet("5", (5, 9000), (5, 5000)),
    ]
    assert gaps_in(pieces) == ()


def test_a_slanting_run_far_from_the_origin_has_its_gap() -> None:
    far = 1e7
    pieces = [
        sheet("1", (far, far), (far + 300, far + 100)),
        sheet("2", (far + 360, far + 120), (far + 900, far + 300)),
    ]
    assert gaps_in(pieces) == (((far + 300, far + 100), (far + 360, far + 120)),)


def test_only_the_nearest_end_makes_a_gap() -> None:
    pieces = [sheet(f"{x}", (x, 0), (x + 50, 0)) for x in (200, 0, 100)]
    assert sorted(tuple(sorted(gap)) for gap in gaps_in(pieces)) == [
        ((50, 0), (100, 0)),
        ((150, 0), (200, 0)),
    ]


def test_upright_runs_with_a_little_slop_have_their_gap() -> None:
    pieces = [sheet("1", (5, 0), (5 + 1e-9, 100)), sheet("2", (5, 130), (5 - 1e-9, 900))]
    assert [set(gap) for gap in gaps_in(pieces)] == [{(5 + 1e-9, 100), (5, 130)}]


def test_break_lines_in_separate_lines_are_found_about_a_gap() -> None:
    gaps = [((50.0, 0.0), (50.0, 30.0))]
    assert break_lines_at(gaps, lines(ZIGZAG)) == (ZIGZAG,)


def test_break_lines_elsewhere_are_not_looked_for() -> None:
    assert break_lines_at([((5000.0, 0.0), (5000.0, 30.0))], lines(ZIGZAG)) == ()


def test_parts_on_different_layers_are_not_put_together() -> None:
    mixed = lines(ZIGZAG[:4]) + lines(ZIGZAG[3:], "WIDE")
    assert break_lines_at([((50.0, 0.0), (50.0, 30.0))], mixed) == ()


def test_thousands_of_ends_are_quick() -> None:
    pieces = [
        sheet(f"{k}", (k % 70 * 40, k // 70 * 40), (k % 70 * 40 + 30, k // 70 * 40))
        for k in range(5000)
    ]
    start = process_time()
    gaps_in(pieces)
    assert process_time() - start < 0.8
