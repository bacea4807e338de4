"""Saves what can be read of a damaged binary DXF by writing it out as an ASCII one."""

import struct
from collections.abc import Iterator

from ezdxf.lldxf.const import DXFError
from ezdxf.lldxf.tagger import binary_tags_loader

# Raised where the data stop in the middle of a value, or make no sense from there on.
_CUT_SHORT = (DXFError, IndexError, ValueError, struct.error)


def as_text(data: bytes) -> bytes:
    """Return the tags of a binary DXF, up to the first that cannot be read, as an ASCII DXF."""
    return "".join(_lines(data)).encode("ascii")


def _lines(data: bytes) -> Iterator[str]:
    tags = binary_tags_loader(data)
    while True:
        try:
            code, value = next(tags)
        except StopIteration:
            return
        except _CUT_SHORT:
            yield "0\nEOF\n"
            return
        yield f"{code}\n{_written(value)}\n"


def _written(value: object) -> str:
    if isinstance(value, bytes):
        return value.hex().upper()
    text = str(value).replace("\r", " ").replace("\n", " ")
    return text if text.isascii() else "".join(map(_escaped, text))


def _escaped(character: str) -> str:
    """Escape what is not ASCII, so that the code page no longer matters."""
    if character.isascii():
        return character
    units = character.encode("utf-16-be", "surrogatepass")
    pairs = (units[index : index + 2] for index in range(0, len(units), 2))
    return "".join(f"\\U+{pair.hex().upper()}" for pair in pairs)
