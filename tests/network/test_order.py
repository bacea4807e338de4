"""Over at a lap means later."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.network.order import Order, building_order

lap = st.tuples(st.integers(0, 7), st.integers(0, 7)).filter(lambda pair: pair[0] != pair[1])


def test_sheets_go_on_from_the_bottom_up() -> None:
    order = building_order([("second", "third"), ("first", "second")])
    assert order == Order(sequence=("first", "second", "third"))


def test_sheets_that_do_not_touch_keep_the_order_in_which_they_were_named() -> None:
    order = building_order([("b", "x"), ("a", "y"), ("b", "y")])
    assert order.sequence == ("b", "x", "a", "y")


def test_no_laps_ask_for_no_order() -> None:
    assert building_order([]) == Order()


def test_a_sheet_that_laps_itself_says_nothing() -> None:
    assert building_order([("a", "a"), ("a", "b")]).sequence == ("a", "b")


def test_a_ring_of_laps_has_no_order_and_starts_with_the_sheet_named_first() -> None:
    order = building_order([("pan", "sheet"), ("sheet", "flashing"), ("flashing", "pan")])
    assert order == Order(cycles=(("pan", "sheet", "flashing"),))


def test_each_smallest_ring_is_told_once() -> None:
    laps = [("a", "b"), ("b", "a"), ("b", "c"), ("c", "d"), ("d", "b"), ("x", "y")]
    assert building_order(laps).cycles == (("a", "b"), ("b", "c", "d"))


def test_a_long_way_round_is_not_told_where_a_short_one_closes_the_ring() -> None:
    laps = [("a", "b"), ("b", "c"), ("c", "a"), ("b", "a")]
    assert building_order(laps).cycles == (("a", "b"), ("a", "b", "c"))


@pytest.mark.parametrize("length", [2, 500])
def test_a_long_ring_is_found_whole(length: int) -> None:
    names = [f"s{i}" for i in range(length)]
    laps = list(zip(names, [*names[1:], names[0]], strict=True))
    assert building_order(laps).cycles == (tuple(names),)


@given(st.lists(lap, max_size=20))
def test_either_every_lap_is_kept_or_every_ring_is_a_real_one(
    pairs: list[tuple[int, int]],
) -> None:
    laps = [(f"s{a}", f"s{b}") for a, b in pairs]
    order = building_order(laps)
    if order.cycles:
        assert order.sequence == ()
        assert len(set(order.cycles)) == len(order.cycles)
        for ring in order.cycles:
            assert set(zip(ring, (*ring[1:], ring[0]), strict=True)) <= set(laps)
    else:
        place = {name: i for i, name in enumerate(order.sequence)}
        assert set(place) == {name for pair in laps for name in pair}
        assert all(place[under] < place[over] for under, over in laps)
