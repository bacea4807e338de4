"""A page is turned by a finger drawn across it."""

import pytest
from PySide6.QtCore import QPoint, Qt
from pytestqt.qtbot import QtBot

from enclosure_app.window.walk.swipe_area import SwipeArea

LEFT = Qt.MouseButton.LeftButton


@pytest.mark.parametrize(
    ("way", "told"),
    [((-120, 10), [1]), ((120, -20), [-1]), ((-40, 0), []), ((-100, 80), []), ((0, 150), [])],
)
def test_only_a_long_flat_way_turns_the_page(
    qtbot: QtBot, way: tuple[int, int], told: list[int]
) -> None:
    area = SwipeArea()
    qtbot.addWidget(area)
    area.resize(400, 300)
    area.show()
    heard: list[int] = []
    area.swiped.connect(heard.append)
    qtbot.mousePress(area, LEFT, pos=QPoint(200, 150))
    qtbot.mouseRelease(area, LEFT, pos=QPoint(200 + way[0], 150 + way[1]))
    assert heard == told
