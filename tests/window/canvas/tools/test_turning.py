"""Turning and flipping what is picked."""

import pytest
from PySide6.QtCore import Qt

from enclosure_app.window.main_window import MainWindow

CTRL = Qt.KeyboardModifier.ControlModifier
SHIFT = Qt.KeyboardModifier.ShiftModifier


def step(window: MainWindow) -> str:
    return window.document.undo_stack.undoText()


def close(points, expected) -> bool:  # noqa: ANN001
    return list(points) == [pytest.approx(point, abs=1e-6) for point in expected]


@pytest.mark.parametrize(("typed", "end"), [("90", (0.0, 500.0)), ("-90", (0.0, -500.0))])
def test_a_sheet_is_turned_by_a_typed_angle(
    crossed: MainWindow,
    hand,  # noqa: ANN001
    run,  # noqa: ANN001
    typed: str,
    end: tuple[float, float],
) -> None:
    crossed.place.pick(("drawn-3",))
    crossed.do("tool_turn")
    hand.keys("200; 800")
    hand.press(Qt.Key.Key_Return)
    hand.keys(typed)
    hand.press(Qt.Key.Key_Return)
    assert run("drawn-3")[0] == pytest.approx((200.0, 800.0))
    assert run("drawn-3")[1] == pytest.approx((200.0, 800.0 + (900.0 if end[1] > 0 else -900.0)))
    assert step(crossed) == "Turn"


def test_shift_turns_by_fifteen_degrees(crossed: MainWindow, hand, run) -> None:  # noqa: ANN001
    crossed.place.pick(("drawn-3",))
    crossed.do("tool_turn")
    for place in ((200.0, 800.0), (1100.0, 800.0)):
        hand.keys(f"{place[0]}; {place[1]}")
        hand.press(Qt.Key.Key_Return)
    hand.click((1050.0, 1060.0), SHIFT)
    (ax, ay), (bx, by) = run("drawn-3")
    assert (by - ay) / (bx - ax) == pytest.approx(0.267949, abs=1e-6)  # 15 degrees


def test_a_sheet_is_flipped_and_the_original_may_stay(
    crossed: MainWindow,
    hand,  # noqa: ANN001
    section,  # noqa: ANN001
    run,  # noqa: ANN001
) -> None:
    crossed.place.pick(("drawn-1",))
    crossed.do("tool_flip")
    hand.keys("500; 0")
    hand.press(Qt.Key.Key_Return)
    hand.keys("90")
    hand.press(Qt.Key.Key_Return)
    assert close(run("drawn-1"), ((600.0, 300.0), (600.0, 1500.0)))
    assert step(crossed) == "Flip"
    crossed.do("tool_flip")
    hand.click((700.0, 200.0))
    hand.click((700.0, 1200.0), CTRL)
    assert len(section().pieces) == 5
    assert section().pieces[-1].shape.points[0][0] == pytest.approx(800.0, abs=12.0)


def test_what_is_typed_badly_is_told_and_nothing_is_lost(crossed: MainWindow, hand) -> None:  # noqa: ANN001
    before = crossed.document.project
    crossed.place.pick(("drawn-1",))
    crossed.do("tool_turn")
    hand.click((400.0, 300.0))
    hand.keys("9//")
    hand.press(Qt.Key.Key_Return)
    assert "is no angle" in crossed.messages.words.text()
    assert crossed.document.project is before
    assert crossed.canvas.tool.given
