"""Finds the records of a DXF file without changing or understanding them: where each begins and ends.

Marks are put into a drawing between its bytes, so that everything that the office drew stays
letter by letter, also what no library reads. A record is what begins with a group code 0: an
entity, an entry of a table, or a bracket such as SECTION. Both forms of the format are read, lines
and binary (DXF reference, "Group codes in numerical order" and "About binary DXF files").
"""

import struct
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import NamedTuple

from ezdxf.lldxf.types import BINARY_DATA, BYTES, DOUBLE, INT16, INT32, INT64

from enclosure_app.errors import EnclosureError
from enclosure_app.language import say

SIGNATURE = b"AutoCAD Binary DXF\r\n\x1a\x00"
R12, R13, R14, R2000, R2004, R2007 = "AC1009", "AC1012", "AC1014", "AC1015", "AC1018", "AC1021"
_POINTERS = frozenset({5, 105, *range(320, 370), *range(390, 400), 480, 481, 1005})
_SIZES = {
    **dict.fromkeys(BYTES, 1),
    **dict.fromkeys(INT16, 2),
    **dict.fromkeys(INT32, 4),
    **dict.fromkeys((*INT64, *DOUBLE), 8),
}
_FIRST_LINE = 4096  # bytes in which the first line ends
_WHOLE = {1: "<B", 2: "<h", 4: "<i", 8: "<q"}
_CUT_SHORT = (ValueError, IndexError, struct.error)  # a binary file that ends within a value
_DIGITS = 16  # of a handle at most
_TOP = 0xFFFF_FFFF_0000_0000  # a handle from here on leaves too few above it, and is passed over


class Tag(NamedTuple):
    """One group: its code, its value as text, and the bytes that the value takes."""

    code: int
    text: str
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Record:
    """What a group code 0 begins: its kind, and the bytes from there to the next one."""

    kind: str
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Bracket:
    """A section or a table: the numbers of its first record and of the one that ends it."""

    first: int
    last: int


class DxfRecords:
    """The records of a file, in order.

    Raises:
        EnclosureError: the file stops in the middle, so that there is no place to put anything.
    """

    def __init__(self, data: bytes) -> None:
        self.data = data
        self.binary = data.startswith(SIGNATURE)
        self.handles: set[int] = set()
        self._short_codes = self.binary and _short_codes(data)
        try:
            self.records: list[Record] = list(_cut(self._scan(), len(data)))
        except _CUT_SHORT as error:
            raise EnclosureError(stops_short()) from error
        self.sections = self._brackets("SECTION", "ENDSEC", 0, len(self.records))
        if "ENTITIES" not in self.sections:
            raise EnclosureError(stops_short())
        tables = self.sections.get("TABLES", Bracket(0, 0))
        self.tables = self._brackets("TABLE", "ENDTAB", tables.first, tables.last)

    def tags(self, record: Record) -> Iterator[Tag]:
        """Yield the groups of a record."""
        return self._tags(record.start, record.end)

    def inside(self, bracket: Bracket) -> list[Record]:
        """Return the records between the two that make a bracket."""
        return self.records[bracket.first + 1 : bracket.last]

    def first(self, record: Record, code: int) -> str:
        """Return the first value of a record under a group code, "" where there is none."""
        return next((tag.text for tag in self.tags(record) if tag.code == code), "")

    @cached_property
    def header(self) -> Mapping[str, Tag]:
        """The first value of each header variable."""
        if "HEADER" not in self.sections:
            return {}
        found: dict[str, Tag] = {}
        name = ""
        for tag in self.tags(self.records[self.sections["HEADER"].first]):
            if tag.code == 9:
                name = tag.text
            elif name:
                found.setdefault(name, tag)
        return found

    @property
    def version(self) -> str:
        """The version of the format, such as ``AC1015``; without one it is the oldest."""
        return self.header["$ACADVER"].text if "$ACADVER" in self.header else R12

    @property
    def end_of_line(self) -> bytes:
        """What ends a line."""
        first = self.data[:_FIRST_LINE].splitlines(keepends=True)[0]
        return first[len(first.rstrip(b"\r\n")) :] or b"\n"

    def _scan(self) -> Iterator[tuple[str, int]]:
        """Yield kind and place of every record, and gather the handles on the way."""
        in_header = False  # its handle is the one that is free
        for code, place, _, value in self._groups(0, len(self.data)):
            if code == 0:
                kind = value.strip().decode("latin-1")
                yield kind, place
                in_header = False
                if kind == "EOF":
                    return
            elif code == 2 and value.strip() == b"HEADER":
                in_header = True
            elif code in _POINTERS and not in_header:
                self._note_handle(value.strip())

    def _note_handle(self, value: bytes) -> None:
        if not 0 < len(value) <= _DIGITS:
            return
        try:
            handle = int(value, 16)
        except ValueError:
            return  # a damaged handle, or the name that a dimension style of R12 has there
        if handle < _TOP:
            self.handles.add(handle)

    def _tags(self, start: int, end: int) -> Iterator[Tag]:
        for code, _, at, value in self._groups(start, end):
            numeric = self.binary and code in _SIZES
            text = _number(code, value) if numeric else value.strip().decode("latin-1")
            yield Tag(code, text, at, at + len(value))

    def _groups(self, start: int, end: int) -> Iterator[tuple[int, int, int, bytes]]:
        """Yield group code, its place, the place of its value, and the value's bytes."""
        if self.binary:
            return self._binary_groups(max(start, len(SIGNATURE)), end)
        return self._line_groups(start, end)

    def _line_groups(self, start: int, end: int) -> Iterator[tuple[int, int, int, bytes]]:
        """Yield pairs of lines; a line that is no group code is skipped until one comes again."""
        code, place = -1, start
        for line in self.data[start:end].splitlines(keepends=True):
            if code >= 0:
                yield code, place, start, line.rstrip(b"\r\n")
                code = -1
            else:
                try:
                    code, place = int(line), start
                except ValueError:
                    code = -1
            start += len(line)

    def _binary_groups(self, start: int, end: int) -> Iterator[tuple[int, int, int, bytes]]:
        data = self.data
        while start < end:
            place = start
            code, start = self._binary_code(start)
            if code in BINARY_DATA:
                start += 1
                stop = after = start + data[start - 1]
            elif code in _SIZES:
                stop = after = start + _SIZES[code]
            else:
                stop = data.index(b"\x00", start)
                after = stop + 1
            yield code, place, start, data[start:stop]
            start = after

    def _binary_code(self, at: int) -> tuple[int, int]:
        data = self.data
        if not self._short_codes:
            return int.from_bytes(data[at : at + 2], "little"), at + 2
        if data[at] == 0xFF:
            return int.from_bytes(data[at + 1 : at + 3], "little"), at + 3
        return data[at], at + 1

    def _brackets(self, opens: str, closes: str, first: int, last: int) -> dict[str, Bracket]:
        """Return what stands between two kinds of records, by its name; of equals the first."""
        found: dict[str, Bracket] = {}
        at: int | None = None
        for index in range(first, last):
            kind = self.records[index].kind
            if kind == opens:
                at = index
            elif kind == closes and at is not None:
                name = self.first(self.records[at], 2).upper()
                found.setdefault(name, Bracket(at, index))
                at = None
        return found


def stops_short() -> str:
    """Return what is said of a file that has no end of its entities."""
    return say("The drawing stops before the end of what it draws: get the whole file again.")


def _cut(starts: Iterator[tuple[str, int]], end: int) -> Iterator[Record]:
    """Yield records from where each begins; the last one goes to the end of the file."""
    kind, start = next(starts, ("EOF", end))
    for name, place in starts:
        yield Record(kind, start, place)
        kind, start = name, place
    yield Record(kind, start, end)


def _number(code: int, data: bytes) -> str:
    if code in DOUBLE:
        return str(struct.unpack("<d", data)[0])
    return str(struct.unpack(_WHOLE[len(data)], data)[0])


def _short_codes(data: bytes) -> bool:
    """Whether group codes take one byte, as they do up to R12."""
    at = data.find(b"$ACADVER", 0, 2048)
    version = data[at + 9 : at + 24].lstrip(b"\x00\x01") if at >= 0 else b""
    return version[:6].decode("latin-1") <= R12 if version else True
