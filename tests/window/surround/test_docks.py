"""A panel is named in words, hidden by one, and shown again by the menu."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QMainWindow, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from enclosure_app.window.surround.docks import made_dock

LEFT = Qt.DockWidgetArea.LeftDockWidgetArea


def test_a_panel_is_hidden_by_its_word_and_shown_by_its_action(qtbot: QtBot) -> None:
    window, inside = QMainWindow(), QWidget()
    qtbot.addWidget(window)
    inside.setObjectName("lines")
    dock = made_dock(window, "What the lines are", inside, LEFT)
    window.show()
    assert dock.objectName() == "dock-lines"
    assert [label.text() for label in dock.findChildren(QLabel)] == ["What the lines are"]
    (hide,) = dock.findChildren(QPushButton)
    assert hide.accessibleName() == "Hide What the lines are"
    qtbot.mouseClick(hide, Qt.MouseButton.LeftButton)
    assert dock.isHidden()
    dock.toggleViewAction().trigger()
    assert not dock.isHidden()


def test_a_panel_may_be_moved_but_never_floats(qtbot: QtBot) -> None:
    window = QMainWindow()
    qtbot.addWidget(window)
    features = made_dock(window, "Panel", QWidget(), LEFT).features()
    assert features & features.DockWidgetMovable
    assert not features & features.DockWidgetFloatable
