"""The ready-made eave flush: sound whatever its sizes, and what makes it one."""

from collections.abc import Callable

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from enclosure_app.model.place import Area, Line
from enclosure_app.model.report import SectionResult
from enclosure_app.planning.parts import sizes_of
from enclosure_app.planning.parts.eave_flush import Parameters

SIZES = st.fixed_dictionaries(
    {size.name: st.floats(size.low, size.high) for size in sizes_of(Parameters)}
)


def test_it_is_sound_at_the_ends_of_every_range(
    assert_sound: Callable[..., None], extremes: Callable[[str], list[dict[str, float]]]
) -> None:
    for sizes in extremes("eave-flush"):
        assert_sound("eave-flush", **sizes)


@settings(max_examples=15, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(SIZES)
def test_it_is_sound_at_any_sizes(
    assert_sound: Callable[..., None], sizes: dict[str, float]
) -> None:
    assert_sound("eave-flush", **sizes)


def test_the_drip_edge_stands_clear_of_the_cladding(
    checked: Callable[..., SectionResult],
) -> None:
    section = checked("eave-flush", projection=20).section
    metal, boards = (section.by_name[n].shape for n in ("drip-edge-1", "lap-siding-1"))
    assert isinstance(metal, Line)
    assert isinstance(boards, Area)
    assert metal.points[-1][0] == pytest.approx(min(x for x, _ in boards.outer) - 38)
