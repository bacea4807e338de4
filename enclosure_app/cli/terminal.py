"""Standard output and standard error: width, colour, progress, and what a stream can take."""

import os
import re
import shutil
import sys
import textwrap
import unicodedata
from collections.abc import Iterable, Sequence
from itertools import groupby
from typing import TextIO, TypeVar

from enclosure_app.errors import EnclosureError

_NARROWEST, _WIDEST = 40, 120
_PLAINER = str.maketrans(
    {
        "×": "x", "−": "-", "–": "-", "—": "-", "′": "'", "″": '"', "‘": "'", "’": "'", "“": '"',
        "”": '"', "≤": "<=", "≥": ">=", "≈": "~", "·": ".", "→": "->", "°": " deg", "⁄": "/",
        "ß": "ss",
    }
)  # fmt: skip
_MIXED_NUMBER = re.compile(r"(?<=\d)(?=[¼½¾⅐-⅞])")
_Item = TypeVar("_Item")


def text_width() -> int:
    """Return how many characters a line of the report may have."""
    return min(max(shutil.get_terminal_size().columns, _NARROWEST), _WIDEST)


def takes_colour(stream: TextIO | None) -> bool:
    """Return whether the stream is a terminal whose user has not asked for plain text."""
    plain = os.environ.get("NO_COLOR") or os.environ.get("TERM") == "dumb"
    return _is_terminal(stream) and not plain


def say(text: str, stream: TextIO | None) -> None:
    """Write `text`, ending in one line break, in characters that the stream can take.

    A reader that closed its end, such as a pager that was left early, is no error; a stream that
    was closed by whoever started the program takes nothing.

    Raises:
        EnclosureError: there is no room left where the stream leads.
    """
    if stream is None:
        return
    try:
        stream.write(fit_encoding(text.rstrip("\n"), stream.encoding or "utf-8") + "\n")
        stream.flush()
    except BrokenPipeError:
        # What is still in the buffer has to go somewhere when Python closes the stream.
        os.dup2(os.open(os.devnull, os.O_WRONLY), stream.fileno())
    except OSError as error:
        raise EnclosureError(
            f"The report cannot be written to where standard output leads ({error.strerror}); "
            "make room there, or send it somewhere else."
        ) from error


def reflowed(text: str, width: int) -> str:
    """Return `text` with its indented paragraphs filled anew to `width` characters."""
    lines: list[str] = []
    for indent, paragraph in groupby(text.splitlines(), key=_indent):
        if indent:
            words = " ".join(line.strip() for line in paragraph)
            lines += textwrap.wrap(
                words,
                width,
                initial_indent=indent,
                subsequent_indent=indent,
                break_long_words=False,
                break_on_hyphens=False,
            )
        else:
            lines.extend(paragraph)
    return "\n".join(lines)


def with_progress(items: Sequence[_Item], what: str) -> Iterable[_Item]:
    """Yield the items; for several of them and on a terminal, show how far they have come."""
    if len(items) == 1 or not (_is_terminal(sys.stdout) and _is_terminal(sys.stderr)):
        return items
    from rich.console import Console
    from rich.progress import track

    return track(items, what, console=Console(stderr=True), transient=True)


def fit_encoding(text: str, encoding: str) -> str:
    """Return `text` with what `encoding` cannot take put in plainer characters."""
    if _takes(text, encoding):
        return text
    text = _MIXED_NUMBER.sub(" ", text)  # 2½ must become 2 1/2 and never 21/2
    return "".join(c if _takes(c, encoding) else _plainer(c) for c in text)


def _indent(line: str) -> str:
    return line[: len(line) - len(line.lstrip())]


def _plainer(character: str) -> str:
    """Return `character` in ASCII: an é loses its accent, ¾ becomes 3/4, the rest a ?."""
    text = unicodedata.normalize("NFKD", character.translate(_PLAINER)).translate(_PLAINER)
    return text.encode("ascii", "ignore").decode("ascii") or "?"


def _takes(text: str, encoding: str) -> bool:
    try:
        text.encode(encoding)
    except UnicodeEncodeError:
        return False
    return True


def _is_terminal(stream: TextIO | None) -> bool:
    return stream is not None and stream.isatty()
