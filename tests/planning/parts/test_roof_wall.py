"""The ready-made roof wall: sound whatever its sizes, and what makes it one."""

from collections.abc import Callable

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from enclosure_app.model.place import Line
from enclosure_app.model.product import Control
from enclosure_app.model.report import JointKind, SectionResult
from enclosure_app.planning.parts import sizes_of
from enclosure_app.planning.parts.roof_wall import Parameters

SIZES = st.fixed_dictionaries(
    {size.name: st.floats(size.low, size.high) for size in sizes_of(Parameters)}
)


def test_it_is_sound_at_the_ends_of_every_range(
    assert_sound: Callable[..., None], extremes: Callable[[str], list[dict[str, float]]]
) -> None:
    for sizes in extremes("roof-wall"):
        assert_sound("roof-wall", **sizes)


@settings(max_examples=15, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(SIZES)
def test_it_is_sound_at_any_sizes(
    assert_sound: Callable[..., None], sizes: dict[str, float]
) -> None:
    assert_sound("roof-wall", **sizes)


@pytest.mark.parametrize("leg", [170, 300])
def test_the_flashing_goes_up_the_wall_as_far_as_was_asked(
    checked: Callable[..., SectionResult], leg: float
) -> None:
    metal = checked("roof-wall", leg=leg).section.by_name["base-flashing-1"].shape
    assert isinstance(metal, Line)
    assert metal.points[0][1] - metal.points[1][1] == pytest.approx(leg)


def test_the_walls_sheet_is_over_the_roofs(checked: Callable[..., SectionResult]) -> None:
    joints = checked("roof-wall").layers[Control.WATER].joints
    wall = [j for j in joints if "self-adhered-sheet-1" in (j.a, j.b) and j.kind is JointKind.LAP]
    assert wall
    assert {joint.over for joint in wall} == {"self-adhered-sheet-1"}
