"""The ready-made eave: sound whatever its sizes, and what makes it one."""

from collections.abc import Callable

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from enclosure_app.model.place import Area, Line
from enclosure_app.model.report import SectionResult
from enclosure_app.planning.parts import sizes_of
from enclosure_app.planning.parts.eave import Parameters

SIZES = st.fixed_dictionaries(
    {size.name: st.floats(size.low, size.high) for size in sizes_of(Parameters)}
)


def test_it_is_sound_at_the_ends_of_every_range(
    assert_sound: Callable[..., None], extremes: Callable[[str], list[dict[str, float]]]
) -> None:
    for sizes in extremes("eave"):
        assert_sound("eave", **sizes)


@settings(max_examples=15, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(SIZES)
def test_it_is_sound_at_any_sizes(
    assert_sound: Callable[..., None], sizes: dict[str, float]
) -> None:
    assert_sound("eave", **sizes)


@pytest.mark.parametrize("overhang", [120, 500, 900])
def test_the_drip_edge_stands_outside_the_overhang(
    checked: Callable[..., SectionResult], overhang: float
) -> None:
    section = checked("eave", overhang=overhang).section
    metal, boards = (section.by_name[n].shape for n in ("drip-edge-1", "lap-siding-1"))
    assert isinstance(metal, Line)
    assert isinstance(boards, Area)
    assert metal.points[1][0] == pytest.approx(min(x for x, _ in boards.outer) - overhang - 6)


def test_the_eave_membrane_passes_the_rooms_face_by_more_than_is_asked(
    checked: Callable[..., SectionResult],
) -> None:
    """IRC R905.1.2, from memory: 24 in inside the wall line."""
    section = checked("eave").section
    cover, lining = (section.by_name[n].shape for n in ("eave-membrane-1", "gypsum-board-2"))
    assert isinstance(cover, Line)
    assert isinstance(lining, Area)
    assert cover.points[-1][0] - max(x for x, _ in lining.outer) == pytest.approx(700)


def test_the_roof_has_the_pitch_that_was_asked(checked: Callable[..., SectionResult]) -> None:
    sheet = checked("eave", pitch=0.75).section.by_name["underlayment-1"].shape
    assert isinstance(sheet, Line)
    (x0, y0), (x1, y1) = sheet.points
    assert (y1 - y0) / (x1 - x0) == pytest.approx(0.75)
