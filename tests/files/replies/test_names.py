"""Names of notes hold what they are about, and whether somebody wrote in them since."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from enclosure_app.files.replies.names import (
    REVIEW,
    VERDICTS,
    About,
    NoteName,
    digest_of,
    named,
    note_name,
)
from enclosure_app.model.said.decision import State

WORDS = st.text(max_size=30)


@given(st.builds(About, WORDS, WORDS, WORDS, WORDS), WORDS, st.booleans())
def test_a_name_is_taken_apart_again(about: About, said: str, verdict: bool) -> None:
    name = note_name(about, said, verdict=verdict)
    assert name.isascii()
    told = named(name)
    assert told == NoteName(about, digest_of(said), verdict)
    assert told.said(said)


def test_a_name_can_be_read_by_people() -> None:
    name = note_name(About("eave.dxf", "Wall, north", "gap:w1.end+w2.start", "4f"), "A gap.")
    assert name.startswith("enclosure:finding:eave.dxf:Wall, north:gap%3Aw1.end+w2.start:4f:")


def test_broken_lines_are_the_same_words_and_other_words_are_not() -> None:
    told = named(note_name(About("a", "b", "c"), "A gap.\nSeal it."))
    assert told is not None
    assert told.said("A gap.\rSeal  it. ")
    assert not told.said("A gap.\nSeal it. Done!")


def test_words_that_stand_apart_are_not_run_together() -> None:
    assert digest_of("a b", "c") != digest_of("a", "b c")


@pytest.mark.parametrize(
    "name",
    ["", "8f3c", "enclosure", "enclosure:finding:a:b:c:d", "other:finding:a:b:c:d:e", "enclosure:x:a:b:c:d:e"],
)  # fmt: skip
def test_names_of_others_are_none_of_ours(name: str) -> None:
    assert named(name) is None


def test_every_verdict_has_its_own_word_of_the_review_model() -> None:
    """ISO 32000-1, table 171: Accepted, Rejected, Cancelled, Completed, None (from memory)."""
    assert set(REVIEW) == set(State)
    assert set(VERDICTS) == {"Accepted", "Rejected", "Cancelled", "Completed", "None"}
    assert all(VERDICTS[REVIEW[state]] is state for state in State)
