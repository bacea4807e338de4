"""The picture that goes with a topic: the place of its finding, drawn as on the sheet, as PNG."""

from dataclasses import dataclass, replace
from io import BytesIO

from PIL import Image
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage, QPainter

from enclosure_app.drawing.marks import Fill
from enclosure_app.drawing.placement import Box, Placement, box_around
from enclosure_app.drawing.scales import Scale, fits, series
from enclosure_app.drawing.section.details import Detail, detail_marks, detail_scales
from enclosure_app.drawing.section.section_marks import View
from enclosure_app.drawing.theme import Theme, load_theme
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding
from enclosure_app.model.report import SectionResult
from enclosure_app.reports.pdf.pages import ensure_application
from enclosure_app.reports.pdf.painter import MarkPainter

SIDE, FOOT, RIM = 150.0, 7.0, 3.0  # mm: the square, what stands below it, white around it
_DOTS = 140 / 25.4  # dots to the mm
_COLOURS = 255
_ROOM = 110.0  # mm: a fault is shown no larger
_PAPER = (300.0, 200.0)  # mm: about the room for a drawing on A3


@dataclass(frozen=True, slots=True)
class Picturing:
    """How findings of one drawing are pictured."""

    units: Units
    theme: Theme

    @classmethod
    def of(cls, units: Units) -> "Picturing":
        """Return the usual way, in the shipped theme."""
        ensure_application()
        return cls(units, load_theme())

    def snapshot(self, result: SectionResult, finding: Finding, number: int) -> bytes:
        """Return the bytes of a PNG that shows one finding alone in its section, with its flag."""
        box = Box(RIM, RIM + FOOT, RIM + SIDE, RIM + FOOT + SIDE)
        detail = Detail(box, finding.at, (finding,), self._scale(result, finding))
        view = View(Placement(1.0), self.units, self.theme)
        width, height = SIDE + 2 * RIM, SIDE + FOOT + 2 * RIM
        paper = Fill((Box(0, 0, width, height).ring,), self.theme.paper)
        alone = replace(result, findings=(finding,))
        marks = [paper, *detail_marks(detail, alone, {finding.key: number}, view)]
        image = QImage(round(width * _DOTS), round(height * _DOTS), QImage.Format.Format_RGB32)
        image.fill(Qt.GlobalColor.white)
        painter = QPainter(image)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            MarkPainter(painter, _DOTS, height).paint(marks)
        finally:
            painter.end()
        return _png(image)

    def _scale(self, result: SectionResult, finding: Finding) -> Scale:
        """Return the scale of an enlarged detail, or a smaller one at which the fault fits in."""
        frame = box_around(result.section.frame)
        known = series(self.units)
        size = frame.width, frame.height
        whole = next((s for s in known if fits(size, _PAPER, s)), known[-1])
        around = box_around([finding.at, *(p for run in finding.extent for p in run)])
        shown = max(around.width, around.height)
        wanted = [*detail_scales(whole, self.units)[:1], whole]
        return next((s for s in wanted if shown / s.ratio <= _ROOM), known[-1])


def _png(image: QImage) -> bytes:
    """Return a PNG with a palette of its own: a drawing has few colours, and weighs a third so."""
    plain = image.convertToFormat(QImage.Format.Format_RGBA8888)
    size = plain.width(), plain.height()
    picture = Image.frombytes("RGBA", size, bytes(plain.constBits())).convert("RGB")
    few = picture.quantize(_COLOURS, Image.Quantize.MAXCOVERAGE, dither=Image.Dither.NONE)
    stream = BytesIO()
    few.save(stream, "PNG")
    return stream.getvalue()
