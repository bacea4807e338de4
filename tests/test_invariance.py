"""What is found does not depend on where, how large, in what order or which way round it is drawn."""

from collections.abc import Callable, Sequence
from dataclasses import replace
from itertools import pairwise
from math import cos, dist, pi, sin
from pathlib import Path
from random import Random

import ezdxf
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from enclosure_app.checker import check_section
from enclosure_app.files.maps.layer_map import LayerMap, load_layer_map
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.files.reading import ReadOptions, read_drawing
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Area, Line, Point, Points, Shape
from enclosure_app.model.section import Piece, Section
from tests.faulty_wall import FRAME, INSIDE, LAYERS, OTHERS, OUTSIDE, WALL
from tests.rules.junctions import box, section

Found = tuple[str, str, str, Point, float | None, frozenset[str]]
LIMITS = load_limits("irc-2021")
NEAR = 0.02  # mm: places and lengths, after turning or rewriting in another unit


def told(drawn: Section, back: Callable[[Point], Point] = lambda point: point) -> list[Found]:
    """Return what is found, with places taken back to where the wall was drawn, in a fixed order."""
    found = [
        (f.rule, str(f.control), str(f.severity), back(f.at), f.measured, frozenset(f.pieces))
        for f in check_section(drawn, LIMITS).findings
    ]
    return sorted(found, key=lambda each: (*each[:3], round(each[3][1]), round(each[3][0])))


WANTED = told(WALL)


def assert_same(found: Sequence[Found], *, names: bool = True) -> None:
    """Hold findings to those of the wall as drawn: rule, control, severity, place, measured."""
    assert [each[:3] for each in found] == [each[:3] for each in WANTED]
    for got, wanted in zip(found, WANTED, strict=True):
        assert dist(got[3], wanted[3]) < NEAR, got
        assert got[4] == (None if wanted[4] is None else pytest.approx(wanted[4], abs=NEAR)), got
        assert not names or got[5] == wanted[5]


def moved(drawn: Section, move: Callable[[Point], Point]) -> Section:
    """Return a section with every place moved; gravity stays as it was."""

    def shape(old: Shape) -> Shape:
        if isinstance(old, Line):
            return replace(old, points=tuple(map(move, old.points)))
        return Area(tuple(map(move, old.outer)), tuple(tuple(map(move, h)) for h in old.holes))

    return replace(
        drawn,
        frame=tuple(map(move, drawn.frame)),
        inside=tuple(map(move, drawn.inside)),
        outside=tuple(map(move, drawn.outside)),
        pieces=tuple(replace(piece, shape=shape(piece.shape)) for piece in drawn.pieces),
    )


def reversed_piece(piece: Piece) -> Piece:
    shape = piece.shape
    if isinstance(shape, Line):
        return replace(piece, shape=replace(shape, points=shape.points[::-1]))
    return replace(piece, shape=Area(shape.outer[::-1], shape.holes))


def test_the_wall_has_one_fault_of_each_kind() -> None:
    """Otherwise the tests below would hold nothing to nothing."""
    assert [(rule, control) for rule, control, *_ in WANTED] == [
        ("gap", "air"),
        ("gap", "water"),
        ("open-penetration", "air"),
        ("open-penetration", "air"),
        ("reverse-lap", "water"),
        ("short-lap", "water"),
        ("unsealed-joint", "air"),
        ("upturn-short", "water"),
    ]


def test_mirrored_left_to_right() -> None:
    def mirror(point: Point) -> Point:
        return (-point[0], point[1])

    assert_same(told(moved(WALL, mirror), mirror))


@settings(max_examples=8, deadline=None)
@given(st.floats(0, 2 * pi))
def test_turned_on_the_sheet_with_gravity_turned_along(angle: float) -> None:
    c, s = cos(angle), sin(angle)

    def turn(point: Point) -> Point:
        return (c * point[0] - s * point[1], s * point[0] + c * point[1])

    def back(point: Point) -> Point:
        return (c * point[0] + s * point[1], -s * point[0] + c * point[1])

    assert_same(told(replace(moved(WALL, turn), gravity=turn((0.0, -1.0))), back))


@pytest.mark.parametrize("far", [(1e9, 0.0), (0.0, -1e9), (-1e9, 1e9), (123456.789, -0.123)])
def test_however_far_from_the_origin_an_office_draws(far: Point) -> None:
    drawn = moved(WALL, lambda point: (point[0] + far[0], point[1] + far[1]))
    assert_same(told(drawn, lambda point: (point[0] - far[0], point[1] - far[1])))


@settings(max_examples=8, deadline=None)
@given(st.permutations(WALL.pieces), st.lists(st.booleans(), min_size=20, max_size=20))
def test_in_whatever_order_and_direction_the_pieces_are_drawn(
    pieces: Sequence[Piece], turned: Sequence[bool]
) -> None:
    drawn = [reversed_piece(p) if t else p for p, t in zip(pieces, turned, strict=True)]
    assert_same(told(replace(WALL, pieces=tuple(drawn))))


def test_without_the_pieces_that_control_nothing() -> None:
    """Claddings, framing and linings change no finding and no verdict."""
    bare = check_section(replace(WALL, pieces=LAYERS), LIMITS)
    full = check_section(WALL, LIMITS)
    assert bare.findings == full.findings
    for control, layer in full.layers.items():
        other = bare.layers[control]
        assert (other.continuity, other.walk, other.opening) == (
            layer.continuity,
            layer.walk,
            layer.opening,
        )


# --- through the reader -------------------------------------------------------------------------


@pytest.fixture(scope="module")
def layer_map(tmp_path_factory: pytest.TempPathFactory) -> LayerMap:
    """A map in which each layer bears the key of its product."""
    rows = [f'[[layers]]\nmatch = "{key}"\nproduct = "{key}"\n' for key in _products()]
    rows.append('[[layers]]\nmatch = "crop"\nrole = "frame"\n')
    path = tmp_path_factory.mktemp("map") / "layers.toml"
    path.write_text("\n".join(rows), encoding="utf-8")
    return load_layer_map(path)


def _products() -> list[str]:
    return sorted({piece.product for piece in (*LAYERS, *OTHERS)})


INSUNITS = {"in": 1, "ft": 2, "mm": 4, "cm": 5, "m": 6}  # DXF reference, from memory


@pytest.fixture
def redrawn(tmp_path: Path, layer_map: LayerMap) -> Callable[..., Section]:
    """Return a function that writes the wall as DXF in some unit and reads it again."""

    def read(unit: str = "mm", loose: Random | None = None) -> Section:
        path = tmp_path / "wall.dxf"
        _write(path, unit, loose)
        (drawn,) = read_drawing(path, ReadOptions(layer_map=layer_map)).sections
        return drawn

    return read


def _write(path: Path, unit: str, loose: Random | None) -> None:
    document = ezdxf.new("R2010")
    document.header["$INSUNITS"] = INSUNITS[unit]
    space, scale = document.modelspace(), 1 / Units(unit).in_mm

    def there(points: Points) -> Points:
        return tuple((x * scale, y * scale) for x, y in points)

    space.add_lwpolyline(there(FRAME), close=True, dxfattribs={"layer": "crop"})
    for text, place in (("OUTSIDE", OUTSIDE), ("INSIDE", INSIDE)):
        space.add_text(text, height=10 * scale, dxfattribs={"insert": there((place,))[0]})
    strokes = [stroke for piece in WALL.pieces for stroke in _strokes(piece, loose)]
    if loose:
        loose.shuffle(strokes)
    for layer, points, closed in strokes:
        space.add_lwpolyline(there(points), close=closed, dxfattribs={"layer": layer})
    document.saveas(path)


def _strokes(piece: Piece, loose: Random | None) -> list[tuple[str, Points, bool]]:
    """Return what draws a piece: one polyline, or loose segments in any direction."""
    shape = piece.shape
    if isinstance(shape, Area):
        return [(piece.product, shape.outer, True)]
    if loose is None:
        return [(piece.product, shape.points, False)]
    ends = _cut(shape.points, loose)
    pairs = [pair if loose.random() < 0.5 else pair[::-1] for pair in pairwise(ends)]
    return [(piece.product, pair, False) for pair in pairs]


def _cut(points: Points, loose: Random) -> Points:
    """Return the points with one more at a random place of each segment."""
    cut = [points[0]]
    for (x, y), (u, v) in pairwise(points):
        share = loose.uniform(0.2, 0.8)
        cut += [(x + share * (u - x), y + share * (v - y)), (u, v)]
    return tuple(cut)


@pytest.mark.parametrize("unit", INSUNITS)
def test_in_whatever_unit_the_file_is_drawn(redrawn: Callable[..., Section], unit: str) -> None:
    assert_same(told(redrawn(unit)), names=False)


@pytest.mark.parametrize("seed", range(4))
def test_cut_into_loose_segments_in_any_order(redrawn: Callable[..., Section], seed: int) -> None:
    drawn = redrawn(loose=Random(seed))  # noqa: S311  # no secret
    assert len(drawn.pieces) == len(WALL.pieces)
    assert_same(told(drawn), names=False)


def test_a_gap_between_two_faces_is_shown_at_one_place_whichever_is_drawn_first() -> None:
    """A reviewer finds the flag where it was, after somebody has saved the drawing anew."""
    boards = section(
        box("a", "mineral-wool", (0, -500), (140, 0)),
        box("b", "mineral-wool", (0, 34), (140, 500)),
    )
    other = replace(boards, pieces=boards.pieces[::-1])
    assert told(other) == told(boards)
