"""What the names of two issues of one drawing have in common."""

import re
from pathlib import PureWindowsPath

_DATE = re.compile(r"[\s_.-]*(19|20)\d\d[-_.]?[01]\d[-_.]?[0-3]\d$")
_MARKED = re.compile(r"[\s_.-]+(rev|revision|index|issue)[\s_.-]*\w{1,3}$")
_LETTER = re.compile(r"[\s_.-]+[a-z]$")


def issue_name(file: str) -> str:
    """Return a file's name without what tells one issue of a drawing from another."""
    name = PureWindowsPath(file).stem.casefold()  # a project may come from another system
    for mark in (_DATE, _MARKED, _LETTER):
        name = mark.sub("", name) or name
    return name
