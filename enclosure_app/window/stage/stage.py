"""Which page of the window is seen; for the walk everything round it is cleared away."""

from collections.abc import Callable, Collection, Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QStackedWidget, QWidget

from enclosure_app.window.stage.walking import Walking
from enclosure_app.window.walk.dress import BARS

STAYING = frozenset(
    {
        "undo", "redo", "save", "save_as", "write_pdf", "close", "next_section", "last_section",
        "day", "night", "as_system", "full_screen", "show_keys", "show_about", "walk", "check_now",
    }
)  # fmt: skip
"""The actions that make sense while one walks; the others are about what is not seen then."""

_DIRECT = Qt.FindChildOption.FindDirectChildrenOnly
_START, _DRAWING, _WALK = range(3)


class Stage:
    """Shows the first page, the drawing with its panels, or the walk alone.

    Args:
        walking: Knows whether one walks.
        pages: The three pages, in this order.
        around: What stands round the drawing and has no place in the walk.
        allow: Lets only actions of these names be done, None for all.
    """

    def __init__(
        self,
        walking: Walking,
        pages: QStackedWidget,
        around: Sequence[QWidget],
        allow: Callable[[Collection[str] | None], None],
    ) -> None:
        self._walking, self._pages = walking, pages
        self._around, self._allow = around, allow
        self._hidden: list[QWidget] | None = None
        column = pages.parentWidget()
        every = column.findChildren(QWidget, options=_DIRECT) if column else []
        self._bars = [each for each in every if each is not pages]

    def show(self, *, begun: bool) -> None:
        """Show the page that is wanted; without anything `begun` there is nothing to walk."""
        if not begun:
            self._walking.end()
        if self._walking.on:
            self._clear()
        else:
            self._restore()
        walked = _WALK if self._walking.on else _DRAWING
        self._pages.setCurrentIndex(walked if begun else _START)

    def _clear(self) -> None:
        if self._hidden is None:
            self._hidden = [part for part in self._around if not part.isHidden()]
            for part in self._hidden:
                part.hide()
            self._dress_bars(BARS)
            self._allow(STAYING)

    def _restore(self) -> None:
        if self._hidden is not None:
            hidden, self._hidden = self._hidden, None
            for part in hidden:
                part.show()
            self._dress_bars("")
            self._allow(None)

    def _dress_bars(self, style: str) -> None:
        """Dress what speaks above the pages: on the walk a finger has to meet its buttons."""
        for bar in self._bars:
            bar.setStyleSheet(style)
