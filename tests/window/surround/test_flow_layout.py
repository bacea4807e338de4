"""Widgets in a row, and in more rows where there is no room."""

from itertools import pairwise

import pytest
from PySide6.QtWidgets import QPushButton, QWidget
from pytestqt.qtbot import QtBot

from enclosure_app.window.surround.flow_layout import FlowLayout


@pytest.fixture
def row(qtbot: QtBot) -> tuple[QWidget, FlowLayout, list[QPushButton]]:
    holder = QWidget()
    flow = FlowLayout()
    flow.setContentsMargins(0, 0, 0, 0)
    holder.setLayout(flow)
    buttons = [QPushButton(text) for text in ("one", "another one", "the third of them")]
    for button in buttons:
        flow.addWidget(button)
    qtbot.addWidget(holder)
    holder.show()
    return holder, flow, buttons


Row = tuple[QWidget, FlowLayout, list[QPushButton]]


def tops(buttons: list[QPushButton]) -> list[int]:
    return [button.geometry().top() for button in buttons]


def test_with_room_all_stand_in_one_row(row: Row) -> None:
    holder, flow, buttons = row
    holder.resize(flow.sizeHint().width(), 100)
    assert len(set(tops(buttons))) == 1
    lefts = [button.geometry().left() for button in buttons]
    assert lefts == sorted(lefts)
    assert flow.heightForWidth(holder.width()) == flow.sizeHint().height()


def test_without_room_they_wrap_and_none_sticks_out(row: Row) -> None:
    holder, flow, buttons = row
    holder.resize(flow.minimumSize().width(), 200)
    assert len(set(tops(buttons))) > 1
    assert all(button.geometry().right() < holder.width() for button in buttons)
    assert flow.heightForWidth(holder.width()) > flow.sizeHint().height()
    for one, other in pairwise(buttons):
        assert not one.geometry().intersects(other.geometry())


def test_what_is_taken_out_is_there_no_more(row: Row) -> None:
    _, flow, buttons = row
    item = flow.takeAt(0)
    assert item is not None
    assert item.widget() is buttons[0]
    assert flow.count() == 2
    assert flow.itemAt(2) is None
    assert flow.takeAt(5) is None
    assert flow.hasHeightForWidth()
    assert FlowLayout().heightForWidth(10) == 0
