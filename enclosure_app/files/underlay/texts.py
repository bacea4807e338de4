"""The words on a PDF page as notes: each run of letters on one line, in mm of paper."""

import ctypes
from collections.abc import Iterator
from dataclasses import dataclass
from math import atan2, cos, degrees, hypot, sin
from typing import TYPE_CHECKING

from enclosure_app.files.underlay.paths import applied, shown_matrix, times
from enclosure_app.files.underlay.pdfium import POINT_MM
from enclosure_app.model.place import Point
from enclosure_app.model.section import Text

if TYPE_CHECKING:
    from pypdfium2 import PdfPage, PdfTextPage

LAYER = "PDF notes"
_CAPITAL = 0.72  # of a font's size: the height of its capitals, as most typefaces have it
_OFF = 0.3  # of the size: how far a letter of the same line may lie beside its base line
_APART = 1.4  # of the size, from letter to letter: what stands further off is another note
_BLANK = 0.5  # of the size, more for each blank between them
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
    """Gather letters that follow each other on one base line.

    Where a blank stands, PDFium does not always know: it puts some between words by itself. So only
    letters tell whether a line goes on.
    """
    line: list[_Letter] = []
    blanks: list[_Letter] = []
    for letter in letters:
        if letter.sign.isspace():
            blanks.append(letter)
        elif line and letter.sign and _goes_on(line[-1], letter, len(blanks)):
            line += [*blanks, letter]
            blanks = []
        else:
            if line:
                yield line
            line, blanks = [letter] if letter.sign else [], []
    if line:
        yield line


def _goes_on(last: _Letter, letter: _Letter, blanks: int) -> bool:
    dx, dy = letter.at[0] - last.at[0], letter.at[1] - last.at[1]
    along = dx * cos(last.turn) + dy * sin(last.turn)
    beside = -dx * sin(last.turn) + dy * cos(last.turn)
    room = max(last.size, letter.size)
    alike = abs(letter.turn - last.turn) < _TURNED
    near = along <= (_APART + _BLANK * blanks) * room
    return alike and near and abs(beside) <= _OFF * room


def _text(line: list[_Letter]) -> Text | None:
    said = "".join(letter.sign for letter in line).strip()
    if not said:
        return None
    first = line[0]
    height = first.size * _CAPITAL * POINT_MM
    at = (first.at[0] * POINT_MM, first.at[1] * POINT_MM)
    return Text(said, at, height, degrees(first.turn), LAYER)
