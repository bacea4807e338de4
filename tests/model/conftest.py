"""Builders for the tests of edits."""

from collections.abc import Callable

import pytest

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Area, Line, Shape
from enclosure_app.model.project import Project
from enclosure_app.model.section import Piece, Section

FRAME = ((-1e4, -1e4), (1e4, -1e4), (1e4, 1e4), (-1e4, 1e4))


@pytest.fixture(scope="session")
def house() -> Callable[..., Project]:
    """Return a function that makes a project of one section, ``Eave``, of named shapes.

    The pieces are housewrap (areas are board); a second section, ``Ridge``, is to stay as it is.
    """

    def made(**shapes: Shape) -> Project:
        pieces = tuple(
            Piece(
                name, "osb" if isinstance(shape, Area) else "housewrap", shape, (name,), "A-WALL"
            )
            for name, shape in shapes.items()
        )
        products = load_products()
        other = Piece("z", "housewrap", Line(((0.0, 0.0), (0.0, 9.0))))
        eave = Section("Eave", FRAME, pieces, products)
        ridge = Section("Ridge", FRAME, (other,), products)
        return Project("House", Units.MM, (eave, ridge))

    return made
