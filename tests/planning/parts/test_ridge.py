"""The ready-made ridge: sound whatever its sizes, and what makes it one."""

from collections.abc import Callable

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from enclosure_app.model.product import Control
from enclosure_app.model.report import SectionResult
from enclosure_app.planning.parts import sizes_of
from enclosure_app.planning.parts.ridge import Parameters

SIZES = st.fixed_dictionaries(
    {size.name: st.floats(size.low, size.high) for size in sizes_of(Parameters)}
)


def test_it_is_sound_at_the_ends_of_every_range(
    assert_sound: Callable[..., None], extremes: Callable[[str], list[dict[str, float]]]
) -> None:
    for sizes in extremes("ridge"):
        assert_sound("ridge", **sizes)


@settings(max_examples=15, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(SIZES)
def test_it_is_sound_at_any_sizes(
    assert_sound: Callable[..., None], sizes: dict[str, float]
) -> None:
    assert_sound("ridge", **sizes)


@pytest.mark.parametrize(
    ("pitch", "least"), [(0.25, 482.6), (0.33, 482.6), (0.34, 101.6), (1, 101.6)]
)
def test_the_lap_over_the_ridge_is_as_long_as_the_pitch_asks(
    checked: Callable[..., SectionResult], pitch: float, least: float
) -> None:
    """NAVEDTRA 14044 vol. 2, fig. 3-14: 19 in for flat pitches."""
    joints = checked("ridge", pitch=pitch).layers[Control.WATER].joints
    laps = [j.length for j in joints if {j.a, j.b} == {"underlayment-1", "underlayment-2"}]
    assert laps
    assert min(laps) >= least


def test_both_slopes_are_drawn_as_far_as_was_asked(
    checked: Callable[..., SectionResult],
) -> None:
    frame = checked("ridge", reach=900).section.frame
    assert (frame[0][0], frame[1][0]) == (-900, 900)
