"""The cross in a timber is no piece."""

from enclosure_app.files.framing.symbols import symbols_among

RING = ((0, 0), (38, 0), (38, 140), (0, 140))
CROSS = (((0, 0), (38, 140)), ((0, 140), (38, 0)))


def test_lines_within_an_area_are_symbols() -> None:
    assert symbols_among([CROSS[0], ((50, 0), (50, 100))], [RING]) == {0}


def test_a_line_that_leaves_the_area_is_none() -> None:
    assert symbols_among([((0, 0), (60, 100))], [RING]) == frozenset()


def test_the_diagonals_of_a_rectangle_are_symbols_without_an_area() -> None:
    sides = [((0, 0), (38, 0)), ((38, 0), (38, 140)), ((0, 140), (38, 140)), ((0, 0), (0, 140))]
    assert symbols_among([*sides, *CROSS], []) == {4, 5}


def test_lines_that_cross_elsewhere_or_lie_on_each_other_are_none() -> None:
    crossing = [((0, 0), (100, 0)), ((30, -50), (30, 50))]
    twice = [((0, 9), (100, 9)), ((100, 9), (0, 9))]
    assert symbols_among(crossing + twice, []) == frozenset()
