"""The actions of one window and its menus, made from the table."""

from collections.abc import Callable, Collection, Mapping
from typing import Any, Protocol

from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMainWindow, QMenu

from enclosure_app.window.menus.action_table import TABLE, Row, say
from enclosure_app.window.words.trade import taught


class Doings(Protocol):
    """What does each action, by its name."""

    def __getitem__(self, name: str) -> Callable[..., Any]:
        """Return what the action called `name` does."""


class Actions:
    """The actions of one window, by name, and its menus.

    Args:
        window: The window that has the menus.
        commands: What does each action of the table, by its name.
        made: Actions and menus that are made elsewhere, such as undo, by their names.
    """

    def __init__(
        self, window: QMainWindow, commands: Doings, made: Mapping[str, QAction | QMenu]
    ) -> None:
        self._window = window
        self._commands = commands
        self._groups: dict[str, QActionGroup] = {}
        self.by_name: dict[str, QAction] = {}
        self.menus: dict[str, QMenu] = {}
        for row in TABLE:
            self._add(row, self._menu(row.menu), made)

    def __getitem__(self, name: str) -> QAction:
        """Return the action called `name`."""
        return self.by_name[name]

    def allow(self, names: Collection[str] | None) -> None:
        """Let only these be done, None for all; undo and redo know themselves whether they can be."""
        for name, action in self.by_name.items():
            if name not in ("undo", "redo"):
                action.setEnabled(names is None or name in names)

    def _menu(self, name: str) -> QMenu:
        if name not in self.menus:
            self.menus[name] = self._window.menuBar().addMenu(say(name))
        return self.menus[name]

    def _add(self, row: Row, menu: QMenu, made: Mapping[str, QAction | QMenu]) -> None:
        there = made.get(row.name)
        if not row.name:
            menu.addSeparator()
        elif isinstance(there, QMenu):
            menu.addMenu(there)
        else:
            action = there or self._made(row)
            self.by_name[row.name] = action
            menu.addAction(action)

    def _made(self, row: Row) -> QAction:
        action = QAction(say(row.text), self._window)
        action.setObjectName(row.name)
        action.setShortcuts([QKeySequence(keys) for keys in row.keys])
        if row.tip:
            action.setToolTip(taught(tip_with_keys(say(row.tip), action)))
            action.setStatusTip(say(row.tip))
        action.setCheckable(row.check or bool(row.choice))
        if row.choice:
            self._group(row.choice).addAction(action)
        does = self._commands[row.name]
        if row.check:
            action.toggled.connect(does)
        else:
            action.triggered.connect(lambda _checked=False: does())
        return action

    def _group(self, name: str) -> QActionGroup:
        if name not in self._groups:
            self._groups[name] = QActionGroup(self._window)
        return self._groups[name]


def tip_with_keys(tip: str, action: QAction) -> str:
    """Return a tip with the keys after it."""
    keys = action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)
    return f"{tip} ({keys})" if keys else tip
