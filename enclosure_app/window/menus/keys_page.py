"""The page of all keys: those of the menus, and what mouse and keys do on the drawing."""

from collections.abc import Iterable
from html import escape

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QKeySequence

from enclosure_app.window.menus.action_table import EDIT, TABLE
from enclosure_app.window.menus.action_table import say as said_in_menu

UNDO, REDO = ("Ctrl+Z",), ("Ctrl+Shift+Z", "Ctrl+Y")
Line = tuple[str, str]
"""What is done, and by what."""


def keys_html() -> str:
    """Return the page of all keys."""
    parts = [_table(menu.replace("&", ""), lines) for menu, lines in _menus() if lines]
    parts.append(_table(say("On the drawing"), _on_the_drawing()))
    parts.append(_table(say("On the walk"), _on_the_walk()))
    return "".join(parts)


def _menus() -> Iterable[tuple[str, list[Line]]]:
    for menu in dict.fromkeys(row.menu for row in TABLE):
        lines = [(say("Undo"), named(UNDO)), (say("Redo"), named(REDO))] if menu == EDIT else []
        rows = [row for row in TABLE if row.menu == menu and row.keys]
        yield (
            said_in_menu(menu),
            lines + [(said_in_menu(row.text), named(row.keys)) for row in rows],
        )


def _on_the_drawing() -> list[Line]:
    return [
        (say("Look closer or wider, about the mouse"), say("Wheel")),
        (say("Move the paper"), say("Middle button, or Space and drag, or the arrow keys")),
        (say("Pick more, or let go of one"), say("Shift and click")),
        (say("Pick what lies in a box"), say("Drag over the empty paper")),
        (say("Ask what can be done here"), say("Right button, or the menu key")),
        (say("Give up what was begun, then the tool, then the full screen"), named(["Esc"])),
        (say("Move a cross over the drawing"), say("Ctrl and an arrow; with Shift dot by dot")),
        (say("Click with the cross, once or twice"), named(["Ctrl+Return", "Ctrl+Shift+Return"])),
        (say("Hold the button down with the cross, and let it go"), named(["Ctrl+Space"])),
    ]


def _on_the_walk() -> list[Line]:
    return [
        (say("The next stop, the stop before"), say("The right and the left arrow, or a swipe")),
        (say("Decide about a finding, as its buttons stand"), named(["1", "2", "3", "4"])),
        (say("Answer a question: in order, not in order, cannot be seen"), named(["1", "2", "3"])),
        (say("All that is left at a place is in order"), named(["A"])),
        (say("The next question that a remark or a photograph is about"), named(["Q"])),
        (say("Type a remark, or the name on the last page"), named(["R"])),
        (say("Choose a photograph"), named(["P"])),
        (say("Why is this a fault?"), named(["W"])),
        (say("Closer, wider, the whole section"), named(["+", "-", "0"])),
        (say("Back by one, and back to the drawing"), named(["Esc"])),
    ]


def named(keys: Iterable[str]) -> str:
    """Return keys as they are written on the person's keyboard."""
    native = QKeySequence.SequenceFormat.NativeText
    return ", ".join(QKeySequence(each).toString(native) for each in keys)


def _table(title: str, lines: Iterable[Line]) -> str:
    rows = "".join(
        f"<tr><td width='58%' style='padding:3px 24px 3px 0'>{escape(does)}</td>"
        f"<td style='padding:3px 0'><b>{escape(keys)}</b></td></tr>"
        for does, keys in lines
    )
    return f"<h3>{escape(title)}</h3><table width='100%'>{rows}</table>"


def say(text: str) -> str:
    """Return a text in the window's language."""
    return QCoreApplication.translate("KeysPage", text)
