"""Sections are named by the title that stands by their frame."""

from enclosure_app.files.dxf.raw import RawText, Tag
from enclosure_app.files.framing.frames import Frame
from enclosure_app.files.framing.titles import named
from enclosure_app.model.place import Point

LEFT = Frame(((0, 0), (1000, 0), (1000, 1000), (0, 1000)))
RIGHT = Frame(((2000, 0), (3000, 0), (3000, 1000), (2000, 1000)))
ABOVE = Frame(((0, 1400), (1000, 1400), (1000, 2400), (0, 2400)))


def text(words: str, at: Point, height: float = 30) -> RawText:
    return RawText(Tag("TEXT", "1", "TEXT"), words, at, height)


def names(frames: list[Frame], *texts: RawText) -> list[str]:
    return [frame.name for frame in named(frames, texts)]


def test_the_largest_text_below_a_frame_is_its_title() -> None:
    texts = [text("EAVE", (100, -80), 60), text("see sheet 4", (100, -20)), text("x", (5, 500))]
    assert names([LEFT], *texts) == ["EAVE"]


def test_each_title_goes_to_the_frame_it_stands_by() -> None:
    texts = (text("EAVE", (100, -80)), text("LEDGE", (2100, -80)))
    assert names([LEFT, RIGHT], *texts) == ["EAVE", "LEDGE"]


def test_a_title_between_two_frames_belongs_to_the_upper_one() -> None:
    texts = (text("LOWER", (100, -60)), text("UPPER", (100, 1340)))
    assert names([LEFT, ABOVE], *texts) == ["LOWER", "UPPER"]


def test_a_title_above_or_inside_near_the_lower_edge_will_do() -> None:
    assert names([LEFT], text("RIDGE", (100, 1050))) == ["RIDGE"]
    notes = [text("felt", (100, 600), 20), text("board", (100, 700), 20)]
    assert names([LEFT], text("RIDGE", (100, 60), 40), *notes) == ["RIDGE"]


def test_notes_inside_a_frame_are_no_titles() -> None:
    notes = [text(word, (100, y), 20) for word, y in (("felt", 40), ("board", 600), ("tape", 90))]
    assert names([LEFT], *notes) == ["Section 1"]


def test_scales_numbers_and_long_notes_are_no_titles() -> None:
    texts = [
        text("SCALE 1:10", (100, -60), 90),
        text('1 1/2" = 1\'-0"', (100, -80), 80),
        text("12", (100, -60), 90),
        text("LAP EVERY COURSE OVER THE ONE BELOW " * 4, (100, -40), 90),
    ]
    assert names([LEFT, RIGHT], *texts) == ["Section 1", "Section 2"]


def test_lines_of_a_title_are_joined_and_equal_titles_numbered() -> None:
    texts = (text("WALL\nBASE", (100, -80)), text("WALL BASE", (2100, -80)))
    assert names([LEFT, RIGHT], *texts) == ["WALL BASE", "WALL BASE (2)"]
