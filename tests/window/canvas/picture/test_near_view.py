"""What comes near the view is found by boxes, and the picture is the same as of everything."""

from dataclasses import replace
from itertools import chain

import numpy as np
import pytest
from PySide6.QtCore import QSizeF
from PySide6.QtGui import QImage, QPainter
from PySide6.QtWidgets import QApplication

from enclosure_app.checker import check_section
from enclosure_app.drawing.clipping import clip_ring
from enclosure_app.drawing.marks import Mark, Stroke
from enclosure_app.drawing.placement import Box, Placement, box_around
from enclosure_app.drawing.section.section_marks import View, section_marks
from enclosure_app.files.maps.rule_book import load_limits
from enclosure_app.model.place import Area, Line
from enclosure_app.model.product import Control
from enclosure_app.model.report import RainRoute, RouteEnd, SectionResult
from enclosure_app.model.section import Piece, Section
from enclosure_app.reports.pdf.painter import MarkPainter
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.look import DOTS, Look
from enclosure_app.window.canvas.picture.composition import composed
from enclosure_app.window.canvas.picture.near_view import joints_of, pieces_near, rain_near, way_of
from tests.benchmarks.walls import wall_of_sheets
from tests.drawing import eave

SIZE = QSizeF(683, 384)
LOOK = Look()


@pytest.fixture(scope="module")
def wall() -> SectionResult:
    return check_section(wall_of_sheets(60, gap=True), load_limits())


def _picture(marks: tuple[Mark, ...]) -> np.ndarray:
    image = QImage(SIZE.toSize(), QImage.Format.Format_RGB32)
    image.fill(0xFFFFFF)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.translate(SIZE.width() / 2, SIZE.height() / 2)
    MarkPainter(painter, DOTS, 0.0).paint(marks)
    painter.end()
    return np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), -1).copy()


def _plainly(result: SectionResult, placement: Placement, window: Box) -> tuple[Mark, ...]:
    """Return the marks of the pieces near a window, asked one by one, with all joints and rain."""
    near = window.inset(-0.1 * window.width, -0.1 * window.height)
    boxes = [(piece, box_around(piece.shape.points)) for piece in result.section.pieces]
    pieces = tuple(p for p, b in boxes if b.bottom <= near.top and b.top >= near.bottom)
    bare = replace(result, section=replace(result.section, pieces=pieces, strokes=()))
    return section_marks(bare, View(placement, LOOK.units, LOOK.theme, drops=False))


def _without_rain(marks: tuple[Mark, ...]) -> list[Mark]:
    return [mark for mark in marks if getattr(mark, "source", "") != "rain"]


@pytest.mark.parametrize("height", [700.0, 29400.0, 29980.0, 59900.0])
@pytest.mark.parametrize("across", [300.0, 1500.0])
def test_what_is_composed_of_the_view_looks_the_same(
    wall: SectionResult, qapp: QApplication, height: float, across: float
) -> None:
    del qapp
    result = replace(wall, findings=())
    camera = Camera((0.0, height), SIZE.height() / across, SIZE)
    placement = Placement(DOTS / camera.zoom, camera.centre)
    parts = composed(result, placement, camera.window, LOOK)
    seen = (*parts.ground, *parts.layers)
    plain = _plainly(result, placement, camera.window)
    assert _without_rain(seen) == _without_rain(plain)
    picture = _picture(seen)
    assert (picture == _picture(plain)).all()
    assert (picture != _picture(())).any()
    assert max(len(m.points) for m in seen if isinstance(m, Stroke)) < 40
    assert max(len(m.points) for m in plain if isinstance(m, Stroke)) > 200


def _named(count: int) -> tuple[Piece, ...]:
    points = [((0.0, 100.0 * i), (5.0, 100.0 * i + 90.0)) for i in range(count)]
    return tuple(Piece(str(i), "sheet", Line(run)) for i, run in enumerate(points))


def _section(pieces: tuple[Piece, ...]) -> Section:
    return replace(eave.section(), pieces=pieces)


def _found(pieces: tuple[Piece, ...], window: Box) -> list[str]:
    return [piece.name for piece in pieces_near(_section(pieces), window)]


def test_pieces_are_found_by_their_boxes_with_some_room() -> None:
    window = Box(-50.0, 1000.0, 50.0, 1195.0)
    assert _found(_named(40), window) == ["9", "10", "11", "12"]
    assert _found((), window) == []


def test_a_moved_a_new_and_a_missing_piece_are_found_where_they_are_now() -> None:
    pieces, window = _named(40), Box(-50.0, 1000.0, 50.0, 1080.0)
    assert _found(pieces, window) == ["10"]
    moved = replace(pieces[30], shape=Line(((0.0, 1010.0), (3.0, 1050.0))))
    assert _found((*pieces[:30], moved, *pieces[31:]), window) == ["10", "30"]
    assert _found((*pieces[:10], *pieces[11:]), window) == []
    assert _found((*pieces[::-1], replace(pieces[10], name="again")), window) == ["10", "again"]


def test_an_area_is_near_by_its_outline() -> None:
    ring = ((0.0, 0.0), (500.0, 0.0), (500.0, 500.0), (0.0, 500.0))
    area = Piece("area", "concrete", Area(ring))
    window = Box(100.0, 100.0, 200.0, 200.0)
    assert clip_ring(ring, window)
    assert _found((area,), window) == ["area"]
    assert _found((area,), Box(700.0, 0.0, 800.0, 100.0)) == []


def test_joints_of_near_pieces_are_kept_and_what_a_person_said_is_sealed(
    wall: SectionResult,
) -> None:
    section, air = wall.section, wall.layers[Control.AIR]
    near = [section.by_name["20"]]
    kept = joints_of(wall.layers, near, section)[Control.AIR]
    assert [{j.a, j.b} for j in kept.joints] == [{"19", "20"}, {"20", "21"}]
    assert kept.walk is air.walk
    said = replace(section, sealed=frozenset({("50", "51")}))
    more = joints_of(wall.layers, near, said)[Control.AIR]
    assert [{j.a, j.b} for j in more.joints][-1] == {"50", "51"}
    assert joints_of(wall.layers, section.pieces, section) is wall.layers


def test_a_long_route_is_cut_off_beyond_the_view_unless_it_leaves_the_frame() -> None:
    frame = ((-100.0, 0.0), (100.0, 0.0), (100.0, 9000.0), (-100.0, 9000.0))
    section = replace(eave.section(), frame=frame)
    down = tuple((float(i % 2), 9000.0 - 100.0 * i) for i in range(90))
    window = Box(-100.0, 4000.0, 100.0, 5000.0)
    inside = RainRoute(down, (), RouteEnd.OUTSIDE)
    (part,) = rain_near((inside,), section, window, 1.0)
    box = box_around(part.points)
    assert 5100.0 <= box.top <= 5301.0
    assert 3700.0 <= box.bottom <= 3900.0
    beyond = replace(inside, points=((0.0, 9500.0), *down))
    short = replace(inside, points=down[:20])
    assert rain_near((beyond, short), section, window, 1.0) == (beyond, short)
    assert rain_near((inside,), section, Box(500.0, 0.0, 600.0, 10.0), 1.0) == ()


def test_the_way_along_the_very_same_points_is_made_once() -> None:
    runs = [tuple((float(i), float(k)) for i in range(3)) for k in range(40)]
    first = way_of(runs[0])
    assert way_of(runs[0]) is first
    made = list(chain.from_iterable(way_of(run).points for run in runs))
    assert made == list(chain.from_iterable(runs))
    assert way_of(runs[0]) is not first
