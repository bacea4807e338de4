"""The lines of a PDF page: what is stroked on it, and the edges of what is filled, in mm of paper.

Curves are divided finely, forms within forms are followed, and what a clip or the edge of the page
hides is cut off. A layer is named as in the PDF or, without layers, by the width of the pen.
"""

import ctypes
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from math import sqrt
from typing import TYPE_CHECKING, Any

from enclosure_app.files.underlay.marks import layer_of, pen_of
from enclosure_app.files.underlay.pdfium import POINT_MM
from enclosure_app.geometry.outlines.boxed import Box, bezier, box_of, boxed, common_box
from enclosure_app.model.place import Point, Points
from enclosure_app.model.section import Stroke

if TYPE_CHECKING:
    from pypdfium2 import PdfPage

MOST = 200_000
"""Lines of one page that are taken; a page with more is a picture only."""

Matrix = tuple[float, float, float, float, float, float]
"""a b c d e f as in a PDF: x' = a x + c y + e, y' = b x + d y + f."""

_SAGITTA = 0.05  # points: how far a curve may be off
_DEEPEST = 15  # forms within forms
_SAME = 1e-3  # points
_SMALL = 1.5 / POINT_MM  # points: smaller filled things are letters and arrowheads
_ALL = 0.98  # of the page's sides: a ground that fills the page
_MOVE, _BEZIER = 2, 1  # PDFium's kinds of segments; 0 is a line
_EVERY = 400  # objects between two reports


@dataclass(frozen=True, slots=True)
class _Found:
    """One path object: the PDFium handle, how its points come to the page, what hides it."""

    handle: Any
    onto: Matrix
    clip: Box


class TooManyLinesError(Exception):
    """A page holds more lines than anybody could trace."""


def page_strokes(
    page: "PdfPage", hidden: frozenset[str], tell: Callable[[float], None]
) -> tuple[Stroke, ...]:
    """Return the lines of a page, mm from its lower left corner as it is shown.

    Args:
        page: The page.
        hidden: Names of layers that are not shown.
        tell: Is told from time to time what share is done; it may raise to stop.

    Raises:
        TooManyLinesError: there are more than `MOST`.
    """
    size = page.get_size()
    strokes: list[Stroke] = []
    for found in _paths(page, tell):
        pen = pen_of(found.handle, growth(found.onto))
        layer = layer_of(found.handle)
        if not pen.seen or layer in hidden:
            continue
        runs = list(_runs(found))
        if not pen.stroked and not _is_shape(runs, size):
            continue
        name = layer or pen.name
        strokes += [Stroke(_in_mm(run), name) for run in runs]
        if len(strokes) > MOST:
            raise TooManyLinesError
    return tuple(_joined(strokes))


def shown_matrix(page: "PdfPage") -> Matrix:
    """Return what brings points of a page's own space to its shown lower left corner."""
    left, bottom, right, top = page.get_bbox()
    match page.get_rotation():
        case 90:
            return (0.0, -1.0, 1.0, 0.0, -bottom, right)
        case 180:
            return (-1.0, 0.0, 0.0, -1.0, right, top)
        case 270:
            return (0.0, 1.0, -1.0, 0.0, top, -left)
        case _:
            return (1.0, 0.0, 0.0, 1.0, -left, -bottom)


def times(first: Matrix, then: Matrix) -> Matrix:
    """Return one matrix for two that are applied one after the other."""
    a, b, c, d, e, f = first
    p, q, r, s, t, u = then
    return (
        a * p + b * r,
        a * q + b * s,
        c * p + d * r,
        c * q + d * s,
        e * p + f * r + t,
        e * q + f * s + u,
    )


def applied(matrix: Matrix, point: Point) -> Point:
    """Return where a matrix brings a point."""
    a, b, c, d, e, f = matrix
    x, y = point
    return (a * x + c * y + e, b * x + d * y + f)


def growth(matrix: Matrix) -> float:
    """Return how many times as long things become."""
    a, b, c, d, _, _ = matrix
    return sqrt(abs(a * d - b * c))


def objects(
    page: "PdfPage", tell: Callable[[float], None] = lambda _: None
) -> Iterator[tuple[Any, Matrix]]:
    """Yield every object of a page but forms, with how it comes to the page as it is shown."""
    from pypdfium2 import raw  # noqa: PLC0415  only when a PDF is open

    count = raw.FPDFPage_CountObjects(page)
    onto = shown_matrix(page)
    for number in range(count):
        if number % _EVERY == 0:
            tell(number / count)
        yield from _within(raw, raw.FPDFPage_GetObject(page, number), onto, 0)


def matrix_of(raw: Any, handle: Any) -> Matrix:  # noqa: ANN401  PDFium's handles have no types
    """Return the matrix of an object."""
    held = raw.FS_MATRIX()
    raw.FPDFPageObj_GetMatrix(handle, held)
    return (held.a, held.b, held.c, held.d, held.e, held.f)


def _within(raw: Any, handle: Any, onto: Matrix, depth: int) -> Iterator[tuple[Any, Matrix]]:  # noqa: ANN401
    if raw.FPDFPageObj_GetType(handle) != raw.FPDF_PAGEOBJ_FORM:
        yield handle, onto
    elif depth < _DEEPEST:
        inner = times(matrix_of(raw, handle), onto)
        for number in range(raw.FPDFFormObj_CountObjects(handle)):
            yield from _within(raw, raw.FPDFFormObj_GetObject(handle, number), inner, depth + 1)


def _paths(page: "PdfPage", tell: Callable[[float], None]) -> Iterator[_Found]:
    from pypdfium2 import raw  # noqa: PLC0415  only when a PDF is open

    sheet: Box = (0.0, 0.0, *page.get_size())
    for handle, onto in objects(page, tell):
        if raw.FPDFPageObj_GetType(handle) == raw.FPDF_PAGEOBJ_PATH:
            clip = common_box(sheet, _clip(raw, handle, onto) or sheet)
            yield _Found(handle, times(matrix_of(raw, handle), onto), clip)


def _clip(raw: Any, handle: Any, onto: Matrix) -> Box | None:  # noqa: ANN401
    """Return the box around what clips an object; it lies in the space that holds the object."""
    clip = raw.FPDFPageObj_GetClipPath(handle)
    box: Box | None = None
    for number in range(max(raw.FPDFClipPath_CountPaths(clip), 0) if clip else 0):
        count = raw.FPDFClipPath_CountPathSegments(clip, number)
        segments = (raw.FPDFClipPath_GetPathSegment(clip, number, i) for i in range(count))
        points = [applied(onto, _point(raw, segment)) for segment in segments]
        if points:
            around = box_of(points)
            box = common_box(box, around) if box else around
    return box


def _point(raw: Any, segment: Any) -> Point:  # noqa: ANN401
    x, y = ctypes.c_float(), ctypes.c_float()
    raw.FPDFPathSegment_GetPoint(segment, x, y)
    return (x.value, y.value)


def _runs(found: _Found) -> Iterator[Points]:
    """Yield the runs of a path, in points of the page as it is shown."""
    for run in _whole_runs(found):
        if len(run) > 1:
            yield from (part for part in boxed(run, found.clip) if len(part) > 1)


def _whole_runs(found: _Found) -> Iterator[Points]:
    from pypdfium2 import raw  # noqa: PLC0415  only when a PDF is open

    run: list[Point] = []
    control: list[Point] = []
    for number in range(max(raw.FPDFPath_CountSegments(found.handle), 0)):
        segment = raw.FPDFPath_GetPathSegment(found.handle, number)
        kind = raw.FPDFPathSegment_GetType(segment)
        point = applied(found.onto, _point(raw, segment))
        if kind == _MOVE:
            yield tuple(run)
            run = [point]
        elif kind == _BEZIER:
            control.append(point)
            if len(control) == 3 and run:
                run += bezier(run[-1], control[0], control[1], control[2], _SAGITTA)
            control = control if len(control) < 3 else []
        elif not run or not _same(run[-1], point):
            run.append(point)
        if raw.FPDFPathSegment_GetClose(segment) and run and not _same(run[-1], run[0]):
            run.append(run[0])
    yield tuple(run)


def _is_shape(runs: list[Points], size: tuple[float, float]) -> bool:
    """Whether the edge of something filled is worth a line: no letter, and no ground of the page."""
    if not runs:
        return False
    left, bottom, right, top = box_of([point for run in runs for point in run])
    whole = right - left > _ALL * size[0] and top - bottom > _ALL * size[1]
    return max(right - left, top - bottom) > _SMALL and not whole


def _joined(strokes: list[Stroke]) -> Iterator[Stroke]:
    """Join lines that were written one after the other, each where the last one ended."""
    last: Stroke | None = None
    for stroke in strokes:
        if last and last.layer == stroke.layer and _goes_on(last.points, stroke.points):
            last = Stroke((*last.points, *stroke.points[1:]), last.layer)
            continue
        if last:
            yield last
        last = stroke
    if last:
        yield last


def _goes_on(run: Points, other: Points) -> bool:
    return _same(run[-1], other[0]) and not _same(run[0], run[-1])


def _in_mm(run: Points) -> Points:
    return tuple([(x * POINT_MM, y * POINT_MM) for x, y in run])


def _same(a: Point, b: Point) -> bool:
    return abs(a[0] - b[0]) <= _SAME and abs(a[1] - b[1]) <= _SAME
