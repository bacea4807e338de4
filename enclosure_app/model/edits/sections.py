"""Edits of sections: frame, marks, gravity, breaks, names, and the list of sections itself.

Each takes a project and gives a new one. `which` is the section's name or place. Other sections
stay the very same objects. Every edit raises `EnclosureError`, in the user's words, for a section
that does not exist and for what cannot be done.
"""

from collections.abc import Callable
from dataclasses import replace
from enum import StrEnum
from math import hypot
from types import MappingProxyType

from enclosure_app.errors import EnclosureError
from enclosure_app.geometry.runs.editing import sound_ring
from enclosure_app.language import say
from enclosure_app.model.edits.looking_up import Which, finite, index_of, section_of, with_section
from enclosure_app.model.edits.said import said_of_renamed
from enclosure_app.model.place import Point, Points
from enclosure_app.model.product import Product
from enclosure_app.model.project import Project
from enclosure_app.model.section import Break, Section


class Side(StrEnum):
    """The two sides that a control layer keeps apart."""

    INSIDE = "inside"
    OUTSIDE = "outside"


def set_frame(project: Project, which: Which, ring: Points) -> Project:
    """Judge the section inside this ring (first point not repeated).

    Raises:
        EnclosureError: there is no such section, or the ring crosses itself or has too few corners.
    """
    if not sound_ring(finite(ring)):
        raise EnclosureError(
            say("A frame needs three corners or more and must not cross itself: draw it again.")
        )
    section = section_of(project, which)
    return with_section(project, which, replace(section, frame=ring, frame_drawn=True))


def add_mark(project: Project, which: Which, side: Side, at: Point) -> Project:
    """Mark a place as inside or outside."""
    return _marked(project, which, side, lambda marks: (*marks, *finite((at,))))


def move_mark(project: Project, which: Which, side: Side, index: int, to: Point) -> Project:
    """Move one mark of a side, counted from 0."""
    finite((to,))
    _must_be_mark(project, which, side, index)
    return _marked(project, which, side, lambda marks: (*marks[:index], to, *marks[index + 1 :]))


def remove_mark(project: Project, which: Which, side: Side, index: int) -> Project:
    """Remove one mark of a side, counted from 0."""
    _must_be_mark(project, which, side, index)
    return _marked(project, which, side, lambda marks: (*marks[:index], *marks[index + 1 :]))


def set_gravity(project: Project, which: Which, down: Point | None) -> Project:
    """Say which way is down on the sheet (any length), or None: the section is a plan.

    Raises:
        EnclosureError: there is no such section, or the direction has no length.
    """
    if down is not None:
        size = hypot(*finite((down,))[0])
        if size == 0.0:
            raise EnclosureError(say("Two different places are needed to say which way is down."))
        down = (down[0] / size, down[1] / size)
    section = section_of(project, which)
    return with_section(project, which, replace(section, gravity=down))


def add_break(project: Project, which: Which, cut: Break) -> Project:
    """Declare two lines the edges of a strip that the drawing leaves out.

    Raises:
        EnclosureError: there is no such section, or the ends of a line are one place.
    """
    for line in (cut.near, cut.far):
        if hypot(line[1][0] - line[0][0], line[1][1] - line[0][1]) == 0.0:
            raise EnclosureError(
                say("A break line needs two places that are apart: draw it again.")
            )
        finite(line)
    section = section_of(project, which)
    return with_section(project, which, replace(section, breaks=(*section.breaks, cut)))


def remove_break(project: Project, which: Which, index: int) -> Project:
    """Remove one break, counted from 0.

    Raises:
        EnclosureError: there is no such section, or no such break in it.
    """
    section = section_of(project, which)
    if not 0 <= index < len(section.breaks):
        raise EnclosureError(
            say('Section "{name}" has no such break: pick one of its own.', name=section.name)
        )
    left = (*section.breaks[:index], *section.breaks[index + 1 :])
    return with_section(project, which, replace(section, breaks=left))


def add_section(project: Project, section: Section) -> Project:
    """Add a section at the end; its name must be new."""
    _must_be_new(project, section.name)
    return replace(project, sections=(*project.sections, section))


def replace_section(project: Project, which: Which, section: Section) -> Project:
    """Put another section in the place of one.

    What lies under it stays under it, and what was decided in it stays decided.
    """
    before = section_of(project, which).name
    if section.name != before:
        _must_be_new(project, section.name)
        underlays = tuple(
            replace(each, section=section.name) if each.section == before else each
            for each in project.underlays
        )
        project = said_of_renamed(replace(project, underlays=underlays), before, section.name)
    return with_section(project, which, section)


def remove_section(project: Project, which: Which) -> Project:
    """Remove a section with everything in it and under it."""
    at = index_of(project, which)
    gone = project.sections[at].name
    return replace(
        project,
        sections=(*project.sections[:at], *project.sections[at + 1 :]),
        underlays=tuple(each for each in project.underlays if each.section != gone),
    )


def rename_section(project: Project, which: Which, name: str) -> Project:
    """Give a section another name, which must be new.

    Raises:
        EnclosureError: there is no such section, or the name is empty.
    """
    name = name.strip()
    if not name:
        raise EnclosureError(say("A section needs a name: type one."))
    return replace_section(project, which, replace(section_of(project, which), name=name))


def add_product(project: Project, product: Product) -> Project:
    """Put a product into the list of every section; one with its key is replaced.

    Sections that shared one list go on sharing one.
    """
    lists = {id(section.products): section.products for section in project.sections}
    longer = {
        key: MappingProxyType({**products, product.key: product})
        for key, products in lists.items()
    }
    sections = tuple(replace(s, products=longer[id(s.products)]) for s in project.sections)
    return replace(project, sections=sections)


def _marked(
    project: Project, which: Which, side: Side, change: Callable[[Points], Points]
) -> Project:
    section = section_of(project, which)
    if side is Side.INSIDE:
        changed = replace(section, inside=change(section.inside))
    else:
        changed = replace(section, outside=change(section.outside))
    return with_section(project, which, changed)


def _must_be_mark(project: Project, which: Which, side: Side, index: int) -> None:
    section = section_of(project, which)
    marks = section.inside if side is Side.INSIDE else section.outside
    if not 0 <= index < len(marks):
        raise EnclosureError(
            say(
                'Section "{name}" has no such {side} mark: pick one that is drawn.',
                name=section.name,
                side=say(side),
            )
        )


def _must_be_new(project: Project, name: str) -> None:
    if any(section.name == name for section in project.sections):
        raise EnclosureError(
            say('There is a section "{name}" already: give it another name.', name=name)
        )
