"""What every gesture is."""

import pytest
from PySide6.QtCore import QPointF, QSizeF, Qt

from enclosure_app.errors import EnclosureError
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.catching.aids import kept_ray
from enclosure_app.window.canvas.catching.catches import Catch, Kind
from enclosure_app.window.canvas.tools.tool import Pointer, Tool
from enclosure_app.window.main_window import MainWindow

CAMERA = Camera((0.0, 0.0), 2.0, QSizeF(100, 100))


def test_a_pointer_means_what_it_caught_before_the_angle_it_is_kept_to() -> None:
    ray = kept_ray((0.0, 0.0), (10.0, 1.0), 15.0)
    bare = Pointer(QPointF(), (10.0, 1.0), CAMERA)
    kept = Pointer(QPointF(), (10.0, 1.0), CAMERA, ray=ray)
    caught = Pointer(QPointF(), (10.0, 1.0), CAMERA, Catch((9.0, 3.0), Kind.END), ray=ray)
    assert [each.at for each in (bare, kept, caught)] == [(10.0, 1.0), (10.0, 0.0), (9.0, 3.0)]
    assert bare.reach(10.0) == 5.0


def test_shift_adds_and_ctrl_keeps() -> None:
    held = Qt.KeyboardModifier.ShiftModifier | Qt.KeyboardModifier.ControlModifier
    pointer = Pointer(QPointF(), (0.0, 0.0), CAMERA, keys=held)
    assert pointer.adds
    assert pointer.keeps


def test_an_edit_that_cannot_be_done_is_told_and_changes_nothing(sheet: MainWindow) -> None:
    before = sheet.document.project

    def refuse(project, index):  # noqa: ANN001, ANN202
        raise EnclosureError("That cannot be drawn.")

    assert not Tool(sheet.place).edit("Draw", refuse)
    assert sheet.messages.words.text() == "That cannot be drawn."
    assert sheet.document.project is before


@pytest.mark.parametrize("name", ["select", "points", "trace", "measure", "seal", "cut_short"])
def test_every_tool_says_what_to_do_in_one_sentence(sheet: MainWindow, name: str) -> None:
    sheet.toolbox.take(name)
    hint = sheet.views.hint.text()
    assert hint.endswith(".")
    assert len(hint) < 140
