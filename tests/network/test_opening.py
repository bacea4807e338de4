"""From the shapes of pieces to the width of the opening between them."""

from math import cos, pi, sin
from time import process_time

import numpy as np
import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.model.place import Area, Line, Point, Points, Shape
from enclosure_app.network.opening import Opening, find_opening

FRAME: Points = ((0, 0), (1000, 0), (1000, 600), (0, 600))
OUT: Point = (500, 500)
IN: Point = (500, 100)


def opening(*shapes: Shape, outside: Point = OUT, inside: Point = IN) -> Opening:
    return find_opening(FRAME, shapes, [], [outside], [inside], 2.0)


def test_bare_lines_are_as_long_as_drawn() -> None:
    found = opening(Line(((0, 300), (480, 300))), Line(((510, 300), (1000, 300))))
    assert found.width == pytest.approx(30, abs=1e-6)
    assert found.path[0] == OUT
    assert found.path[-1] == IN


def test_marks_in_one_open_space_have_nothing_in_their_way() -> None:
    sill = Line(((0, 40), (1000, 40)))
    assert opening(sill, outside=(480, 500), inside=(520, 100)).unhindered
    assert not opening(Line(((0, 300), (480, 300)))).unhindered
    assert not opening(Line(((0, 300), (1000, 300)))).unhindered  # there is no way at all


def test_the_drawn_thickness_of_a_sheet_narrows_the_way_beside_it_but_not_beyond_its_end() -> None:
    post = Area(((495, 0), (505, 0), (505, 250), (495, 250)))
    sheet = Line(((0, 300), (700, 300)), width=8)
    wall = Line(((700, 600), (700, 340)))
    found = opening(sheet, post, wall, outside=(850, 100), inside=(100, 100))
    assert found.width == pytest.approx(46, abs=1e-6)
    ends = opening(Line(((0, 300), (480, 300)), width=8), Line(((510, 300), (1000, 300)), width=8))
    assert ends.width == pytest.approx(30, abs=1e-6)


def test_a_closed_line_has_no_way_in() -> None:
    ring = tuple((500 + 150 * cos(k), 300 + 150 * sin(k)) for k in np.linspace(0, 2 * pi, 13)[:-1])
    assert opening(Line(ring, closed=True), outside=(50, 50), inside=(500, 300)).width == 0
    side = 2 * 150 * sin(pi / 12)
    found = opening(Line(ring), outside=(50, 50), inside=(500, 300))
    assert found.width == pytest.approx(side, abs=1e-6)


def test_a_mark_in_the_hole_of_an_area_is_in_the_open() -> None:
    outer = ((300, 100), (700, 100), (700, 500), (300, 500))
    hole = ((350, 150), (650, 150), (650, 450), (350, 450))
    assert opening(Area(outer, (hole,)), outside=(100, 300), inside=(500, 300)).width == 0


def test_an_outline_that_crosses_itself_is_mended_before_it_is_measured() -> None:
    bow = Area(((0, 250), (450, 350), (450, 250), (0, 350)))
    found = opening(bow, Line(((470, 300), (1000, 300))))
    assert found.width == pytest.approx(20, abs=1e-6)


def test_a_layer_without_pieces_is_all_open() -> None:
    assert opening().width == pytest.approx(600, rel=1e-4)


@pytest.mark.parametrize(
    ("outside", "inside", "side"), [((500, 300), IN, "outside"), (OUT, (500, 300), "inside")]
)
def test_a_mark_on_a_piece_is_named_in_a_sentence(
    outside: Point, inside: Point, side: str
) -> None:
    with pytest.raises(EnclosureError) as caught:
        opening(Line(((0, 300), (1000, 300))), outside=outside, inside=inside)
    assert str(caught.value) == (
        f"The {side} mark at 500, 300 lies on a piece or beyond the frame: move it into the open."
    )


def test_a_missing_mark_is_named_in_a_sentence() -> None:
    with pytest.raises(EnclosureError, match="no inside mark in the frame: place one"):
        find_opening(FRAME, [], [], [OUT], [], 2.0)


def wavy(number: int, gap: float) -> tuple[Points, list[Shape], Point, Point]:
    """Return a wavy layer of `number` pieces of three segments, with one gap in the middle."""
    length = 200.0 * number
    x = np.linspace(0, length, 3 * number + 1)
    y = 300 * np.sin(x / 700) + np.random.default_rng(1).normal(0, 8, x.size)
    points = np.column_stack([x, y]).tolist()
    pieces = [[tuple(p) for p in points[3 * k : 3 * k + 4]] for k in range(number)]
    cut = pieces[number // 2]
    (ax, ay), (bx, by) = cut[-2], cut[-1]
    share = 1 - gap / float(np.hypot(bx - ax, by - ay))
    cut[-1] = (ax + share * (bx - ax), ay + share * (by - ay))
    frame = ((0.0, -2000.0), (length, -2000.0), (length, 2000.0), (0.0, 2000.0))
    return frame, [Line(tuple(p)) for p in pieces], (length / 2, 1500.0), (length / 2, -1500.0)


@pytest.mark.parametrize("gap", [0.0, 30.0])
def test_the_time_grows_hardly_faster_than_the_number_of_pieces(gap: float) -> None:
    times = []
    for number in (500, 4000):
        frame, shapes, outside, inside = wavy(number, gap)
        best = 1e9
        for _ in range(3):
            start = process_time()
            found = find_opening(frame, shapes, [], [outside], [inside], 2.0)
            best = min(best, process_time() - start)
        assert found.width == pytest.approx(gap, abs=1e-5)
        times.append(best)
    assert times[1] / times[0] < 8**1.4
