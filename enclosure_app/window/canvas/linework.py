"""The office's own lines, kept so that a hundred thousand of them can be shown at once.

Lines are gathered into squares of the plane and, within a square, by how long they are: what is
outside the view is not painted, and lines that would be shorter than a dot are left out (of the
very short ones of a square, some stand for all).
"""

from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from math import log

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen

from enclosure_app.drawing.placement import Box, box_around
from enclosure_app.model.section import Stroke
from enclosure_app.window.canvas.camera import Camera

_SQUARES = 24  # along the longer side of the drawing
_SHORTEST = 0.7  # dots: what is shorter is not painted
_BATCH = 400  # points in one path: what is painted in one go
_SMOOTH = 60  # paths in view up to which lines are painted smoothly


@dataclass(slots=True)
class _Batch:
    """Lines of about one length in one square; their path is made when it is first seen."""

    size: float
    strokes: list[Stroke] = field(default_factory=list)
    points: int = 0
    box: QRectF = field(default_factory=QRectF)
    path: QPainterPath | None = None

    def add(self, stroke: Stroke, box: Box) -> None:
        self.strokes.append(stroke)
        self.points += len(stroke.points)
        own = QRectF(box.left, box.bottom, max(box.width, 1e-6), max(box.height, 1e-6))
        self.box = self.box.united(own)

    def made(self) -> QPainterPath:
        if self.path is None:
            self.path = QPainterPath()
            for stroke in self.strokes:
                self.path.moveTo(*stroke.points[0])
                for point in stroke.points[1:]:
                    self.path.lineTo(*point)
        return self.path


class Linework:
    """The lines of one section, ready to be painted for any look at it."""

    def __init__(self, strokes: Sequence[Stroke]) -> None:
        boxes = [(stroke, box_around(stroke.points)) for stroke in strokes if stroke.points]
        self._batches = _batches(boxes)

    def paint(self, painter: QPainter, camera: Camera, pen: QPen) -> Iterator[None]:
        """Paint what is seen, stopping after each batch so that others may have a turn."""
        window = camera.window
        seen = QRectF(window.left, window.bottom, window.width, window.height)
        batches = [b for b in self._batches if b.size * camera.zoom >= _SHORTEST]
        batches = [b for b in batches if b.box.intersects(seen)]
        for batch in batches:
            painter.save()
            painter.setTransform(camera.transform(), combine=True)
            painter.setRenderHint(QPainter.RenderHint.Antialiasing, len(batches) <= _SMOOTH)
            painter.setPen(pen)
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawPath(batch.made())
            painter.restore()
            yield


def office_pen(colour: str) -> QPen:
    """Return the pen of the office's lines: one dot wide at every zoom."""
    pen = QPen(QColor(colour), 1.0)
    pen.setCosmetic(True)
    return pen


def _batches(boxes: Sequence[tuple[Stroke, Box]]) -> list[_Batch]:
    if not boxes:
        return []
    left = min(box.left for _, box in boxes)
    bottom = min(box.bottom for _, box in boxes)
    across = max(box.right for _, box in boxes) - left
    up = max(box.top for _, box in boxes) - bottom
    side = max(across, up, 1.0) / _SQUARES
    open_ones: dict[tuple[int, int, int], list[_Batch]] = defaultdict(list)
    for stroke, box in boxes:
        size = max(box.width, box.height)
        grade = int(log(max(size, 1e-3), 4)) if size > 0 else -6
        x, y = box.centre
        square = (int((x - left) / side), int((y - bottom) / side), grade)
        kept = open_ones[square]
        if not kept or kept[-1].points > _BATCH:
            kept.append(_Batch(4.0 ** (grade + 1)))
        kept[-1].add(stroke, box)
    return [batch for kept in open_ones.values() for batch in kept]
