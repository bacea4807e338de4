"""The way round the parts of the window by keys: drawing, panels, tools, and back again."""

from collections.abc import Iterator

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QDockWidget, QMainWindow, QToolBar, QWidget


def go_round(window: QMainWindow, by: int) -> None:
    """Give the keys to the next part of the window (`by` 1), or to the one before (-1)."""
    stops = [(part, first) for part in _parts(window) if (first := _first(part)) is not None]
    if not stops:
        return
    now = QApplication.focusWidget()
    here = [i for i, (part, _) in enumerate(stops) if now is not None and part.isAncestorOf(now)]
    start = here[0] if here else min(0, -by)
    stops[(start + by) % len(stops)][1].setFocus(Qt.FocusReason.ShortcutFocusReason)


def _parts(window: QMainWindow) -> Iterator[QWidget]:
    """Yield the parts that are seen: the drawing or the first page, panels, bars of tools."""
    yield from (part for part in [window.centralWidget()] if part is not None)
    yield from (dock for dock in window.findChildren(QDockWidget) if dock.isVisible())
    yield from (bar for bar in window.findChildren(QToolBar) if bar.isVisible())


def _first(part: QWidget) -> QWidget | None:
    """Return what is to have the keys first in a part: the drawing, else what Tab would reach."""
    inside = part.widget() if isinstance(part, QDockWidget) else part
    reached = [each for each in inside.findChildren(QWidget) if _takes_keys(each)]
    drawing = (each for each in reached if each.objectName() == "drawing")
    return next(drawing, reached[0] if reached else None)


def _takes_keys(widget: QWidget) -> bool:
    by_tab = bool(widget.focusPolicy() & Qt.FocusPolicy.TabFocus)
    return by_tab and widget.isEnabled() and widget.isVisible()
