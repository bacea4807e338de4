"""Arrow keys move what the hand has hold of."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt

from enclosure_app.model.drawing import Units
from enclosure_app.window.main_window import MainWindow

SHIFT = Qt.KeyboardModifier.ShiftModifier


def test_what_is_picked_moves_a_little_and_with_shift_more(
    crossed: MainWindow,
    qtbot,  # noqa: ANN001
    run,  # noqa: ANN001
) -> None:
    crossed.place.pick(("drawn-1",))
    qtbot.keyClick(crossed.canvas, Qt.Key.Key_Right)
    assert run("drawn-1")[0] == (401.0, 300.0)
    qtbot.keyClick(crossed.canvas, Qt.Key.Key_Up, SHIFT)
    assert run("drawn-1")[0] == (401.0, 310.0)


def test_many_presses_undo_as_one_step(crossed: MainWindow, qtbot, run) -> None:  # noqa: ANN001
    crossed.place.pick(("drawn-1",))
    for _ in range(5):
        qtbot.keyClick(crossed.canvas, Qt.Key.Key_Down)
    assert run("drawn-1")[0] == (400.0, 295.0)
    crossed.do("undo")
    assert run("drawn-1")[0] == (400.0, 300.0)


def test_it_is_a_sixteenth_of_an_inch_in_feet_and_inches(crossed: MainWindow, qtbot, run) -> None:  # noqa: ANN001
    crossed.document.open(replace(crossed.document.project, units=Units.FT))
    crossed.place.pick(("drawn-1",))
    qtbot.keyClick(crossed.canvas, Qt.Key.Key_Right)
    assert run("drawn-1")[0][0] == pytest.approx(400.0 + 25.4 / 16)


def test_with_nothing_picked_arrows_move_the_paper(crossed: MainWindow, qtbot) -> None:  # noqa: ANN001
    before, project = crossed.canvas.camera.centre, crossed.document.project
    qtbot.keyClick(crossed.canvas, Qt.Key.Key_Right)
    assert crossed.canvas.camera.centre[0] > before[0]
    assert crossed.document.project is project
