"""Moving and copying what is picked."""

import pytest
from PySide6.QtCore import Qt

from enclosure_app.window.main_window import MainWindow

CTRL = Qt.KeyboardModifier.ControlModifier


def step(window: MainWindow) -> str:
    return window.document.undo_stack.undoText()


def close(points, expected) -> bool:  # noqa: ANN001
    return list(points) == [pytest.approx(point, abs=1e-6) for point in expected]


def test_a_piece_is_picked_and_moved_by_a_typed_length(crossed: MainWindow, hand, run) -> None:  # noqa: ANN001
    crossed.do("tool_move")
    assert "Click the sheet" in crossed.views.hint.text()
    hand.click((400.0, 500.0))
    hand.click((400.0, 500.0))
    hand.keys("250 at 0")
    hand.press(Qt.Key.Key_Return)
    assert close(run("drawn-1"), ((650.0, 300.0), (650.0, 1500.0)))
    assert step(crossed) == "Move"
    assert crossed.toolbox.name == "select"
    assert crossed.place.picked == {"drawn-1"}


def test_it_is_seen_before_it_is_done(crossed: MainWindow, hand, run) -> None:  # noqa: ANN001
    crossed.place.pick(("drawn-1",))
    crossed.do("tool_move")
    hand.click((400.0, 300.0))
    hand.move((600.0, 300.0))
    preview = crossed.canvas.tool.preview
    assert [piece.name for piece in preview.come] == ["drawn-1"]
    assert preview.come[0].shape.points[0][0] == pytest.approx(600.0, abs=8.0)
    assert run("drawn-1")[0] == (400.0, 300.0)


def test_ctrl_leaves_a_copy_behind(crossed: MainWindow, hand, section, run) -> None:  # noqa: ANN001
    crossed.place.pick(("drawn-1",))
    crossed.do("tool_move")
    hand.click((400.0, 300.0))
    hand.click((600.0, 300.0), CTRL)
    assert run("drawn-1")[0] == (400.0, 300.0)
    assert section().pieces[-1].name == "copy-1"
    assert step(crossed) == "Copy"


def test_copies_go_to_one_place_after_another(crossed: MainWindow, hand, section) -> None:  # noqa: ANN001
    crossed.place.pick(("drawn-1",))
    crossed.do("tool_copy")
    hand.keys("400; 300")
    hand.press(Qt.Key.Key_Return)
    for x in (500.0, 600.0, 700.0):
        hand.click((x, 300.0))
    copies = [piece for piece in section().pieces if piece.name.startswith("copy")]
    there = [hand.at((x, 300.0))[0] for x in (500.0, 600.0, 700.0)]
    assert [piece.shape.points[0][0] for piece in copies] == pytest.approx(there)
    hand.press(Qt.Key.Key_Escape)
    hand.press(Qt.Key.Key_Escape)
    assert crossed.toolbox.name == "select"


def test_escape_goes_back_one_step_at_a_time(crossed: MainWindow, hand) -> None:  # noqa: ANN001
    crossed.place.pick(("drawn-1",))
    crossed.do("tool_move")
    hand.click((400.0, 300.0))
    hand.keys("25")
    for name, picked in (("move", True), ("move", True), ("select", True), ("select", False)):
        hand.press(Qt.Key.Key_Escape)
        assert crossed.toolbox.name == name
        assert bool(crossed.place.picked) is picked
