"""Edits of underlays: laid in, moved, turned, brought to scale by two places and a length."""

from collections.abc import Callable
from dataclasses import replace
from math import cos, dist, radians, sin

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from enclosure_app.errors import EnclosureError
from enclosure_app.model import edits
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Point
from enclosure_app.model.project import Project, Underlay

SCAN = Underlay("scan.png", "png", b"...")
PROJECT = edits.add_underlay(Project("House", Units.MM, ()), SCAN)

places = st.tuples(st.floats(-1e4, 1e4), st.floats(-1e4, 1e4))


def _where(underlay: Underlay, pixel: Point) -> Point:
    """Return where a pixel (from the lower left corner) lies on the drawing."""
    turn, (x, y) = radians(underlay.angle), pixel
    x, y = x * underlay.mm_per_pixel, y * underlay.mm_per_pixel
    return (
        underlay.at[0] + cos(turn) * x - sin(turn) * y,
        underlay.at[1] + sin(turn) * x + cos(turn) * y,
    )


@given(places, st.floats(-180, 180), st.floats(0.01, 10), st.floats(1, 1e4))
def test_two_places_are_as_far_apart_as_was_said_and_the_first_stays(
    at: Point, angle: float, scale: float, length: float
) -> None:
    underlay = replace(SCAN, at=at, angle=angle, mm_per_pixel=scale)
    project = edits.add_underlay(PROJECT, underlay)
    pixels = ((120.0, 30.0), (740.0, 410.0))
    before = (_where(underlay, pixels[0]), _where(underlay, pixels[1]))
    assume(dist(*before) > 1e-3)
    after = edits.scale_underlay(project, 1, before, length)
    first, second = (_where(after.underlays[1], pixel) for pixel in pixels)
    assert dist(first, second) == pytest.approx(length, rel=1e-6)
    assert first == pytest.approx(before[0], abs=1e-4, rel=1e-6)
    assert after.underlays[0] is SCAN


def test_an_underlay_is_moved_turned_and_removed() -> None:
    moved = edits.move_underlay(edits.move_underlay(PROJECT, 0, (5.0, 6.0)), 0, (1.0, -6.0))
    assert moved.underlays[0].at == (6.0, 0.0)
    turned = edits.turn_underlay(edits.turn_underlay(moved, 0, 30.0), 0, 15.0)
    assert turned.underlays[0].angle == 45.0
    assert edits.remove_underlay(turned, 0).underlays == ()


@pytest.mark.parametrize(
    ("edit", "sentence"),
    [
        (lambda p: edits.move_underlay(p, 1, (0, 0)), "There is no such underlay: pick one that"),
        (lambda p: edits.remove_underlay(p, -1), "There is no such underlay"),
        (
            lambda p: edits.scale_underlay(p, 0, ((1, 1), (1, 1)), 5.0),
            "The two places are the same: click two that are far apart.",
        ),
        (
            lambda p: edits.scale_underlay(p, 0, ((1, 1), (2, 1)), 0.0),
            "A length cannot be 0 mm: type one that is more than 0.",
        ),
        (lambda p: edits.move_underlay(p, 0, (float("inf"), 0)), "A coordinate is not a finite"),
        (
            lambda p: edits.add_underlay(p, replace(SCAN, mm_per_pixel=0.0)),
            'The scale of "scan.png" must be more than 0: set it again.',
        ),
    ],
)
def test_what_cannot_be_done_is_said(edit: Callable[[Project], Project], sentence: str) -> None:
    with pytest.raises(EnclosureError) as caught:
        edit(PROJECT)
    assert str(caught.value).startswith(sentence)
