"""Hatch patterns of the trade, as line families of our own for one scale after another."""

from dataclasses import dataclass
from math import cos, radians, sin

Family = tuple[float, tuple[float, float], tuple[float, float], list[float]]


@dataclass(frozen=True)
class Pattern:
    """A named pattern: families of (angle, shift, distance, dashes), times `spacing` mm on paper."""

    name: str
    spacing: float
    families: tuple[tuple[float, float, float, tuple[float, ...]], ...]

    def lines(self, scale: float) -> list[Family]:
        """Return the line families in drawing units; `scale` is the unit's size of one spacing."""
        found: list[Family] = []
        for angle, shift, distance, dashes in self.families:
            across = (-sin(radians(angle)), cos(radians(angle)))
            base = (across[0] * shift * scale, across[1] * shift * scale)
            step = (across[0] * distance * scale, across[1] * distance * scale)
            found.append((angle, base, step, [d * scale for d in dashes]))
        return found


_SLANT = Pattern("SLANT", 1.6, ((45, 0, 1, ()),))
_WOOD = Pattern("PLY", 1.0, ((0, 0, 1, ()),))
_CROSS = Pattern("RIGID", 2.4, ((45, 0, 1, ()), (135, 0, 1, ())))
_WOOL = Pattern("WOOL", 2.6, ((60, 0, 1, ()), (120, 0, 1, ())))
_FIBRE = Pattern("FIBRE", 2.0, ((30, 0, 1, ()), (150, 0, 1, ())))
_FOAM = Pattern("FOAM", 1.3, ((0, 0, 1, (0.6, -0.6)), (90, 0, 1, (0.6, -0.6))))
_CONCRETE = Pattern(
    "CONCRETE",
    3.0,
    ((50, 0, 1, (0.5, -1.7)), (-15, 0.3, 1.3, (0.4, -1.4)), (95, 0.1, 1.6, (0.2, -1))),
)
_EARTH = Pattern(
    "SOIL",
    3.4,
    ((0, 0, 1, (1, -1)), (0, 0.25, 1, (1, -1)), (90, 0, 1, (1, -1)), (90, 0.25, 1, (1, -1))),
)
_STONES = Pattern(
    "STONES", 2.2, ((20, 0, 1, (0.5, -0.5)), (80, 0, 1, (0.4, -0.6)), (140, 0, 1, (0.5, -0.5)))
)
_SOLIDISH = Pattern("METAL", 0.7, ((45, 0, 1, ()),))

PATTERNS = {
    "plywood": _WOOD,
    "osb": _WOOD,
    "gypsum-board": _STONES,
    "mineral-wool": _WOOL,
    "wood-fibre": _FIBRE,
    "xps": _CROSS,
    "pir": _CROSS,
    "closed-cell-foam": _FOAM,
    "framing": _SLANT,
    "ledger": _SLANT,
    "concrete": _CONCRETE,
    "soil": _EARTH,
    "gravel": _STONES,
    "glass": _SOLIDISH,
    "window-frame": _SLANT,
    "pipe": _SOLIDISH,
    "fascia-board": _SLANT,
    "trim": _SLANT,
}
