"""The bar of tools above the drawing: words, since builders are no readers of icons.

What is used all the time has a button; what changes what is drawn, and what is marked, has a menu
each, whose button bears the name of the tool that is in hand. Where the window is narrow the bar
closes up; only what then still has no room goes behind an arrow.
"""

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication, QEvent, Qt
from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import QMainWindow, QMenu, QToolBar, QToolButton

from enclosure_app.window.menus.actions import Actions

_TOOLS = ("select", "trace", "sheet", "area", "beside", "measure")
_CHANGES = ("points", "move", "copy", "turn", "flip", "", "cut_back", "run_on", "cut", "join")
_MARKS = ("inside", "outside", "frame", "", "seal", "cut_short")

_WAYS = 3  # of laying the bar out, from roomy to closed up
_MORE = "qt_toolbar_ext_button"  # Qt's own, for what a narrow window has no room for


def made_tool_bar(window: QMainWindow, actions: Actions) -> QToolBar:
    """Return the bar with every tool, undo and redo, and what is used most."""
    bar = _Bar(say("Tools"), window)
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
    for name, words in (
        ("fit", say("Show all")),
        ("walk", say("Walk")),
        ("write_pdf", say("Write PDF")),
    ):
        bar.addWidget(_button(bar, actions, name, words))
    for button in bar.findChildren(QToolButton):
        button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        if button.objectName() == _MORE:
            button.setAccessibleName(say("More tools"))
            button.setToolTip(say("More tools"))
    window.addToolBar(bar)
    return bar


class _Bar(QToolBar):
    """The bar, as roomy as it fits into the window.

    In a roomy bar a button with a menu is as wide as its longest word, so that none beside it moves
    when another tool is in hand; then as wide as its word; then all buttons stand closer.
    """

    def __init__(self, title: str, window: QMainWindow) -> None:
        super().__init__(title, window)
        self.groups: dict[QToolButton, list[str]] = {}
        self._needed: list[int] = []
        self._way = -1

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Be as roomy as there is room for."""
        super().resizeEvent(event)
        self._fit()

    def showEvent(self, event: QShowEvent) -> None:
        """Be as roomy as there is room for, now that the bar wears its style."""
        super().showEvent(event)
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        """Measure again in another style or with other letters."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.StyleChange, QEvent.Type.FontChange):
            self._needed = []
            self._fit()

    def _fit(self) -> None:
        if not self.isVisible():
            return
        self._needed = self._needed or [self._measured(way) for way in range(_WAYS)]
        fitting = (way for way in range(_WAYS) if self._needed[way] <= self.width())
        self._lay(next(fitting, _WAYS - 1))

    def _measured(self, way: int) -> int:
        self._lay(way)
        return self.sizeHint().width()

    def _lay(self, way: int) -> None:
        """Lay the bar out: 0 roomy, 1 without room for other words, 2 closed up."""
        if way == self._way:
            return
        self._way = way
        self.setProperty("close", way == _WAYS - 1)
        for button in self.findChildren(QToolButton):
            button.style().unpolish(button)
            button.style().polish(button)
        for button, words in self.groups.items():
            button.setMinimumWidth(_widest(button, words) if way == 0 else 0)
        if layout := self.layout():
            layout.invalidate()


def _widest(button: QToolButton, words: Sequence[str]) -> int:
    """Return how wide a button is with the longest of some words."""
    advance = button.fontMetrics().horizontalAdvance
    rest = button.sizeHint().width() - advance(button.text())
    return rest + max(advance(_of_menu(each)) for each in words)


def _group(bar: _Bar, actions: Actions, names: Sequence[str], words: str) -> QToolButton:
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
        button.setText(_of_menu(held.text() if held else words))
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
    bar.groups[button] = [words, *(tool.text() for tool in tools)]
    return button


def _of_menu(words: str) -> str:
    return f"{words}  ▾"


def _button(bar: QToolBar, actions: Actions, name: str, words: str) -> QToolButton:
    """Return a button with words of its own: shorter than the menu's, and the same at every step."""
    button, action = QToolButton(bar), actions[name]
    button.setText(words)
    button.setAccessibleName(words)
    if name not in ("undo", "redo"):
        button.setToolTip(action.toolTip())
        button.setStatusTip(action.statusTip())
    button.setEnabled(action.isEnabled())
    action.enabledChanged.connect(button.setEnabled)
    button.clicked.connect(action.trigger)
    return button


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("ToolBar", text)
