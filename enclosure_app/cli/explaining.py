"""The command that explains a rule."""

import sys

import click

from enclosure_app.cli.judging import must_be_rule
from enclosure_app.cli.statuses import NOTHING_WRONG
from enclosure_app.cli.terminal import reflowed, say, text_width


@click.command("explain")
@click.argument("rule", required=False)
def explain(rule: str | None) -> int:
    """Explain a RULE: what it finds, why it matters, what to draw; without RULE, list them."""
    from enclosure_app.rules import RULES
    from enclosure_app.rules.rule import page

    rules = {known.name: known for known in RULES}
    if rule is None:
        wide = max(map(len, rules))
        told = {name: page(known).splitlines()[0] for name, known in rules.items()}
        lines = [f"{name:{wide}}  {told[name].partition(': ')[2]}" for name in rules]
        say("\n".join(lines), sys.stdout)
    else:
        must_be_rule(rule, list(rules))
        say(reflowed(page(rules[rule]), text_width()), sys.stdout)
    return NOTHING_WRONG
