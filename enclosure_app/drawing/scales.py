"""Standard scales, and which of them a section fits at."""

import re
from collections.abc import Sequence
from dataclasses import dataclass

from enclosure_app.errors import EnclosureError
from enclosure_app.language import say
from enclosure_app.model.drawing import Units


@dataclass(frozen=True, slots=True)
class Scale:
    """One standard scale: how it is written, and how many mm of the section are 1 mm on paper."""

    text: str
    ratio: float


# ISO 5455 (recommended reductions).
METRIC = tuple(Scale(f"1:{n}", float(n)) for n in (1, 2, 5, 10, 20, 50, 100, 200, 500, 1000))
# Inches to the foot; common practice of American offices.
IMPERIAL = tuple(
    Scale(f"{inches}\" = 1'-0\"", float(ratio))
    for inches, ratio in (
        ("12", 1), ("6", 2), ("3", 4), ("1 1/2", 8), ("1", 12), ("3/4", 16), ("1/2", 24),
        ("1/4", 48), ("1/8", 96), ("1/16", 192), ("1/32", 384),
    )
)  # fmt: skip


def series(units: Units) -> tuple[Scale, ...]:
    """Return the standard scales for drawings in `units`, largest first."""
    return IMPERIAL if units.imperial else METRIC


def parse_scale(text: str) -> Scale:
    """Return the standard scale that `text` names, such as ``1:10`` or ``3" = 1'``.

    Raises:
        EnclosureError: `text` names none of them.
    """
    wanted = _bare(text)
    for scale in (*METRIC, *IMPERIAL):
        if wanted in (_bare(scale.text), f"1:{scale.ratio:g}"):
            return scale
    known = (
        ", ".join(s.text for s in METRIC[:7]) + ", or " + ", ".join(s.text for s in IMPERIAL[1:8])
    )
    raise EnclosureError(
        say(
            "The scale “{text}” is not a standard one; use one of {known}.", text=text, known=known
        )
    )


def largest_that_fits(size: tuple[float, float], room: tuple[float, float], units: Units) -> Scale:
    """Return the largest standard scale at which `size` mm of section fit into `room` mm of paper.

    Raises:
        EnclosureError: none does.
    """
    for scale in series(units):
        if fits(size, room, scale):
            return scale
    raise EnclosureError(
        say(
            "The section is {width:.0f} m by {height:.0f} m, too large for this paper at any "
            "standard scale; draw a frame around the part to be shown, or use larger paper.",
            width=size[0] / 1000,
            height=size[1] / 1000,
        )
    )


def fits(size: Sequence[float], room: Sequence[float], scale: Scale) -> bool:
    """Whether `size` mm of section fit into `room` mm of paper."""
    return all(s / scale.ratio <= r + 1e-9 for s, r in zip(size, room, strict=True))


def _bare(text: str) -> str:
    """Strip what may be written either way: spaces, marks of feet and inches, "-0"."""
    text = re.sub(r"[\s\"'′″”’]", "", re.sub(r"(\d)\s+(\d+/)", r"\1-\2", text.strip()))
    return re.sub(r"=1(-0)?$", "=1", text)
