"""Walls for the benchmarks: a tall wall as a Section, and a whole set of them as a DXF file."""

from pathlib import Path

import ezdxf

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.place import Line
from enclosure_app.model.section import Piece, Section

COURSE = 1000.0  # mm of wall that one course of sheet covers
LAP = 120.0  # mm
Ring = list[tuple[float, float]]


def wall_of_sheets(count: int, *, gap: bool) -> Section:
    """Return a wall of `count` lapped sheets of four points each, with or without one left out."""
    pieces = []
    for number in range(count):
        if gap and number == count // 2:
            continue
        y = number * COURSE
        low = y - LAP if number else 0.0
        # every sheet leans in, so that its foot lies over the head of the one below
        points = ((-4.0, low), (-3.0, y + 300), (-1.0, y + 600), (0.0, y + COURSE))
        pieces.append(Piece(str(number), "self-adhered-permeable", Line(points)))
    height = count * COURSE
    return Section(
        name="wall",
        frame=((-500, 0), (500, 0), (500, height), (-500, height)),
        pieces=tuple(pieces),
        products=load_products(),
        inside=((300.0, height / 2 + 37),),
        outside=((-300.0, height / 2 + 11),),
    )


MAP = """
[[layers]]
match = "FRAME"
role = "frame"
""" + "".join(
    f'[[layers]]\nmatch = "{layer}"\nproduct = "{product}"\n'
    for layer, product in {
        "SHEET": "self-adhered-permeable",
        "SIDING": "lap-siding",
        "SHEATHING": "osb",
        "STUD": "framing",
        "WOOL": "mineral-wool",
        "BOARD": "gypsum-board",
        "RETARDER": "vapour-retarder",
        "LINING": "gypsum-air-barrier",
        "TAPE": "seam-tape",
    }.items()
)


def write_drawing(path: Path, *, walls: int, storeys: int, entities: int) -> int:
    """Write wall sections and unmapped linework up to `entities`; return how many are mapped."""
    drawing = ezdxf.new("R2010", units=4)
    space = drawing.modelspace()
    for number in range(walls):
        _wall(space, 4000.0 * number, storeys)
    mapped = len(space)
    for number in range(entities - mapped):
        _other_linework(space, number)
    drawing.saveas(path)
    return mapped


def _wall(space: ezdxf.layouts.Modelspace, x: float, storeys: int) -> None:
    height = 3000.0 * storeys
    _ring(space, "FRAME", box(x - 800, 0, x + 800, height))
    for word, at in (("OUTSIDE", x - 700), ("INSIDE", x + 600)):
        space.add_text(word, height=60, dxfattribs={"insert": (at, height / 2), "layer": "NOTES"})
    for number in range(3 * storeys):
        y = number * COURSE
        side = x - 3.0 - 4.0 * (number % 2)
        low = y - LAP if number else 0.0
        sheet = [(side, low), (side, min(y + COURSE, height))]
        space.add_lwpolyline(sheet, dxfattribs={"layer": "SHEET"})
    for number in range(15 * storeys):
        _ring(space, "SIDING", box(x - 60, number * 200, x - 40, number * 200 + 198))
    for storey in range(storeys):
        y = 3000.0 * storey
        _ring(space, "SHEATHING", box(x, y, x + 11, y + 3000))
        _ring(space, "STUD", box(x + 11, y, x + 151, y + 38))
        _ring(space, "STUD", box(x + 11, y + 2924, x + 151, y + 3000))
        _ring(space, "WOOL", box(x + 11, y, x + 151, y + 3000))
        _ring(space, "BOARD", box(x + 153, y, x + 165, y + 3000))


def _other_linework(space: ezdxf.layouts.Modelspace, number: int) -> None:
    layer = {"layer": f"OTHER-{number % 60:02}"}
    x, y = 90.0 * (number % 1400), -500.0 - 60.0 * (number // 1400)
    kind = number % 8
    if kind == 0:
        space.add_arc((x, y), 30, 0, 90, dxfattribs=layer)
    elif kind == 1:
        space.add_text("note", height=25, dxfattribs={"insert": (x, y), **layer})
    elif kind in (2, 3):
        space.add_lwpolyline(
            [(x, y), (x + 50, y), (x + 50, y + 40), (x, y + 45)], dxfattribs=layer
        )
    else:
        space.add_line((x, y), (x + 70, y + 40), dxfattribs=layer)


def box(left: float, low: float, right: float, high: float) -> Ring:
    """Return the corners of a rectangle."""
    return [(left, low), (right, low), (right, high), (left, high)]


def _ring(space: ezdxf.layouts.Modelspace, layer: str, corners: Ring) -> None:
    space.add_lwpolyline(corners, close=True, dxfattribs={"layer": layer})
