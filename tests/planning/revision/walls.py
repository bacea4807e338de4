"""A wall with two gaps, as simple as can be, and projects of walls."""

from dataclasses import replace
from functools import cache

from enclosure_app.checker import check_section
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Area, Line, Point
from enclosure_app.model.project import Project
from enclosure_app.model.report import SectionResult
from enclosure_app.model.section import Piece, Section
from enclosure_app.planning.revision import Revision, compared

FRAME = ((-300.0, 0.0), (300.0, 0.0), (300.0, 3000.0), (-300.0, 3000.0))


def line(name: str, *points: Point, product: str = "housewrap") -> Piece:
    return Piece(name, product, Line(points), (name,), "A-WALL")


LOW = line("10", (0.0, 0.0), (0.0, 800.0))
MIDDLE = line("11", (0.0, 830.0), (0.0, 1700.0))  # 30 mm above the low one
HIGH = line("12", (0.0, 1760.0), (0.0, 3000.0))  # 60 mm above the middle one
BOARD = Piece("20", "osb", Area(((2.0, 0.0), (14.0, 0.0), (14.0, 3000.0), (2.0, 3000.0))), ("20",))
SHORT = line("21", (40.0, 200.0), (40.0, 350.0), product="vapour-retarder")
LEDGE = line("22", (60.0, 900.0), (90.0, 905.0), (90.0, 1100.0), product="vapour-retarder")
WALL = Section(
    "Wall", FRAME, (LOW, MIDDLE, HIGH, BOARD, SHORT, LEDGE), load_products(),
    ((200.0, 1500.0),), ((-200.0, 1500.0),),
)  # fmt: skip
GAP = "gap:air:10.high+11.low"
WIDE = "gap:air:11.high+12.low"


def wall(*changed: Piece, without: tuple[str, ...] = (), **how: object) -> Section:
    """The wall with pieces changed by name, added or left out."""
    new = {piece.name: piece for piece in changed}
    kept = [new.pop(p.name, p) for p in WALL.pieces if p.name not in without]
    return replace(WALL, pieces=(*kept, *new.values()), **how)


@cache
def limits() -> object:
    return load_limits()


def found_in(section: Section) -> SectionResult:
    return check_section(section, limits())


def project(*sections: Section, revision: str = "") -> Project:
    return Project("House", Units.MM, sections, revision=revision, id="p")


def laid_over(before: Project, after: Project) -> Revision:
    old, new = (tuple(map(found_in, each.sections)) for each in (before, after))
    return compared(before, old, after, new)
