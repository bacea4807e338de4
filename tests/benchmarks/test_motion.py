"""What rain in motion costs: a step of the drops against painting the picture, within one run."""

import os

os.environ["QT_QPA_PLATFORM"] = "offscreen"

from collections.abc import Callable
from statistics import median
from time import process_time

import pytest
from PySide6.QtCore import QObject, QSizeF
from PySide6.QtGui import QColor, QImage, QPainter, QRegion
from pytest_benchmark.fixture import BenchmarkFixture
from pytestqt.qtbot import QtBot

from enclosure_app.model.report import RainRoute, RouteEnd
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.canvas.picture.backing import Backing, Scene
from enclosure_app.window.canvas.picture.linework import Linework
from enclosure_app.window.canvas.picture.rainfall import Rainfall
from tests.drawing import eave

CAMERA = Camera((100.0, 1000.0), 0.4, QSizeF(1400, 900))
ROUTES = tuple(
    RainRoute(((x, 2600.0), (x, -290.0)), ("w1",), RouteEnd.OUTSIDE) for x in range(-650, 850, 50)
)


@pytest.mark.usefixtures("qtbot")
def test_a_step_of_thirty_routes_costs_a_fifth_of_painting_the_picture(
    benchmark: BenchmarkFixture, qtbot: QtBot
) -> None:
    parent = QObject()
    result = eave.result(rain=ROUTES)
    scene = Scene(result, Linework(result.section.strokes), Look())
    backing = Backing(parent, lambda *_: iter(()))
    rain = Rainfall(parent)
    rain.show_result(result, Look())
    image = QImage(CAMERA.size.toSize(), QImage.Format.Format_RGB32)
    moved: list[QRegion] = []
    rain.moved.connect(moved.append)

    def picture() -> None:
        backing.request(Scene(result, scene.linework, Look()), CAMERA, 1.0)
        backing.finish()

    def step() -> None:
        rain._move()  # noqa: SLF001  one tick of its clock
        painter = QPainter(image)
        painter.setClipRegion(moved.pop())
        painter.fillRect(image.rect(), QColor("#ffffff"))
        rain.paint(painter, CAMERA)
        painter.end()

    painter = QPainter(image)
    rain.paint(painter, CAMERA)
    painter.end()
    whole = median(_seconds(picture) for _ in range(5))
    one = median(_seconds(step) for _ in range(60))
    benchmark.extra_info["step of the picture"] = one / whole
    benchmark.pedantic(step, rounds=20)
    assert one < whole / 5


def _seconds(task: Callable[[], None]) -> float:
    start = process_time()
    task()
    return process_time() - start
