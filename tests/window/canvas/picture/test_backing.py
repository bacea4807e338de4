"""The picture behind the canvas: painted in turns, moved while it is stale."""

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QObject, QPoint, QPointF, QSizeF
from PySide6.QtGui import QColor, QImage, QPainter
from pytestqt.qtbot import QtBot

from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.canvas.picture.backing import Backing, Scene
from enclosure_app.window.canvas.picture.linework import Linework
from tests.drawing import eave

CAMERA = Camera((100.0, 1000.0), 0.3, QSizeF(600, 500))


def nothing(image: QImage, camera: Camera, scene: Scene) -> Iterator[None]:
    yield from ()


@pytest.fixture
def backing(qtbot: QtBot) -> Iterator[Backing]:
    parent = QObject()
    yield Backing(parent, nothing)
    parent.deleteLater()


@pytest.fixture
def scene() -> Scene:
    result = eave.result()
    return Scene(result, Linework(result.section.strokes), Look())


def seen(backing: Backing, camera: Camera = CAMERA) -> QImage:
    image = QImage(camera.size.toSize(), QImage.Format.Format_RGB32)
    image.fill(QColor("#ff00ff"))
    painter = QPainter(image)
    backing.paint(painter, camera)
    painter.end()
    return image


def test_a_picture_is_whole_when_it_is_shown(backing: Backing, scene: Scene, qtbot: QtBot) -> None:
    with qtbot.waitSignal(backing.ready):
        backing.request(scene, CAMERA, 1.0)
        assert seen(backing).pixelColor(0, 0) == QColor("#ff00ff")  # nothing is there yet
    image = seen(backing)
    colours = {image.pixel(x, y) for x in range(0, 600, 3) for y in range(0, 500, 3)}
    assert QColor("#ff00ff").rgb() not in colours
    assert len(colours) > 10


def test_panning_a_little_needs_no_new_picture(backing: Backing, scene: Scene) -> None:
    backing.request(scene, CAMERA, 1.0)
    backing.finish()
    moved = Camera((CAMERA.centre[0] + 200.0, CAMERA.centre[1]), CAMERA.zoom, CAMERA.size)
    assert backing.serves(scene, moved)
    shifted, before = seen(backing, moved), seen(backing)
    assert all(
        shifted.pixel(x, y) == before.pixel(x + 60, y)
        for x in range(0, 500, 7) for y in range(0, 500, 7)
    )  # fmt: skip
    far = Camera((CAMERA.centre[0] + 2000.0, CAMERA.centre[1]), CAMERA.zoom, CAMERA.size)
    assert not backing.serves(scene, far)


def test_another_zoom_or_scene_needs_a_new_one(backing: Backing, scene: Scene) -> None:
    assert not backing.serves(scene, CAMERA)
    backing.request(scene, CAMERA, 1.0)
    assert backing.serves(scene, CAMERA)  # it is under way
    closer = Camera(CAMERA.centre, 2 * CAMERA.zoom, CAMERA.size)
    assert not backing.serves(scene, closer)
    other = Scene(eave.result(findings=()), scene.linework, scene.look)
    assert not backing.serves(other, CAMERA)


def test_what_changes_faster_than_pictures_is_painted_after_the_one_under_way(
    backing: Backing, scene: Scene
) -> None:
    told = []
    backing.ready.connect(lambda: told.append(seen(backing)))
    dark = Scene(scene.result, scene.linework, Look(dark=True))
    backing.request(scene, CAMERA, 1.0)
    backing.request(dark, CAMERA, 1.0)
    backing.finish()
    assert len(told) == 2
    assert told[0].pixelColor(1, 1).lightness() > 200
    assert told[1].pixelColor(1, 1).lightness() < 60


def test_it_is_as_sharp_as_the_screen(backing: Backing, scene: Scene) -> None:
    backing.request(scene, CAMERA, 2.0)
    backing.finish()
    fine = QImage(CAMERA.size.toSize() * 2, QImage.Format.Format_RGB32)
    fine.setDevicePixelRatio(2.0)
    painter = QPainter(fine)
    backing.paint(painter, CAMERA)
    painter.end()
    coarse = fine.scaled(CAMERA.size.toSize()).scaled(fine.size())
    assert fine != coarse


def test_what_is_shown_stays_as_it_is_while_others_are_painted(
    backing: Backing, scene: Scene
) -> None:
    """The sheet of the picture before the last one is painted on again, never the one shown."""
    night = Scene(scene.result, scene.linework, Look(dark=True))
    pictures = []
    for look in (scene, night, scene, night):
        before = seen(backing)
        backing.request(look, CAMERA, 1.0)
        assert seen(backing) == before
        backing.finish()
        pictures.append(seen(backing))
    assert pictures[0] == pictures[2] != pictures[1]
    assert pictures[1] == pictures[3]


def test_flags_are_told_where_they_are_painted(backing: Backing, scene: Scene) -> None:
    assert backing.flags(CAMERA) == []
    backing.request(scene, CAMERA, 1.0)
    backing.finish()
    image, flags = seen(backing), backing.flags(CAMERA)
    assert {key for _, key in flags} == {finding.key for finding in scene.result.findings}
    ground = QColor(scene.look.theme.flag)
    corners = [box.topLeft().toPoint() + QPoint(4, 3) for box, _ in flags]
    in_view = [corner for corner in corners if image.rect().contains(corner)]
    assert in_view
    assert {image.pixelColor(corner).rgb() for corner in in_view} == {ground.rgb()}
    closer = CAMERA.zoomed(2.0, QPointF(300, 250))  # the picture that is there is stretched
    for (box, _), (larger, _) in zip(flags, backing.flags(closer), strict=True):
        assert larger.width() == pytest.approx(2 * box.width())
        assert larger.center().x() - 300 == pytest.approx(2 * (box.center().x() - 300))


def test_the_room_of_flags_and_words_is_told(backing: Backing, scene: Scene) -> None:
    assert backing.written(CAMERA).isEmpty()
    backing.request(scene, CAMERA, 1.0)
    backing.finish()
    room = backing.written(CAMERA)
    assert all(room.contains(box.center().toPoint()) for box, _ in backing.flags(CAMERA))
    assert room.boundingRect().width() < 600
    assert not room.contains(QPoint(2, 2))
