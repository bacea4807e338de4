"""Every piece of a section as a shapely solid, made once and shared by all layers."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from enclosure_app.geometry.rims.solids import (
    Solid,
    area_solid,
    bare_lines,
    line_solid,
    plain_areas,
)
from enclosure_app.model.place import Area, Line, Shape
from enclosure_app.model.section import Section


@dataclass(frozen=True, slots=True)
class Bodies:
    """Solids by piece name; `axes` are the bare runs of sheets and the solids of areas."""

    solids: Mapping[str, Solid]
    axes: Mapping[str, Solid]
    areas: tuple[Solid, ...]


def bodies_of(section: Section) -> Bodies:
    """Make the solids of all pieces of a section."""
    axes = {**_lines(section), **_areas(section)}
    banded = {
        piece.name: solid_of(piece.shape)
        for piece in section.pieces
        if isinstance(piece.shape, Line) and piece.shape.width > 0
    }
    filled = tuple(axes[p.name] for p in section.pieces if isinstance(p.shape, Area))
    return Bodies({**axes, **banded}, axes, filled)


def bodies_again(last: Bodies, section: Section, moved: Sequence[str]) -> Bodies:
    """Return the solids of a section in which only the pieces called `moved` are others."""
    few = bodies_of(replace(section, pieces=tuple(section.by_name[name] for name in moved)))
    solids, axes = {**last.solids, **few.solids}, {**last.axes, **few.axes}
    if not few.areas:
        return Bodies(solids, axes, last.areas)
    filled = tuple(axes[p.name] for p in section.pieces if isinstance(p.shape, Area))
    return Bodies(solids, axes, filled)


def solid_of(shape: Shape) -> Solid:
    """Return the solid that distances to a shape are taken from."""
    if isinstance(shape, Line):
        return line_solid(shape.points, shape.width, closed=shape.closed)
    return area_solid(shape.outer, shape.holes)


def _lines(section: Section) -> dict[str, Solid]:
    runs = {p.name: _run(p.shape) for p in section.pieces if isinstance(p.shape, Line)}
    return dict(zip(runs, bare_lines(list(runs.values())), strict=True))


def _run(line: Line) -> tuple[tuple[float, float], ...]:
    return (*line.points, line.points[0]) if line.closed else line.points


def _areas(section: Section) -> dict[str, Solid]:
    shapes = {p.name: p.shape for p in section.pieces if isinstance(p.shape, Area)}
    plain = {name: shape.outer for name, shape in shapes.items() if not shape.holes}
    holed = {
        name: area_solid(shape.outer, shape.holes) for name, shape in shapes.items() if shape.holes
    }
    return {**dict(zip(plain, plain_areas(list(plain.values())), strict=True)), **holed}
