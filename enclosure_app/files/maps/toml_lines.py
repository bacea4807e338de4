"""Reads a TOML file that a person wrote and knows on which line each key stands."""

import re
import tomllib
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from enclosure_app.errors import EnclosureError
from enclosure_app.files.content import content_of
from enclosure_app.language import say

KeyPath = tuple[str | int, ...]
"""The way to a value: keys, and the place in the list for ``[[tables]]``."""

_TOKEN = re.compile(
    r'"""(?:\\.|[^\\])*?"{3,5}'  # a text over several lines may end in quotes of its own
    r"|'''.*?'{3,5}"
    r'|"(?:\\.|[^"\\\n])*"'
    r"|'[^'\n]*'"
    r"|\#[^\n]*"
    r"|[\[{]|[\]}]|\n|[^\"'\#\[\]{}\n]+",
    re.DOTALL,
)


@dataclass(frozen=True, slots=True)
class TomlLines:
    """On which line each key of a TOML file stands, from 1."""

    lines: dict[KeyPath, int]

    def line_of(self, path: KeyPath) -> int:
        """Return the line of `path`, or of the nearest table around it that has a line.

        Keys inside an inline table share the line on which their statement begins.
        """
        for length in range(len(path), 0, -1):
            if path[:length] in self.lines:
                return self.lines[path[:length]]
        return 1


def read_toml(path: Path) -> tuple[dict[str, Any], TomlLines]:
    """Read one TOML file.

    Raises:
        EnclosureError: it is no file, cannot be read, is not UTF-8, or is not TOML.
    """
    text = _text(path)
    try:
        tables = tomllib.loads(text)
    except RecursionError:
        raise EnclosureError(
            say("{file}: the brackets are nested too deeply.", file=path.name)
        ) from None
    except ValueError as error:
        raise EnclosureError(
            say("{file}: this is not sound TOML: {error}.", file=path.name, error=error)
        ) from None
    return tables, locate(text)


def locate(text: str) -> TomlLines:
    """Find the line of each key in `text`, which must be sound TOML."""
    lines: dict[KeyPath, int] = {}
    seen: dict[KeyPath, int] = {}  # how often a [[table]] came so far
    table: KeyPath = ()
    for line, statement in _statements(text.replace("\r\n", "\n")):
        if statement.startswith("["):
            table = _header(statement, seen)
            here = table
        else:
            here = table + _keys(_before_equals(statement))
        for length in range(1, len(here) + 1):
            lines.setdefault(here[:length], line)
    return TomlLines(lines)


def _text(path: Path) -> str:
    no_file = say("{file}: this is not a file; name a file in TOML.", file=path.name or path)
    try:
        return content_of(path, no_file).decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = error.object[: error.start].count(b"\n") + 1
        raise EnclosureError(
            say(
                "{file}, line {line}: the file is not UTF-8 text; save it as UTF-8.",
                file=path.name,
                line=line,
            )
        ) from None


def _statements(text: str) -> Iterator[tuple[int, str]]:
    """Cut the text into statements: a header, or a key with its value over all its lines."""
    line = start = 1
    depth = 0
    parts: list[str] = []
    for part in _TOKEN.findall(text):
        if part == "\n" and depth == 0:
            yield from _whole(start, parts)
            parts, start = [], line + 1
        elif not part.startswith("#"):
            parts.append(part)
            depth += (part in "[{") - (part in "]}")
        line += part.count("\n")
    yield from _whole(start, parts)


def _whole(line: int, parts: list[str]) -> Iterator[tuple[int, str]]:
    statement = "".join(parts).strip()
    if statement:
        yield line, statement


def _header(statement: str, seen: dict[KeyPath, int]) -> KeyPath:
    """The path of the table that a header opens; counts the tables of a list."""
    many = statement.startswith("[[")
    path: KeyPath = ()
    keys = _keys(statement.strip("[] \t"))
    for key in keys[:-1]:
        path = _inside((*path, key), seen)
    path += keys[-1:]
    if not many:
        return _inside(path, seen)
    seen[path] = seen.get(path, -1) + 1
    return _inside(path, seen)


def _inside(path: KeyPath, seen: dict[KeyPath, int]) -> KeyPath:
    """Add the number of the table last opened, where `path` is a list of tables."""
    return (*path, seen[path]) if path in seen else path


def _before_equals(statement: str) -> str:
    """The key of a statement; an equals sign may stand in a quoted key."""
    key = ""
    for token in _TOKEN.findall(statement):
        if token[0] not in "\"'" and "=" in token:
            return key + str(token).split("=")[0]
        key += token
    return key


def _keys(dotted: str) -> tuple[str, ...]:
    """Split a dotted key; the TOML reader itself knows about its quotes and escapes."""
    keys: list[str] = []
    inner: Any = tomllib.loads(f"{dotted} = 0")
    while isinstance(inner, dict):
        key, inner = next(iter(inner.items()))
        keys.append(key)
    return tuple(keys)
