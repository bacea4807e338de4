"""Makes texts and names from a drawing fit for printing and for a sentence."""

import re
from collections.abc import Iterable

from ezdxf.lldxf.encoding import (
    decode_dxf_unicode,
    decode_mif_to_unicode,
    has_dxf_unicode,
    has_mif_encoding,
)

from enclosure_app.language import say

_SURROGATE = re.compile("[\ud800-\udfff]")
_LONE_BYTE = re.compile("(?<![\ud800-\udbff])[\udc80-\udcff]")


def printable(text: str) -> str:
    r"""Return text that can be printed and written as JSON.

    ``\U+00E4`` and its like are decoded. Bytes that did not fit the file's code page are taken for
    Western European ones (Windows code page 1252, which most such files were written in); what is
    no character there either becomes the replacement character.
    """
    if has_dxf_unicode(text):
        text = decode_dxf_unicode(text)
    if has_mif_encoding(text):
        text = decode_mif_to_unicode(text)
    if text.isascii() or not _SURROGATE.search(text):
        return text
    text = _LONE_BYTE.sub(_western, text)
    return text.encode("utf-16-le", "surrogatepass").decode("utf-16-le", "replace")


def listed(names: Iterable[str], most: int = 6) -> str:
    """Return names as ``"A", "B" and 3 more``."""
    every = sorted(names)
    shown = ", ".join(f"“{name}”" for name in every[:most])
    if len(every) <= most:
        return shown
    return say("{shown} and {count} more", shown=shown, count=len(every) - most)


def _western(match: re.Match[str]) -> str:
    return bytes([ord(match.group()) - 0xDC00]).decode("cp1252", "replace")
