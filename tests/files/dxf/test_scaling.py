"""From drawing units to mm: places and lengths, and nothing else."""

from enclosure_app.files.dxf.raw import RawDimension, RawLeader, RawPath, RawText, Tag
from enclosure_app.files.dxf.scaling import in_mm, scaled

TAG = Tag("LWPOLYLINE", "1", "SHEET")
RING = ((0.0, 0.0), (2.0, 0.0), (2.0, 1.0))


def test_a_path_is_scaled_with_its_width_and_its_holes() -> None:
    hole = ((1.0, 0.25), (1.5, 0.25), (1.5, 0.5))
    found = in_mm(RawPath(TAG, RING, closed=True, width=0.5, filled=True, holes=(hole,)), 25.4)
    assert found == RawPath(
        TAG, scaled(RING, 25.4), closed=True, width=12.7, filled=True, holes=(scaled(hole, 25.4),)
    )
    assert found.points[2] == (50.8, 25.4)


def test_texts_and_leaders_stand_where_they_point() -> None:
    text = in_mm(RawText(TAG, "INSIDE", (2.0, 3.0), height=0.125, angle=90.0), 1000.0)
    assert text == RawText(TAG, "INSIDE", (2000.0, 3000.0), height=125.0, angle=90.0)
    leader = in_mm(RawLeader(TAG, RING, "FELT"), 10.0)
    assert leader == RawLeader(TAG, ((0.0, 0.0), (20.0, 0.0), (20.0, 10.0)), "FELT")


def test_what_a_dimension_measures_is_in_the_drawings_own_units() -> None:
    dimension = RawDimension(TAG, 64.0, "5'-4\"", (1.0, 1.0))
    assert in_mm(dimension, 25.4) is dimension


def test_a_drawing_in_mm_stays_the_very_same() -> None:
    path = RawPath(TAG, RING)
    assert in_mm(path, 1.0) is path
    assert scaled(RING, 1) is RING
