"""Marks are as large as the office's own letters, else as on the sheet that a section fits on."""

from dataclasses import replace

import pytest

from enclosure_app.drawing.placement import box_around
from enclosure_app.files.dxf.raw import RawText, Tag
from enclosure_app.model.drawing import Units
from enclosure_app.reports.dxf.room import Room
from enclosure_app.reports.dxf.scale import on_paper, scale_of
from tests.drawing import eave

FRAME = box_around(eave.FRAME)


def lettered(height: float) -> Room:
    """Return a drawing with notes of a height in mm beside the wall."""
    return Room.beside([RawText(Tag("TEXT", "1", "a"), "NOTE", (950, 0), height)], 1.0)


def test_without_letters_it_is_the_largest_scale_that_fits_a_sheet() -> None:
    result = eave.result()
    assert (FRAME.width, FRAME.height) == (1600, 2940)
    assert scale_of(result, Units.MM, Room()) == 20.0
    assert scale_of(result, Units.IN, Room()) == 16.0
    far = ((0, 0), (4e6, 0), (4e6, 1e6), (0, 1e6))
    assert scale_of(
        replace(result, section=replace(result.section, frame=far)), Units.MM, Room()
    ) == pytest.approx(4e6 / 300)


@pytest.mark.parametrize(
    ("height", "units", "scale"),
    [
        (25.0, Units.MM, 10.0),
        (12.5, Units.MM, 5.0),
        (22.0, Units.MM, 10.0),
        (3 / 32 * 25.4 * 8, Units.IN, 8.0),
        (3 / 32 * 25.4 * 12, Units.IN, 12.0),
        (0.05, Units.MM, 20.0),
        (900.0, Units.MM, 20.0),
    ],
)
def test_the_offices_letters_tell_the_scale_unless_they_are_no_notes(
    height: float, units: Units, scale: float
) -> None:
    assert scale_of(eave.result(), units, lettered(height)) == scale


def test_a_frame_is_smaller_on_paper() -> None:
    box = on_paper(FRAME, 20.0)
    assert (box.left, box.bottom, box.right, box.top) == (-35.0, -15.0, 45.0, 132.0)
