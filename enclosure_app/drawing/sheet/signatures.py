"""Who signed a section, in words: for the title block of its sheets and for the cover of the set."""

from collections.abc import Iterable

from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.language import say
from enclosure_app.model.standing.sign_offs import Signed


def signed_of(job: SheetJob, section: str) -> tuple[Signed, ...]:
    """Return the sign-offs of the section of this name."""
    return tuple(each for name, each in job.signed if name == section)


def signatures(signed: Iterable[Signed]) -> tuple[str, ...]:
    """Return a text for each sign-off: who, which day, whether it was changed since, the remark."""
    return tuple(_signature(each) for each in signed) or (say("not signed"),)


def _signature(signed: Signed) -> str:
    sign_off = signed.sign_off
    words = ", ".join(filter(None, (sign_off.who, sign_off.when[:10])))
    if signed.changed:
        words = say("{signed} (changed since)", signed=words)
    remark = " ".join(sign_off.remark.split())
    return f"{words}: {remark}" if remark else words
