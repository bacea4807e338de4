"""Where a drop may run on a face, and what bars or hides its way."""

from collections.abc import Mapping

import numpy as np
import pytest

from enclosure_app.model.limits import Tolerances
from enclosure_app.model.place import Area, Line, Point, Shape
from enclosure_app.network.rain.runs import Foot, Ground
from enclosure_app.network.rain.surfaces import surfaces_of

FRAME = ((-500.0, -100.0), (500.0, -100.0), (500.0, 1000.0), (-500.0, 1000.0))


def line(*points: Point) -> Line:
    return Line(points)


def ground(over: Mapping[tuple[str, str], str] | None = None, **pieces: Shape) -> Ground:
    return Ground(
        surfaces_of(pieces), FRAME, Tolerances(), lambda points: points[:, 0] > 0.6, over or {}
    )


def ways(made: Ground) -> set[tuple[Point, Point]]:
    return {
        (tuple(made.start[r].tolist()), tuple(made.end[r].tolist()))
        for r in np.flatnonzero(made.wets)
    }


def the_run(made: Ground, name: str, *, side: float = 1.0) -> int:
    """The run down the face of a piece that looks to `side`."""
    (run,) = [
        r
        for r in np.flatnonzero(made.wets).tolist()
        if made.name(r // 2) == name and made.normals[r // 2][0] * side > 0
    ]
    return run


def test_a_drop_runs_down_a_slope_on_its_upper_face_only() -> None:
    made = ground(a=line((0, 0), (100, 20)))
    assert ways(made) == {((100, 20), (0, 0))}
    assert made.normals[int(np.flatnonzero(made.wets)[0]) // 2][1] > 0


def test_it_runs_both_ways_on_a_level_face() -> None:
    assert ways(ground(a=line((0, 0), (100, 0)))) == {((0, 0), (100, 0)), ((100, 0), (0, 0))}


def test_a_face_that_leans_over_keeps_the_drop_up_to_six_degrees() -> None:
    made = ground(a=line((0, 100), (9, 0)))
    assert len(ways(made)) == 1
    assert np.flatnonzero(made.wets).size == 2
    assert np.flatnonzero(ground(a=line((0, 100), (11, 0))).wets).size == 1


@pytest.mark.parametrize(
    ("onward", "foot"),
    [((150, 5), Foot.FACE), ((150, 30), Foot.LOW), ((90, 5), Foot.EDGE)],
    ids=["downhill", "uphill", "back under"],
)
def test_what_a_drop_finds_at_the_foot_of_a_slope(onward: Point, foot: Foot) -> None:
    made = ground(a=line((0, 40), (100, 10), onward))
    assert {made.foot(r) for r in np.flatnonzero(made.wets) if made.start[r, 0] == 0} == {foot}


def test_a_leg_bars_the_way_where_it_runs_out_of_the_sheet() -> None:
    made = ground(S=line((0, 100), (0, 0)), F=line((-5, 51), (50, 40)))
    (bar,) = made.bars[the_run(made, "S")]
    assert bar.corner == pytest.approx((0, 50))
    assert bar.station == pytest.approx(50)
    assert made.name(bar.run // 2) == "F"
    assert made.at(bar.run, bar.onto) == pytest.approx((0, 50))


@pytest.mark.parametrize(
    ("apart", "over", "hides"),
    [
        (5.0, {}, True),
        (-5.0, {}, False),
        (1.0, {}, True),
        (0.0, {}, False),
        (0.0, {("L", "U"): "L"}, True),
        (1.0, {("L", "U"): "U"}, False),
        (5.0, {("L", "U"): "U"}, True),
    ],
    ids=["in front", "behind", "just in front", "as one", "told", "told against slop", "drawn"],
)
def test_which_sheet_lies_in_front(
    apart: float, over: dict[tuple[str, str], str], *, hides: bool
) -> None:
    made = ground(over, U=line((0, 100), (0, 40)), L=line((apart, 60), (apart, 0)))
    flanks = made.flanks[the_run(made, "U") // 2]
    assert {flank.hides for flank in flanks} == {hides}
    assert [flank.apart for flank in flanks] == pytest.approx([apart, apart])


@pytest.mark.parametrize("end", [-500.0, -498.5])
def test_a_drop_leaves_with_the_piece_that_the_frame_cuts(end: float) -> None:
    made = ground(roof=line((0, 50), (end, 10)), eave=line((100, 50), (300, 40)))
    leaving = {made.name(run // 2) for run in np.flatnonzero(made.wets & made.goes_on).tolist()}
    assert leaving == {"roof"}


def test_an_edge_that_hangs_beside_the_frame_is_an_edge() -> None:
    made = ground(leg=line((499, 500), (499, 300)))
    assert not made.goes_on.any()


def test_where_the_frame_cuts_a_piece_there_is_no_face() -> None:
    wall = Area(((10, 500), (60, 500), (60, 1000), (10, 1000)))
    made = ground(wall=wall)
    assert [made.normals[edge] for edge in np.flatnonzero(made.cut).tolist()] == [[0, 1]]
    assert {made.normals[run // 2][0] for run in np.flatnonzero(made.wets).tolist()} == {-1, 1}


def test_a_sheet_along_the_frame_keeps_its_face_to_the_drawing() -> None:
    made = ground(sheet=line((499, 900), (499, 100)))
    faces = [made.normals[run // 2][0] for run in np.flatnonzero(made.wets).tolist()]
    assert faces == [-1]
