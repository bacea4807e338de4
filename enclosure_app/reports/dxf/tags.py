"""Writes groups of a DXF file in the form and the version of the file that they go into."""

import re
from collections.abc import Iterable
from io import BytesIO

from ezdxf.lldxf.tagwriter import BinaryTagWriter
from ezdxf.tools.codepage import toencoding

from enclosure_app.files.dxf.records import R2007, DxfRecords
from enclosure_app.files.dxf.salvage import escaped

Value = str | int | float
Tags = list[tuple[int, Value]]

LONGEST = 250  # letters in a text; up to R12 a line holds 255 (DXF reference, "String")
_CONTROL = re.compile(r"[\x00-\x1f\x7f]+")
_PLAINER = str.maketrans(
    {
        "\u202f": " ", "\u00a0": " ", "′": "'", "″": '"', "’": "'", "‘": "'", "“": '"', "”": '"',
        "–": "-", "—": "-", "−": "-", "×": "x", "≤": "<=", "≥": ">=", "⁄": "/", "…": "...",
        "·": "-",
    }
)  # fmt: skip


def encoded(tags: Iterable[tuple[int, Value]], file: DxfRecords) -> bytes:
    """Return groups as bytes that fit into `file`."""
    if file.binary:
        return _binary(tags, file)
    end = file.end_of_line
    letters = _letters(file)
    lines: list[bytes] = []
    for code, value in tags:
        lines += (b"%3d" % code, _text(value, letters).encode(letters))
    return b"".join(line + end for line in lines)


def plain(text: str) -> str:
    """Return a text in letters that the line fonts of CAD programs have, on one line."""
    text = text.encode("utf-16", "surrogatepass").decode("utf-16", "replace")
    text = _CONTROL.sub(" ", text.translate(_PLAINER))
    return text.replace("%%", "% %").replace("^", "^ ")


def shortened(text: str, most: int = LONGEST) -> str:
    """Return as much of a text as takes `most` bytes however it is written."""
    if _length(text) <= most:
        return text
    while _length(text) > most - 3:
        text = text[:-1]
    return text.rstrip() + "..."


def fits_a_line(text: str) -> bool:
    """Whether a text can be written whole in one group of any version."""
    return _length(text) <= LONGEST


def _length(text: str) -> int:
    return len(_escaped(text))


def _binary(tags: Iterable[tuple[int, Value]], file: DxfRecords) -> bytes:
    stream = BytesIO()
    letters = _letters(file)
    writer = BinaryTagWriter(stream, file.version, encoding=letters)
    for code, value in tags:
        writer.write_tag2(code, _escaped(value, letters) if isinstance(value, str) else value)
    return stream.getvalue()


def _letters(file: DxfRecords) -> str:
    """Return how letters are written in a file; where it does not say, ASCII is the safe way."""
    if file.version >= R2007:
        return "utf-8"
    page = file.header.get("$DWGCODEPAGE")
    known = page is not None and page.text.upper().startswith("ANSI_")
    return toencoding(page.text) if page and known else "ascii"


def _text(value: Value, letters: str) -> str:
    if isinstance(value, float):
        text = f"{value:.9f}".rstrip("0")
        return f"{text}0" if text.endswith(".") else text
    return str(value) if isinstance(value, int) else _escaped(value, letters)


def _escaped(text: str, letters: str = "ascii") -> str:
    """Escape what cannot be written in `letters`."""
    if text.isascii():
        return text
    return "".join(c if _takes(letters, c) else escaped(c) for c in text)


def _takes(letters: str, character: str) -> bool:
    try:
        character.encode(letters)
    except UnicodeEncodeError:
        return False
    return True
