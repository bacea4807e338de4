"""A rule's page is the docstring of the file that its check stands in."""

from enclosure_app.rules import RULES, gap
from enclosure_app.rules.rule import page, page_parts


def test_the_page_is_the_files_own_docstring_without_its_margin() -> None:
    told = page(gap.RULE)
    assert gap.__doc__ is not None
    assert told.split() == gap.__doc__.split()
    assert told.startswith("gap: ")
    assert gap.RULE in RULES


def test_the_parts_of_a_page_are_its_summary_and_each_heading_with_its_paragraph() -> None:
    summary, parts = page_parts(gap.RULE)
    assert summary == "the layer stops and starts again."
    assert [heading for heading, _ in parts] == [
        "What it finds",
        "Why it matters",
        "What to draw instead",
        "Source",
    ]
    assert parts[2][1].startswith("Carry the sheet on to the next one and lap it, or draw")
