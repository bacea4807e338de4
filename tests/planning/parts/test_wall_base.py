"""The ready-made wall base: sound whatever its sizes, and what makes it one."""

from collections.abc import Callable

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from enclosure_app.model.place import Area
from enclosure_app.model.product import Control
from enclosure_app.model.report import JointKind, SectionResult
from enclosure_app.planning.parts import sizes_of
from enclosure_app.planning.parts.wall_base import Parameters

SIZES = st.fixed_dictionaries(
    {size.name: st.floats(size.low, size.high) for size in sizes_of(Parameters)}
)


def test_it_is_sound_at_the_ends_of_every_range(
    assert_sound: Callable[..., None], extremes: Callable[[str], list[dict[str, float]]]
) -> None:
    for sizes in extremes("wall-base"):
        assert_sound("wall-base", **sizes)


@settings(max_examples=15, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(SIZES)
def test_it_is_sound_at_any_sizes(
    assert_sound: Callable[..., None], sizes: dict[str, float]
) -> None:
    assert_sound("wall-base", **sizes)


def test_the_walls_sheet_laps_over_the_flashing_and_that_over_the_waterproofing(
    checked: Callable[..., SectionResult],
) -> None:
    joints = checked("wall-base").layers[Control.WATER].joints
    over = {(joint.over, joint.upper) for joint in joints if joint.kind is JointKind.LAP}
    assert {name for name, upper in over if name == upper} >= {
        "self-adhered-sheet-1", "self-adhered-sheet-2"
    }  # fmt: skip
    assert any("waterproofing-sheet-1" in (joint.a, joint.b) for joint in joints)


def test_the_ground_stands_as_far_below_the_wall_as_was_asked(
    checked: Callable[..., SectionResult],
) -> None:
    soil = checked("wall-base", plinth=400).section.by_name["soil-1"].shape
    assert isinstance(soil, Area)
    assert max(y for _, y in soil.outer) == -400
