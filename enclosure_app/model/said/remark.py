"""A remark about a finding that decides nothing."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Remark:
    """Words or photographs put to the finding with `key`; what was decided about it stands.

    The fields are those of `Decision`.
    """

    key: str
    who: str = ""
    when: str = ""
    remark: str = ""
    section: str = ""
    about: str = ""
    photographs: tuple[str, ...] = ()
    revision: str = ""
    id: str = ""
