"""What a change would do, shown before it is done: what goes in pale dashes, what comes in full."""

from collections.abc import Iterable, Iterator

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QPainter, QPainterPath, QPen

from enclosure_app.drawing.lengths import format_length
from enclosure_app.geometry.runs.editing import length_of
from enclosure_app.model.drawing import Units
from enclosure_app.model.edits.looking_up import run_of, runs_of
from enclosure_app.model.place import Line, Point, Points
from enclosure_app.model.section import Piece, Section
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.ink import INK, pen, wash

_LEAST = 0.05  # mm: a change of length that is worth telling
_MOST = 300  # ends that are shown
_MANY = 8  # pieces: so many are drawn thinner, to be told apart


class Preview:
    """The pieces that a change takes away from a section, and those that it brings."""

    def __init__(self, before: Section, after: Section) -> None:
        old, new = ({id(piece) for piece in section.pieces} for section in (before, after))
        self.gone = tuple(piece for piece in before.pieces if id(piece) not in new)
        self.come = tuple(piece for piece in after.pieces if id(piece) not in old)
        self._gone, self._come = _path(self.gone), _path(self.come)

    def told(self, units: Units) -> str:
        """Return how much longer or shorter the lines get, "" where that does not change."""
        longer = _length(self.come) - _length(self.gone)
        if abs(longer) < _LEAST or not (self.gone and self.come):
            return ""
        return ("+" if longer > 0 else "") + format_length(longer, units)

    def paint(self, painter: QPainter, camera: Camera) -> None:
        """Paint what goes and what comes, with a dot at each end of what comes."""
        painter.save()
        painter.setTransform(camera.transform(), combine=True)
        painter.strokePath(self._gone, _cosmetic(QPen(wash(130), 5.0, Qt.PenStyle.DotLine)))
        painter.strokePath(self._come, _cosmetic(pen(2.4 if len(self.come) < _MANY else 1.2)))
        painter.restore()
        painter.setPen(pen(1.2))
        painter.setBrush(INK)
        for end in list(_ends(self.come))[:_MOST]:
            at: QPointF = camera.seen(end)
            painter.drawEllipse(at, 2.6, 2.6)
        painter.setBrush(Qt.BrushStyle.NoBrush)


def _path(pieces: Iterable[Piece]) -> QPainterPath:
    path = QPainterPath()
    for piece in pieces:
        for run in runs_of(piece.shape):
            _add(path, run)
    return path


def _add(path: QPainterPath, run: Points) -> None:
    path.moveTo(*run[0])
    for point in run[1:]:
        path.lineTo(*point)


def _cosmetic(one: QPen) -> QPen:
    one.setCosmetic(True)
    return one


def _length(pieces: Iterable[Piece]) -> float:
    lines = (piece.shape for piece in pieces)
    return sum(length_of(run_of(shape)) for shape in lines if isinstance(shape, Line))


def _ends(pieces: Iterable[Piece]) -> Iterator[Point]:
    for piece in pieces:
        if isinstance(piece.shape, Line) and not piece.shape.closed:
            yield piece.shape.points[0]
            yield piece.shape.points[-1]
