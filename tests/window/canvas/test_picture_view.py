"""A picture that is looked at: nearer, further away, and painted anew once the view rests."""

from dataclasses import replace

import pytest
from PySide6.QtCore import QPoint, QPointF, QSizeF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.canvas.picture_view import PictureView
from tests.drawing import eave


@pytest.fixture
def view(qtbot: QtBot) -> PictureView:
    shown = PictureView()
    qtbot.addWidget(shown)
    shown.resize(500, 400)
    shown.show()
    shown.camera = Camera((160.0, 105.0), 1.0, QSizeF(500, 400))
    shown.show_scene(eave.result(), Look(), ())
    shown.finish_painting()
    return shown


def test_the_wheel_looks_nearer_about_the_mouse(view: PictureView) -> None:
    under = view.camera.place(QPointF(100, 80))
    notch, no_move = QPoint(0, 120), QPoint()
    event = QWheelEvent(
        QPointF(100, 80), view.mapToGlobal(QPointF(100, 80)), no_move, notch,
        Qt.MouseButton.NoButton, Qt.KeyboardModifier.NoModifier, Qt.ScrollPhase.NoScrollPhase, False,
    )  # fmt: skip
    QApplication.sendEvent(view, event)
    assert view.camera.zoom == pytest.approx(1.25)
    assert view.camera.place(QPointF(100, 80)) == pytest.approx(under)


def test_whoever_looks_elsewhere_is_heard(view: PictureView, qtbot: QtBot) -> None:
    with qtbot.waitSignal(view.looked):
        view.look_from(view.camera.panned(QPointF(40, 0)))
    assert view.camera.seen((160.0, 105.0)).x() == pytest.approx(290)


def test_a_zoom_is_painted_sharp_once_the_view_rests(view: PictureView, qtbot: QtBot) -> None:
    assert view.scene is not None
    view.zoom(2.0)
    assert not view.backing.serves(view.scene, view.camera)
    qtbot.waitUntil(lambda: view.backing.serves(view.scene, view.camera), timeout=5000)


def test_the_offices_lines_are_kept_while_they_are_the_same(view: PictureView) -> None:
    before = view.scene
    assert before is not None
    edited = replace(before.result.section, name="Another name")
    view.show_scene(replace(before.result, section=edited), Look(), ())
    assert view.scene is not before
    assert view.scene.linework is before.linework
