"""One leg and the ways it may take."""

import pytest

from enclosure_app.errors import EnclosureError
from enclosure_app.geometry.linework.graph import LineworkGraph
from enclosure_app.window.canvas.tools.trace_leg import leg_shown, leg_to

NET = LineworkGraph.of(
    [((0, 0), (100, 0), (100, 90)), ((0, 0), (0, 90), (100, 90)), ((0, 0), (100, 90))]
)


def test_it_turns_through_all_its_ways_and_back() -> None:
    leg = leg_to(NET, (0.0, 0.0), (100.0, 90.0))
    assert leg.way.points == ((0, 0), (100, 90))
    seen = [leg.way.points]
    for _ in range(2):
        leg.turn(1)
        seen.append(leg.way.points)
    assert len(set(seen)) == 3
    leg.turn(1)
    assert leg.way.points == seen[0]
    leg.turn(-1)
    assert leg.way.points == seen[-1]


def test_a_leg_that_has_one_way_keeps_it() -> None:
    leg = leg_to(LineworkGraph.of([((0, 0), (100, 0))]), (0.0, 0.0), (100.0, 0.0))
    leg.turn(1)
    leg.turn(-1)
    assert leg.way.points == ((0, 0), (100, 0))


def test_where_the_mouse_means_no_line_nothing_is_shown() -> None:
    assert leg_shown(NET, (0.0, 0.0), ((300.0, 300.0), 20.0)) is None
    assert leg_shown(NET, (0.0, 0.0), ((0.0, 0.0), 20.0)) is None
    shown = leg_shown(NET, (0.0, 0.0), ((104.0, 40.0), 20.0))
    assert shown is not None
    assert shown.way.points[-1] == (100, 40)
    with pytest.raises(EnclosureError):
        leg_to(NET, (0.0, 0.0), (0.0, 0.0))
