"""Drops on their way, and streams through openings."""

from dataclasses import replace
from math import dist

import pytest

from enclosure_app.drawing.marks import Fill, Stroke
from enclosure_app.drawing.placement import Placement
from enclosure_app.drawing.polylines import foot
from enclosure_app.drawing.section.rain_marks import all_stream_marks, has_stream, rain_marks
from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.product import Control
from enclosure_app.model.report import Continuity, RainRoute, RouteEnd
from tests.drawing import eave

THEME = load_theme()
VIEW = Placement(10.0)
DOWN = (0.0, -1.0)


def test_a_route_is_dotted_with_drops_on_it_and_an_arrow_at_its_end() -> None:
    route = RainRoute(((0.0, 1000.0), (0.0, 0.0)), ("w1",), RouteEnd.OUTSIDE)
    marks = list(rain_marks((route,), VIEW, DOWN, THEME))
    way, head = (m for m in marks if isinstance(m, Stroke))
    drops = [m for m in marks if isinstance(m, Fill)]
    assert way.pen == THEME.pen("rain")
    assert head.points[1] == (0.0, 0.0)
    assert [round(m.rings[0][0][1]) for m in drops] == pytest.approx(
        [92, 74, 58, 40, 24, 6], abs=1
    )


def test_a_route_that_ends_inside_is_heavier() -> None:
    ways = [
        next(m for m in rain_marks((replace(eave.RAIN[0], end=end),), VIEW, DOWN, THEME) if isinstance(m, Stroke))
        for end in (RouteEnd.INSIDE, RouteEnd.OUTSIDE)
    ]  # fmt: skip
    assert ways[0].pen.width > ways[1].pen.width


def test_a_route_of_one_place_is_not_drawn() -> None:
    still = RainRoute(((5.0, 5.0), (5.0, 5.0)), (), RouteEnd.STANDS)
    assert list(rain_marks((still,), VIEW, DOWN, THEME)) == []


def test_a_stream_runs_from_outside_through_the_gap_to_inside() -> None:
    marks = list(all_stream_marks([eave.AIR], VIEW, THEME))
    band = next(m for m in marks if isinstance(m, Fill))
    heads = [m for m in marks if isinstance(m, Stroke) and len(m.points) == 3]
    gap = VIEW.point((160, 105))
    assert min(dist(p, gap) for p in band.rings[0]) < 3.0
    assert heads[-1].points[1][0] < gap[0] < max(x for x, _ in band.rings[0])


def test_a_stream_is_as_wide_as_the_opening_within_limits() -> None:
    def width(opening: float) -> float:
        marks = all_stream_marks([replace(eave.AIR, opening=opening)], VIEW, THEME)
        ring = next(m for m in marks if isinstance(m, Fill)).rings[0]
        half = len(ring) // 2
        return min(foot(ring[half:], p).off for p in ring[5 : half - 5])

    assert width(2.0) == pytest.approx(1.0, abs=0.15)
    assert width(20.0) == pytest.approx(2.0, abs=0.25)
    assert width(900.0) == pytest.approx(3.2, abs=0.4)


def test_streams_of_two_layers_run_beside_each_other() -> None:
    water = replace(eave.AIR, control=Control.WATER)
    one, other = (
        m.rings[0] for m in all_stream_marks([water, eave.AIR], VIEW, THEME) if isinstance(m, Fill)
    )
    assert dist(one[0], other[0]) > 1.0


def test_only_open_water_and_air_layers_have_a_stream() -> None:
    assert has_stream(eave.AIR)
    assert not has_stream(replace(eave.AIR, continuity=Continuity.CONTINUOUS))
    assert not has_stream(replace(eave.AIR, way_in=()))
    assert not has_stream(replace(eave.AIR, control=Control.HEAT))
    same = replace(eave.AIR, way_in=((0.0, 0.0), (0.0, 0.0)))
    assert list(all_stream_marks([same], VIEW, THEME)) == []
