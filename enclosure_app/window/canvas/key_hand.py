"""A hand on the drawing for whoever works by keys: a cross that the arrow keys move and Enter clicks.

Ctrl and an arrow move the cross, with Shift by single dots; Ctrl+Enter clicks, Ctrl+Space holds the
button down until it is pressed again, the menu key asks for the menu. Every tool works by it, since
it sends the drawing what a mouse would.
"""

from PySide6.QtCore import QEvent, QObject, QPoint, QPointF, Qt
from PySide6.QtGui import (
    QContextMenuEvent,
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
)
from PySide6.QtWidgets import QApplication, QWidget

_STRIDE, _STEP = 16.0, 1.0  # dots
_ARM, _HOLE = 14, 3  # dots: how far the cross reaches, and is open in its middle
_ARROWS = {
    Qt.Key.Key_Left: QPointF(-1, 0),
    Qt.Key.Key_Right: QPointF(1, 0),
    Qt.Key.Key_Up: QPointF(0, -1),
    Qt.Key.Key_Down: QPointF(0, 1),
}
_ENTER = (Qt.Key.Key_Return, Qt.Key.Key_Enter)
_LEFT, _RIGHT, _NONE = (
    Qt.MouseButton.LeftButton,
    Qt.MouseButton.RightButton,
    Qt.MouseButton.NoButton,
)
_BY_KEYS = (
    Qt.FocusReason.TabFocusReason,
    Qt.FocusReason.BacktabFocusReason,
    Qt.FocusReason.ShortcutFocusReason,
)
_ELSEWHERE = (  # the keys come back from there to where they were
    Qt.FocusReason.ActiveWindowFocusReason,
    Qt.FocusReason.PopupFocusReason,
    Qt.FocusReason.MenuBarFocusReason,
)


class KeyHand(QObject):
    """Watches the keys of a canvas and moves a cross over it."""

    def __init__(self, canvas: QWidget) -> None:
        super().__init__(canvas)
        self._canvas = canvas
        self._held = _NONE
        self.dot: QPointF | None = None
        self.sign = _Sign(self, canvas)
        canvas.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Take the keys that move and click; leave everything else alone."""
        del watched
        if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
            return self._key(event)
        if isinstance(event, QContextMenuEvent):
            return self._asked_menu(event)
        if isinstance(event, QFocusEvent) and event.reason() not in _ELSEWHERE:
            self.sign.ring = event.gotFocus() and event.reason() in _BY_KEYS
            self.sign.show_or_hide()
        elif event.type() == QEvent.Type.Resize:
            self.sign.setGeometry(self._canvas.rect())
        elif event.type() == QEvent.Type.MouseMove and event.spontaneous():
            self.leave()
        return False

    def leave(self) -> None:
        """Take the cross away: a real mouse is at work."""
        if self.dot is not None:
            self.dot, self._held = None, _NONE
            self.sign.show_or_hide()

    def _key(self, event: QKeyEvent) -> bool:
        keys = event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
        if not keys & Qt.KeyboardModifier.ControlModifier:
            return False
        key, shift = Qt.Key(event.key()), bool(keys & Qt.KeyboardModifier.ShiftModifier)
        if key in _ARROWS:
            self._move(_ARROWS[key] * (_STEP if shift else _STRIDE))
        elif key in _ENTER:
            self._click(twice=shift)
        elif key == Qt.Key.Key_Space:
            self._hold()
        else:
            return False
        return True

    def _move(self, by: QPointF) -> None:
        dot = self._place() + by
        room = self._canvas.rect()
        self.dot = QPointF(
            min(max(dot.x(), room.left()), room.right()),
            min(max(dot.y(), room.top()), room.bottom()),
        )
        self._send(QEvent.Type.MouseMove, _NONE)
        self.sign.show_or_hide()

    def _place(self) -> QPointF:
        return self.dot if self.dot is not None else QPointF(self._canvas.rect().center())

    def _click(self, *, twice: bool) -> None:
        kinds = [QEvent.Type.MouseButtonPress, QEvent.Type.MouseButtonRelease]
        if twice:
            kinds += [QEvent.Type.MouseButtonDblClick, QEvent.Type.MouseButtonRelease]
        self._send(QEvent.Type.MouseMove, _NONE)
        for kind in kinds:
            self._send(kind, _LEFT)

    def _hold(self) -> None:
        """Press the button down, or let it go."""
        down = self._held == _NONE
        self._held = _LEFT if down else _NONE
        kind = QEvent.Type.MouseButtonPress if down else QEvent.Type.MouseButtonRelease
        self._send(kind, _LEFT)

    def _asked_menu(self, event: QContextMenuEvent) -> bool:
        """Ask for the menu at the cross where a key asks; the mouse has asked with its button."""
        if event.reason() == QContextMenuEvent.Reason.Keyboard:
            self._send(QEvent.Type.MouseButtonPress, _RIGHT)
        return True

    def _send(self, kind: QEvent.Type, button: Qt.MouseButton) -> None:
        dot = self._place()
        self.dot = dot
        everywhere = QPointF(self._canvas.mapToGlobal(dot))
        pressed = kind in (QEvent.Type.MouseButtonPress, QEvent.Type.MouseButtonDblClick)
        held = button if pressed else self._held
        none = Qt.KeyboardModifier.NoModifier
        event = QMouseEvent(kind, dot, everywhere, button, held, none)
        QApplication.sendEvent(self._canvas, event)


class _Sign(QWidget):
    """The cross, and a ring round the drawing while keys have led to it; no mouse feels it."""

    def __init__(self, hand: KeyHand, canvas: QWidget) -> None:
        super().__init__(canvas)
        self._hand = hand
        self.ring = False
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setAttribute(Qt.WidgetAttribute.WA_NoSystemBackground)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.hide()

    def show_or_hide(self) -> None:
        """Show what there is to be seen."""
        self.setVisible(self.ring or self._hand.dot is not None)
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the ring and the cross."""
        del event
        painter = QPainter(self)
        pen = painter.pen()
        pen.setColor(self.palette().accent().color())
        pen.setWidth(2)
        painter.setPen(pen)
        if self.ring:
            painter.drawRect(self.rect().adjusted(1, 1, -1, -1))
        if self._hand.dot is not None:
            at = self._hand.dot.toPoint()
            for way in (QPoint(1, 0), QPoint(-1, 0), QPoint(0, 1), QPoint(0, -1)):
                painter.drawLine(at + way * _HOLE, at + way * _ARM)
