"""The bar of tools above the drawing: words, since builders are no readers of icons."""

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QMainWindow, QToolBar, QToolButton

from enclosure_app.window.actions import Actions

_TOOLS = ("select", "points", "trace", "sheet", "area", "inside", "outside", "frame", "measure")

_MORE = "qt_toolbar_ext_button"  # Qt's own, for what a narrow window has no room for


def made_tool_bar(window: QMainWindow, actions: Actions) -> QToolBar:
    """Return the bar with every tool, undo and redo, and what is used most."""
    bar = QToolBar(say("Tools"), window)
    bar.setObjectName("tools")
    bar.setMovable(False)
    bar.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextOnly)
    for name in _TOOLS:
        bar.addAction(actions[f"tool_{name}"])
    bar.addSeparator()
    for name, words in (("undo", say("Undo")), ("redo", say("Redo"))):
        bar.addWidget(_button(bar, actions, name, words))
    bar.addSeparator()
    for name in ("fit", "write_pdf"):
        bar.addAction(actions[name])
    for button in bar.findChildren(QToolButton):
        button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        if button.objectName() == _MORE:
            button.setAccessibleName(say("More tools"))
            button.setToolTip(say("More tools"))
    window.addToolBar(bar)
    return bar


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
