"""A designer at the window: real clicks, keys and wheel, counted, with the waiting measured.

The time a person would need is an estimate from the counts, by the times of single acts that were
published for skilled users (Card, Moran and Newell 1980, from memory): pointing 1.1 s, a click
0.2 s, a key 0.2 s, a hand to another device 0.4 s, a thought before a step 1.35 s. A turn of the
wheel is taken as 0.8 s (no source).
"""

from dataclasses import dataclass, field
from time import perf_counter

from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from enclosure_app.model.place import Point
from enclosure_app.window.main_window import MainWindow

_LEFT, _PLAIN = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier
POINT, CLICK, KEY, HOME, THOUGHT, WHEEL = 1.1, 0.2, 0.2, 0.4, 1.35, 0.8  # s
NEAR = 0.45  # dots to the mm at which lines 15 mm apart can be told apart
FAR = 0.07


@dataclass
class Designer:
    """Works on a drawing; places are mm."""

    window: MainWindow
    qtbot: QtBot
    clicks: int = 0
    keys: int = 0
    wheels: int = 0
    thoughts: int = 0
    changes: int = 0
    waited: float = 0.0
    longest: float = 0.0
    _typing: bool = field(default=False, repr=False)

    @property
    def seconds(self) -> float:
        """What a person would need: the acts by their published times, and the waiting."""
        acts = self.clicks * (POINT + CLICK) + self.keys * KEY + self.wheels * WHEEL
        return acts + self.changes * HOME + self.thoughts * THOUGHT + self.waited

    def click(self, place: Point) -> Point:
        """Look close at a place with the wheel where that is needed, and click the dot nearest it.

        Returns:
            The place of that dot, which is what was clicked.
        """
        self._hand(typing=False)
        self._see(place)
        dot = self._dot(place)
        self.thoughts += 1
        self.clicks += 1
        canvas = self.window.canvas
        self._timed(lambda: self.qtbot.mouseMove(canvas, dot))
        self._timed(lambda: self.qtbot.mouseClick(canvas, _LEFT, _PLAIN, dot))
        return canvas.camera.place(QPointF(dot))

    def press(self, key: Qt.Key) -> None:
        """Press a key over the drawing."""
        self.keys += 1
        self._timed(lambda: self.qtbot.keyClick(self.window.canvas, key))

    def tool(self, name: str) -> None:
        """Take a tool by its key."""
        self.keys += 1
        self._timed(lambda: self.window.do(f"tool_{name}"))

    def product(self, words: str, key: str) -> None:
        """Find a product: Ctrl+F, so many letters of it, and Enter."""
        search = self.window.lines.search
        self.thoughts += 1
        self._hand(typing=True)
        self.keys += 2 + len(words) + 1
        control = Qt.KeyboardModifier.ControlModifier
        self._timed(lambda: self.qtbot.keyClick(self.window.canvas, Qt.Key.Key_F, control))
        assert search.hasFocus()
        for letter in words:
            self._timed(lambda letter=letter: self.qtbot.keyClicks(search, letter))
        self._timed(lambda: self.qtbot.keyClick(search, Qt.Key.Key_Return))
        assert self.window.canvas.hasFocus()
        assert self.window.place.product == key, f"{words} finds {self.window.place.product}"

    def _hand(self, *, typing: bool) -> None:
        self.changes += typing is not self._typing
        self._typing = typing

    def _dot(self, place: Point) -> QPoint:
        return self.window.canvas.camera.seen(place).toPoint()

    def _see(self, place: Point) -> None:
        """Turn the wheel out until the place is in view, then in upon it."""
        canvas = self.window.canvas
        if not canvas.rect().adjusted(40, 40, -40, -40).contains(self._dot(place)):
            self.wheels += 1
            while canvas.camera.zoom > FAR:
                self._notch(QPointF(canvas.rect().center()), -1)
        if canvas.camera.zoom < NEAR:
            self.wheels += 1
            while canvas.camera.zoom < NEAR:
                self._notch(QPointF(self._dot(place)), 1)

    def _notch(self, dot: QPointF, way: int) -> None:
        canvas = self.window.canvas
        event = QWheelEvent(
            dot, QPointF(canvas.mapToGlobal(dot)), QPoint(), QPoint(0, 120 * way),
            Qt.MouseButton.NoButton, _PLAIN, Qt.ScrollPhase.NoScrollPhase, False,
        )  # fmt: skip
        self._timed(lambda: QApplication.sendEvent(canvas, event))

    def _timed(self, act: object) -> None:
        """Do something, and wait until the window has answered."""
        start = perf_counter()
        act()  # type: ignore[operator]
        QApplication.processEvents()
        took = perf_counter() - start
        self.waited += took
        self.longest = max(self.longest, took)
