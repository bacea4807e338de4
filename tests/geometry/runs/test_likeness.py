"""Runs that lie on each other, however they are drawn."""

import pytest

from enclosure_app.geometry.runs.likeness import length, lies_on, middle, same_run

RUN = ((0.0, 0.0), (100.0, 0.0), (100.0, 50.0))
RING = ((0.0, 0.0), (100.0, 0.0), (100.0, 50.0), (0.0, 50.0))


@pytest.mark.parametrize(
    "other",
    [
        RUN[::-1],
        ((0.0, 0.0), (40.0, 0.2), (100.0, 0.0), (100.0, 50.0)),
        ((0.3, 0.3), (100.3, 0.3), (100.3, 50.3)),
    ],
)
def test_one_run_drawn_otherwise(other: tuple[tuple[float, float], ...]) -> None:
    assert same_run(RUN, other, 0.5)


@pytest.mark.parametrize(
    "other",
    [
        ((0.0, 0.0), (100.0, 0.0), (100.0, 52.0)),  # goes on
        ((0.0, 0.0), (100.0, 50.0)),  # cuts the corner
        ((2.0, 0.0), (100.0, 0.0), (100.0, 50.0)),
        ((0.0, 1.0), (100.0, 1.0), (100.0, 51.0)),
    ],
)
def test_another_run(other: tuple[tuple[float, float], ...]) -> None:
    assert not same_run(RUN, other, 0.5)


def test_a_ring_may_begin_anywhere_and_run_either_way() -> None:
    turned = (*RING[2:], *RING[:2])
    assert same_run(RING, turned[::-1], 0.5, closed=True)
    assert not same_run(RING, RUN, 0.5, closed=True)


def test_a_part_lies_on_the_whole_and_not_the_whole_on_the_part() -> None:
    part = ((20.0, 0.1), (90.0, 0.0))
    assert lies_on(part, RUN, 0.5)
    assert not lies_on(RUN, part, 0.5)


def test_length_and_middle_do_not_change_with_points_along_the_way() -> None:
    more = ((0.0, 0.0), (30.0, 0.0), (100.0, 0.0), (100.0, 50.0))
    assert length(more) == length(RUN) == 150.0
    assert middle(more) == middle(RUN) == (50.0, 25.0)
