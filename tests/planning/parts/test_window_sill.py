"""The ready-made window sill: sound whatever its sizes, and what makes it one."""

from collections.abc import Callable

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from enclosure_app.model.place import Line
from enclosure_app.model.report import SectionResult
from enclosure_app.planning.parts import sizes_of
from enclosure_app.planning.parts.window_sill import Parameters

SIZES = st.fixed_dictionaries(
    {size.name: st.floats(size.low, size.high) for size in sizes_of(Parameters)}
)


def test_it_is_sound_at_the_ends_of_every_range(
    assert_sound: Callable[..., None], extremes: Callable[[str], list[dict[str, float]]]
) -> None:
    for sizes in extremes("window-sill"):
        assert_sound("window-sill", **sizes)


@settings(max_examples=15, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(SIZES)
def test_it_is_sound_at_any_sizes(
    assert_sound: Callable[..., None], sizes: dict[str, float]
) -> None:
    assert_sound("window-sill", **sizes)


def test_the_sheet_falls_to_the_outside_and_is_turned_up_at_the_back(
    checked: Callable[..., SectionResult],
) -> None:
    sheet = checked("window-sill").section.by_name["flashing-tape-1"].shape
    assert isinstance(sheet, Line)
    (_, _), (x0, y0), (x1, y1), (x2, y2) = sheet.points
    assert x0 < x1
    assert y0 < y1
    assert (x2, y2 - y1) == (x1, pytest.approx(37.2))
