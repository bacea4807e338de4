"""What somebody saw on site of one item of the site list."""

from dataclasses import dataclass
from enum import StrEnum


class Seen(StrEnum):
    """How an item of the site list was found.

    `HIDDEN` is what nobody can see any more, or not yet: it is neither right nor wrong.
    """

    NOT_LOOKED_AT = "not looked at"
    IN_ORDER = "in order"
    NOT_IN_ORDER = "not in order"
    HIDDEN = "could not be seen"


@dataclass(frozen=True, slots=True)
class SiteCheck:
    """One look at the item with `key` of the site list of `section`: what was seen, by whom, when.

    `about` is the item's sentence as it was then. The rest is as in `Decision`.
    """

    key: str
    seen: Seen
    who: str = ""
    when: str = ""
    remark: str = ""
    section: str = ""
    about: str = ""
    photographs: tuple[str, ...] = ()
    revision: str = ""
    id: str = ""
    after: tuple[str, ...] = ()
