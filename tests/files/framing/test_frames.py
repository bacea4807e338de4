"""Frames are the closed outlines on the layers that the map calls so."""

from enclosure_app.files.dxf.raw import RawPath, Tag
from enclosure_app.files.framing.frames import Frame, drawn_frames
from enclosure_app.model.place import Points


def box(x0: float, y0: float, x1: float, y1: float) -> Points:
    return ((x0, y0), (x1, y0), (x1, y1), (x0, y1))


def path(handle: str, points: Points, *, closed: bool = True) -> RawPath:
    return RawPath(Tag("LWPOLYLINE", handle, "CROP"), points, closed)


def test_each_closed_outline_is_a_frame_in_drawing_order() -> None:
    frames, notes = drawn_frames([path("10", box(0, 0, 9, 9)), path("A", box(50, 0, 60, 9))])
    assert [frame.ring for frame in frames] == [box(50, 0, 60, 9), box(0, 0, 9, 9)]
    assert all(frame.drawn for frame in frames)
    assert notes == ()


def test_four_loose_lines_make_a_frame() -> None:
    ring = box(0, 0, 900, 700)
    sides = [
        path(f"{i}", (ring[i], ring[(i + 1) % 4])[:: (-1) ** i], closed=False) for i in range(4)
    ]
    frames, _ = drawn_frames(sides)
    assert [frame.ring for frame in frames] == [ring]


def test_a_frame_drawn_twice_counts_once() -> None:
    frames, _ = drawn_frames([path("1", box(0, 0, 90, 90)), path("2", box(0, 0, 90, 90.4))])
    assert len(frames) == 1


def test_the_border_of_the_sheet_is_no_frame() -> None:
    frames, notes = drawn_frames(
        [
            path("1", box(0, 0, 100, 50)),
            path("2", box(5, 5, 45, 45)),
            path("3", box(55, 5, 95, 45)),
        ]
    )
    assert [frame.ring for frame in frames] == [box(5, 5, 45, 45), box(55, 5, 95, 45)]
    assert [note.text for note in notes] == [
        "Outlines of frames that hold other frames: taken for the border of the sheet (“1”)."
    ]


def test_a_frame_that_does_not_close_is_left_out_and_named() -> None:
    frames, notes = drawn_frames([path("7", box(0, 0, 90, 90), closed=False)])
    assert frames == ()
    assert notes[0].text == "Outlines of frames that do not close: left out (“7”)."


def test_a_title_with_the_word_plan_makes_a_plan() -> None:
    ring = box(0, 0, 1, 1)
    assert Frame(ring, "JAMB, PLAN DETAIL").plan
    assert Frame(ring, "Plan section").plan
    assert not Frame(ring, "PLANT ROOM WALL").plan
