"""Edits of the joints that a person declares sealed."""

from collections.abc import Collection, Mapping
from dataclasses import replace

from enclosure_app.errors import EnclosureError
from enclosure_app.language import say
from enclosure_app.model.edits.looking_up import Which, piece_of, section_of, with_section
from enclosure_app.model.project import Project


def declare_sealed(
    project: Project, which: Which, a: str, b: str, *, sealed: bool = True
) -> Project:
    """Declare the joint of two pieces sealed, or take that back.

    Raises:
        EnclosureError: there is no such piece, or the two are one.
    """
    for name in (a, b):
        piece_of(project, which, name)
    if a == b:
        raise EnclosureError(say('"{a}" has no joint with itself: pick two pieces.', a=a))
    section = section_of(project, which)
    pair = frozenset({(min(a, b), max(a, b))})
    pairs = section.sealed | pair if sealed else section.sealed - pair
    return with_section(project, which, replace(section, sealed=pairs))


def forgotten(project: Project, which: Which, names: Collection[str]) -> Project:
    """Return the project without what was declared about the joints of pieces that are gone."""
    return renamed(project, which, dict.fromkeys(names, ""))


def also_sealed(project: Project, which: Which, name: str, parts: Collection[str]) -> Project:
    """Return the project with what was declared about a piece's joints said of its parts too."""
    section = section_of(project, which)
    pairs = {
        (min(part, other), max(part, other))
        for pair in section.sealed
        if name in pair
        for other in pair
        if other != name
        for part in parts
    }
    if not pairs:
        return project
    return with_section(project, which, replace(section, sealed=section.sealed | pairs))


def renamed(project: Project, which: Which, names: Mapping[str, str]) -> Project:
    """Return the project with declared joints carried over to pieces of other names.

    A joint of a piece whose new name is "", or of a piece with itself, is dropped.
    """
    section = section_of(project, which)
    if not any(name in names for pair in section.sealed for name in pair):
        return project
    ends = {(names.get(a, a), names.get(b, b)) for a, b in section.sealed}
    pairs = frozenset((min(a, b), max(a, b)) for a, b in ends if a and b and a != b)
    return with_section(project, which, replace(section, sealed=pairs))
