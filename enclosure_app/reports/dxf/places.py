"""In which layout of a drawing each section stands, and in which units."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from math import dist

from enclosure_app.files.dxf.content import content
from enclosure_app.files.dxf.document import Document
from enclosure_app.files.dxf.raw import Raw, RawPath
from enclosure_app.files.dxf.words import printable
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Area, Points
from enclosure_app.model.report import SectionResult
from enclosure_app.model.section import Piece

_NEAR = 1.0  # mm: a corner that was not moved since it was read
_MOST = 0.5  # so many of a section's lines have to stand where the drawing has them


@dataclass(frozen=True, slots=True)
class Space:
    """One layout: the name of the `block` that holds it in the file, and what is drawn there."""

    block: str
    items: tuple[Raw, ...] = ()

    def lines(self) -> Mapping[str, Points]:
        """Return the corners of the lines by handle, in drawing units."""
        return {item.tag.handle: item.points for item in self.items if isinstance(item, RawPath)}


@dataclass(frozen=True, slots=True)
class Placed:
    """Sections that stand in one layout, which is drawn in `units`."""

    space: Space
    units: Units
    sections: tuple[SectionResult, ...]


def spaces_of(document: Document) -> Iterator[Space]:
    """Yield the layouts of a drawing as they are read: the model, then those on paper."""
    layouts = document.drawing.layouts
    for layout in sorted(layouts, key=lambda each: not each.is_modelspace):
        read = content(document, layout=printable(layout.name), all_layers=True)
        yield Space(layout.block_record_name, tuple(read.items))


def placed(
    sections: Sequence[SectionResult], spaces: Iterable[Space], units: Units
) -> tuple[Placed, ...]:
    """Return where sections stand, those of one layout together; those that stand nowhere lack.

    A drawing may be in other units than `units`, those of its project. Sections without lines of
    any drawing, which somebody sketched, go with the others, else into the model.
    """
    searched = _Searched(spaces, units)
    at = [searched.place(each) for each in sections]
    known = next(filter(None, at), None)
    if known is None and not any(map(_read, sections)):
        known = searched.first()
    groups: dict[tuple[str, Units], list[SectionResult]] = {}
    by_block: dict[str, Space] = {}
    for section, place in zip(sections, at, strict=True):
        where = place or (None if _read(section) else known)
        if where:
            space, drawn_in = where
            by_block[space.block] = space
            groups.setdefault((space.block, drawn_in), []).append(section)
    return tuple(
        Placed(by_block[block], drawn_in, tuple(those))
        for (block, drawn_in), those in groups.items()
    )


class _Searched:
    """The layouts of a drawing, read only as far as they have to be searched."""

    def __init__(self, spaces: Iterable[Space], units: Units) -> None:
        self._rest = iter(spaces)
        self._read: list[tuple[Space, Mapping[str, Points]]] = []
        self._units = (units, *(each for each in Units if each is not units))

    def first(self) -> tuple[Space, Units] | None:
        """Return the model."""
        return next(((space, self._units[0]) for space, _ in self._spaces()), None)

    def place(self, section: SectionResult) -> tuple[Space, Units] | None:
        """Return where a section stands, None where it does not, or nothing of it was read."""
        if not _read(section):
            return None
        for space, lines in self._spaces():
            fitting = [u for u in self._units if is_drawn_in(section, lines, u.in_mm)]
            if fitting:  # what stands at the origin stands there in any units
                return space, max(fitting, key=lambda u: _corners(section, lines, u.in_mm))
        return None

    def _spaces(self) -> Iterator[tuple[Space, Mapping[str, Points]]]:
        yield from tuple(self._read)
        for space in self._rest:
            self._read.append((space, space.lines()))
            yield self._read[-1]


def _read(result: SectionResult) -> list[Piece]:
    return [piece for piece in result.section.pieces if piece.handles]


def is_drawn_in(result: SectionResult, lines: Mapping[str, Points], factor: float) -> bool:
    """Whether a section was read from `lines`, which are by handle, in units of `factor` mm.

    Handles alone do not tell, since every drawing counts from 1: lines have to stand where they
    stood.
    """
    standing = [any(_stands(each, lines, factor)) for each in _read(result)]
    return sum(standing) >= max(1, _MOST * len(standing))


def _corners(result: SectionResult, lines: Mapping[str, Points], factor: float) -> int:
    return sum(sum(_stands(each, lines, factor)) for each in _read(result))


def _stands(piece: Piece, lines: Mapping[str, Points], factor: float) -> Iterator[bool]:
    """Yield of each corner whether it stands where the drawing has one of its line."""
    drawn = [
        (x * factor, y * factor) for handle in piece.handles for x, y in lines.get(handle, ())
    ]
    corners = piece.shape.outer if isinstance(piece.shape, Area) else piece.shape.points
    for corner in corners:
        yield any(dist(corner, point) <= _NEAR for point in drawn)
