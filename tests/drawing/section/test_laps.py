"""Lapped sheets are shown apart, the outer one further out, and painted after the inner one."""

from collections.abc import Mapping
from dataclasses import replace

import pytest

from enclosure_app.checker import check_section
from enclosure_app.drawing.placement import Placement
from enclosure_app.drawing.polylines import foot, walk_to
from enclosure_app.drawing.section.laps import (
    APART,
    lap_run,
    painting_order,
    sheets_in_turn,
    shown_sheets,
)
from enclosure_app.drawing.section.sides import sides_of
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.model.place import Line, Point, Points
from enclosure_app.model.report import Continuity, LayerResult, SectionResult
from tests.benchmarks.walls import wall_of_sheets
from tests.drawing import eave

VIEW = Placement(20.0)


def shown(result: SectionResult | None = None) -> Mapping[str, Points]:
    result = result or eave.result()
    return shown_sheets(result, VIEW, sides_of(result, VIEW))


@pytest.mark.parametrize(
    ("outer", "inner", "place"),
    [("w2", "w1", (161, 940)), ("w3", "w2", (164, 1940)), ("r1", "r2", eave.roof(520, 6)), ("w1", "base", (159, 150))],
)  # fmt: skip
def test_the_outer_sheet_of_a_lap_is_shown_further_out(
    outer: str, inner: str, place: Point
) -> None:
    sheets = shown()
    at = foot(sheets[inner], VIEW.point(place)).at
    sides = sides_of(eave.result(), VIEW)
    out = sides.outward(at, foot(sheets[inner], at).direction)
    beside = foot(sheets[outer], at).at
    apart = (beside[0] - at[0]) * out[0] + (beside[1] - at[1]) * out[1]
    assert apart >= APART - 0.2


def test_away_from_its_laps_a_sheet_is_shown_where_it_was_drawn() -> None:
    sheets = shown()
    for name, place in (("w1", (160, 600)), ("w2", (163, 1500)), ("r1", eave.roof(350, 8))):
        assert foot(sheets[name], VIEW.point(place)).off < 0.01


def test_sheets_without_a_lap_stay() -> None:
    assert shown()["floor"] == VIEW.points(eave.LINES[7].shape.points)


def test_the_outer_sheet_is_painted_after_the_inner_one() -> None:
    order = painting_order(eave.result())
    for inner, outer in (("w1", "w2"), ("w2", "w3"), ("w3", "r1"), ("r2", "r1")):
        assert order.index(inner) < order.index(outer)
    assert sorted(order) == sorted(p.name for p in eave.section().pieces)


def test_of_many_sheets_under_one_all_are_painted_as_they_were_drawn() -> None:
    names = [p.name for p in eave.section().pieces]
    over_all, *others = names
    laps = tuple(
        eave.lap(name, over_all, over_all, (eave.W12.run_a, eave.W12.run_b)) for name in others
    )
    layer = LayerResult(eave.W, Continuity.CONTINUOUS, eave.WATER.walk, laps)
    assert painting_order(eave.result(layers={eave.W: layer})) == (*others, over_all)


def test_sheets_that_no_one_can_put_on_are_painted_as_they_were_drawn() -> None:
    ring = (eave.lap("w1", "w2", "w2", (eave.W12.run_a, eave.W12.run_b)),
            replace(eave.W12, over="w1", at=(0, 0)))  # fmt: skip
    layer = LayerResult(eave.W, Continuity.CONTINUOUS, eave.WATER.walk, ring)
    result = eave.result(layers={eave.W: layer})
    assert painting_order(result) == tuple(p.name for p in eave.section().pieces)


def test_the_lapped_part_of_a_sheet_keeps_the_direction_of_its_run() -> None:
    sheets = shown()
    part = lap_run(sheets["w1"], VIEW.points(eave.W12.run_a))
    back = lap_run(sheets["w1"], VIEW.points(eave.W12.run_a[::-1]))
    assert part == back[::-1]
    assert part[0][1] == pytest.approx(44.0)
    assert walk_to(part, 1.0)[1] == (0.0, 1.0)


def test_sheets_are_spread_one_in_a_turn() -> None:
    result = eave.result()
    sides = sides_of(result, VIEW)
    whole = shown_sheets(result, VIEW, sides)
    steps = sheets_in_turn(result, VIEW, sides)
    assert [next(steps) for _ in whole] == [None] * len(whole)
    with pytest.raises(StopIteration) as end:
        next(steps)
    assert end.value.value == whole


@pytest.mark.parametrize("scale", [200.0, 390.0, 1000.0, 4000.0])
def test_however_small_the_scale_no_sheet_climbs_away_from_its_place(scale: float) -> None:
    wall = wall_of_sheets(60, gap=False)
    result = check_section(wall, load_limits())
    far = Placement(scale)
    sheets = shown_sheets(result, far, sides_of(result, far))
    for piece in wall.pieces:
        assert isinstance(piece.shape, Line)
        true = far.points(piece.shape.points)
        off = [foot(true, at).off for at in sheets[piece.name]]
        assert max(off) <= 4 * APART + 0.01
