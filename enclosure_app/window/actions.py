"""Every action of the window in one table: its menu, its words, its keys, what it does."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import QCoreApplication, QObject
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMainWindow, QMenu

CONTEXT = "Actions"


@dataclass(frozen=True, slots=True)
class Row:
    """One action: `name` is that of the method that does it; "" is a line between others.

    `choice` names a group of which one is always checked; `check` is checked or not.
    """

    menu: str
    name: str = ""
    text: str = ""
    keys: tuple[str, ...] = ()
    tip: str = ""
    check: bool = False
    choice: str = ""


FILE, EDIT, DRAW, VIEW, CHECK, HELP = (
    "&File",
    "&Edit",
    "&Draw",
    "&View",
    "&Check",
    "&Help",
)

TABLE: tuple[Row, ...] = (
    Row(FILE, "new_sheet", "New empty sheet", ("Ctrl+N",)),
    Row(FILE, "open_file", "Open…", ("Ctrl+O",),
        "Open a DXF drawing or a project"),
    Row(FILE, "recent"),
    Row(FILE, "samples"),
    Row(FILE, "parts"),
    Row(FILE),
    Row(FILE, "use_layer_map", "Use a layer map…", (),
        "Read the drawing again with a file that says what its layers are"),
    Row(FILE),
    Row(FILE, "save", "Save", ("Ctrl+S",)),
    Row(FILE, "save_as", "Save as…", ("Ctrl+Shift+S",)),
    Row(FILE),
    Row(FILE, "write_pdf", "Write the marked-up sheet as PDF…", ("Ctrl+E",)),
    Row(FILE, "preview", "Print preview", ("Ctrl+Shift+P",)),
    Row(FILE, "print_sheets", "Print…", ("Ctrl+P",)),
    Row(FILE),
    Row(FILE, "close", "Close", ("Ctrl+Q",)),
    Row(EDIT, "undo"),
    Row(EDIT, "redo"),
    Row(EDIT),
    Row(EDIT, "delete", "Delete what is picked", ("Del",)),
    Row(EDIT, "pick_all", "Pick everything", ("Ctrl+A",)),
    Row(EDIT, "pick_same", "Pick all of the same product", ("Ctrl+Shift+A",)),
    Row(EDIT, "pick_none", "Pick nothing", ("Ctrl+D",)),
    Row(DRAW, "tool_select", "Pick", ("P",),
        "Pick sheets and lines, move and delete them", choice="tool"),
    Row(DRAW, "tool_points", "Points", ("O",),
        "Move, add and remove the points of a sheet", choice="tool"),
    Row(DRAW, "tool_trace", "Trace", ("T",),
        "Follow drawn lines from one click to another, and make them a sheet", choice="tool"),
    Row(DRAW, "tool_sheet", "Sheet", ("S",),
        "Draw a sheet, a tape or a bead from point to point", choice="tool"),
    Row(DRAW, "tool_area", "Board", ("B",),
        "Draw a board, insulation or concrete as a closed outline", choice="tool"),
    Row(DRAW, "tool_inside", "Inside", ("I",),
        "Click a place inside the building", choice="tool"),
    Row(DRAW, "tool_outside", "Outside", ("U",),
        "Click a place outside the building", choice="tool"),
    Row(DRAW, "tool_frame", "Frame", ("F",),
        "Draw the box inside which the section is judged", choice="tool"),
    Row(DRAW, "tool_measure", "Measure", ("M",),
        "Measure from place to place", choice="tool"),
    Row(DRAW),
    Row(DRAW, "catching", "Catch ends, middles and crossings", ("F3",), check=True),
    Row(DRAW, "give_product", "Give what is picked the product", ("G",),
        "What is picked is made of the product chosen in the list"),
    Row(DRAW, "read_notes", "Read the notes…", ("R",),
        "Follow each note's arrow to its line, and take what the note says it is made of"),
    Row(VIEW, "fit", "Show all", ("Ctrl+0", "Home")),
    Row(VIEW, "closer", "Closer", ("Ctrl++", "Ctrl+=", "+")),
    Row(VIEW, "wider", "Wider", ("Ctrl+-", "-")),
    Row(VIEW),
    Row(VIEW, "only_all", "All layers", ("Alt+0",), choice="only"),
    Row(VIEW, "only_water", "Water alone", ("Alt+1",), choice="only"),
    Row(VIEW, "only_air", "Air alone", ("Alt+2",), choice="only"),
    Row(VIEW, "only_vapour", "Vapour alone", ("Alt+3",), choice="only"),
    Row(VIEW, "only_heat", "Heat alone", ("Alt+4",), choice="only"),
    Row(VIEW),
    Row(VIEW, "day", "Light", choice="ground"),
    Row(VIEW, "night", "Dark", choice="ground"),
    Row(VIEW, "as_system", "As the system", choice="ground"),
    Row(VIEW),
    Row(VIEW, "panels"),
    Row(VIEW, "full_screen", "Full screen", ("F11",), check=True),
    Row(CHECK, "next_finding", "Next finding", ("N",)),
    Row(CHECK, "last_finding", "Finding before", ("Shift+N",)),
    Row(CHECK, "why", "Why is this a fault?", ("W",)),
    Row(HELP, "show_keys", "All keys on one page", ("F1",)),
    Row(HELP, "show_about", "About this program, and its limits"),
)  # fmt: skip


def say(text: str) -> str:
    """Return a text of the table in the window's language."""
    return QCoreApplication.translate(CONTEXT, text)


class Actions:
    """The actions of one window, by name, and its menus.

    Args:
        window: The window that has the menus.
        commands: What has a method for each action of the table, by its name.
        made: Actions and menus that are made elsewhere, such as undo, by their names.
    """

    def __init__(
        self, window: QMainWindow, commands: QObject, made: dict[str, QAction | QMenu]
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

    def _menu(self, name: str) -> QMenu:
        if name not in self.menus:
            self.menus[name] = self._window.menuBar().addMenu(say(name))
        return self.menus[name]

    def _add(self, row: Row, menu: QMenu, made: dict[str, QAction | QMenu]) -> None:
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
            action.setToolTip(tip_with_keys(say(row.tip), action))
            action.setStatusTip(say(row.tip))
        action.setCheckable(row.check or bool(row.choice))
        if row.choice:
            self._group(row.choice).addAction(action)
        does: Callable[..., Any] = getattr(self._commands, row.name)
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


def keys_html() -> str:
    """Return the page of all keys."""
    parts = []
    for menu in dict.fromkeys(row.menu for row in TABLE):
        rows = [row for row in TABLE if row.menu == menu and row.keys]
        lines = "".join(
            f"<tr><td style='padding:3px 24px 3px 0'>{say(row.text)}</td>"
            f"<td><b>{' , '.join(row.keys)}</b></td></tr>"
            for row in rows
        )
        parts.append(f"<h3>{say(menu).replace('&', '')}</h3><table>{lines}</table>")
    return "".join(parts)
