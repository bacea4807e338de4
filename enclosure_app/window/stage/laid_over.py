"""A bar that comes and goes over what is there, so that nothing moves when it does."""

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QObject, QPoint
from PySide6.QtWidgets import QWidget

_AIR = 8  # dots above and below what is in the bar, together
_MOVED = (QEvent.Type.Resize, QEvent.Type.Move, QEvent.Type.Show, QEvent.Type.LayoutRequest)


class LaidOver(QObject):
    """Keeps a bar over the first of some places that is seen.

    Args:
        bar: What comes and goes; its parent holds all the places.
        places: What it may cover for a while, such as one for each page.
        around: What moves with the places inside it.
    """

    def __init__(self, bar: QWidget, places: Sequence[QWidget], around: QWidget) -> None:
        super().__init__(bar)
        self._bar, self._places = bar, places
        for each in (bar, around, *places):
            each.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Follow the place when it is moved, and the bar when it needs other room."""
        if event.type() in _MOVED and not self._bar.isHidden():
            self._lay()
        return super().eventFilter(watched, event)

    def _lay(self) -> None:
        place = next((each for each in self._places if each.isVisible()), None)
        whole = self._bar.parentWidget()
        if place is None or whole is None:
            return
        at = place.mapTo(whole, QPoint(0, 0))
        high = self._bar.sizeHint().height()
        # another bar is covered as a whole, a page along its top only
        high = max(high, place.height()) if place.height() < 2 * high else high + _AIR
        self._bar.setGeometry(at.x(), at.y(), place.width(), high)
        self._bar.raise_()
