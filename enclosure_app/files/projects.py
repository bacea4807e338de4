"""From a file to a project: what the window reads, and the figures that a project is judged by."""

from dataclasses import dataclass, replace
from pathlib import Path
from types import MappingProxyType

from enclosure_app.files.framing.layers_said import guessed_rows
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.layer_map import LayerMap
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.files.reading import ReadOptions, read_drawing
from enclosure_app.language import say
from enclosure_app.model.drawing import Units
from enclosure_app.model.limits import Limits
from enclosure_app.model.project import Project, project_from
from enclosure_app.model.section import Section

_SHEET = {False: 2000.0, True: 8 * 304.8}  # mm: the side of an empty sheet, metric and imperial


@dataclass(frozen=True, slots=True)
class Wish:
    """How a drawing is to be read: what its layers mean, its units where it does not say."""

    layer_map: LayerMap | None = None
    units: Units | None = None
    layout: str = "Model"


def read_project(path: Path, wish: Wish | None = None) -> Project:
    """Read a DXF file into a project: all its linework, and what is known of it.

    Raises:
        EnclosureError: the file cannot be read, or its units cannot be told.
    """
    wish = wish or Wish()
    options = ReadOptions(
        layer_map=wish.layer_map,
        units=wish.units,
        layout=wish.layout,
        linework=True,
        require_marks=False,
    )
    project = project_from(read_drawing(path, options))
    project = replace(project, title=project.title or path.stem)
    mapped = wish.layer_map
    if mapped is None:
        return replace(project, layers=guessed_rows(project))
    return replace(
        project,
        layers=mapped.rows,
        book=mapped.book or "",
        figures=MappingProxyType(dict(mapped.limits)),
        severities=MappingProxyType(dict(mapped.severities)),
    )


def new_project(units: Units, title: str) -> Project:
    """Return a project with one empty section in a frame of the size of a wall's detail."""
    side = _SHEET[units.imperial]
    frame = ((0.0, 0.0), (side, 0.0), (side, side), (0.0, side))
    section = Section(title, frame, (), load_products(), frame_drawn=True)
    return Project(title=title, units=units, sections=(section,))


def limits_of(project: Project) -> Limits:
    """Return the rule book of a project with the project's own figures and severities over it.

    Raises:
        EnclosureError: there is no such rule book.
    """
    limits = load_limits(project.book) if project.book else load_limits()
    if project.figures:
        limits = limits.overridden(project.figures, say("this project's own figure"))
    severities = {**limits.severities, **project.severities}
    return replace(limits, severities=MappingProxyType(severities))
