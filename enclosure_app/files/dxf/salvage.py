"""Saves what can be read of a damaged DXF: drops what makes no sense, keeps the rest."""

import struct
from collections.abc import Iterator

from ezdxf.lldxf.const import DXFError
from ezdxf.lldxf.tagger import binary_tags_loader
from ezdxf.lldxf.types import BINARY_DATA, POINT_CODES, TYPE_TABLE

Group = list[tuple[int, bytes]]

_LAST_CODE = 1071
_VARIABLE = 9
_USELESS = frozenset(
    (2, name) for name in (b"OBJECTS", b"CLASSES", b"ACDSDATA", b"THUMBNAILIMAGE")
)
_FRAME = frozenset(
    (0, name) for name in (b"SECTION", b"ENDSEC", b"EOF", b"TABLE", b"ENDTAB", b"BLOCK", b"ENDBLK")
)
_CLOSED = frozenset((0, name) for name in (b"ENDSEC", b"EOF"))
_ENDS = frozenset((0, name) for name in (b"ENDSEC", b"EOF", b"ENDTAB"))
# Raised where the data stop in the middle of a value, or make no sense from there on.
_CUT_SHORT = (DXFError, IndexError, ValueError, struct.error)


def as_text(data: bytes) -> bytes:
    """Return the tags of a binary DXF, up to the first that cannot be read, as an ASCII DXF."""
    return "".join(_lines(data)).encode("ascii")


def mended(data: bytes) -> tuple[bytes, int]:
    """Return an ASCII DXF without its damaged entities, and how many those were.

    Sections that draw nothing (objects, classes, previews) are left out whole: a drawing is
    read without them, and damage there would only be in the way.
    """
    kept: list[Group] = []
    lost = 0
    skipping = False
    for group in _groups(data):
        first = group[0]
        if first == (0, b"SECTION"):
            skipping = any(tag in _USELESS for tag in group)
        if skipping:
            skipping = first != (0, b"ENDSEC")
            continue
        sound = [tag for tag in group if _is_sound(*tag)]
        whole = len(sound) == len(group) and _is_whole_variable(group)
        if whole or first in _FRAME:
            kept.append(sound)
        else:
            lost += 1
    if kept and kept[-1][0] not in _ENDS:
        kept.pop()  # cut off somewhere in the middle
        lost += 1
    if kept and kept[-1][0] not in _CLOSED:
        kept.append([(0, b"ENDSEC")])
    return b"".join(b"%d\n%b\n" % tag for group in kept for tag in group), lost


def _groups(data: bytes) -> Iterator[Group]:
    """Yield runs of tags, each an entity, a table entry, a header variable or a bracket."""
    group: Group = []
    for tag in _tags(data):
        if tag[0] in (0, _VARIABLE) and group:
            yield group
            group = []
        group.append(tag)
    if group:
        yield group


def _tags(data: bytes) -> Iterator[tuple[int, bytes]]:
    """Yield pairs of group code and value, skipping lines until a code comes again."""
    lines = (line.rstrip(b"\r") for line in data.split(b"\n"))
    for line in lines:
        try:
            code = int(line)
        except ValueError:
            continue
        value = next(lines, None)
        if value is not None and 0 <= code <= _LAST_CODE:
            yield code, value


def _is_whole_variable(group: Group) -> bool:
    """Return whether a header variable has a name and one value; true for anything else."""
    code, name = group[0]
    if code != _VARIABLE:
        return True
    values = [code for code, _ in group[1:]]
    return name.startswith(b"$") and (len(values) == 1 or values in ([10, 20], [10, 20, 30]))


def _is_sound(code: int, value: bytes) -> bool:
    """Return whether a value is of the type that its group code asks for."""
    try:
        if code in BINARY_DATA:
            bytes.fromhex(value.decode("ascii"))
        elif TYPE_TABLE.get(code) is int:
            int(value)
        elif TYPE_TABLE.get(code) is float or code in POINT_CODES:
            float(value)
    except ValueError:
        return False
    return True


def _lines(data: bytes) -> Iterator[str]:
    tags = binary_tags_loader(data)
    while True:
        try:
            code, value = next(tags)
        except (StopIteration, *_CUT_SHORT):
            return
        yield f"{code}\n{_written(value)}\n"


def _written(value: object) -> str:
    if isinstance(value, bytes):
        return value.hex().upper()
    text = str(value).replace("\r", " ").replace("\n", " ")
    return text if text.isascii() else "".join(map(escaped, text))


def escaped(character: str) -> str:
    """Escape what is not ASCII, so that the code page no longer matters."""
    if character.isascii():
        return character
    units = character.encode("utf-16-be", "surrogatepass")
    pairs = (units[index : index + 2] for index in range(0, len(units), 2))
    return "".join(f"\\U+{pair.hex().upper()}" for pair in pairs)
