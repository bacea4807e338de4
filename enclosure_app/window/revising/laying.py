"""What comes of laying a revised drawing over a project: read, checked and compared, without a widget."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from pathlib import Path
from typing import NamedTuple

from enclosure_app.errors import EnclosureError
from enclosure_app.files.maps.writing import map_of
from enclosure_app.files.projects import Wish, limits_of
from enclosure_app.language import say
from enclosure_app.model import edits
from enclosure_app.model.drawing import Note, NoteLevel, Units
from enclosure_app.model.layer import LayerRow
from enclosure_app.model.project import Project, drawing_of
from enclosure_app.model.report import SectionResult
from enclosure_app.model.said.carried import Subject
from enclosure_app.planning.revision import (
    Revision,
    TakenPlace,
    brought_over,
    compared,
    files_of,
    issue_name,
    left_as_they_are,
    looks_carried,
    rows_now,
    taken_place,
)
from enclosure_app.planning.site_list.listing import site_list
from enclosure_app.progress import Progress
from enclosure_app.window.apart.orders import Order
from enclosure_app.window.judging import judge

Read = Callable[[Order, Progress], Project]


class About(NamedTuple):
    """What a person is asked about: a finding of an earlier drawing, or an item of its site list."""

    earlier: Subject
    on_list: bool = False


Choices = Mapping[About, tuple[str, str]]
"""What a person said of earlier things: the section and key now, key "" for one that is gone."""


@dataclass(frozen=True, slots=True)
class Laid:
    """A `revised` drawing laid over a project: what each was found to hold, and what became of it.

    `place` is the earlier drawing whose place it takes, where the project holds several, and
    `files` are these; sections called `kept` stay as they are.
    """

    before: Project
    revised: Project
    found: tuple[SectionResult, ...]
    revision: Revision
    anew: tuple[SectionResult, ...]
    kept: frozenset[str] = frozenset()
    files: tuple[str, ...] = ()
    place: TakenPlace | None = None

    @property
    def missing(self) -> tuple[str, ...]:
        """The sections that were not surely found again in the revised drawing."""
        return tuple(each.old for each in self.revision.sections if not each.new)

    @property
    def file(self) -> str:
        """The revised drawing."""
        return self.revised.source


def order_for(
    before: Project,
    paths: tuple[Path, ...],
    units: Units | None = None,
    rows: tuple[LayerRow, ...] | None = None,
) -> Order:
    """Return how revised drawings are to be read: by what the project says of its layers."""
    layers = replace(map_of(before), rows=rows or before.layers) if before.layers else None
    return Order(paths, Wish(layer_map=layers, units=units))


def read_revised(
    before: Project, paths: tuple[Path, ...], read: Read, progress: Progress
) -> Project:
    """Read revised drawings; where one does not say its units, they are those of the project.

    Where all lines are numbered anew, what was said of single ones is said of them again.

    Raises:
        EnclosureError: one of them cannot be read.
    """
    units: Units | None = None
    try:
        found = read(order_for(before, paths), progress)
    except EnclosureError as error:
        if "--units" not in str(error):
            raise
        units = before.units
        found = read(order_for(before, paths, units), progress)
    now = rows_now(before, found)
    if now.rows == before.layers:
        return found
    found = read(order_for(before, paths, units, now.rows), progress)
    if not now.lost:
        return found
    told = say(
        "Lines that were said by themselves to be something, and that are not surely found again: "
        "{count}. Say again what they are.",
        count=len(now.lost),
    )
    return replace(found, notes=(*found.notes, Note(NoteLevel.IGNORED, told, about="layers")))


def laid_over(
    before: Project,
    revised: Project,
    file: str | None = None,
    stay: frozenset[str] = frozenset(),
) -> Laid:
    """Return what becomes of everything that was found and said when `revised` takes its place.

    Args:
        before: The project.
        revised: The revised drawing, or several as one.
        file: The earlier drawing whose place it takes, as a person said; "": none of them.
        stay: The sections that stay besides, as a person said.

    Raises:
        EnclosureError: there is no such rule book.
    """
    drawing, files = drawing_of(revised), files_of(before)
    places = taken_place(before, drawing)
    if file is not None:
        places = dict.fromkeys(places, TakenPlace(file, sure=True))
    kept = left_as_they_are(before, (each.file for each in places.values())) | stay
    after = replace(
        brought_over(before, drawing, kept), layers=_rows(before, revised, others=bool(kept))
    )
    found, anew, revision = _compared(before, after)
    several = len(files) > 1 and len(places) == 1
    place = next(iter(places.values())) if several else None
    return Laid(before, revised, found, revision, anew, kept, files if several else (), place)


def _compared(
    before: Project, after: Project
) -> tuple[tuple[SectionResult, ...], tuple[SectionResult, ...], Revision]:
    """Return what is found before and after, and what became of it and of the site lists."""
    limits = limits_of(before)
    found, anew = (judge(each, limits).results for each in (before, after))
    old, new = ([site_list(each, limits) for each in results] for results in (found, anew))
    revision = looks_carried(compared(before, found, after, anew), before, old, new)
    return found, anew, revision


def _rows(before: Project, revised: Project, *, others: bool) -> tuple[LayerRow, ...]:
    """Return what is said of the layers of the revised drawing, and of the `others` that stay."""
    if not before.layers:
        return before.layers
    return tuple(dict.fromkeys((*revised.layers, *before.layers))) if others else revised.layers


def with_answers(project: Project, choices: Choices, by: tuple[str, str]) -> Project:
    """Return a project with what a person said of what was not sure.

    Raises:
        EnclosureError: something was said, and nobody says it.
    """
    for about, now in choices.items():
        project = edits.say_where(project, about.earlier, now, by, on_list=about.on_list)
    return project


def something_was_said(project: Project) -> bool:
    """Whether anything would be lost if another drawing took its place."""
    return any((project.decisions, project.remarks, project.site_checks, project.sign_offs))


def is_named_as_revision(path: Path, project: Project) -> bool:
    """Whether a drawing is, by its name, clearly a later one of what a project was read from.

    It is worth asking about only where something was said that would be lost.
    """
    if path.suffix.casefold() != ".dxf" or not something_was_said(project):
        return False
    names = {issue_name(file) for file in files_of(project) if file}
    return issue_name(path.name) in names
