"""The pictures' sections, judged by the real checker: the fault is there, and mended it is gone."""

import pytest

from enclosure_app.checker import check_section
from enclosure_app.drawing.rule_examples import EXAMPLES, example_sections
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.rule_book import books, load_limits
from enclosure_app.model.limits import Limits
from enclosure_app.model.report import Continuity
from enclosure_app.rules import RULES

each_rule = pytest.mark.parametrize("rule", [rule.name for rule in RULES])
BOOKS = [load_limits(), load_limits("practice")]


def test_every_rule_has_its_example_and_no_example_is_of_no_rule() -> None:
    assert set(EXAMPLES) == {rule.name for rule in RULES}
    assert example_sections("no-such-rule", load_products()) is None


@each_rule
@pytest.mark.parametrize("limits", BOOKS, ids=["usual book", "practice"])
def test_as_drawn_it_has_the_fault_and_nothing_that_the_fault_does_not_bring(
    rule: str, limits: Limits
) -> None:
    drawn, _ = example_sections(rule, load_products())
    found = {finding.rule for finding in check_section(drawn, limits).findings}
    assert found == {rule} | EXAMPLES[rule].brings


@each_rule
@pytest.mark.parametrize("limits", BOOKS, ids=["usual book", "practice"])
def test_as_it_should_be_nothing_is_found_and_the_layer_is_whole(
    rule: str, limits: Limits
) -> None:
    _, mended = example_sections(rule, load_products())
    result = check_section(mended, limits)
    assert result.findings == ()
    assert result.layers[EXAMPLES[rule].control].continuity is Continuity.CONTINUOUS


@each_rule
def test_the_two_differ_in_what_is_drawn_and_in_nothing_else(rule: str) -> None:
    drawn, mended = example_sections(rule, load_products())
    assert drawn.pieces != mended.pieces
    assert (drawn.frame, drawn.inside, drawn.outside) == (
        mended.frame,
        mended.inside,
        mended.outside,
    )


def test_the_books_tried_are_books_that_there_are() -> None:
    assert {limits.book for limits in BOOKS} <= set(books())
