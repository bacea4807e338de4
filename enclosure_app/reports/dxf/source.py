"""Where a project's drawing is, and the marked-up sheet that goes with it."""

from collections.abc import Sequence
from itertools import chain, count
from pathlib import Path, PureWindowsPath


def drawing_of_project(source: str, beside: Path | None) -> Path | None:
    """Return where the drawing called `source` is: as it was named, or beside the project's file.

    None where it is in neither place, or the project was sketched from nothing.
    """
    if not source:
        return None
    near = [beside.parent / source, beside.parent / file_name(source)] if beside else []
    there = [Path(source), *near]
    return next((path for path in there if path.is_file()), None)


def file_name(source: str) -> str:
    """Return a drawing's name without its folder; a project may come from another system."""
    return PureWindowsPath(source).name


def sheet_beside(output: Path, source: Path) -> str:
    """Return the name of the marked-up sheet in the folder of `output`, "" where there is none."""
    names = (output.with_suffix(".pdf").name, source.with_suffix(".pdf").name)
    return next((name for name in names if output.with_name(name).is_file()), "")


def marked_names(sources: Sequence[Path], folder: Path) -> tuple[Path, ...]:
    """Return what marked drawings are called in a folder: as before, ``-marked``, no two the same."""
    taken: dict[str, Path] = {}
    for source in sources:
        numbers = chain([""], (f"-{number}" for number in count(2)))
        names = (f"{source.stem}-marked{number}.dxf" for number in numbers)
        name = next(each for each in names if each.casefold() not in taken)
        taken[name.casefold()] = folder / name
    return tuple(taken.values())
