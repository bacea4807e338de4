"""Drops in motion and at rest: what moves, where to, how long, and what is painted anew."""

from dataclasses import replace
from math import dist

import pytest
from PySide6.QtCore import QObject, QSizeF
from PySide6.QtGui import QColor, QImage, QPainter, QRegion
from pytestqt.qtbot import QtBot

from enclosure_app.drawing.marks import Fill
from enclosure_app.drawing.placement import Placement
from enclosure_app.drawing.section.rain_marks import rain_marks
from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.product import Control
from enclosure_app.model.report import RainRoute, RouteEnd
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.look import DOTS, Look
from enclosure_app.window.canvas.picture.rainfall import (
    ROUND,
    ROUNDS,
    TICK,
    Rainfall,
    system_wants_motion,
)
from tests.drawing import eave

CAMERA = Camera((100.0, 1000.0), 0.3, QSizeF(900, 700))


@pytest.fixture
def rain(qtbot: QtBot) -> Rainfall:
    parent = QObject()
    made = Rainfall(parent)
    made.setParent(None)
    made.show_result(eave.result(), Look())
    return made


def painted(rain: Rainfall, camera: Camera = CAMERA) -> QImage:
    image = QImage(camera.size.toSize(), QImage.Format.Format_RGB32)
    image.fill(QColor("#ffffff"))
    painter = QPainter(image)
    rain.paint(painter, camera)
    painter.end()
    return image


def test_at_rest_the_drops_hang_where_the_sheet_has_them(rain: Rainfall) -> None:
    rain.allow(motion=False)
    placement = Placement(DOTS / CAMERA.zoom)
    marks = rain_marks(eave.RAIN, placement, (0.0, -1.0), load_theme())
    tips = [mark.rings[0][0] for mark in marks if isinstance(mark, Fill)]
    places = [placement.point(place) for place in rain.places(CAMERA)]
    assert len(places) >= len(tips) > 10
    assert all(min(dist(tip, place) for place in places) < 1e-6 for tip in tips)


def test_in_motion_every_drop_goes_down_its_route(rain: Rainfall) -> None:
    straight = RainRoute(((0.0, 2000.0), (0.0, 0.0)), ("w",), RouteEnd.OUTSIDE)
    rain.show_result(eave.result(rain=(straight,)), Look())
    before = rain.places(CAMERA)
    rain._move()  # noqa: SLF001  one tick of its clock
    painted(rain)
    rain._move()  # noqa: SLF001
    after = rain.places(CAMERA)
    steps = [a[1] - b[1] for a, b in zip(before, after, strict=False)]
    assert all(step == pytest.approx(steps[0]) for step in steps)
    assert steps[0] > 0


def test_it_ends_by_itself_as_it_began(rain: Rainfall) -> None:
    rest = rain.places(CAMERA)
    painted(rain)
    assert rain.moving
    for _ in range(ROUND * ROUNDS - 1):
        rain._move()  # noqa: SLF001
        assert rain.moving
    rain._move()  # noqa: SLF001
    assert not rain.moving
    assert rain.places(CAMERA) == rest
    assert TICK * ROUND * ROUNDS <= 6000  # ms: short


def test_only_where_drops_were_and_are_is_painted_anew(rain: Rainfall, qtbot: QtBot) -> None:
    before = painted(rain)
    with qtbot.waitSignal(rain.moved) as told:
        rain._move()  # noqa: SLF001
    after = painted(rain)
    region: QRegion = told.args[0]
    whole = CAMERA.size.width() * CAMERA.size.height()
    area = sum(rect.width() * rect.height() for rect in region)
    assert 0 < area < 0.1 * whole
    changed = [
        (x, y)
        for x in range(0, before.width(), 2)
        for y in range(0, before.height(), 2)
        if before.pixel(x, y) != after.pixel(x, y)
    ]
    assert changed
    assert all(any(rect.contains(x, y) for rect in region) for x, y in changed)


def test_where_motion_is_not_wanted_nothing_moves(rain: Rainfall) -> None:
    rain.allow(motion=False)
    assert not rain.moving
    rain.show_result(eave.result(rain=eave.RAIN[:1]), Look())
    rain.start()
    assert not rain.moving
    assert rain.places(CAMERA)


def test_the_same_rain_does_not_begin_anew(rain: Rainfall) -> None:
    rain._rest()  # noqa: SLF001
    rain.show_result(replace(eave.result(), findings=()), Look(dark=True))
    assert not rain.moving


def test_rain_belongs_to_the_water_layer(rain: Rainfall) -> None:
    rain.show_result(eave.result(), Look(only=Control.AIR))
    assert rain.places(CAMERA) == []
    rain.show_result(eave.result(), Look(only=Control.WATER))
    assert rain.places(CAMERA)


def test_a_section_without_rain_is_still(rain: Rainfall) -> None:
    rain.show_result(eave.result(rain=()), Look())
    assert rain.places(CAMERA) == []
    blank = QImage(CAMERA.size.toSize(), QImage.Format.Format_RGB32)
    blank.fill(QColor("#ffffff"))
    assert painted(rain) == blank


def test_a_desktop_that_says_nothing_lets_things_move(qtbot: QtBot) -> None:
    assert system_wants_motion()


def test_however_close_one_looks_only_what_is_in_view_is_placed(rain: Rainfall) -> None:
    for zoom in (0.3, 2.0, 60.0):
        camera = Camera((160.0, 1000.0), zoom, QSizeF(900, 700))
        window = camera.window
        seen = rain.places(camera, window)
        assert len(seen) < 200
        assert all(window.holds(place, 1e-6) for place in seen)
        if zoom < 60.0:
            every = [place for place in rain.places(camera) if window.holds(place)]
            assert len(seen) == len(every)


def test_rain_that_changes_while_it_runs_goes_on_from_where_it_is(rain: Rainfall) -> None:
    painted(rain)
    for _ in range(ROUND + 3):
        rain._move()  # noqa: SLF001
    where = rain.places(CAMERA)
    rain.start()
    assert rain.moving
    assert rain.places(CAMERA) == where
