"""Hatch lines inside rings."""

from itertools import pairwise

from enclosure_app.drawing.section.hatching import hatch


def test_hatch_lines_stop_at_the_edges_and_leave_holes_free() -> None:
    outer = ((0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0))
    hole = ((4.0, 4.0), (6.0, 4.0), (6.0, 6.0), (4.0, 6.0))
    lines = list(hatch((outer, hole), 0.0, 5.0))
    ends = [(round(a[0], 3), round(b[0], 3)) for a, b in lines if abs(a[1] - 5.0) < 0.01]
    assert ends == [(0.0, 4.0), (6.0, 10.0)]


def test_slanted_hatch_lines_keep_their_distance() -> None:
    ring = ((0.0, 0.0), (50.0, 0.0), (50.0, 50.0), (0.0, 50.0))
    lines = list(hatch((ring,), 45.0, 2.0))
    offs = sorted((a[1] - a[0]) / 2**0.5 for a, _ in lines)
    assert all(abs(b - a - 2.0) < 1e-6 for a, b in pairwise(offs))
    assert len(offs) == 35


def test_nothing_has_no_hatch() -> None:
    assert list(hatch((), 45.0, 2.0)) == []
