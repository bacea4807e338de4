"""What two copies differ in, in words."""

from dataclasses import replace

import pytest

from enclosure_app.model.finding import Severity
from enclosure_app.model.said.remark import Remark
from enclosure_app.planning.merging import Part
from enclosure_app.window.merging.joining import Counts
from enclosure_app.window.merging.merging_words import (
    counts_words,
    new_words,
    title_of,
    value_words,
    verdict_words,
)
from tests.window.merging.copies_joined import PLACE, WHEN, contested, drawn


def test_counts_say_one_and_many_and_nothing() -> None:
    assert counts_words(Counts(verdicts=1, remarks=2)) == "1 verdict, 2 remarks"
    assert counts_words(Counts()) == "nothing that is new here"


@pytest.mark.parametrize("part", [*Part])
def test_everything_that_can_differ_has_a_title(part: Part) -> None:
    (difference,) = drawn().merged.differences
    title = title_of(replace(difference, part=part, name="short-lap"))
    assert title
    assert "{}" not in title


def test_values_are_told_as_people_know_them() -> None:
    assert value_words(Part.FIGURE, 90.0) == "90"
    assert value_words(Part.FIGURE, None) == "not in this copy"
    assert value_words(Part.BOOK, "") == "the usual one"
    assert value_words(Part.LAYERS, (1, 2)) == "2 rows"
    assert value_words(Part.LEVEL, Severity.DOUBT) == "Doubt"


def test_a_verdict_is_told_whole() -> None:
    jon = next(each for each in contested().merged.contested[PLACE] if each.who == "Jon")
    assert verdict_words(jon) == "Accepted · Jon · 2026-03-02 10:15 (UTC+02:00)\nBy Jon."


def test_what_comes_is_told_one_by_one() -> None:
    of = contested()
    told = new_words(of.ours, of.merged.project)
    assert {*told} == {
        "Wall · A gap.\nAccepted by Jon, 2026-03-02: By Jon.",
        "Wall · A gap.\nTo be mended by Jon, 2026-03-02: By Jon.",
    }
    remark = Remark("gap:x", "Jon", WHEN, "Look.", "Wall", photographs=("a", "b"), id="r")
    with_remark = replace(of.ours, remarks=(remark,))
    assert new_words(of.ours, with_remark) == ["Wall · gap:x\nJon · Look. · 2 photographs"]
