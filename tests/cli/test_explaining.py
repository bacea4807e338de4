"""Rules are listed and explained in their own words."""

import pytest

from enclosure_app.cli import NOTHING_WRONG, main


def test_the_list_of_rules_has_each_with_its_one_sentence(
    capsys: pytest.CaptureFixture[str],
) -> None:
    from enclosure_app.rules import RULES  # noqa: PLC0415  the commands without it need no rules

    assert main(["explain"]) == NOTHING_WRONG
    told = dict(line.split(maxsplit=1) for line in capsys.readouterr().out.splitlines())
    assert list(told) == [rule.name for rule in RULES]
    assert told["gap"] == "the layer stops and starts again."


def test_a_rule_is_explained_by_its_own_page(capsys: pytest.CaptureFixture[str]) -> None:
    main(["explain", "gap"])
    page = capsys.readouterr().out
    assert page.startswith("gap: ")
    assert "\nWhat to draw instead\n" in page
