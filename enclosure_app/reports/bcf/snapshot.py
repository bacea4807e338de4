"""The pictures that go with topics: each the place of a finding, drawn as on the sheet, as PNG."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from io import BytesIO
from math import ceil, floor

from PIL import Image
from PySide6.QtCore import QPoint, QRect, QSize
from PySide6.QtGui import QColor, QImage, QPainter

from enclosure_app.drawing.marks import Label, Mark
from enclosure_app.drawing.placement import Box, Placement, box_around
from enclosure_app.drawing.scales import Scale, fits, series
from enclosure_app.drawing.section.details import Detail, detail_scales, in_its_square
from enclosure_app.drawing.section.section_marks import View
from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.drawing import Units
from enclosure_app.model.finding import Finding
from enclosure_app.model.report import SectionResult
from enclosure_app.reports.bcf.ground import Ground, around_all, together
from enclosure_app.reports.pdf.pages import ensure_application
from enclosure_app.reports.pdf.painter import MarkPainter

SIDE, FOOT, RIM = 150.0, 7.0, 3.0  # mm: the square, what stands below it, white around it
_DOTS = 140 / 25.4  # dots to the mm
_COLOURS = 255
_MOST_DOTS = 24_000_000  # of what is painted once: some 100 MB
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
        self._made: dict[int, tuple[Ground, _Backing | None]] = {}

    def of(self, finding: Finding, number: int) -> bytes:
        """Return the bytes of a PNG that shows one finding, under a number."""
        detail = self._details[finding.key]
        alone = replace(self._result, findings=(finding,))
        ground, backing = self._prepared(finding)
        loose = [m for m in ground.around(detail.box) if backing is None or isinstance(m, Label)]
        marks = [*loose, *ground.glyph(finding)]
        over = in_its_square(detail, marks, alone, {finding.key: number}, self._theme)
        return _png(_picture(detail.box, over, self._theme.paper, backing))

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

    def _prepared(self, finding: Finding) -> tuple[Ground, "_Backing | None"]:
        """Return what is drawn for all pictures of a finding's group, and a painting of it."""
        group = self._groups[finding.key]
        if id(group) not in self._made:
            view = View(Placement(group[0].scale.ratio), self._units, self._theme, detail=True)
            boxes = [detail.box for detail in group]
            ground = Ground.of(self._result, view, boxes)
            backing = _backing(ground.marks, around_all(boxes), self._theme.paper)
            self._made = {id(group): (ground, backing)}  # findings of a group mostly follow
        return self._made[id(group)]

    def _scale(self, finding: Finding) -> Scale:
        """Return the scale of an enlarged detail, or a smaller one at which the fault fits in."""
        frame = box_around(self._result.section.frame)
        known = series(self._units)
        size = frame.width, frame.height
        whole = next((s for s in known if fits(size, _PAPER, s)), known[-1])
        around = box_around([finding.at, *(p for run in finding.extent for p in run)])
        shown = max(around.width, around.height)
        smaller = [s for s in known if s.ratio > whole.ratio]
        wanted = [*detail_scales(whole, self._units)[:1], whole, *smaller]
        return next((s for s in wanted if shown / s.ratio <= _ROOM), known[-1])


@dataclass(frozen=True, slots=True)
class _Backing:
    """A painting of a part of the sheet; its upper left corner, in dots from the sheet's origin."""

    image: QImage
    corner: QPoint


def _backing(marks: Sequence[Mark], around: Box, paper: str) -> _Backing | None:
    """Return everything but words painted once, None where it would take too much memory."""
    left, top = floor(around.left * _DOTS), ceil(around.top * _DOTS)
    size = ceil(around.right * _DOTS) - left, top - floor(around.bottom * _DOTS)
    if size[0] * size[1] > _MOST_DOTS:
        return None
    image = QImage(*size, QImage.Format.Format_RGB32)
    image.fill(QColor(paper))
    _paint(image, (m for m in marks if not isinstance(m, Label)), QPoint(left, -top))
    return _Backing(image, QPoint(left, -top))


def _picture(box: Box, marks: Iterable[Mark], paper: str, backing: _Backing | None) -> QImage:
    """Return what stands in a box of the sheet, with white paper and room for words around it."""
    image = QImage(round(_WIDTH * _DOTS), round(_HEIGHT * _DOTS), QImage.Format.Format_RGB32)
    image.fill(QColor(paper))
    corner = QPoint(round((box.left - RIM) * _DOTS), -round((box.top + RIM) * _DOTS))
    if backing:
        side = round(SIDE * _DOTS)
        at = QPoint(round(box.left * _DOTS), -round(box.top * _DOTS))
        painter = QPainter(image)
        painter.drawImage(
            at - corner, backing.image, QRect(at - backing.corner, QSize(side, side))
        )
        painter.end()
    _paint(image, marks, corner)
    return image


def _paint(image: QImage, marks: Iterable[Mark], corner: QPoint) -> None:
    """Paint marks; `corner` is the place of the image on the sheet, y downwards."""
    painter = QPainter(image)
    try:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.translate(-corner)
        MarkPainter(painter, _DOTS, 0.0).paint(marks)
    finally:
        painter.end()


def _png(image: QImage) -> bytes:
    """Return a PNG with a palette of its own: a drawing has few colours, and weighs a third so."""
    size, dots = (image.width(), image.height()), bytes(image.constBits())
    picture = Image.frombuffer("RGB", size, dots, "raw", "BGRX", image.bytesPerLine(), 1)
    few = picture.quantize(_COLOURS, Image.Quantize.FASTOCTREE, dither=Image.Dither.NONE)
    stream = BytesIO()
    few.save(stream, "PNG")
    return stream.getvalue()
