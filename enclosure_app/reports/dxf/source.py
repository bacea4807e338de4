"""Which drawing a project was read from, and which of its sections lie in a given drawing."""

from collections.abc import Iterable, Mapping
from math import dist
from pathlib import Path, PureWindowsPath

from enclosure_app.files.dxf.raw import Raw, RawPath
from enclosure_app.model.place import Area, Points
from enclosure_app.model.report import SectionResult
from enclosure_app.model.section import Piece

_NEAR = 1.0  # mm: a corner that was not moved since it was read
_MOST = 0.5  # so many of a section's lines have to stand where the drawing has them


def drawing_of_project(source: str, beside: Path | None) -> Path | None:
    """Return where the drawing called `source` is: as it was named, or beside the project's file.

    None where it is in neither place, or the project was sketched from nothing.
    """
    if not source:
        return None
    name = PureWindowsPath(source).name  # a project may come from another system
    there = [Path(source), *([beside.parent / source, beside.parent / name] if beside else ())]
    return next((path for path in there if path.is_file()), None)


def is_drawn_in(result: SectionResult, items: Mapping[str, Points]) -> bool:
    """Whether a section was read from a drawing, of which `items` are the lines by handle, in mm.

    Handles alone do not tell, since every drawing counts from 1: lines have to stand where they
    stood. A section without lines of any drawing, which somebody sketched, is taken to be.
    """
    read = [piece for piece in result.section.pieces if piece.handles]
    return not read or sum(_stands(each, items) for each in read) >= _MOST * len(read)


def lines_by_handle(items: Iterable[Raw], factor: float) -> dict[str, Points]:
    """Return the corners of a drawing's lines by handle; `factor` makes mm of its units."""
    return {
        item.tag.handle: tuple((x * factor, y * factor) for x, y in item.points)
        for item in items
        if isinstance(item, RawPath)
    }


def _stands(piece: Piece, items: Mapping[str, Points]) -> bool:
    corners = piece.shape.outer if isinstance(piece.shape, Area) else piece.shape.points
    drawn = [point for handle in piece.handles for point in items.get(handle, ())]
    return any(dist(corner, point) <= _NEAR for corner in corners for point in drawn)


def sheet_beside(output: Path, source: Path) -> str:
    """Return the name of the marked-up sheet in the folder of `output`, "" where there is none."""
    names = (output.with_suffix(".pdf").name, source.with_suffix(".pdf").name)
    return next((name for name in names if output.with_name(name).is_file()), "")
