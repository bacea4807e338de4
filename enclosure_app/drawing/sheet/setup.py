"""How the sheets of a project are to be issued: on which paper, at which scale, by whom."""

from dataclasses import dataclass

from enclosure_app.model.drawing import Units


@dataclass(frozen=True, slots=True)
class SheetSetup:
    """What a person set up for sheets. "" is as usual: the units' paper, the largest scale that fits.

    `cover` is None where a cover is there for several sections only.
    """

    paper: str = ""
    scale: str = ""
    revision: str = ""
    who: str = ""
    cover: bool | None = None


def usual_paper(units: Units) -> str:
    """Return the paper on which sheets are, where nobody set up another."""
    return "ANSI B" if units.imperial else "A3"
