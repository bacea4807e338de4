"""What is compared of a finding or of an item of the site list: where, of which pieces, how much."""

import re
from dataclasses import dataclass
from enum import StrEnum
from typing import NamedTuple

from enclosure_app.model.finding import Finding
from enclosure_app.model.place import Point, Points

_NUMBER = re.compile(r"#\d+$")


class Fate(StrEnum):
    """What became of a finding in the revised drawing."""

    STILL_THERE = "still there"
    MOVED = "moved"
    GONE = "gone"
    NEW = "new"
    NOT_SURE = "not sure, please look"

    @property
    def certain(self) -> bool:
        """Whether what was said of it is carried on without asking."""
        return self in (Fate.STILL_THERE, Fate.MOVED)


class Spot(NamedTuple):
    """A finding, or an item of the site list, as it is compared.

    `what` is what it is, whatever its place: only what is the same can be one. `measured` and
    `required` are mm, None where nothing is measured.
    """

    key: str
    what: tuple[str, ...]
    at: Point
    pieces: frozenset[str]
    measured: float | None = None
    required: float | None = None


class SpotMatch(NamedTuple):
    """What became of a spot, by keys: `old` is "" for a new one, `new` for one that is gone.

    Where it is not sure, `asked` are the keys of the later spots that it may be.
    """

    fate: Fate
    old: str
    new: str = ""
    asked: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class LookedAt:
    """A place of the site list, told as a finding is: which one, where, and what it is called.

    `keys` are those of its items; of an earlier one, of what somebody looked at.
    """

    key: str
    section: str
    at: Point
    message: str
    extent: tuple[Points, ...] = ()
    keys: tuple[str, ...] = ()
    measured: float | None = None
    required: float | None = None


@dataclass(frozen=True, slots=True)
class FindingMatch:
    """What became of a finding: `old` is None for a new one, `new` for one that is gone or unsure.

    Where it is not sure, `asked` are the later findings that it may be, to be shown beside it.
    """

    fate: Fate
    old: Finding | None
    new: Finding | None = None
    asked: tuple[Finding, ...] = ()


@dataclass(frozen=True, slots=True)
class LookMatch:
    """What became of a place of the site list that somebody looked at (see `FindingMatch`)."""

    fate: Fate
    old: LookedAt
    new: LookedAt | None = None
    asked: tuple[LookedAt, ...] = ()


def spot_of(finding: Finding) -> Spot:
    """Return a finding as it is compared."""
    what = (finding.rule, finding.control or "")
    pieces = frozenset(finding.pieces)
    return Spot(finding.key, what, finding.at, pieces, finding.measured, finding.required)


def renamed_key(key: str, names: dict[str, str]) -> tuple[str, ...]:
    """Return what a key says, with its pieces under their later names; in no order.

    ``gap:air:2F.high+30.low`` is made of a rule, a control, and parts of pieces.
    """
    steps = _NUMBER.sub("", key).split(":")
    return tuple("+".join(sorted(_renamed(e, names) for e in step.split("+"))) for step in steps)


def _renamed(part: str, names: dict[str, str]) -> str:
    if part in names:
        return names[part]
    name, dot, end = part.rpartition(".")
    return f"{names[name]}{dot}{end}" if name in names else part
