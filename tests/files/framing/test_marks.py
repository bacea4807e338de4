"""Marks come from whole words, and from the person."""

from enclosure_app.files.dxf.raw import RawText, Tag
from enclosure_app.files.framing.marks import Marks, missing, written
from enclosure_app.files.maps.guesses import mark_of
from enclosure_app.model.section import Section

RING = ((0, 0), (10, 0), (10, 10), (0, 10))


def text(words: str, x: float) -> RawText:
    return RawText(Tag("TEXT", "1", "TEXT"), words, (x, 0))


def test_whole_words_of_any_case_and_language_are_marks() -> None:
    texts = [
        text(w, x) for x, w in enumerate(["Inside", " EXT ", "innen", "INSIDE CORNER", "out"])
    ]
    marks = written(texts, mark_of)
    assert (0, 0) in marks.inside
    assert (2, 0) in marks.inside
    assert marks.outside[0] == (1, 0)
    assert (3, 0) not in marks.inside + marks.outside


def test_only_marks_within_the_ring_belong_to_it() -> None:
    marks = Marks(((5, 5), (50, 5)), ((-1, 0),))
    assert marks.within(RING) == Marks(((5, 5),), ())


def test_told_marks_replace_those_of_their_kind() -> None:
    words = Marks(((1, 1),), ((2, 2),))
    assert words.overridden(Marks(inside=((5, 5),))) == Marks(((5, 5),), ((2, 2),))


def test_every_missing_mark_has_its_sentence() -> None:
    sections = [
        Section("Eave", RING, (), {}, inside=((1, 1),)),
        Section("Ledge", RING, (), {}, inside=((1, 1),), outside=((2, 2),)),
    ]
    assert missing("a.dxf", sections) == (
        "a.dxf: no outside mark in section Eave: "
        "give --outside X,Y or write the word OUTSIDE in the open.",
    )
