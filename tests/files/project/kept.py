"""A project with one wall sheet, as it is kept, and read again."""

import json
from dataclasses import replace
from typing import Any

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.project.file import project_bytes, project_of
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Line
from enclosure_app.model.project import Project
from enclosure_app.model.section import Piece, Section

WALL = Piece("2F", "housewrap", Line(((10.0, 0.0), (10.0, 2400.0))))
FRAME = ((0.0, 0.0), (500.0, 0.0), (500.0, 2500.0), (0.0, 2500.0))
PROJECT = Project("House", Units.MM, (Section("Eave", FRAME, (WALL,), load_products()),))


def with_own_product() -> Project:
    """Return the project with a product of the office's own, which nothing is made of."""
    own = replace(load_products()["osb"], key="ours", name="Our board")
    section = replace(PROJECT.sections[0], products={**load_products(), "ours": own})
    return replace(PROJECT, sections=(section,))


def table_of(project: Project = PROJECT) -> dict[str, Any]:
    """Return what stands in the file of a project."""
    table: dict[str, Any] = json.loads(project_bytes(project, "p"))
    return table


def read_again(table: dict[str, Any]) -> Project:
    """Return the project that a file holds in which this stands."""
    return project_of(json.dumps(table).encode(), "p")
