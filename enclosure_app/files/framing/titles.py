"""The names of sections: the title that stands by each frame."""

import re
from collections.abc import Sequence
from dataclasses import replace

import numpy as np

from enclosure_app.files.dxf.raw import RawText
from enclosure_app.files.framing.extents import Box, box_of
from enclosure_app.files.framing.frames import Frame

TITLE = 80  # letters: a longer text is a note, not a title

_SCALE = re.compile(
    r"(?:scale|echelle|échelle|masstab|maßstab)?[\s:]*[\d'\"½¼¾⅛ /.-]+\s*[:=].*", re.I
)


def named(frames: Sequence[Frame], texts: Sequence[RawText]) -> tuple[Frame, ...]:
    """Give each frame the largest text close to its lower edge, just below it or just above it.

    Within a frame, and where none is drawn, only a text larger than most can be a title. A
    frame without one is called ``Section 1`` by its place in the drawing; of two frames with one
    title the later gets a number.
    """
    titles: dict[int, list[tuple[float, float, str]]] = {}
    usual = float(np.median([text.height for text in texts])) if len(texts) > 2 else 0.0
    boxes = [box_of([frame.ring]) for frame in frames]
    for text in texts:
        name = _title(text.text)
        found = _closest(text, boxes) if name else None
        if found is None:
            continue
        beside = found[0] > 0 and frames[found[1]].drawn
        if beside or text.height > usual:
            titles.setdefault(found[1], []).append((-text.height, found[0], name))
    chosen = [min(titles[i])[2] if i in titles else f"Section {i + 1}" for i in range(len(frames))]
    return tuple(replace(frame, name=_unique(chosen, i)) for i, frame in enumerate(frames))


def _title(text: str) -> str:
    name = " ".join(text.split())
    wordless = not any(letter.isalpha() for letter in name)
    return "" if wordless or len(name) > TITLE or _SCALE.fullmatch(name) else name


def _closest(text: RawText, boxes: Sequence[Box]) -> tuple[float, int] | None:
    away = ((_away(text, box), i) for i, box in enumerate(boxes))
    return min(((far, i) for far, i in away if far is not None), default=None)


def _away(text: RawText, box: Box) -> float | None:
    """Return how far a title stands from a frame; above counts double, None is too far."""
    (x, y), (x0, y0, x1, y1) = text.at, box
    wide, high = x1 - x0, y1 - y0
    if not x0 - 0.1 * wide <= x <= x1 + 0.05 * wide:
        return None
    if 0 <= y - y0 <= 0.15 * high:
        return 0.0
    if 0 < y0 - y <= max(0.15 * high, 6 * text.height):
        return y0 - y
    if 0 <= y - y1 <= max(0.1 * high, 4 * text.height):
        return 2 * (y - y1)
    return None


def _unique(names: Sequence[str], i: int) -> str:
    before = names[:i].count(names[i])
    return f"{names[i]} ({before + 1})" if before else names[i]
