"""Which rows and things stood where they stand before."""

import numpy as np
import pytest

from enclosure_app.geometry.rims.rows import NEW, same_rows, unlike

ROWS = np.array([[0.0, 1.0], [2.0, 3.0], [4.0, 5.0], [6.0, 7.0]])


def test_rows_that_are_others_are_new_and_the_rest_keep_their_numbers() -> None:
    changed = ROWS.copy()
    changed[2, 1] = 9.0
    assert same_rows(ROWS, changed).tolist() == [0, 1, NEW, 3]


@pytest.mark.parametrize("at", [0, 2, 4])
def test_rows_before_and_behind_one_that_was_put_in_are_found(at: int) -> None:
    more = np.insert(ROWS, at, [8.0, 8.0], axis=0)
    assert same_rows(ROWS, more).tolist() == [*range(at), NEW, *range(at, 4)]


@pytest.mark.parametrize("at", [0, 1, 3])
def test_rows_before_and_behind_one_that_was_taken_out_are_found(at: int) -> None:
    rest = [n for n in range(4) if n != at]
    assert same_rows(ROWS, ROWS[rest]).tolist() == rest


def test_nothing_is_found_in_an_empty_table_or_one_of_other_columns() -> None:
    assert same_rows(ROWS[:0], ROWS).tolist() == [NEW] * 4
    assert same_rows(np.zeros((3, 5)), ROWS).tolist() == [NEW] * 4


def test_things_are_told_apart_as_objects_whatever_they_are_equal_to() -> None:
    one, other = [1], [1]
    assert unlike([one, other, one], [one, one, one]) == [1]
    assert unlike([], []) == []
