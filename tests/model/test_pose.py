"""A settled section has gravity along -y and its frame near the origin, and can be put back."""

from math import cos, dist, pi, sin

import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.model.place import Area, Line, Point
from enclosure_app.model.pose import settle
from enclosure_app.model.section import DOWN, Break, Piece, Section

FAR = 1e6


def section(gravity: Point | None) -> Section:
    frame = ((FAR, FAR), (FAR + 400, FAR), (FAR + 400, FAR + 900), (FAR, FAR + 900))
    pieces = (
        Piece("1", "sheet", Line(((FAR + 10, FAR), (FAR + 10, FAR + 900)), width=2.0)),
        Piece("2", "board", Area(frame, (((FAR + 50, FAR + 50),) * 3,))),
    )
    cut = Break(((FAR, FAR + 1), (FAR + 9, FAR + 1)), ((FAR, FAR + 5), (FAR + 9, FAR + 5)))
    return Section(
        "S", frame, pieces, {}, inside=((FAR + 300, FAR + 5),), gravity=gravity, breaks=(cut,)
    )


def test_an_upright_section_is_only_moved_near_the_origin() -> None:
    settled, _ = settle(section(DOWN))
    assert settled.frame == ((0, 0), (400, 0), (400, 900), (0, 900))
    assert settled.inside == ((300, 5),)
    assert settled.by_name["1"].shape == Line(((10, 0), (10, 900)), width=2.0)
    assert settled.by_name["2"].shape == Area(settled.frame, (((50, 50),) * 3,))
    assert settled.breaks == (Break(((0, 1), (9, 1)), ((0, 5), (9, 5))),)


def test_what_falls_to_the_right_on_the_sheet_falls_down_when_settled() -> None:
    settled, pose = settle(section((1.0, 0.0)))
    start, end = pose.settled((FAR, FAR)), pose.settled((FAR + 10, FAR))
    assert (end[0] - start[0], end[1] - start[1]) == pytest.approx((0.0, -10.0))
    assert settled.gravity == DOWN


def test_a_plan_stays_without_gravity() -> None:
    settled, _ = settle(section(None))
    assert settled.gravity is None
    assert settled.frame == ((0, 0), (400, 0), (400, 900), (0, 900))


@given(st.floats(0, 2 * pi), st.tuples(st.floats(-1e6, 1e6), st.floats(-1e6, 1e6)))
def test_every_place_comes_back_to_where_it_was_drawn(angle: float, place: Point) -> None:
    _, pose = settle(section((cos(angle), sin(angle))))
    assert dist(pose.drawn(pose.settled(place)), place) < 1e-6
    assert pose.all_drawn([pose.settled(place)])[0] == pose.drawn(pose.settled(place))
