"""What is looked at is moved and pinched with the fingers, or with the mouse."""

from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QMouseEvent, QTouchEvent
from PySide6.QtWidgets import QWidget

_TOUCHED = (QEvent.Type.TouchBegin, QEvent.Type.TouchUpdate, QEvent.Type.TouchEnd)


class ByHand(QWidget):
    """Tells a view what the hand does: `pan`, `zoom`, and `come_back` at a double click."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._grip: QPointF | None = None
        self.setAttribute(Qt.WidgetAttribute.WA_AcceptTouchEvents)

    def pan(self, by: QPointF) -> None:
        """Move what is seen by so many dots."""
        raise NotImplementedError

    def zoom(self, factor: float, about: QPointF | None = None) -> None:
        """Look closer or wider, about a dot of the view or its middle."""
        raise NotImplementedError

    def come_back(self) -> None:
        """Look again as at first."""
        raise NotImplementedError

    # ---- Qt's events ---------------------------------------------------------------------------

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of the paper."""
        self._grip = event.position()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Move the paper."""
        if self._grip is not None:
            self.pan(event.position() - self._grip)
            self._grip = event.position()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Let the paper go."""
        del event
        self._grip = None

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """Go back to how it was shown."""
        del event
        self.come_back()

    def event(self, event: QEvent) -> bool:
        """Move and pinch the paper with the fingers."""
        if isinstance(event, QTouchEvent) and event.type() in _TOUCHED:
            self._touched(event)
            event.accept()
            return True
        return super().event(event)

    def _touched(self, event: QTouchEvent) -> None:
        points = event.points()
        if event.type() != QEvent.Type.TouchUpdate:
            return
        if len(points) == 1:
            self.pan(points[0].position() - points[0].lastPosition())
        elif len(points) == 2:
            (a, b), (c, d) = ((p.position(), p.lastPosition()) for p in points)
            before, now = (b - d).manhattanLength(), (a - c).manhattanLength()
            if before > 1 and now > 1:
                self.zoom(now / before, (a + c) / 2)
