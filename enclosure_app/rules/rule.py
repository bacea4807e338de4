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
    """One thing that can be wrong; `check` yields its findings and never prints."""

    name: str
    controls: tuple[Control, ...]
    severity: Severity
    check: Check


def page(rule: Rule) -> str:
    """Return the rule's own page: the docstring of the file that it stands in."""
    return cleandoc(sys.modules[rule.check.__module__].__doc__ or "")
