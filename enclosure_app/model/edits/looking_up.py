"""Finds what an edit is to change, and puts the changed thing in its place.

Everything that an edit does not name stays the very same object, so that whoever looks at the
project afterwards can tell by identity what has changed.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from math import isfinite

from enclosure_app.errors import EnclosureError
from enclosure_app.language import say
from enclosure_app.model.place import Area, Line, Point, Points, Shape
from enclosure_app.model.project import Project
from enclosure_app.model.section import Piece, Section

Which = str | int
"""A section by its name, or by its place among the project's sections, from 0."""


def index_of(project: Project, which: Which) -> int:
    """Return the place of a section among those of the project.

    Raises:
        EnclosureError: there is no such section.
    """
    names = [section.name for section in project.sections]
    if isinstance(which, int) and 0 <= which < len(names):
        return which
    if isinstance(which, str) and which in names:
        return names.index(which)
    known = ", ".join(f'"{name}"' for name in names) or say("none yet")
    raise EnclosureError(
        say('There is no section "{which}"; the sections are: {known}.', which=which, known=known)
    )


def section_of(project: Project, which: Which) -> Section:
    """Return a section.

    Raises:
        EnclosureError: there is no such section.
    """
    return project.sections[index_of(project, which)]


def piece_of(project: Project, which: Which, name: str) -> Piece:
    """Return a piece by its name.

    Raises:
        EnclosureError: there is no such section, or no such piece in it.
    """
    section = section_of(project, which)
    if name not in section.by_name:
        raise EnclosureError(
            say(
                'There is no piece "{name}" in section "{section}"; pick one that is drawn.',
                name=name,
                section=section.name,
            )
        )
    return section.by_name[name]


def line_of(project: Project, which: Which, name: str) -> tuple[Piece, Line]:
    """Return a line piece and its line.

    Raises:
        EnclosureError: there is no such piece, or it is an area.
    """
    piece = piece_of(project, which, name)
    if not isinstance(piece.shape, Line):
        raise EnclosureError(
            say('"{name}" is an area; only a line can be changed in this way.', name=name)
        )
    return piece, piece.shape


def with_section(project: Project, which: Which, section: Section) -> Project:
    """Return the project with another section in the place of one."""
    at = index_of(project, which)
    sections = project.sections
    return replace(project, sections=(*sections[:at], section, *sections[at + 1 :]))


def with_pieces(project: Project, which: Which, changed: Mapping[str, Sequence[Piece]]) -> Project:
    """Return the project with some pieces of a section each replaced by none, one or several."""
    section = section_of(project, which)
    pieces: list[Piece] = []
    for piece in section.pieces:
        if piece.name in changed:
            pieces += changed[piece.name]
        else:
            pieces.append(piece)
    return with_section(project, which, replace(section, pieces=tuple(pieces)))


def new_names(section: Section, stems: Iterable[str]) -> list[str]:
    """Return a name that no piece of the section has for each stem: ``drawn-1``, ``drawn-2``."""
    taken = set(section.by_name)
    names = []
    for stem in stems:
        number = 1
        while f"{stem}-{number}" in taken:
            number += 1
        names.append(f"{stem}-{number}")
        taken.add(names[-1])
    return names


def finite(points: Points) -> Points:
    """Return the points, all of whose coordinates must be finite.

    Raises:
        EnclosureError: one is not.
    """
    for point in points:
        if not (isfinite(point[0]) and isfinite(point[1])):
            raise EnclosureError(say("A coordinate is not a finite number: give the place again."))
    return points


def runs_of(shape: Shape) -> list[Points]:
    """Return the lines that bound a shape, or that it is; rings with their first point repeated."""
    if isinstance(shape, Area):
        return [(*ring, ring[0]) for ring in (shape.outer, *shape.holes)]
    return [run_of(shape)]


def run_of(line: Line) -> Points:
    """Return the points along a line, the first one repeated where it is closed."""
    return (*line.points, line.points[0]) if line.closed else line.points


def same_place(a: Point, b: Point, reach: float) -> bool:
    """Whether two places are no more than `reach` mm apart."""
    return (a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2 <= reach**2
