"""The ready-made parapet: sound whatever its sizes, and what makes it one."""

from collections.abc import Callable

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from enclosure_app.model.place import Line
from enclosure_app.model.report import SectionResult
from enclosure_app.planning.parts import sizes_of
from enclosure_app.planning.parts.parapet import Parameters

SIZES = st.fixed_dictionaries(
    {size.name: st.floats(size.low, size.high) for size in sizes_of(Parameters)}
)


def test_it_is_sound_at_the_ends_of_every_range(
    assert_sound: Callable[..., None], extremes: Callable[[str], list[dict[str, float]]]
) -> None:
    for sizes in extremes("parapet"):
        assert_sound("parapet", **sizes)


@settings(max_examples=15, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(SIZES)
def test_it_is_sound_at_any_sizes(
    assert_sound: Callable[..., None], sizes: dict[str, float]
) -> None:
    assert_sound("parapet", **sizes)


def test_the_roof_falls_away_from_the_parapet_as_was_asked(
    checked: Callable[..., SectionResult],
) -> None:
    roof = checked("parapet", fall=0.05).section.by_name["single-ply-roofing-1"].shape
    assert isinstance(roof, Line)
    (x0, y0), (x1, y1), _ = roof.points
    assert (y1 - y0) / (x0 - x1) == pytest.approx(0.05, abs=1e-3)


def test_the_upturn_is_higher_than_is_asked(checked: Callable[..., SectionResult]) -> None:
    """NRCA manual practice, from memory: 8 in above the roof."""
    roof = checked("parapet", height=380).section.by_name["single-ply-roofing-1"].shape
    assert isinstance(roof, Line)
    assert roof.points[2][1] - roof.points[1][1] > 203.2
