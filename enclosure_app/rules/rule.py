"""What a rule is: a name, what it looks at, how loud it is by default, and its check."""

import sys
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from inspect import cleandoc

from enclosure_app.model.finding import Finding, Severity
from enclosure_app.model.limits import Limits
from enclosure_app.model.product import Control
from enclosure_app.network.network import Network

Check = Callable[[Network, Limits], Iterator[Finding]]


@dataclass(frozen=True, slots=True)
class Rule:
    """One thing that can be wrong; `check` yields its findings and never prints.

    `local` says that it goes through laps or joints one by one, and that a finding depends on
    nothing but the two pieces of one and what laps these: it is checked again only where that changed.
    """

    name: str
    controls: tuple[Control, ...]
    severity: Severity
    check: Check
    local: bool = False


def page(rule: Rule) -> str:
    """Return the rule's own page: the docstring of the file that it stands in."""
    return cleandoc(sys.modules[rule.check.__module__].__doc__ or "")


def page_parts(rule: Rule) -> tuple[str, tuple[tuple[str, str], ...]]:
    """Return what stands on a rule's page: the summary, and each heading with its paragraph."""
    first, *lines = page(rule).splitlines()
    found: list[tuple[str, str]] = []
    for line in lines:
        if line and not line.startswith(" "):
            found.append((line.strip(), ""))
        elif line.strip() and found:
            heading, text = found[-1]
            found[-1] = heading, f"{text} {line.strip()}".strip()
    return first.partition(": ")[2], tuple(found)
