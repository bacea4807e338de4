"""What a sheet is printed on and what stands in its title block."""

from dataclasses import dataclass

from enclosure_app.drawing.placement import Box
from enclosure_app.errors import EnclosureError
from enclosure_app.language import say
from enclosure_app.model.standing.sign_offs import Signed

# ISO 216 and ASME Y14.1, landscape, mm.
PAPERS: dict[str, tuple[float, float]] = {
    "A4": (297.0, 210.0),
    "A3": (420.0, 297.0),
    "A2": (594.0, 420.0),
    "A1": (841.0, 594.0),
    "A0": (1189.0, 841.0),
    "ANSI B": (431.8, 279.4),
    "ANSI C": (558.8, 431.8),
    "ANSI D": (863.6, 558.8),
    "ANSI E": (1117.6, 863.6),
}
_BINDING, _BORDER = 20.0, 10.0  # ISO 5457: 20 mm on the left for filing, 10 mm elsewhere
_SMALL_BINDING, _SMALL_BORDER = 12.0, 7.0  # on A4, where paper is dear


@dataclass(frozen=True, slots=True)
class SheetJob:
    """One order for sheets.

    `paper` is one of `PAPERS`; `scale` a standard scale, None for the largest that fits. Texts
    that are not known are "". `date` is written as given. With a `cover`, that comes first and
    lists the sheets, what was found and decided, and who `signed` which section, by its name.
    `drawn` is the revision of the drawing as the project keeps it, for the way back of answers.
    """

    paper: str = "A3"
    scale: str | None = None
    project: str = ""
    revision: str = ""
    who: str = ""
    date: str = ""
    cover: bool = False
    signed: tuple[tuple[str, Signed], ...] = ()
    drawn: str = ""


def paper_size(paper: str) -> tuple[float, float]:
    """Return width and height in mm of a paper, by its name in any case.

    Raises:
        EnclosureError: there is no paper of that name.
    """
    for name, size in PAPERS.items():
        if name.replace(" ", "") == paper.upper().replace(" ", "").replace("-", ""):
            return size
    raise EnclosureError(
        say(
            "The paper “{paper}” is not known; use one of {papers}.",
            paper=paper,
            papers=", ".join(PAPERS),
        )
    )


def border(size: tuple[float, float]) -> Box:
    """Return the box inside the border of a sheet."""
    width, height = size
    small = width <= PAPERS["A4"][0]
    binding, edge = (_SMALL_BINDING, _SMALL_BORDER) if small else (_BINDING, _BORDER)
    return Box(binding, edge, width - edge, height - edge)
