"""What is made of the office's lines and takes long: made once, in a thread where that is known early.

The lines of a section stay the very same object through every edit, so what is made of them is
kept beside them until another project is opened.
"""

from collections.abc import Callable
from typing import Any, TypeVar

from enclosure_app.model.project import Project
from enclosure_app.model.section import Stroke

_Made = TypeVar("_Made")
Strokes = tuple[Stroke, ...]

_KEPT = 200  # things that are kept ready

_ready: dict[tuple[int, Callable[[Strokes], Any]], tuple[Strokes, Any]] = {}


def made_of(strokes: Strokes, make: Callable[[Strokes], _Made]) -> _Made:
    """Return what `make` makes of lines; what is there already needs no time."""
    key = (id(strokes), make)
    there = _ready.get(key)
    if there is None or there[0] is not strokes:
        there = (strokes, make(strokes))
        _ready[key] = there
        while len(_ready) > _KEPT:
            _ready.pop(next(iter(_ready)), None)
    made: _Made = there[1]
    return made


def make_ready(project: Project, *makes: Callable[[Strokes], Any]) -> None:
    """Make what every section of a project will need, and forget what is left of others."""
    _ready.clear()
    for section in project.sections[: _KEPT // len(makes)]:
        for make in makes:
            made_of(section.strokes, make)
