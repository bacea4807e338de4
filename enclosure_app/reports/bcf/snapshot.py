"""The pictures that go with topics: each the place of a finding, drawn as on the sheet, as PNG."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from io import BytesIO

from PIL import Image
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QImage, QPainter

from enclosure_app.drawing.marks import Fill, Mark
from enclosure_app.drawing.placement import Box, Placement, box_around
from enclosure_app.drawing.scales import Scale, fits, series
from enclosure_app.drawing.section.details import Detail, detail_scales, in_its_square
from enclosure_app.drawing.section.section_marks import View
from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding
from enclosure_app.model.place import Point
from enclosure_app.model.report import SectionResult
from enclosure_app.reports.bcf.ground import Ground, together
from enclosure_app.reports.pdf.pages import ensure_application
from enclosure_app.reports.pdf.painter import MarkPainter

SIDE, FOOT, RIM = 150.0, 7.0, 3.0  # mm: the square, what stands below it, white around it
_DOTS = 140 / 25.4  # dots to the mm
_COLOURS = 255
_ROOM = 110.0  # mm: a fault is shown no larger
_PAPER = (300.0, 200.0)  # mm: about the room for a drawing on A3
_WIDTH, _HEIGHT = SIDE + 2 * RIM, SIDE + FOOT + 2 * RIM


class Pictures:
    """Pictures of the findings of one section, each alone with its flag, in the shipped theme.

    What lies around findings near to each other is drawn once for all of them.
    """

    def __init__(self, result: SectionResult, units: Units) -> None:
        ensure_application()
        self._result, self._units, self._theme = result, units, load_theme()
        self._details = {f.key: self._detail(f) for f in result.findings}
        self._groups = self._grouped()
        self._grounds: dict[int, Ground] = {}

    def of(self, finding: Finding, number: int) -> bytes:
        """Return the bytes of a PNG that shows one finding, under a number."""
        detail, theme = self._details[finding.key], self._theme
        alone = replace(self._result, findings=(finding,))
        marks = self._ground(finding).around(finding, detail.box)
        square = in_its_square(detail, marks, alone, {finding.key: number}, theme)
        corner = detail.box.left - RIM, detail.box.bottom - RIM - FOOT
        return _png(_painted([self._paper(corner), *square], corner))

    def _paper(self, corner: Point) -> Mark:
        x, y = corner
        return Fill((Box(x, y, x + _WIDTH, y + _HEIGHT).ring,), self._theme.paper)

    def _detail(self, finding: Finding) -> Detail:
        """Return the square around a finding, on a sheet on which the section lies to scale."""
        scale = self._scale(finding)
        x, y = Placement(scale.ratio).point(finding.at)
        half = SIDE / 2
        return Detail(Box(x - half, y - half, x + half, y + half), finding.at, (finding,), scale)

    def _grouped(self) -> Mapping[str, Sequence[Detail]]:
        """Return the details that are drawn together with that of each finding."""
        found: dict[str, Sequence[Detail]] = {}
        by_scale: dict[float, list[Detail]] = {}
        for detail in self._details.values():
            by_scale.setdefault(detail.scale.ratio, []).append(detail)
        for details in by_scale.values():
            for numbers in together([detail.box for detail in details]):
                group = [details[number] for number in numbers]
                found.update({detail.findings[0].key: group for detail in group})
        return found

    def _ground(self, finding: Finding) -> Ground:
        group = self._groups[finding.key]
        if id(group) not in self._grounds:
            view = View(Placement(group[0].scale.ratio), self._units, self._theme, detail=True)
            boxes = [detail.box for detail in group]
            self._grounds[id(group)] = Ground.of(self._result, view, boxes)
        return self._grounds[id(group)]

    def _scale(self, finding: Finding) -> Scale:
        """Return the scale of an enlarged detail, or a smaller one at which the fault fits in."""
        frame = box_around(self._result.section.frame)
        known = series(self._units)
        size = frame.width, frame.height
        whole = next((s for s in known if fits(size, _PAPER, s)), known[-1])
        around = box_around([finding.at, *(p for run in finding.extent for p in run)])
        shown = max(around.width, around.height)
        wanted = [*detail_scales(whole, self._units)[:1], whole]
        return next((s for s in wanted if shown / s.ratio <= _ROOM), known[-1])


def _painted(marks: Sequence[Mark], corner: Point) -> QImage:
    """Return what stands at the right of and above a corner of the sheet."""
    image = QImage(round(_WIDTH * _DOTS), round(_HEIGHT * _DOTS), QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    try:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.translate(QPointF(-corner[0] * _DOTS, corner[1] * _DOTS))
        MarkPainter(painter, _DOTS, _HEIGHT).paint(marks)
    finally:
        painter.end()
    return image


def _png(image: QImage) -> bytes:
    """Return a PNG with a palette of its own: a drawing has few colours, and weighs a third so."""
    size, dots = (image.width(), image.height()), bytes(image.constBits())
    picture = Image.frombuffer("RGB", size, dots, "raw", "BGRX", image.bytesPerLine(), 1)
    few = picture.quantize(_COLOURS, Image.Quantize.FASTOCTREE, dither=Image.Dither.NONE)
    stream = BytesIO()
    few.save(stream, "PNG")
    return stream.getvalue()
