"""A sheet drawn as a thin closed outline gives back its run and its thickness."""

from dataclasses import dataclass, replace
from itertools import pairwise
from math import cos, hypot, pi, radians, sin

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from enclosure_app.geometry.outlines.outline import Points, strip

ARC = tuple((300 * cos(radians(a)) - 300, 300 * sin(radians(a))) for a in range(0, 95, 5))
RUNS = {
    "straight": ((0, 0), (500, 0)),
    "leaning": ((0, 0), (300, 211)),
    "L": ((0, 0), (200, 0), (200, 150)),
    "Z": ((0, 0), (100, 0), (100, 80), (220, 80)),
    "S": ((0, 0), (100, 0), (100, 60), (0, 60), (0, 120), (100, 120)),
    "obtuse": ((0, 0), (200, 0), (360, 70)),
    "arc": ARC,
    "hem": ((0, 0), (150, 0), (150, -80), (141, -80), (141, -60)),
    "drip edge": ((0, 0), (100, 0), (100, -40), (112, -52)),
}


def outline(run: Points, width: float) -> Points:
    """Draw a run as an outline, with nothing of the program in it."""
    band = shapely.LineString(run).buffer(
        width / 2, cap_style="flat", join_style="mitre", mitre_limit=10
    )
    return tuple(band.exterior.coords[:-1])


def off(found: Points, run: Points) -> float:
    """Return how far two runs are apart, mm."""
    return shapely.hausdorff_distance(
        shapely.LineString(found), shapely.LineString(run), densify=0.02
    )


@pytest.mark.parametrize("width", [0.8, 3.0, 5.0])
@pytest.mark.parametrize("name", RUNS)
def test_the_centreline_and_the_thickness_come_back(name: str, width: float) -> None:
    found = strip(outline(RUNS[name], width))
    assert found is not None
    assert found.width == pytest.approx(width, rel=0.05)
    assert off(found.points, RUNS[name]) < 0.6


def test_corners_of_a_bent_sheet_are_where_it_folds() -> None:
    found = strip(outline(RUNS["Z"], 2.0))
    assert found is not None
    rounded = [(round(x, 6), round(y, 6)) for x, y in found.points]
    assert rounded in (
        [(0, 0), (100, 0), (100, 80), (220, 80)],
        [(220, 80), (100, 80), (100, 0), (0, 0)],
    )


def test_a_hem_folded_flat_on_itself_is_followed() -> None:
    """A sheet 1 mm thick, its edge turned back with the two thicknesses touching."""
    ring = ((0, 0), (100, 0), (100, 2), (80, 2), (80, 1), (99, 1), (99, 1), (0, 1))
    found = strip(ring)
    assert found is not None
    assert found.width == pytest.approx(1.0, rel=0.1)
    assert off(found.points, ((0, 0.5), (99.5, 0.5), (99.5, 1.5), (80, 1.5))) < 0.6


@pytest.mark.parametrize(
    ("ring", "ends"),
    [
        (((0, 0), (200, 0), (210, 10), (0, 10)), ((0, 5), (205, 5))),
        (((0, 0), (200, 0), (195, 5), (200, 10), (5, 10)), None),
        (((0, 0), (200, 0), (230, 10), (20, 10)), ((10, 5), (215, 5))),
        (((0, 0), (200, 0), (230, 5), (200, 10), (0, 10)), ((0, 5), (230, 5))),
    ],
    ids=["slanted", "notched", "parallelogram", "pointed"],
)
def test_ends_need_not_be_square(ring: Points, ends: Points | None) -> None:
    found = strip(ring)
    assert found is not None
    assert found.width == pytest.approx(10, rel=0.2)
    if ends is not None:
        assert off(found.points, ends) < 1.0


def test_round_ends_count_as_part_of_the_run() -> None:
    band = shapely.LineString([(0, 0), (100, 0), (100, 80)]).buffer(4, quad_segs=8)
    found = strip(tuple(band.exterior.coords[:-1]))
    assert found is not None
    assert {(round(x), round(y)) for x, y in (found.points[0], found.points[-1])} == {
        (-4, 0),
        (100, 84),
    }


@pytest.mark.parametrize(
    "ring",
    [
        ((0, 0), (100, 0), (100, 90), (0, 90)),
        ((0, 0), (300, 0), (300, 30), (0, 2)),
        ((0, 0), (300, 0), (300, 10), (160, 10), (160, 40), (120, 40), (120, 10), (0, 10)),
        ((0, 0), (300, 0), (0, 5)),
        tuple((100 * cos(i * pi / 20), 100 * sin(i * pi / 20)) for i in range(40)),
        ((0, 0), (100, 0), (100, 10), (55, 10), (55, 110), (45, 110), (45, 10), (0, 10)),
        ((0, 0), (0, 0), (0, 0), (0, 0)),
    ],
    ids=["block", "wedge", "lump", "sliver", "circle", "tee", "point"],
)
def test_what_is_no_strip_of_even_thickness_is_left_alone(ring: Points) -> None:
    assert strip(ring) is None


@dataclass(frozen=True)
class Placing:
    """Mirrors, then turns, then moves."""

    angle: float
    mirror: bool
    shift: float

    def __call__(self, points: Points) -> Points:
        c, s, flip = cos(self.angle), sin(self.angle), -1 if self.mirror else 1
        return tuple(
            (c * x * flip - s * y + self.shift, s * x * flip + c * y - self.shift)
            for x, y in points
        )


PLACINGS = st.builds(
    Placing, st.floats(0, 2 * pi), st.booleans(), st.sampled_from([0.0, 1e6, 1e9])
)


@settings(max_examples=60, deadline=None)
@given(
    name=st.sampled_from(sorted(RUNS)),
    width=st.floats(0.8, 5),
    placing=PLACINGS,
    start=st.integers(0, 50),
    back=st.booleans(),
)
def test_the_run_moves_with_the_outline(
    *, name: str, width: float, placing: Placing, start: int, back: bool
) -> None:
    """Turned, mirrored, moved by 1e9 mm, begun elsewhere and drawn backwards: the same run."""
    ring = outline(RUNS[name], width)
    ring = ring[start % len(ring) :] + ring[: start % len(ring)]
    found = strip(placing(ring[::-1] if back else ring))
    assert found is not None
    assert found.width == pytest.approx(width, rel=0.05)
    home = tuple((x - placing.shift, y + placing.shift) for x, y in found.points)
    assert off(home, replace(placing, shift=0.0)(RUNS[name])) < 0.6


@settings(max_examples=100, deadline=None)
@given(st.lists(st.tuples(st.floats(-500, 500), st.floats(-500, 500)), min_size=3, max_size=12))
def test_any_ring_is_taken_without_a_fault(ring: list[tuple[float, float]]) -> None:
    """A strip that is found in an arbitrary ring is as long as its thickness demands."""
    found = strip(tuple(ring))
    if found is not None:
        run = sum(hypot(b[0] - a[0], b[1] - a[1]) for a, b in pairwise(found.points))
        assert run > 4 * found.width > 0
