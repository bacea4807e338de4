"""Texts as a PDF can hold them: file names and damaged drawings may bring letters that are none."""

import re

from pikepdf import String

_NO_LETTERS = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\x7f\ud800-\udfff\ufffe\uffff]")


def plain(text: str) -> str:
    """Return a text in which whatever is no letter is a question mark."""
    return _NO_LETTERS.sub("?", text)


def pdf_text(text: str) -> String:
    """Return a text string (ISO 32000-1, 7.9.2.2), in Unicode where that is needed."""
    return String(plain(text))
