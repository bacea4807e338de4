"""Lays JSON out so that people can read it and compare two versions: one thing on one line."""

import json
from typing import Any

_ENCODE = json.JSONEncoder(ensure_ascii=False, allow_nan=False).encode


def laid_out(value: object) -> str:
    """Return `value` as JSON; objects stand on a line each, and those that hold objects on many.

    Raises:
        ValueError: a number is not finite.
    """
    return "".join(_lines(value, "")) + "\n"


def _lines(value: Any, indent: str) -> list[str]:  # noqa: ANN401  JSON
    if not _tall(value):
        return [_ENCODE(value)]
    deeper = f"{indent} "
    if isinstance(value, dict):
        items = [[f"{_ENCODE(key)}: ", *_lines(held, deeper)] for key, held in value.items()]
    else:
        items = [_lines(held, deeper) for held in value]
    opening, closing = "{}" if isinstance(value, dict) else "[]"
    parts = [opening]
    for number, item in enumerate(items):
        parts += [",\n" if number else "\n", deeper, *item]
    return [*parts, f"\n{indent}{closing}"]


def _tall(value: object) -> bool:
    """Whether a value holds a list or an object of objects, or is a list of objects."""
    if isinstance(value, dict):
        return any(_of_objects(held) for held in value.values()) or _of_objects(value)
    return _of_objects(value)


def _of_objects(value: object) -> bool:
    if isinstance(value, dict):
        return isinstance(next(iter(value.values()), None), dict)
    return isinstance(value, list | tuple) and bool(value) and isinstance(value[0], dict)
