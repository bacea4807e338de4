"""What holds for every rule: one file, one name, one page of explanation, one test file."""

import re
from collections import Counter
from pathlib import Path

import pytest

import enclosure_app.rules
from enclosure_app.model.finding import Severity
from enclosure_app.rules import RULES
from enclosure_app.rules.rule import Rule, page

FOLDER = Path(enclosure_app.rules.__file__).parent
HEADINGS = ["What it finds", "Why it matters", "What to draw instead", "Source"]
each_rule = pytest.mark.parametrize("rule", RULES, ids=lambda rule: rule.name)


def test_every_rule_file_is_listed() -> None:
    files = {path.stem for path in FOLDER.glob("*.py")} - {"__init__", "rule"}
    assert {rule.check.__module__.rpartition(".")[2] for rule in RULES} == files


def test_no_two_rules_share_a_name() -> None:
    names = Counter(rule.name for rule in RULES)
    assert [name for name, times in names.items() if times > 1] == []


@each_rule
def test_the_file_is_called_as_the_rule(rule: Rule) -> None:
    assert re.fullmatch(r"[a-z]+(-[a-z]+)*", rule.name)
    assert rule.check.__module__ == f"enclosure_app.rules.{rule.name.replace('-', '_')}"


@each_rule
def test_a_rule_is_loud_or_off_only_by_setting(rule: Rule) -> None:
    assert rule.severity in (Severity.FAULT, Severity.DOUBT, Severity.REMARK)


@each_rule
def test_the_page_starts_with_the_name_in_one_sentence(rule: Rule) -> None:
    first, second = page(rule).splitlines()[:2]
    assert re.fullmatch(re.escape(rule.name) + r": \S.*\.", first)
    assert second == ""


@each_rule
def test_the_page_has_the_four_headings_in_order_with_words_under_each(rule: Rule) -> None:
    lines = page(rule).splitlines()
    flush = [line for line in lines[1:] if line and not line.startswith(" ")]
    assert flush == HEADINGS
    for heading in HEADINGS:
        assert lines[lines.index(heading) + 1].startswith("    "), heading


@each_rule
def test_the_rule_has_its_own_test_file(rule: Rule) -> None:
    name = f"test_{rule.name.replace('-', '_')}.py"
    assert (Path(__file__).parent / name).is_file()
