"""How much room a text takes in the shipped typeface, without Qt."""

from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

from enclosure_app.resources import resource

FAMILY = "Roboto Condensed"
_FILES = {False: "fonts/RobotoCondensed-Regular.ttf", True: "fonts/RobotoCondensed-Bold.ttf"}


@dataclass(frozen=True, slots=True)
class Face:
    """Widths of letters by code point, and the height of capitals, in units of the em."""

    widths: dict[int, float]
    capital: float


def font_files() -> tuple[Path, Path]:
    """Return the regular and the bold font file."""
    return resource(_FILES[False]), resource(_FILES[True])


def em(size: float) -> float:
    """Return the em of a text whose capitals are `size` high."""
    return size / _face(bold=False).capital


def text_width(text: str, size: float, *, bold: bool = False) -> float:
    """Return the width in mm of `text` with capitals `size` mm high.

    A letter that the typeface lacks (of a script that the system's fonts have to write) is
    taken to be a full em wide.
    """
    face = _face(bold=bold)
    return sum(face.widths.get(ord(letter), 1.0) for letter in text) * em(size)


def wrap(text: str, size: float, room: float, *, bold: bool = False) -> tuple[str, ...]:
    """Return `text` in lines no wider than `room` mm; a word that is wider is cut."""
    lines: list[str] = []
    for word in text.split():
        if lines and text_width(f"{lines[-1]} {word}", size, bold=bold) <= room:
            lines[-1] = f"{lines[-1]} {word}"
        else:
            lines.extend(_cut(word, size, room, bold=bold))
    return tuple(lines)


def shorten(text: str, size: float, room: float, *, bold: bool = False) -> str:
    """Return `text` on one line, or as much of it as fits into `room` mm and an ellipsis."""
    text = " ".join(text.split())
    if text_width(text, size, bold=bold) <= room:
        return text
    kept = text
    while kept and text_width(f"{kept}…", size, bold=bold) > room:
        kept = kept[:-1].rstrip()
    return f"{kept}…"


def _cut(word: str, size: float, room: float, *, bold: bool) -> list[str]:
    parts = [""]
    for letter in word:
        if parts[-1] and text_width(parts[-1] + letter, size, bold=bold) > room:
            parts.append("")
        parts[-1] += letter
    return parts


@cache
def _face(*, bold: bool) -> Face:
    # Imported here so that only who composes a sheet pays for it.
    from fontTools.ttLib import TTFont  # type: ignore[import-untyped]  # noqa: PLC0415

    with TTFont(resource(_FILES[bold]), lazy=True) as opened:
        font: Any = opened
        units = font["head"].unitsPerEm
        advances = font["hmtx"].metrics
        widths = {code: advances[name][0] / units for code, name in font.getBestCmap().items()}
        return Face(widths, font["OS/2"].sCapHeight / units)
