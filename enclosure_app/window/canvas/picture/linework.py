"""The office's own lines, kept so that a hundred thousand of them can be shown at once.

Lines are gathered into squares of the plane and, within a square, by how long they are: what is
outside the view is not painted, and lines that would be shorter than a dot are left out .
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen

from enclosure_app.drawing.placement import Box
from enclosure_app.model.section import Stroke
from enclosure_app.window.canvas.camera import Camera

_SQUARES = 24  # along the longer side of the drawing
_SHORTEST = 0.7  # dots: what is shorter is not painted
_BATCH = 200  # lines in one path: what is painted in one go
_SMOOTH = 60  # paths in view up to which lines are painted smoothly


@dataclass(slots=True)
class _Batch:
    """Lines no longer than `size` mm in one square; their path is made when it is first seen."""

    size: float
    strokes: list[Stroke]
    box: QRectF
    path: QPainterPath | None = None

    def made(self) -> QPainterPath:
        if self.path is None:
            self.path = QPainterPath()
            for stroke in self.strokes:
                self.path.moveTo(*stroke.points[0])
                for point in stroke.points[1:]:
                    self.path.lineTo(*point)
        return self.path


class Linework:
    """The lines of one section, ready to be painted for any look at it.

    `box` is the box around all of them in mm, None without lines.
    """

    def __init__(self, strokes: Sequence[Stroke]) -> None:
        drawn = [stroke for stroke in strokes if stroke.points]
        self.box: Box | None = None
        self._batches: list[_Batch] = []
        if drawn:
            low, high = _boxes(drawn)
            left, bottom = low.min(axis=0).tolist()
            right, top = high.max(axis=0).tolist()
            self.box = Box(left, bottom, right, top)
            self._batches = _batches(drawn, low, high)

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


_Places = NDArray[np.float64]


def _boxes(strokes: Sequence[Stroke]) -> tuple[_Places, _Places]:
    """Return the lower left and the upper right corners of the boxes around lines, shape (n, 2)."""
    counts = [len(stroke.points) for stroke in strokes]
    # one by one, since making an array of a long list would stop the window for its whole time
    one_by_one = (x for stroke in strokes for point in stroke.points for x in point)
    flat = np.fromiter(one_by_one, dtype=np.float64).reshape(-1, 2)
    first = np.concatenate(([0], np.cumsum(counts)[:-1]))
    return np.minimum.reduceat(flat, first), np.maximum.reduceat(flat, first)


def _batches(strokes: Sequence[Stroke], low: _Places, high: _Places) -> list[_Batch]:
    """Gather lines by square and by length, the longest of a batch up to four times its shortest."""
    side = max(float((high.max(axis=0) - low.min(axis=0)).max()), 1.0) / _SQUARES
    squares = (((low + high) / 2 - low.min(axis=0)) / side).astype(np.int64)
    sizes = np.maximum((high - low).max(axis=1), 1e-3)
    grades = np.floor(np.log(sizes) / np.log(4.0)).astype(np.int64)
    keys = np.column_stack((squares, grades))
    order = np.lexsort(keys.T)
    changes = np.flatnonzero((np.diff(keys[order], axis=0) != 0).any(axis=1)) + 1
    batches = []
    for group in np.split(order, changes):
        size = 4.0 ** (int(grades[group[0]]) + 1)
        for start in range(0, len(group), _BATCH):
            some = group[start : start + _BATCH]
            left, bottom = low[some].min(axis=0).tolist()
            right, top = high[some].max(axis=0).tolist()
            box = QRectF(left, bottom, max(right - left, 1e-6), max(top - bottom, 1e-6))
            batches.append(_Batch(size, [strokes[i] for i in some], box))
    return batches
