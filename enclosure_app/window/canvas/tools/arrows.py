"""Arrow keys: they move by a little what the hand has hold of, with Shift by more."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent

from enclosure_app.model.place import Point
from enclosure_app.window.canvas.workplace import Workplace

_WAYS = {
    Qt.Key.Key_Left: (-1.0, 0.0),
    Qt.Key.Key_Right: (1.0, 0.0),
    Qt.Key.Key_Up: (0.0, 1.0),
    Qt.Key.Key_Down: (0.0, -1.0),
}


def nudged(place: Workplace, event: QKeyEvent) -> Point | None:
    """Return by how much an arrow key moves (mm), None where the key is no arrow."""
    way = _WAYS.get(Qt.Key(event.key()))
    if way is None or event.modifiers() & Qt.KeyboardModifier.AltModifier:
        return None
    far = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
    step = place.aids.nudge(place.document.project.units, far=far)
    return way[0] * step, way[1] * step
