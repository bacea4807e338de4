"""What a project has been: the states that its parts were in when it was kept.

Copies of a project begin from a file, and each knows the states that it was in since, and before.
So two of them tell, without the file that both began from, who changed what: what one is in and
the other has been in, the other has left behind.
"""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import fields, replace
from hashlib import sha256
from typing import Any

from enclosure_app.model.place import Area, Line
from enclosure_app.model.project import Project
from enclosure_app.model.said.sign_off import fingerprint
from enclosure_app.model.section import Section
from enclosure_app.model.underlay import Underlay

_ANY = object()
_DIGITS = 6  # of a number: what a file keeps is never less


def states(project: Project) -> frozenset[str]:
    """Return the states that the parts of a project are in, and that there are such parts."""
    return frozenset(
        state
        for part, name, value in _parts(project)
        for state in (state_of(part, name, value), state_of(part, name))
    )


def state_of(part: str, name: str, value: Any = _ANY) -> str:  # noqa: ANN401  whatever a project holds
    """Return the state of one part, or with no value, that there is one of this name."""
    told = "*" if value is _ANY else _told(value)
    return sha256("\x1f".join((part, name, told)).encode("utf-8", "replace")).hexdigest()[:16]


def past_of(project: Project) -> frozenset[str]:
    """Return all that a project has been, and is."""
    return frozenset(project.past) | states(project)


def remembering(project: Project, kept: Iterable[Project]) -> Project:
    """Return a project that knows what it was when it was kept before."""
    past = frozenset(project.past).union(*map(past_of, kept))
    return replace(project, past=tuple(sorted(past)))


def drawn_as(section: Section) -> str:
    """Return a sum over all that is drawn and judged, with its names and where it lies.

    `drawn_sum` is the same for a section that was only numbered anew or moved; this is not.
    """
    known = {piece.product for piece in section.pieces} <= section.products.keys()
    parts = (
        sorted((piece.name, piece.product, _told(piece.shape)) for piece in section.pieces),
        *(_told(each) for each in (section.frame, section.inside, section.outside)),
        _told(section.gravity or ()),
        [_told((*each.near, *each.far)) for each in section.breaks],
        sorted(section.sealed),
        fingerprint(section) if known else "",  # what products do; it will not be kept otherwise
    )
    return sha256(str(parts).encode("utf-8", "replace")).hexdigest()


def pictures(project: Project) -> Mapping[str, Underlay]:
    """Return the pictures by name; several of one name are told apart by their place in the list."""
    found: dict[str, Underlay] = {}
    for each in project.underlays:
        name = " · ".join(filter(None, (each.name, each.section)))
        again = sum(key == name or key.startswith(f"{name} (") for key in found)
        found[f"{name} ({again + 1})" if again else name] = each
    return found


def _parts(project: Project) -> Iterator[tuple[str, str, object]]:
    for section in project.sections:
        yield "section", section.name, section
    for part in ("title", "units", "book", "layers"):
        yield part, "", getattr(project, part)
    for name, figure in project.figures.items():
        yield "figure", name, figure
    for name, level in project.severities.items():
        yield "level", name, level
    for name, picture in pictures(project).items():
        yield "picture", name, picture


def _told(value: object) -> str:
    """Return what tells a value from others; of a section all that is judged, and how much else."""
    if isinstance(value, Section):
        shown = [len(each) for each in (value.strokes, value.texts, value.taken)]
        return f"{drawn_as(value)} {shown} {value.frame_drawn}"
    if isinstance(value, Underlay):
        own = [_told(getattr(value, each.name)) for each in fields(value) if each.name != "data"]
        return " ".join((sha256(value.data).hexdigest(), *own))
    if isinstance(value, Area | Line):
        return type(value).__name__ + _told(tuple(getattr(value, e.name) for e in fields(value)))
    if isinstance(value, tuple):
        return str([_told(each) for each in value])
    if isinstance(value, int | float) and not isinstance(value, bool):
        return str(round(float(value), _DIGITS) + 0.0)  # a file tells -0.0 from 0.0 no more
    return repr(value)
