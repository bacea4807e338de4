"""Flags in the drawing are clicked and pointed at like what they stand for."""

from collections.abc import Callable

from PySide6.QtCore import QPoint, QPointF, Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model.product import Control
from enclosure_app.model.report import JointKind
from enclosure_app.window.main_window import MainWindow

Opened = Callable[..., MainWindow]
_LEFT = Qt.MouseButton.LeftButton


def flag_dots(window: MainWindow) -> dict[str, QPoint]:
    """Return where the middle of each flag is on the screen, by the rule of its finding."""
    window.canvas.finish_painting()
    assert window.result is not None
    rules = {finding.key: finding.rule for finding in window.result.findings}
    return {rules[key]: box.center().toPoint() for box, key in window.canvas.flags()}


def test_a_click_on_a_flag_chooses_its_finding_and_picks_nothing(
    opened: Opened, qtbot: QtBot
) -> None:
    window = opened()
    qtbot.waitUntil(lambda: window.findings.model.total == 3)
    for rule, dot in flag_dots(window).items():
        qtbot.mouseClick(window.canvas, _LEFT, pos=dot)
        assert window.findings.current is not None
        assert window.findings.current.rule == rule
        assert window.place.picked == frozenset()
    band, _ = window.ribbon.view.at
    assert band == 0


def test_the_drawing_stays_where_it_is(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    qtbot.waitUntil(lambda: window.findings.model.total == 3)
    before = window.canvas.camera
    qtbot.mouseClick(window.canvas, _LEFT, pos=flag_dots(window)["reverse-lap"])
    assert window.canvas.camera == before


def test_beside_the_flags_the_tool_has_the_mouse(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    qtbot.waitUntil(lambda: window.findings.model.total == 3)
    with qtbot.assertNotEmitted(window.showing.flags.taken):
        qtbot.mouseClick(window.canvas, _LEFT, pos=QPoint(5, 5))
        qtbot.mouseClick(
            window.canvas,
            _LEFT,
            Qt.KeyboardModifier.ShiftModifier,
            flag_dots(window)["reverse-lap"],
        )


def test_other_tools_draw_through_flags(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    qtbot.waitUntil(lambda: window.findings.model.total == 3)
    window.do("tool_measure")
    with qtbot.assertNotEmitted(window.showing.flags.taken):
        qtbot.mouseClick(window.canvas, _LEFT, pos=flag_dots(window)["reverse-lap"])


def test_a_flag_that_is_not_shown_is_not_there(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    qtbot.waitUntil(lambda: window.findings.model.total == 3)
    dots = flag_dots(window)
    hand = window.showing.flags
    assert hand.finding_at(QPointF(dots["reverse-lap"])) is not None
    window.place.show_only(Control.AIR)
    assert hand.finding_at(QPointF(dots["reverse-lap"])) is None


def test_the_mouse_is_told_what_a_flag_stands_for(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    qtbot.waitUntil(lambda: window.findings.model.total == 3)
    hand = window.showing.flags
    finding = hand.finding_at(QPointF(flag_dots(window)["edge-cover-short"]))
    assert finding is not None
    told = hand.told(finding)
    assert told.splitlines()[:2] == [finding.message, finding.advice]
    window.settings.who = "Ida"
    window.findings.advice.verdict.set_who("Ida")
    window.findings.choose(finding.key)
    window.do("decide_mended")
    qtbot.waitUntil(lambda: "Mended by Ida" in hand.told(finding))
    assert hand.told(None) == ""


def test_the_mouse_is_told_which_sheet_is_over_which_at_a_lap(
    opened: Opened, qtbot: QtBot
) -> None:
    window = opened()
    qtbot.waitUntil(lambda: window.findings.model.total == 3)
    result, hand = window.result, window.showing.flags
    assert result is not None
    laps = [j for j in result.layers[Control.WATER].joints if j.kind is JointKind.LAP]
    for lap in laps:
        window.canvas.go_to(lap.at, 200.0)
        told = hand.told_at(window.canvas.camera.seen(lap.run_a[len(lap.run_a) // 2]))
        assert told.startswith("Lap of "), told
    window.canvas.fit()
    assert hand.told_at(QPointF(3, 3)) == ""
