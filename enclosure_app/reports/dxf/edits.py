"""Bytes put between the bytes of a file, or in place of some of them."""

from collections.abc import Iterable
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Edit:
    """Bytes that take the place of others; where `start` is `end`, they are put in."""

    start: int
    end: int
    put: bytes


def bare(data: bytes, start: int, end: int) -> tuple[int, int]:
    """Return the place of a value without the blanks around it."""
    value = data[start:end]
    return start + len(value) - len(value.lstrip()), end - (len(value) - len(value.rstrip()))


def edited(data: bytes, edits: Iterable[Edit]) -> bytes:
    """Return the bytes with every edit made; none may reach into another."""
    parts: list[bytes] = []
    done = 0
    for edit in sorted(edits, key=lambda edit: (edit.start, edit.end)):
        parts += (data[done : edit.start], edit.put)
        done = edit.end
    return b"".join((*parts, data[done:]))
