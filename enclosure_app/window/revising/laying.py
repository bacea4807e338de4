"""What comes of laying a revised drawing over a project: read, checked and compared, without a widget."""

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from pathlib import Path

from enclosure_app.errors import EnclosureError
from enclosure_app.files.maps.writing import map_of
from enclosure_app.files.projects import Wish, limits_of
from enclosure_app.model import edits
from enclosure_app.model.drawing import Units
from enclosure_app.model.project import Project, drawing_of
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.carried import Subject
from enclosure_app.planning.revision import Revision, brought_over, compared, looks_carried
from enclosure_app.planning.site_list.listing import site_list
from enclosure_app.progress import Progress
from enclosure_app.window.apart.orders import Order
from enclosure_app.window.checking import judge

Read = Callable[[Order, Progress], Project]

Choices = Mapping[Subject, tuple[str, str]]
"""What a person said of earlier findings: the section and key now, key "" for one that is gone."""

_DATE = re.compile(r"[\s_.-]*(19|20)\d\d[-_.]?[01]\d[-_.]?[0-3]\d$")
_MARKED = re.compile(r"[\s_.-]+(rev|revision|index|issue)[\s_.-]*\w{1,3}$")
_LETTER = re.compile(r"[\s_.-]+[a-z]$")


@dataclass(frozen=True, slots=True)
class Laid:
    """A revised drawing laid over a project: what each was found to hold, and what became of it."""

    before: Project
    found: tuple[SectionResult, ...]
    revision: Revision
    anew: tuple[SectionResult, ...]

    @property
    def missing(self) -> tuple[str, ...]:
        """The sections that were not surely found again in the revised drawing."""
        return tuple(each.old for each in self.revision.sections if not each.new)


def order_for(before: Project, paths: tuple[Path, ...], units: Units | None = None) -> Order:
    """Return how revised drawings are to be read: by what the project says of its layers."""
    layers = map_of(before) if before.layers else None
    return Order(paths, Wish(layer_map=layers, units=units))


def read_revised(
    before: Project, paths: tuple[Path, ...], read: Read, progress: Progress
) -> Project:
    """Read revised drawings; where one does not say its units, they are those of the project.

    Raises:
        EnclosureError: one of them cannot be read.
    """
    try:
        return read(order_for(before, paths), progress)
    except EnclosureError as error:
        if "--units" not in str(error):
            raise
    return read(order_for(before, paths, before.units), progress)


def laid_over(before: Project, revised: Project) -> Laid:
    """Return what becomes of everything that was found and said when `revised` takes its place.

    Raises:
        EnclosureError: there is no such rule book.
    """
    limits = limits_of(before)
    after = brought_over(before, drawing_of(revised))
    found, anew = (judge(each, limits).results for each in (before, after))
    revision = compared(before, found, after, anew)
    lists = ([site_list(each, limits) for each in results] for results in (found, anew))
    old, new = lists
    return Laid(before, found, looks_carried(revision, before, old, new), anew)


def with_choices(laid: Laid, choices: Choices, by: tuple[str, str]) -> Project:
    """Return the later project with what a person said of what was not sure.

    Raises:
        EnclosureError: something was said, and nobody says it.
    """
    project = laid.revision.project
    for earlier, now in choices.items():
        project = edits.say_where(project, earlier, now, by)
    return project


def is_revision_of(path: Path, project: Project) -> bool:
    """Whether a drawing is, by its name, clearly a later one of what a project was read from.

    It is worth asking about only where something was said that would be lost.
    """
    said = (project.decisions, project.remarks, project.site_checks, project.sign_offs)
    drawing = path.suffix.casefold() == ".dxf" and bool(project.source)
    return drawing and any(said) and _base(path) == _base(Path(project.source))


def _base(path: Path) -> str:
    """Return a name without what tells one issue of a drawing from another."""
    name = path.stem.casefold()
    for mark in (_DATE, _MARKED, _LETTER):
        name = mark.sub("", name) or name
    return name
