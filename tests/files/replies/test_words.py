"""One note says a verdict, a remark, both, or nothing that is new."""

import pytest

from enclosure_app.files.replies.comments import Comment
from enclosure_app.files.replies.names import About, note_name
from enclosure_app.files.replies.words import Said, in_plain_words, said_by
from enclosure_app.language import ENGLISH, Language, speak
from enclosure_app.model.said.decision import State

ABOUT = About("eave.dxf", "Eave", "gap:a.end+b.start")
TOLD = "The sheet stops.\nTo do: Carry it on."


def comment(contents: str = "", **more: str) -> Comment:
    return Comment(
        (7, 0), 1, 3, "Text", contents=contents, author="Ida", when="2026-03-02", **more
    )


def said(told: Comment) -> Said | None:
    return next(said_by(told), None)


@pytest.mark.parametrize(
    ("text", "state", "rest"),
    [
        ("Mended", State.MENDED, ""),
        ("mended. Taped on both sides", State.MENDED, "Taped on both sides"),
        ("TO BE MENDED – before the cladding", State.TO_BE_MENDED, "before the cladding"),
        ("Accepted: drains by itself", State.ACCEPTED, "drains by itself"),
        ("Not a fault\nit goes on behind", State.NO_FAULT, "it goes on behind"),
        ("Open", State.OPEN, ""),
        ("Mended?", None, "Mended?"),
        ("Open joint, looks fine", None, "Open joint, looks fine"),
        ("Open-jointed boards", None, "Open-jointed boards"),
        ("Mended - taped", State.MENDED, "taped"),
        ("Accepted by the office", None, "Accepted by the office"),
        ("It is mended", None, "It is mended"),
        ("", None, ""),
    ],
)
def test_a_verdict_in_plain_words_stands_at_the_beginning(
    text: str, state: State | None, rest: str
) -> None:
    assert in_plain_words(text) == (state, rest)


def test_words_of_the_language_spoken_are_known_as_well() -> None:
    try:
        speak(Language(lambda text: {"Mended": "Behoben"}.get(text, text)))
        assert in_plain_words("Behoben: verklebt") == (State.MENDED, "verklebt")
        assert in_plain_words("Mended: taped") == (State.MENDED, "taped")
    finally:
        speak(ENGLISH)


@pytest.mark.parametrize(
    "text", ["", "Rejected", "Rejected set by Ida", "Ida hat abgelehnt", "Ida: Rejected"]
)
def test_what_a_reader_writes_by_itself_is_no_remark(text: str) -> None:
    told = said(comment(text, model="Review", state="Rejected"))
    assert told == Said("Ida", "2026-03-02", 3, State.NO_FAULT)


def test_what_a_person_writes_to_a_state_is_one() -> None:
    told = said(comment("It goes on behind the trim.", model="Review", state="Rejected"))
    assert told is not None
    assert told.remark == "It goes on behind the trim."


def test_our_own_notes_say_nothing_new() -> None:
    assert said(comment(TOLD, name=note_name(ABOUT, TOLD))) is None
    verdict = note_name(ABOUT, "Completed", "Mended by Ida", verdict=True)
    assert said(comment("Mended by Ida", name=verdict, model="Review", state="Completed")) is None


def test_a_verdict_of_ours_that_was_set_anew_is_a_verdict() -> None:
    verdict = note_name(ABOUT, "Completed", "Mended by Ida", verdict=True)
    told = said(comment("Mended by Ida", name=verdict, model="Review", state="Accepted"))
    assert told is not None
    assert told.state is State.TO_BE_MENDED


@pytest.mark.parametrize("text", [f"{TOLD} Mended: taped", f"Mended: taped\n{TOLD}"])
def test_what_was_written_before_or_after_our_words_is_parted_from_them(text: str) -> None:
    told = said(comment(text, name=note_name(ABOUT, TOLD)))
    assert told is not None
    assert (told.state, told.remark) == (State.MENDED, "taped")
    assert told.doubt
