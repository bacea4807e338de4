"""What is to be opened: one file or several, and how; and the one project that comes of it."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from enclosure_app.errors import EnclosureError
from enclosure_app.files.maps.layer_map import load_layer_map
from enclosure_app.files.project.file import load_project
from enclosure_app.files.project.named import is_project
from enclosure_app.files.projects import Wish, read_project
from enclosure_app.model.drawing import Units
from enclosure_app.model.naming import named_apart
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section
from enclosure_app.model.standing.standing import new_id
from enclosure_app.progress import part


@dataclass(frozen=True, slots=True)
class Order:
    """Files to be opened as one project: one project file, or drawings.

    `layers` is the file of a layer map for all the drawings; `units` are those that the person
    said, each with the drawing it is of.
    """

    paths: tuple[Path, ...]
    wish: Wish = Wish()  # noqa: RUF009  a frozen value
    layers: Path | None = None
    units: tuple[tuple[Path, Units], ...] = ()

    def in_units(self, path: Path, units: Units) -> "Order":
        """Return the order with the units of one drawing said."""
        others = tuple(pair for pair in self.units if pair[0] != path)
        return replace(self, units=(*others, (path, units)))


class NotReadError(EnclosureError):
    """A file of an order cannot be read; `path` says which, `why` is what the reader said."""

    def __init__(self, path: Path, why: EnclosureError) -> None:
        super().__init__(str(why))
        self.path = path
        self.why = why


def read_order(order: Order) -> Project:
    """Read everything that an order names.

    Raises:
        NotReadError: a file of it cannot be read, or does not say its units.
        EnclosureError: the layer map cannot be read.
    """
    wish = _with_map(order)
    number = len(order.paths)
    projects = []
    for at, path in enumerate(order.paths):
        with part(at / number, (at + 1) / number):
            projects.append(_read(path, replace(wish, units=_units(order, path))))
    return projects[0] if number == 1 else together(projects, order.paths)


def together(projects: Sequence[Project], paths: Sequence[Path]) -> Project:
    """Return one project with the sections of several drawings, each named after its drawing."""
    first = projects[0]
    named = [
        replace(
            _named_after(section, path.stem, alone=len(project.sections) == 1),
            file=project.source,
        )
        for project, path in zip(projects, paths, strict=True)
        for section in project.sections
    ]
    return replace(
        first,
        title=paths[0].resolve().parent.name or first.title,
        sections=named_apart(named),
        notes=tuple(note for project in projects for note in project.notes),
        layers=tuple(dict.fromkeys(row for project in projects for row in project.layers)),
        id=new_id(*(project.id for project in projects)),
    )


def _named_after(section: Section, stem: str, *, alone: bool) -> Section:
    return replace(section, name=stem if alone else f"{stem}: {section.name}")


def _read(path: Path, wish: Wish) -> Project:
    try:
        return load_project(path) if is_project(path) else read_project(path, wish)
    except EnclosureError as error:
        raise NotReadError(path, error) from error


def _units(order: Order, path: Path) -> Units | None:
    return dict(order.units).get(path, order.wish.units)


def _with_map(order: Order) -> Wish:
    if order.layers is None:
        return order.wish
    from enclosure_app.rules import RULES  # noqa: PLC0415  only a layer map needs their names

    return replace(
        order.wish, layer_map=load_layer_map(order.layers, [rule.name for rule in RULES])
    )
