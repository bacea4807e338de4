"""Edits of the pictures that lie under the drawing."""

from dataclasses import replace
from math import dist, isfinite

from enclosure_app.errors import EnclosureError
from enclosure_app.model.edits.looking_up import finite
from enclosure_app.model.place import Point
from enclosure_app.model.project import Project, Underlay


def add_underlay(project: Project, underlay: Underlay) -> Project:
    """Lay a picture under the drawing, over those that lie there."""
    return replace(project, underlays=(*project.underlays, _sound(underlay)))


def remove_underlay(project: Project, index: int) -> Project:
    """Take an underlay away, counted from 0."""
    underlay_at(project, index)
    left = (*project.underlays[:index], *project.underlays[index + 1 :])
    return replace(project, underlays=left)


def move_underlay(project: Project, index: int, by: Point) -> Project:
    """Move an underlay by a vector, mm."""
    underlay = underlay_at(project, index)
    x, y = underlay.at
    return _put(project, index, replace(underlay, at=(x + by[0], y + by[1])))


def turn_underlay(project: Project, index: int, degrees: float) -> Project:
    """Turn an underlay anticlockwise about its lower left corner, further than it is."""
    underlay = underlay_at(project, index)
    return _put(project, index, replace(underlay, angle=underlay.angle + degrees))


def scale_underlay(
    project: Project, index: int, places: tuple[Point, Point], length: float
) -> Project:
    """Bring an underlay to scale: two places on it are truly `length` mm apart.

    Args:
        project: The project.
        index: Which underlay, from 0.
        places: Where the two places lie now, mm; the first one stays where it is.
        length: How far apart they are to be, mm.
    """
    underlay = underlay_at(project, index)
    first, second = finite(places)
    apart = dist(first, second)
    if apart == 0.0:
        raise EnclosureError("The two places are the same: click two that are far apart.")
    if not (isfinite(length) and length > 0):
        raise EnclosureError(f"A length cannot be {length:g} mm: type one that is more than 0.")
    by = length / apart
    at = tuple(
        fixed + (corner - fixed) * by for fixed, corner in zip(first, underlay.at, strict=True)
    )
    larger = replace(underlay, at=(at[0], at[1]), mm_per_pixel=underlay.mm_per_pixel * by)
    return _put(project, index, larger)


def underlay_at(project: Project, index: int) -> Underlay:
    """Return one underlay, counted from 0.

    Raises:
        EnclosureError: there is no such underlay.
    """
    if not 0 <= index < len(project.underlays):
        raise EnclosureError("There is no such underlay: pick one that lies under the drawing.")
    return project.underlays[index]


def _put(project: Project, index: int, underlay: Underlay) -> Project:
    there = project.underlays
    changed = (*there[:index], _sound(underlay), *there[index + 1 :])
    return replace(project, underlays=changed)


def _sound(underlay: Underlay) -> Underlay:
    finite((underlay.at, (underlay.angle, underlay.mm_per_pixel)))
    if underlay.mm_per_pixel <= 0:
        raise EnclosureError(f'The scale of "{underlay.name}" must be more than 0: set it again.')
    return underlay
