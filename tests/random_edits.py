"""Sections to change, and changes to make to them, as plain numbers that hypothesis can shrink."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from functools import cache
from typing import Any

from hypothesis import strategies as st

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.files.maps.layer_map import load_layer_map
from enclosure_app.files.reading import ReadOptions, read_drawing
from enclosure_app.model.place import Area, Line, Point, Points, Shape
from enclosure_app.model.product import Product
from enclosure_app.model.section import DOWN, Break, Piece, Section
from enclosure_app.planning.parts import PARTS, part
from enclosure_app.resources import sample
from tests.benchmarks.walls import wall_of_sheets

SAMPLES = {
    "layers.toml": (
        "balcony-ledger", "eave-overhang", "eave-overhang-faulty", "floor-line", "floor-line-faulty",
        "pipe-through-wall", "wall-base", "window", "window-faulty",
    ),
    "layers-second-office.toml": (
        "eave-flush-faulty", "four-sections-faulty", "parapet", "parapet-faulty", "rake-faulty",
        "ridge", "roof-to-wall-faulty",
    ),
}  # fmt: skip
Edit = tuple[int, int, int, int, int, int]
Move = Callable[[Point], Point]


@cache
def sections() -> tuple[Section, ...]:
    """Return walls of several layers, the samples' sections and every ready-made part."""
    products = load_products()
    drawn = [part(each.name, products) for each in PARTS]
    for layers, names in SAMPLES.items():
        options = ReadOptions(layer_map=load_layer_map(sample(layers)))
        for name in names:
            drawn += read_drawing(sample(f"{name}.dxf"), options).sections
    walls = [wall_of_sheets(8, gap=False), wall_of_sheets(24, gap=False)]
    walls += [wall_of_sheets(9, gap=True), _clad(wall_of_sheets(10, gap=False))]
    return (*walls, *map(_marked_twice, walls[:2]), _broken(walls[1]), *drawn)


@cache
def and_a_porch() -> tuple[Section, ...]:
    """Return these sections and a porch roof at its wall, with open air above and below."""
    return (_porch(load_products()), *sections())


def _clad(wall: Section) -> Section:
    """Return a wall with boards and a cladding in front, and boards between some of its sheets."""
    left, low, right, high = -60.0, 0.0, -45.0, 10_000.0
    cladding = Piece(
        "c", "lap-siding", Area(((left, low), (right, low), (right, high), (left, high)))
    )
    boards = [
        Piece(f"b{n}", "osb", Area(((2.0, y), (13.0, y), (13.0, y + 2496), (2.0, y + 2496))))
        for n, y in enumerate(range(0, 10_000, 2500))
    ]
    tapes = [
        Piece(f"t{n}", "seam-tape", Line(((-2.0, y - 40.0), (-6.5, y + 30.0))))
        for n, y in enumerate(range(1000, 9000, 3000))
    ]
    return replace(wall, pieces=(*wall.pieces, cladding, *boards, *tapes))


def _porch(products: Mapping[str, Product]) -> Section:
    """Return a wall with a porch roof to the edge of the drawing, open air above and below it.

    Legs of flashings stand between sheets that lap, and a strip lies between two others.
    """
    lines = {
        ("low", "building-paper"): ((500, 0), (500, 320)),
        ("pan", "head-flashing"): ((503, 280), (503, 200), (540, 190), (540, 170)),
        ("strip", "flashing-tape"): ((503, 500), (503, 420)),
        ("mid", "building-paper"): ((506, 230), (506, 560)),
        ("leg", "building-paper"): ((503, 690), (503, 470)),
        ("porch", "single-ply-roofing"): ((1000, 585), (509, 590), (509, 700)),
        ("patch", "building-paper"): ((512, 690), (512, 640)),
        ("high", "building-paper"): ((515, 620), (515, 1000)),
        ("cladding", "lap-siding"): ((540, 625), (540, 1000)),
    }
    return Section(
        name="porch",
        frame=((0.0, 0.0), (1000.0, 0.0), (1000.0, 1000.0), (0.0, 1000.0)),
        pieces=tuple(Piece(*named, Line(points)) for named, points in lines.items()),
        products=products,
        inside=((100.0, 500.0),),
        outside=((800.0, 800.0), (800.0, 200.0)),
        gravity=DOWN,
    )


def _marked_twice(wall: Section) -> Section:
    return replace(
        wall,
        outside=(*wall.outside, (-300.0, 1230.0)),
        inside=(*wall.inside, (300.0, 6500.0)),
    )


def _broken(wall: Section) -> Section:
    strip = Break(((-90.0, 7400.0), (90.0, 7400.0)), ((-90.0, 7700.0), (90.0, 7700.0)))
    return replace(wall, breaks=(strip,))


EDITS: st.SearchStrategy[Edit] = st.tuples(
    st.integers(0, 19), st.integers(0, 10_000), st.integers(0, 10_000),
    st.integers(0, 5), st.integers(-30, 30), st.integers(-30, 30),
)  # fmt: skip


def edited(section: Section, edit: Edit) -> Section:
    """Return the section with one change made; the section itself where that cannot be."""
    kind, n, k, scale, dx, dy = edit
    number = n % len(section.pieces)
    piece = section.pieces[number]
    step = (0.03, 0.1, 1.0, 1.0, 5.0, 25.0)[scale]
    if kind < 12:
        shape = _point_moved(section, piece, (k, scale), (dx * step, dy * step))
    elif kind < 15:
        shape = _moved(piece.shape, lambda p: (p[0] + dx * step, p[1] + dy * step))
    else:
        return _otherwise(section, number, edit)
    if shape is None:
        return section
    return _with(section, number, [replace(piece, shape=shape)])


def _point_moved(
    section: Section, piece: Piece, which: tuple[int, int], by: Point
) -> Shape | None:
    """Return the piece's shape with one point elsewhere, sometimes on a point of another piece."""
    k, scale = which
    points = list(_points(piece.shape))
    at = k % len(points)
    x, y = points[at]
    points[at] = (x + by[0], y + by[1])
    if scale == 3:
        others = _points(section.pieces[k % len(section.pieces)].shape)
        points[at] = others[k % len(others)]
    if len(set(points)) < (2 if isinstance(piece.shape, Line) else 3):
        return None
    if isinstance(piece.shape, Line):
        return replace(piece.shape, points=tuple(points))
    return replace(piece.shape, outer=tuple(points))


def _points(shape: Shape) -> Points:
    return shape.points if isinstance(shape, Line) else shape.outer


def _moved(shape: Shape, move: Move) -> Shape:
    if isinstance(shape, Line):
        return replace(shape, points=tuple(map(move, shape.points)))
    holes = tuple(tuple(map(move, hole)) for hole in shape.holes)
    return replace(shape, outer=tuple(map(move, shape.outer)), holes=holes)


def _otherwise(section: Section, number: int, edit: Edit) -> Section:
    """Return the section with something changed that is more than a place."""
    kind, n, k, _, dx, dy = edit
    piece, other = section.pieces[number], section.pieces[k % len(section.pieces)]
    made: Mapping[int, Callable[[], Section]] = {
        15: lambda: _with(section, number, []) if len(section.pieces) > 3 else section,
        16: lambda: _with(section, number, [piece, _copied(piece, n, (dx, dy))]),
        17: lambda: _with(section, number, [replace(piece, product=other.product)]),
        18: lambda: _sealed(section, piece.name, other.name),
        19: lambda: _ground_changed(section, k, (float(dx), float(dy))),
    }
    return made[kind]()


def _with(section: Section, number: int, pieces: Sequence[Piece]) -> Section:
    every = section.pieces
    return replace(section, pieces=(*every[:number], *pieces, *every[number + 1 :]))


def _copied(piece: Piece, n: int, by: tuple[int, int]) -> Piece:
    shape = _moved(piece.shape, lambda p: (p[0] + by[0], p[1] + by[1]))
    return replace(piece, name=f"{piece.name}+{n}", shape=shape)


def _sealed(section: Section, one: str, other: str) -> Section:
    pair = (one, other) if one < other else (other, one)
    return replace(section, sealed=section.sealed ^ {pair})


def _ground_changed(section: Section, k: int, by: Point) -> Section:
    """Return the section with a mark, the frame or gravity changed."""
    changes: list[Any] = [
        lambda: replace(section, gravity=None if section.gravity else (0.0, -1.0)),
        lambda: replace(section, inside=_shifted(section.inside, by)),
        lambda: replace(section, outside=_shifted(section.outside, by)),
        lambda: replace(section, frame=_shifted(section.frame, by)),
    ]
    changed: Section = changes[k % 4]()
    return changed


def _shifted(points: Points, by: Point) -> Points:
    return tuple((x + by[0], y + by[1]) for x, y in points)
