"""What was decided, in words."""

import pytest

from enclosure_app.drawing.verdict_words import gone_line, state_word, verdict_line
from enclosure_app.model.said.decision import Decision, State

WHEN = "2026-03-02T08:15:00+00:00"


@pytest.mark.parametrize(
    ("decision", "line"),
    [
        (Decision("k", State.MENDED), "Mended"),
        (Decision("k", State.MENDED, "Ida"), "Mended by Ida"),
        (Decision("k", State.MENDED, "Ida", WHEN), "Mended by Ida, 2026-03-02"),
        (Decision("k", State.NO_FAULT, "", WHEN, "A joint."), "Not a fault, 2026-03-02: A joint."),
    ],
)
def test_a_verdict_is_one_line(decision: Decision, line: str) -> None:
    assert verdict_line(decision) == line


def test_every_verdict_has_a_word_of_its_own() -> None:
    assert len({state_word(state) for state in State}) == len(State)


def test_what_is_gone_is_told_by_its_sentence_or_by_its_key() -> None:
    assert gone_line(Decision("gap:a", State.MENDED, about="A gap.")) == "A gap."
    assert gone_line(Decision("gap:a", State.MENDED)) == "gap:a"
