"""Free places are found beside what is drawn, and nothing is put on it or on each other."""

from hypothesis import given, settings
from hypothesis import strategies as st

from enclosure_app.drawing.placement import Box
from enclosure_app.files.dxf.raw import RawLeader, RawPath, RawText, Tag
from enclosure_app.reports.dxf.room import Room

TAG = Tag("LINE", "1", "wall")
FRAME = Box(0, 0, 100, 80)


def room(*items: RawPath | RawText | RawLeader, factor: float = 1.0) -> Room:
    return Room.beside(items, factor)


def test_an_empty_drawing_has_room_at_once() -> None:
    assert Room().nearest(FRAME, (30, 20), 10) == Box(100, 60, 130, 80)
    assert Room().is_free(FRAME)


def test_a_text_on_the_right_sends_words_to_the_left() -> None:
    notes = RawText(TAG, "WALL SHEET ON\nWOOD FIBRE", (105, 70), height=5)
    assert room(notes).nearest(FRAME, (30, 20), 10) == Box(-30, 60, 0, 80)


def test_lengths_are_taken_in_the_drawings_units() -> None:
    notes = RawText(TAG, "WALL SHEET", (105 / 25.4, 70 / 25.4), height=5 / 25.4)
    assert room(notes, factor=25.4).nearest(FRAME, (30, 20), 10).left == -30


def test_a_slanting_line_takes_no_more_than_where_it_runs() -> None:
    slope = room(RawPath(TAG, ((0, 0), (1000, 1000))))
    assert slope.is_free(Box(600, 100, 800, 300))
    assert not slope.is_free(Box(450, 440, 520, 520))


def test_a_turned_text_takes_the_room_that_it_has() -> None:
    turned = room(RawText(TAG, "TURNED TEXT", (0, 0), height=10, angle=90))
    assert not turned.is_free(Box(-3, 50, 3, 60))
    assert turned.is_free(Box(20, -5, 80, 5))


def test_a_closed_ring_and_an_arrow_count() -> None:
    drawn = room(
        RawPath(TAG, ((0, 0), (40, 0), (40, 40)), closed=True),
        RawLeader(TAG, ((100, 0), (140, 0))),
    )
    assert not drawn.is_free(Box(18, 18, 22, 22))
    assert not drawn.is_free(Box(118, -2, 122, 2))


def test_where_everything_is_full_words_stand_right_of_it_all() -> None:
    lines = [RawPath(TAG, ((-5000, y), (5000, y))) for y in range(-5000, 5001, 10)]
    assert room(*lines).nearest(FRAME, (30, 20), 10) == Box(5010, 60, 5040, 80)


@settings(max_examples=60, deadline=None)
@given(st.lists(st.tuples(*[st.integers(-400, 400)] * 4), max_size=30), st.integers(5, 90))
def test_places_found_one_after_another_meet_nothing(
    lines: list[tuple[int, int, int, int]], size: int
) -> None:
    drawn = [RawPath(TAG, ((a, b), (c, d))) for a, b, c, d in lines]
    place = room(*drawn)
    boxes = []
    for _ in range(3):
        box = place.nearest(FRAME, (size, size), 10)
        place.take(box)
        boxes.append(box)
    for k, box in enumerate(boxes):
        assert room(*drawn).is_free(box.inset(1e-6))
        for other in boxes[:k]:
            assert (
                box.right < other.left
                or other.right < box.left
                or box.top < other.bottom
                or other.top < box.bottom
            )


def test_letters_are_as_high_as_most_beside_the_box_else_as_most_of_all() -> None:
    def note(x: float, height: float) -> RawText:
        return RawText(TAG, "NOTE", (x, 40), height)

    notes = [note(110, 2.2), note(120, 2.2), note(20, 4.0), *(note(900, 7.0) for _ in range(5))]
    assert room(*notes).letters_near(FRAME) == 2.2
    assert room(*notes, factor=25.4).letters_near(Box(2000, 0, 3000, 2000)) == 56.0
    assert room(*notes[3:]).letters_near(FRAME) == 7.0
    assert room(RawPath(TAG, ((0, 0), (1, 1))), note(50, 0.0)).letters_near(FRAME) is None
    assert Room().letters_near(FRAME) is None
