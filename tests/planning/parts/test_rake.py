"""The ready-made rake: sound whatever its sizes, and what makes it one."""

from collections.abc import Callable

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from enclosure_app.model.place import Line
from enclosure_app.model.report import SectionResult
from enclosure_app.planning.parts import sizes_of
from enclosure_app.planning.parts.rake import Parameters

SIZES = st.fixed_dictionaries(
    {size.name: st.floats(size.low, size.high) for size in sizes_of(Parameters)}
)


def test_it_is_sound_at_the_ends_of_every_range(
    assert_sound: Callable[..., None], extremes: Callable[[str], list[dict[str, float]]]
) -> None:
    for sizes in extremes("rake"):
        assert_sound("rake", **sizes)


@settings(max_examples=15, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(SIZES)
def test_it_is_sound_at_any_sizes(
    assert_sound: Callable[..., None], sizes: dict[str, float]
) -> None:
    assert_sound("rake", **sizes)


def test_the_metal_goes_over_the_underlayment(checked: Callable[..., SectionResult]) -> None:
    """Common practice, and IRC R905.2.8.5 from memory: over along the rake, under at the eave."""
    section = checked("rake").section
    metal, sheet = (section.by_name[n].shape for n in ("drip-edge-1", "underlayment-1"))
    assert isinstance(metal, Line)
    assert isinstance(sheet, Line)
    assert metal.points[0][1] > sheet.points[0][1]
    assert metal.points[0][0] > sheet.points[0][0]
