"""The trade's words: found in the texts that people read, and explained once each."""

import pytest

from enclosure_app.files.maps.rule_book import limit_units
from enclosure_app.rules import RULES
from enclosure_app.rules.rule import page
from enclosure_app.window.words.trade import (
    _FIGURES,
    _WORDS,
    explained,
    figure_words,
    meaning,
    taught,
)


def test_words_are_taught_in_the_order_of_the_text() -> None:
    told = explained("The upturn is too low and the laps are short.").splitlines()
    assert [line.partition(":")[0] for line in told] == ["Upturn", "Lap"]


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("Two sheets lapped", ["Sheet", "Lap"]),
        ("a collapsed overlap", []),  # never within another word
        ("A CUT END on the frame", ["Cut end", "Frame"]),
        ("nothing of the trade", []),
    ],
)
def test_a_word_is_found_however_it_is_written(text: str, words: list[str]) -> None:
    assert [line.partition(":")[0] for line in explained(text).splitlines()] == words


def test_no_more_is_taught_than_can_be_read() -> None:
    text = " ".join(known for known, _ in _WORDS)
    assert len(explained(text).splitlines()) == 3
    assert len(explained(text, most=50).splitlines()) > 25


def test_a_tip_is_the_text_and_what_its_words_mean() -> None:
    assert taught("Click a place") == "Click a place"
    assert taught("Draw the frame").splitlines() == [
        "Draw the frame",
        f"Frame: {meaning('frame')}",
    ]


def test_every_sentence_is_one_and_no_word_is_explained_by_itself_alone() -> None:
    for known, sentence in _WORDS:
        assert sentence[0].isupper(), known
        assert sentence.endswith("."), known
        assert len(sentence.split()) >= 5, known
    assert len({known for known, _ in _WORDS}) == len(_WORDS)


def test_every_rule_s_page_has_words_that_are_taught() -> None:
    assert [rule.name for rule in RULES if not explained(page(rule))] == []


def test_every_figure_of_the_rule_books_has_words_of_its_own() -> None:
    assert set(_FIGURES) == set(limit_units())


def test_figures_are_told_apart() -> None:
    assert len({figure_words(name) for name in limit_units()}) == len(limit_units())
    assert figure_words("an-office-figure") == "An office figure"
