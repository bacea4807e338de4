"""What every gesture is: it hears the mouse and the keys, and paints what it is about to do."""

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication, QObject, QPointF, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter

from enclosure_app.errors import EnclosureError
from enclosure_app.model.place import Point
from enclosure_app.model.project import Project
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.catching.aids import Ray
from enclosure_app.window.canvas.catching.catches import Catch
from enclosure_app.window.canvas.workplace import Workplace

Edit = Callable[[Project, int], Project]
"""A change of the section at a place among those of the project."""


@dataclass(frozen=True, slots=True)
class Pointer:
    """Where the mouse is: the dot of the view, the place as it is, and what it caught, if anything."""

    dot: QPointF
    bare: Point
    camera: Camera
    catch: Catch | None = None
    keys: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier
    ray: Ray | None = None

    @property
    def at(self) -> Point:
        """The place that is meant: what was caught, or on the ray kept to, or the place as it is."""
        if self.catch:
            return self.catch.at
        return self.ray.foot(self.bare) if self.ray else self.bare

    @property
    def adds(self) -> bool:
        """Whether Shift is held, which adds to what is picked."""
        return bool(self.keys & Qt.KeyboardModifier.ShiftModifier)

    @property
    def keeps(self) -> bool:
        """Whether Ctrl is held, which leaves the original where it is and works on a copy."""
        return bool(self.keys & Qt.KeyboardModifier.ControlModifier)

    def reach(self, dots: float) -> float:
        """Return how many mm so many dots are."""
        return dots / self.camera.zoom


class Tool(QObject):
    """One gesture.

    `changed`: it looks different now. `done`: it has done its work. `wanted`: the name of the tool
    that is to go on.
    """

    changed = Signal()
    done = Signal()
    wanted = Signal(str)
    catches = False  # whether the pointer is to catch ends, middles, crossings
    catches_beside = False  # and places beside a line, where a sheet is drawn off a board
    cursor = Qt.CursorShape.ArrowCursor

    def __init__(self, place: Workplace) -> None:
        super().__init__(place)
        self.place = place

    @property
    def hint(self) -> str:
        """Return what to do next, in one sentence."""
        return ""

    @property
    def anchor(self) -> Point | None:
        """Return the place that perpendiculars and angles are taken from, if there is one."""
        return None

    @property
    def along(self) -> float:
        """Return the direction (degrees) of what was drawn last, which angles are kept to as well."""
        return 0.0

    @property
    def without(self) -> frozenset[str]:
        """Return the names of pieces that are not to be caught, since they move with the mouse."""
        return frozenset()

    def edit(self, text: str, change: Edit, *, gesture: int = -1) -> bool:
        """Change the section in view; say whether it could be done, and if not, why."""
        place = self.place
        try:
            after = change(place.document.project, place.index)
        except EnclosureError as error:
            place.refuse(error)
            return False
        place.document.apply(text, after, gesture=gesture)
        return True

    def press(self, pointer: Pointer) -> None:
        """The left button goes down."""

    def move(self, pointer: Pointer) -> None:
        """The mouse moves, with or without the button."""

    def release(self, pointer: Pointer) -> None:
        """The left button comes up."""

    def double(self, pointer: Pointer) -> None:
        """The left button is pressed twice."""

    def key(self, event: QKeyEvent) -> bool:
        """Take a key; say whether it was of use."""
        del event
        return False

    def wants(self, event: QKeyEvent) -> bool:
        """Whether a key is for the gesture although a menu has it too."""
        del event
        return False

    def turn(self, *, onward: bool) -> bool:
        """Offer the next choice, or the one before; say whether there is any. Tab asks for it."""
        del onward
        return False

    def cancel(self) -> bool:
        """Give up what was begun; say whether there was anything."""
        return False

    def put_away(self) -> None:
        """Give up what was begun, since another tool is taken in hand."""
        self.cancel()

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint what the gesture is about to do, in dots of the view."""


def say(text: str) -> str:
    """Return a text of the gestures in the language of the window."""
    return QCoreApplication.translate("Tools", text)
