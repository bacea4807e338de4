"""A run that is traced leg by leg, and laid beside its line."""

from itertools import islice, pairwise

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.geometry.linework.graph import LineworkGraph
from enclosure_app.model.section import Section
from enclosure_app.planning.tracing.guiding import Lay, laid, legs, on_line, outer_left, run_of
from enclosure_app.planning.tracing.tracing import NotJoinedError

WALL = ((0.0, 0.0), (0.0, 1000.0))
ROOF = ((-300.0, 1100.0), (1500.0, 2000.0))
FRAME = ((-900.0, -900.0), (2000.0, -900.0), (2000.0, 3000.0), (-900.0, 3000.0))


def section(outside: tuple[tuple[float, float], ...] = (), **more: object) -> Section:
    return Section("one", FRAME, (), {}, outside=outside, **more)  # type: ignore[arg-type]


def test_a_click_near_a_line_means_the_line_and_one_far_off_is_told() -> None:
    net = LineworkGraph.of([WALL])
    assert on_line(net, (8.0, 400.0), 20.0) == (0.0, 400.0)
    with pytest.raises(EnclosureError, match="No line is drawn here"):
        on_line(net, (80.0, 400.0), 20.0)
    with pytest.raises(EnclosureError, match="no drawn lines to follow"):
        on_line(LineworkGraph.of([]), (0.0, 0.0), 20.0)


def test_what_no_lines_join_is_bridged_where_it_is_near_and_the_bridge_is_told() -> None:
    net = LineworkGraph.of([WALL, ROOF])
    (leg,) = legs(net, (0.0, 1000.0), (0.0, 1250.0))
    assert leg.points == ((0.0, 1000.0), (0.0, 1250.0))
    assert leg.gaps == (((0.0, 1000.0), (0.0, 1250.0)),)
    with pytest.raises(NotJoinedError):
        legs(net, (0.0, 100.0), (1500.0, 2000.0))


def test_a_small_gap_is_carried_over_as_part_of_the_way() -> None:
    net = LineworkGraph.of([WALL, ((0.0, 1008.0), (0.0, 1500.0))])
    leg = next(legs(net, (0.0, 0.0), (0.0, 1500.0)))
    assert leg.points == ((0.0, 0.0), (0.0, 1500.0))
    assert leg.gaps == (((0.0, 1000.0), (0.0, 1008.0)),)


def test_legs_become_one_clean_run_from_footing_to_ridge() -> None:
    net = LineworkGraph.of([WALL, ROOF])
    places = [(0.0, 0.0), (0.0, 1000.0), (0.0, 1250.0), (1500.0, 2000.0)]
    several = [next(legs(net, a, b)) for a, b in pairwise(places)]
    assert run_of(several) == (places[0], places[2], places[3]), "straight on at the gap"


def test_other_ways_are_sought_when_they_are_asked_for() -> None:
    below, above = ((0, 0), (1000, 0), (1000, 900)), ((0, 0), (0, 900), (1000, 900))
    net = LineworkGraph.of([below, above])
    found = [way.points for way in islice(legs(net, (0.0, 0.0), (1000.0, 900.0)), 5)]
    assert set(found) == {below, above}


def test_straight_is_first_where_the_lines_lead_a_long_way_round() -> None:
    """From the wall's head to the roof deck, drawn lines lead only about the tail of the rafter."""
    tail = ((0.0, 1000.0), (-500.0, 700.0), (-600.0, 800.0), (0.0, 1160.0), (900.0, 1700.0))
    net = LineworkGraph.of([WALL, tail])
    straight, round_about = islice(legs(net, (0.0, 1000.0), (0.0, 1160.0)), 2)
    assert straight.points == ((0, 1000), (0, 1160))
    assert straight.gaps == (straight.points,)
    assert (len(round_about.points), round_about.gaps) == (4, ())


def test_straight_is_second_where_the_lines_lead_there_well_enough() -> None:
    net = LineworkGraph.of([((0.0, 0.0), (0.0, 100.0), (100.0, 100.0))])
    drawn, straight = islice(legs(net, (0.0, 0.0), (100.0, 100.0)), 2)
    assert (len(drawn.points), drawn.gaps) == (3, ())
    assert straight.points == ((0, 0), (100, 100))


def test_straight_is_no_choice_over_a_great_distance_nor_along_a_line() -> None:
    net = LineworkGraph.of([((0.0, 0.0), (0.0, 900.0), (900.0, 900.0))])
    assert len(list(legs(net, (0.0, 0.0), (900.0, 900.0)))) == 1
    assert len(list(legs(net, (0.0, 100.0), (0.0, 400.0)))) == 1


def test_two_clicks_on_one_place_are_told() -> None:
    with pytest.raises(EnclosureError, match="one place"):
        legs(LineworkGraph.of([WALL]), (0.0, 5.0), (0.0, 5.0))


def test_the_marks_know_the_outer_side() -> None:
    assert outer_left(section(outside=((-500.0, 300.0),)), WALL)
    assert not outer_left(section(outside=((700.0, 300.0),)), WALL)
    assert outer_left(section(inside=((700.0, 300.0),)), WALL)
    assert not outer_left(section(inside=((-700.0, 300.0),)), WALL)
    assert outer_left(section(), WALL), "unmarked, left counts as outer"


def test_of_several_marks_the_nearest_one_decides() -> None:
    """A house has an outside on both sides of it."""
    far, near = (5000.0, 500.0), (-400.0, 500.0)
    assert outer_left(section(outside=(far, near)), WALL)


def test_a_mark_beside_the_wall_says_less_of_the_roof_than_one_under_it() -> None:
    """Seen along the roof's line, the mark outside of the wall lies below it as well."""
    roof = ((-300.0, 2000.0), (3000.0, 5000.0))
    marked = section(outside=((-700.0, 500.0),), inside=((1500.0, 500.0),))
    assert outer_left(marked, roof)
    assert outer_left(marked, WALL)
    assert not outer_left(section(outside=((-700.0, 500.0),)), roof), "the only one there is"


def test_a_sheet_lies_outside_of_its_line_inside_or_on_it() -> None:
    assert laid(WALL, Lay.ON, 3.0, outer_left=True) == WALL
    assert laid(WALL, Lay.OUTSIDE, 3.0, outer_left=True) == ((-3, 0), (-3, 1000))
    assert laid(WALL, Lay.INSIDE, 3.0, outer_left=True) == ((3, 0), (3, 1000))
    assert laid(WALL, Lay.OUTSIDE, 12.7, outer_left=False) == ((12.7, 0), (12.7, 1000))
    assert laid(WALL, Lay.INSIDE, 0.0, outer_left=False) == WALL


def test_too_tight_a_turn_is_told() -> None:
    slot = ((0.0, 0.0), (0.0, 20.0), (4.0, 20.0), (4.0, 0.0))
    with pytest.raises(EnclosureError, match="turns too tightly"):
        laid(slot, Lay.INSIDE, 30.0, outer_left=True)
