"""The words on a PDF page as notes: each run of letters on one line, in mm of paper."""

import ctypes
from collections.abc import Iterator
from dataclasses import dataclass
from math import atan2, cos, degrees, hypot, sin
from typing import TYPE_CHECKING

from enclosure_app.files.underlay_paths import applied, shown_matrix, times
from enclosure_app.files.underlay_pdfium import POINT_MM
from enclosure_app.model.place import Point
from enclosure_app.model.section import Text

if TYPE_CHECKING:
    from pypdfium2 import PdfPage, PdfTextPage

LAYER = "PDF notes"
_CAPITAL = 0.72  # of a font's size: the height of its capitals, as most typefaces have it
_OFF = 0.3  # of the size: how far a letter of the same line may lie beside its base line
_APART = 1.8  # of the size, from letter to letter: what stands further off is another note
_TURNED = 0.02  # radians: letters of one line stand alike
_BREAKS = "\r\n\ufffe\uffff\0"


@dataclass(slots=True)
class _Letter:
    """A letter: where its base line starts, how large its font is (points), how it is turned."""

    sign: str
    at: Point
    size: float
    turn: float


def page_texts(page: "PdfPage") -> tuple[Text, ...]:
    """Return the notes of a page, mm from its lower left corner as it is shown."""
    words = page.get_textpage()
    try:
        lines = list(_lines(_letters(page, words)))
    finally:
        words.close()
    return tuple(filter(None, (_text(line) for line in lines)))


def _letters(page: "PdfPage", words: "PdfTextPage") -> Iterator[_Letter]:
    from pypdfium2 import raw  # noqa: PLC0415  only when a PDF is open

    onto = shown_matrix(page)
    for number in range(max(words.count_chars(), 0)):
        sign = chr(raw.FPDFText_GetUnicode(words, number))
        if sign in _BREAKS:
            yield _Letter("", (0.0, 0.0), 0.0, 0.0)
            continue
        x, y = ctypes.c_double(), ctypes.c_double()
        raw.FPDFText_GetCharOrigin(words, number, x, y)
        held = raw.FS_MATRIX()
        raw.FPDFText_GetMatrix(words, number, held)
        a, b, c, d, _, _ = times((held.a, held.b, held.c, held.d, 0.0, 0.0), onto)
        size = raw.FPDFText_GetFontSize(words, number) * hypot(c, d)
        yield _Letter(sign, applied(onto, (x.value, y.value)), size, atan2(b, a))


def _lines(letters: Iterator[_Letter]) -> Iterator[list[_Letter]]:
    """Gather letters that follow each other on one base line."""
    line: list[_Letter] = []
    for letter in letters:
        if line and not (letter.sign and _goes_on(line, letter)):
            yield line
            line = []
        if letter.sign:
            line.append(letter)
    if line:
        yield line


def _goes_on(line: list[_Letter], letter: _Letter) -> bool:
    last = line[-1]
    if letter.sign == " " and letter.size == 0:  # PDFium put it between two words
        return True
    base = next((each for each in reversed(line) if each.size > 0), last)
    dx, dy = letter.at[0] - base.at[0], letter.at[1] - base.at[1]
    along = dx * cos(base.turn) + dy * sin(base.turn)
    beside = -dx * sin(base.turn) + dy * cos(base.turn)
    room = max(base.size, letter.size)
    alike = abs(letter.turn - base.turn) < _TURNED
    return alike and abs(beside) <= _OFF * room and along <= _APART * room


def _text(line: list[_Letter]) -> Text | None:
    said = "".join(letter.sign for letter in line).strip()
    first = next((letter for letter in line if not letter.sign.isspace()), None)
    if not said or first is None:
        return None
    height = first.size * _CAPITAL * POINT_MM
    at = (first.at[0] * POINT_MM, first.at[1] * POINT_MM)
    return Text(said, at, height, degrees(first.turn), LAYER)
