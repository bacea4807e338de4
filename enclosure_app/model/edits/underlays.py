"""Edits of the pictures that lie under the drawing.

Lines and notes that were read from a page go where their page goes, and so do pieces made of these
lines. While a section holds nothing else, its frame and marks go too.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import count
from math import dist, isfinite

from enclosure_app.errors import EnclosureError
from enclosure_app.geometry.similarity import Similarity
from enclosure_app.language import say
from enclosure_app.model.edits.looking_up import finite, with_section
from enclosure_app.model.edits.underlay_lines import (
    goes_along,
    is_alone,
    is_blank,
    is_of,
    moved_section,
    moved_strokes,
    moved_text,
    with_frame_moved,
    without_page,
)
from enclosure_app.model.place import Point, Points
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section, Stroke, Text
from enclosure_app.model.underlay import Underlay


@dataclass(frozen=True, slots=True)
class PageLines:
    """Lines and notes read from a page, in mm of its paper from its lower left corner.

    `inside` and `outside` are the places that its notes say are so.
    """

    strokes: Sequence[Stroke] = ()
    texts: Sequence[Text] = ()
    inside: Points = ()
    outside: Points = ()


def add_underlay(project: Project, underlay: Underlay, lines: PageLines | None = None) -> Project:
    """Lay a picture under its section, over those that lie there.

    Args:
        project: The project.
        underlay: The picture; it gets a key of its own.
        lines: Lines and notes of the page; they are laid where the page lies. A section in which
            nothing is drawn yet gets the outline of the picture as its frame, and the page's marks.
    """
    taken = {other.key for other in project.underlays}
    key = next(key for key in (f"page-{n}" for n in count(1)) if key not in taken)
    underlay = _sound(replace(underlay, key=key))
    laid = replace(project, underlays=(*project.underlays, underlay))
    at = _section_of(project, underlay)
    if at is None:
        return laid
    section = project.sections[at]
    blank = is_blank(section)
    if blank and all(underlay.size):
        section = replace(section, frame=underlay.outline)
    lines, onto = lines or PageLines(), _onto(underlay)
    if blank:
        inside, outside = onto.places(lines.inside), onto.places(lines.outside)
        section = replace(section, inside=inside, outside=outside)
    return with_section(laid, at, _with_lines(section, underlay.key, lines, onto))


def remove_underlay(project: Project, index: int) -> Project:
    """Take an underlay away, counted from 0, with those of its lines that are no pieces yet."""
    underlay = _free(project, index)
    left = (*project.underlays[:index], *project.underlays[index + 1 :])
    rest = replace(project, underlays=left)
    at = _section_of(project, underlay)
    if at is None:
        return rest
    return with_section(rest, at, without_page(project.sections[at], underlay.key))


def move_underlay(project: Project, index: int, by: Point) -> Project:
    """Move an underlay by a vector, mm."""
    return lay_underlay(project, index, Similarity.moving(finite((by,))[0]))


def turn_underlay(
    project: Project, index: int, degrees: float, about: Point | None = None
) -> Project:
    """Turn an underlay anticlockwise, further than it is, about a place or its lower left corner."""
    centre = about or underlay_at(project, index).at
    return lay_underlay(project, index, Similarity.about(centre, 1.0, degrees))


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
    return lay_underlay(project, index, scaling(places, length), to_scale=True)


def scaling(
    places: tuple[Point, Point], length: float, direction: float | None = None
) -> Similarity:
    """Return what makes two places `length` mm apart, the first of which stays.

    With a `direction`, degrees anticlockwise from the right, the second comes to lie that way.

    Raises:
        EnclosureError: the places are the same, or the length is none.
    """
    first, second = finite(places)
    apart = dist(first, second)
    if apart == 0.0:
        raise EnclosureError(say("The two places are the same: click two that are far apart."))
    if not (isfinite(length) and length > 0):
        raise EnclosureError(
            say("A length cannot be {length:g} mm: type one that is more than 0.", length=length)
        )
    if direction is None:
        return Similarity.about(first, length / apart)
    ahead = Similarity.about((0.0, 0.0), length, direction).place((1.0, 0.0))
    onto = (first[0] + ahead[0], first[1] + ahead[1])
    return Similarity.onto((first, second), (first, onto))


def set_paper_scale(project: Project, index: int, ratio: float) -> Project:
    """Say that 1 mm on the paper of an underlay is `ratio` mm of the building.

    Raises:
        EnclosureError: there is no such picture, or how large its paper is is not known.
    """
    underlay = underlay_at(project, index)
    if not underlay.paper_mm:
        raise EnclosureError(
            say(
                'How large the paper of "{name}" is stands nowhere: click two places on it and '
                "type how far apart they are.",
                name=underlay.name,
            )
        )
    factor = underlay.paper_mm * ratio / underlay.mm_per_pixel
    return lay_underlay(project, index, Similarity.about(underlay.at, factor), to_scale=True)


def lay_underlay(
    project: Project,
    index: int,
    similar: Similarity,
    *,
    to_scale: bool = False,
) -> Project:
    """Move, turn and scale an underlay in one go, with everything that goes along with it.

    Args:
        project: The project.
        index: Which underlay, from 0.
        similar: How.
        to_scale: Its size is a true one from now on.
    """
    underlay = _free(project, index)
    laid = replace(
        underlay,
        at=similar.place(underlay.at),
        mm_per_pixel=underlay.mm_per_pixel * similar.factor,
        angle=underlay.angle + similar.turn,
        to_scale=underlay.to_scale or to_scale,
    )
    project = _put(project, index, laid)
    at = _section_of(project, underlay)
    if at is None:
        return project
    section = project.sections[at]
    everything = is_alone(section, underlay.key)
    names = None if everything else goes_along(section, underlay.key)
    return with_section(project, at, moved_section(section, similar, underlay.key, names))


def lay_drawn_too(project: Project, index: int, similar: Similarity) -> Project:
    """Move, turn and scale what was drawn over an underlay as it was moved itself (`drawn_over`)."""
    underlay = underlay_at(project, index)
    at = _section_of(project, underlay)
    if at is None:
        return project
    drawn = drawn_over(project, index)
    moved = moved_section(project.sections[at], similar, None, drawn)
    return with_section(project, at, with_frame_moved(moved, similar))


def drawn_over(project: Project, index: int) -> tuple[str, ...]:
    """Return the pieces that were drawn by hand over an underlay and keep their size when it moves.

    There are none where the section was not begun from it: where it holds lines of another drawing.
    """
    underlay = underlay_at(project, index)
    at = _section_of(project, underlay)
    if at is None:
        return ()
    section = project.sections[at]
    own = goes_along(section, underlay.key)
    others = [piece for piece in section.pieces if piece.name not in own]
    strokes = (*section.strokes, *section.taken)
    foreign = any(piece.handles for piece in others) or any(
        not is_of(stroke.handle, underlay.key) for stroke in strokes
    )
    return () if foreign else tuple(piece.name for piece in others)


def show_underlay(
    project: Project,
    index: int,
    *,
    shown: bool | None = None,
    locked: bool | None = None,
    strength: float | None = None,
) -> Project:
    """Show or hide an underlay, lock it or let it go, paint it stronger or paler (0 to 1)."""
    underlay = underlay_at(project, index)
    changed = replace(
        underlay,
        shown=underlay.shown if shown is None else shown,
        locked=underlay.locked if locked is None else locked,
        strength=underlay.strength if strength is None else strength,
    )
    return _put(project, index, changed)


def underlay_at(project: Project, index: int) -> Underlay:
    """Return one underlay, counted from 0.

    Raises:
        EnclosureError: there is no such underlay.
    """
    if not 0 <= index < len(project.underlays):
        raise EnclosureError(
            say("There is no such underlay: pick one that lies under the drawing.")
        )
    return project.underlays[index]


def _free(project: Project, index: int) -> Underlay:
    """Return an underlay that may be changed."""
    underlay = underlay_at(project, index)
    if underlay.locked:
        raise EnclosureError(
            say('"{name}" is locked where it lies: unlock it first.', name=underlay.name)
        )
    return underlay


def _section_of(project: Project, underlay: Underlay) -> int | None:
    """Return the place of the section that an underlay lies under, None if it is under all."""
    names = [section.name for section in project.sections]
    return names.index(underlay.section) if underlay.section in names else None


def _onto(underlay: Underlay) -> Similarity:
    """Return how mm of an underlay's paper come to where it lies."""
    factor = underlay.mm_per_pixel / underlay.paper_mm if underlay.paper_mm else 1.0
    turned = Similarity.about((0.0, 0.0), factor, underlay.angle)
    return Similarity(turned.by, complex(*underlay.at))


def _with_lines(section: Section, key: str, lines: PageLines, onto: Similarity) -> Section:
    """Lay the lines of a page into a section, where the page lies."""
    many = len(lines.strokes)
    handles = [f"{key}:{n}" for n in range(1, many + len(lines.texts) + 1)]
    texts = (
        replace(moved_text(each, onto), handle=handle)
        for each, handle in zip(lines.texts, handles[many:], strict=True)
    )
    return replace(
        section,
        strokes=(*section.strokes, *moved_strokes(lines.strokes, onto, handles[:many])),
        texts=(*section.texts, *texts),
    )


def _put(project: Project, index: int, underlay: Underlay) -> Project:
    there = project.underlays
    changed = (*there[:index], _sound(underlay), *there[index + 1 :])
    return replace(project, underlays=changed)


def _sound(underlay: Underlay) -> Underlay:
    finite((underlay.at, (underlay.angle, underlay.mm_per_pixel), underlay.size))
    if underlay.mm_per_pixel <= 0:
        raise EnclosureError(
            say('The scale of "{name}" must be more than 0: set it again.', name=underlay.name)
        )
    if not 0 <= underlay.strength <= 1:
        raise EnclosureError(say("How strong a picture is painted goes from 0 to 1."))
    return underlay
