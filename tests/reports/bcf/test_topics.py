"""Findings as topics: the words that programs sort by, since when they are known, what was said."""

from dataclasses import replace
from datetime import UTC, datetime

from enclosure_app.model.drawing import Units
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.reports.bcf.topics import (
    GONE,
    STATES,
    TYPES,
    Found,
    Said,
    all_labels,
    described,
    labels_of,
    topics_of,
)
from tests.drawing import eave
from tests.reports.decided import MENDED, PHOTOGRAPHS, result

NOW = datetime(2026, 3, 5, tzinfo=UTC)


def test_words_to_sort_by_are_those_of_the_program() -> None:
    assert TYPES == ("Fault", "Doubt", "Remark", GONE)
    assert STATES == ("Open", "To be mended", "Mended", "Accepted", "Not a fault")
    topics = topics_of([Found(result())], NOW)
    assert {topic.kind for topic in topics} <= set(TYPES)
    assert {topic.state for topic in topics} == {"Open", "Mended", "Accepted"}
    assert {label for topic in topics for label in topic.labels} <= set(all_labels())


def test_a_topic_is_known_since_somebody_spoke_of_it_else_since_now() -> None:
    gap, short, *_ = topics_of([Found(result())], NOW)
    assert gap.created == datetime(2026, 3, 2, 8, 15, tzinfo=UTC)
    assert short.created == NOW


def test_numbers_are_those_of_the_sheet_and_begin_anew_in_each_section() -> None:
    two = eave.drawing(eave.result(), replace(eave.result(), section=eave.section("Slip")))
    topics = topics_of([Found(two)], NOW)
    assert [topic.index for topic in topics] == [1, 2, 3, 4, 5, 6] * 2
    assert len({topic.guid for topic in topics}) == 12
    assert topics[6].title == "1  Fault · gap, air: Slip"


def test_a_drawing_that_is_named_twice_is_told_once() -> None:
    once = topics_of([Found(result(), "a")], NOW)
    assert topics_of([Found(result(), "a"), Found(result(), "a")], NOW) == once
    both = topics_of([Found(result(), "a"), Found(result(), "b")], NOW)
    assert len({topic.guid for topic in both}) == len(both) == 2 * len(once)


def test_everything_that_is_said_of_a_finding_stands_in_its_description() -> None:
    assert described(eave.SHORT, Units.MM).splitlines() == [
        eave.SHORT.message,
        "Measured 60 mm, required 100 mm.",
        f"To do: {eave.SHORT.advice}",
        f"Figure from: {eave.SHORT.basis}",
        "In the drawing at 159 mm, 150 mm.",
    ]
    assert described(replace(eave.GAP, at=(25.4, 0.0)), Units.IN).endswith('at 1", 0".')
    assert labels_of(replace(eave.GAP, control=None)) == ("gap",)


def test_what_was_said_without_a_name_or_a_moment_is_told_too() -> None:
    bare = Decision(eave.GAP.key, State.MENDED, photographs=tuple(PHOTOGRAPHS))

    def history(key: str, _section: str) -> tuple[Said, ...]:
        return (bare,) if key == eave.GAP.key else ()

    (comment,) = topics_of([Found(eave.drawing(), history=history)], NOW)[0].comments
    assert (comment.author, comment.at, comment.text) == ("Unnamed", NOW, "Mended")
    assert comment.photographs == tuple(PHOTOGRAPHS)


def test_words_keep_their_own_name_in_every_export() -> None:
    once = topics_of([Found(result())], NOW)[0].comments[0].guid
    later = topics_of([Found(result())], NOW.replace(year=2027))[0].comments[0].guid
    assert once == later
    assert MENDED.id
