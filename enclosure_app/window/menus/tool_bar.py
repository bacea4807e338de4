"""The bar of tools above the drawing: words, since builders are no readers of icons.

What is used all the time has a button; what changes what is drawn, and what is marked, has a menu
each, whose button bears the name of the tool that is in hand.
"""

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QMainWindow, QMenu, QToolBar, QToolButton

from enclosure_app.window.menus.actions import Actions

_TOOLS = ("select", "trace", "sheet", "area", "beside", "measure")
_CHANGES = ("points", "move", "copy", "turn", "flip", "", "cut_back", "run_on", "cut", "join")
_MARKS = ("inside", "outside", "frame", "", "seal", "cut_short")

_MORE = "qt_toolbar_ext_button"  # Qt's own, for what a narrow window has no room for


def made_tool_bar(window: QMainWindow, actions: Actions) -> QToolBar:
    """Return the bar with every tool, undo and redo, and what is used most."""
    bar = QToolBar(say("Tools"), window)
    bar.setObjectName("tools")
    bar.setMovable(False)
    bar.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextOnly)
    for name in _TOOLS:
        bar.addAction(actions[f"tool_{name}"])
    bar.addWidget(_group(bar, actions, _CHANGES, say("Change")))
    bar.addWidget(_group(bar, actions, _MARKS, say("Mark")))
    bar.addSeparator()
    for name, words in (("undo", say("Undo")), ("redo", say("Redo"))):
        bar.addWidget(_button(bar, actions, name, words))
    bar.addSeparator()
    for name in ("fit", "walk", "write_pdf"):
        bar.addAction(actions[name])
    for button in bar.findChildren(QToolButton):
        button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        if button.objectName() == _MORE:
            button.setAccessibleName(say("More tools"))
            button.setToolTip(say("More tools"))
    window.addToolBar(bar)
    return bar


def _group(bar: QToolBar, actions: Actions, names: Sequence[str], words: str) -> QToolButton:
    """Return a button with a menu of tools; "" is a line between them."""
    button, menu = QToolButton(bar), QMenu(words, bar)
    tools = [actions[f"tool_{name}"] for name in names if name]
    for name in names:
        if name:
            menu.addAction(actions[f"tool_{name}"])
        else:
            menu.addSeparator()

    def show_tool_in_hand() -> None:
        held = next((tool for tool in tools if tool.isChecked()), None)
        button.setText(f"{held.text() if held else words}  ▾")
        button.setChecked(held is not None)

    for tool in tools:
        tool.toggled.connect(show_tool_in_hand)
    button.setCheckable(True)
    button.setMenu(menu)
    button.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
    button.setStyleSheet("QToolButton::menu-indicator { image: none; }")
    button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
    button.setAccessibleName(words)
    show_tool_in_hand()
    return button


def _button(bar: QToolBar, actions: Actions, name: str, words: str) -> QToolButton:
    """Return a button that does not change its words with the step, as the menu does."""
    button, action = QToolButton(bar), actions[name]
    button.setText(words)
    button.setAccessibleName(words)
    button.setEnabled(action.isEnabled())
    action.enabledChanged.connect(button.setEnabled)
    button.clicked.connect(action.trigger)
    return button


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("ToolBar", text)
