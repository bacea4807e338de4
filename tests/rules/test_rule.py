"""A rule's page is the docstring of the file that its check stands in."""

from enclosure_app.rules import RULES, gap
from enclosure_app.rules.rule import page


def test_the_page_is_the_files_own_docstring_without_its_margin() -> None:
    told = page(gap.RULE)
    assert gap.__doc__ is not None
    assert told.split() == gap.__doc__.split()
    assert told.startswith("gap: ")
    assert gap.RULE in RULES
