"""The ready-made window head: sound whatever its sizes, and what makes it one."""

from collections.abc import Callable

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from enclosure_app.model.place import Area, Line
from enclosure_app.model.report import SectionResult
from enclosure_app.planning.parts import sizes_of
from enclosure_app.planning.parts.window_head import Parameters

SIZES = st.fixed_dictionaries(
    {size.name: st.floats(size.low, size.high) for size in sizes_of(Parameters)}
)


def test_it_is_sound_at_the_ends_of_every_range(
    assert_sound: Callable[..., None], extremes: Callable[[str], list[dict[str, float]]]
) -> None:
    for sizes in extremes("window-head"):
        assert_sound("window-head", **sizes)


@settings(max_examples=15, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(SIZES)
def test_it_is_sound_at_any_sizes(
    assert_sound: Callable[..., None], sizes: dict[str, float]
) -> None:
    assert_sound("window-head", **sizes)


def test_the_flashing_reaches_past_the_cladding_and_turns_down(
    checked: Callable[..., SectionResult],
) -> None:
    section = checked("window-head", insulation=200).section
    metal, boards = (section.by_name[n].shape for n in ("base-flashing-1", "lap-siding-1"))
    assert isinstance(metal, Line)
    assert isinstance(boards, Area)
    assert metal.points[-2][0] == pytest.approx(min(x for x, _ in boards.outer) - 40)
    assert metal.points[-1][1] < metal.points[-2][1] < metal.points[-3][1]
