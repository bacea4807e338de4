"""Rows of two lines: the room they take, and where each line stands."""

from PySide6.QtCore import QRect, QStringListModel
from PySide6.QtGui import QPainter, QPalette
from PySide6.QtWidgets import QListView
from pytestqt.qtbot import QtBot

from enclosure_app.window.rows.two_lines import Index, TwoLines


class Told(TwoLines):
    """Remembers the room of every line it was given, and how large its letters are."""

    def __init__(self) -> None:
        super().__init__()
        self.upper: dict[str, tuple[QRect, float]] = {}
        self.lower: dict[str, tuple[QRect, float]] = {}

    def paint_upper(self, painter: QPainter, room: QRect, index: Index, palette: QPalette) -> None:
        del palette
        self.upper[index.data()] = QRect(room), painter.font().pointSizeF()

    def paint_lower(self, painter: QPainter, room: QRect, index: Index, palette: QPalette) -> None:
        del palette
        self.lower[index.data()] = QRect(room), painter.font().pointSizeF()


def shown(qtbot: QtBot) -> tuple[QListView, Told]:
    view, told = QListView(), Told()
    view.setModel(QStringListModel(["sheet", "tape"], view))
    view.setItemDelegate(told)
    view.resize(300, 200)
    qtbot.addWidget(view)
    view.show()
    view.grab()
    return view, told


def test_the_lower_line_stands_under_the_upper_one_in_smaller_letters(qtbot: QtBot) -> None:
    view, told = shown(qtbot)
    high = view.fontMetrics().height()
    for name in ("sheet", "tape"):
        (upper, large), (lower, small) = told.upper[name], told.lower[name]
        assert (upper.left(), upper.width()) == (lower.left(), lower.width())
        assert upper.height() == lower.height() == high
        assert lower.top() == upper.bottom() + 2
        assert small < large


def test_a_row_is_as_wide_as_its_list_and_holds_both_lines(qtbot: QtBot) -> None:
    view, told = shown(qtbot)
    box = view.visualRect(view.model().index(1, 0))
    assert box.width() == view.viewport().width()
    assert box.contains(told.upper["tape"][0])
    assert box.contains(told.lower["tape"][0])
