"""The net of a section's lines: at once where it is small, in a thread where it is large, once."""

from dataclasses import replace

from PySide6.QtCore import QObject
from pytestqt.qtbot import QtBot

from enclosure_app.model.place import Area, Line
from enclosure_app.model.section import Piece, Section, Stroke
from enclosure_app.window.canvas.tools.net import Net

FRAME = ((0.0, 0.0), (900.0, 0.0), (900.0, 900.0), (0.0, 900.0))


def section(count: int) -> Section:
    strokes = tuple(Stroke(((0.0, float(y)), (500.0, float(y)))) for y in range(count))
    return Section("one", FRAME, (), {}, strokes=strokes)


def test_a_small_net_is_there_at_once_and_stays_for_a_sheet_that_is_drawn(qtbot: QtBot) -> None:
    net, small = Net(QObject()), section(3)
    made = net.of(small)
    assert made is not None
    assert len(made.start) == 3
    sheet = Piece("1", "x", Line(((0.0, 1.0), (500.0, 1.0))))
    assert net.of(replace(small, pieces=(sheet,))) is made
    board = Piece("2", "x", Area(((0.0, 30.0), (9.0, 30.0), (9.0, 60.0))))
    other = net.of(replace(small, pieces=(sheet, board)))
    assert other is not made
    assert other is not None
    assert len(other.start) == 6


def test_a_large_net_is_made_elsewhere_and_told(qtbot: QtBot) -> None:
    holder = QObject()
    net, large = Net(holder), section(2000)
    with qtbot.waitSignal(net.ready, timeout=20_000):
        assert net.of(large) is None
        assert net.of(large) is None, "asked twice, made once"
    made = net.of(large)
    assert made is not None
    assert len(made.start) == 2000
    assert Net(holder).of(large) is made, "another tool finds it there"
