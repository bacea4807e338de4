"""A page that is turned by a finger drawn across it."""

from PySide6.QtCore import QPointF, Qt, Signal
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QWidget

_FAR = 70.0  # dots
_FLAT = 2.0  # a swipe goes so many times as far across as up or down


class SwipeArea(QWidget):
    """What is on it is not moved. `swiped`: 1 for the next page, -1 for the one before."""

    swiped = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._from: QPointF | None = None

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Remember where a finger, or the mouse, came down."""
        if event.button() == Qt.MouseButton.LeftButton:
            self._from = event.globalPosition()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Turn the page where the finger went far enough across."""
        begun, self._from = self._from, None
        if begun is None:
            return
        way = event.globalPosition() - begun
        if abs(way.x()) >= _FAR and abs(way.x()) >= _FLAT * abs(way.y()):
            self.swiped.emit(1 if way.x() < 0 else -1)
