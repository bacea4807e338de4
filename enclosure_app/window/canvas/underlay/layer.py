"""Paints the pictures that lie under the drawing: pale, in turns, and sharp soon after a look.

Dots are made off the window's thread. What is there already is painted meanwhile; `ready` says
that there is something better to be seen.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from PySide6.QtCore import QObject, QRect, QRectF, Signal
from PySide6.QtGui import QImage, QPainter, QTransform

from enclosure_app.files.underlay.pdfium import Part
from enclosure_app.model.project import Project
from enclosure_app.model.report import SectionResult
from enclosure_app.model.section import Section
from enclosure_app.model.underlay import Underlay
from enclosure_app.window.apart.underlay_work import Work
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.canvas.underlay.picture import Dots, dots_of, dots_of_part

_BANDS = 12  # strips of a picture that are painted between two looks at the clock
_SOFT = 1.25  # dots of the view for one dot of the picture, above which a page is rendered anew
_SHARPEST = 40.0  # dots for a point of a page: more is never rendered
_MOST = 16_000_000  # dots of a part that is rendered

_Key = tuple[int, int, bool]


@dataclass(slots=True)
class _Held:
    """What is there of one underlay; `data` keeps its bytes, and so their identity, alive."""

    data: bytes
    whole: Dots | None = None
    part: Dots | None = None
    asked: bool = False
    work: Work | None = None


def lying_under(project: Project, section: Section | None) -> tuple[Underlay, ...]:
    """Return what lies under a section and is shown, the lowest first.

    One whose size nobody wrote down, in a project written by hand, cannot be placed.
    """
    if section is None:
        return ()
    names = (section.name, "")
    return tuple(
        each
        for each in project.underlays
        if each.shown and each.section in names and min(each.size) > 0
    )


def without_texts_of(underlays: tuple[Underlay, ...], result: SectionResult) -> SectionResult:
    """Return a result without the notes of pages that are seen anyway, where the page has them."""
    keys = {f"{each.key}:" for each in underlays if each.key}
    section = result.section
    texts = tuple(t for t in section.texts if t.handle.partition(":")[0] + ":" not in keys)
    if len(texts) == len(section.texts):
        return result
    return replace(result, section=replace(section, texts=texts))


class UnderlayLayer(QObject):
    """Keeps the dots of underlays, and paints them. `failed`: why one cannot be shown."""

    ready = Signal()
    failed = Signal(str)

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._held: dict[_Key, _Held] = {}

    def forget_others(self, underlays: tuple[Underlay, ...]) -> None:
        """Let go of the dots of what is no longer shown."""
        there = {id(each.data) for each in underlays}
        self._held = {key: held for key, held in self._held.items() if key[0] in there}

    @property
    def at_rest(self) -> bool:
        """Whether nothing better is being made."""
        return all(held.work is None or held.work.ended for held in self._held.values())

    def holds(self, underlays: tuple[Underlay, ...], *, dark: bool) -> bool:
        """Whether every underlay can be painted already."""
        held = (self._held.get(_key(each, dark)) for each in underlays)
        return all(each is not None and each.whole is not None for each in held)

    def paint(
        self, image: QImage, camera: Camera, underlays: tuple[Underlay, ...], look: Look
    ) -> Iterator[None]:
        """Paint underlays for one look, in turns; what is not there yet is made meanwhile."""
        ratio, dark = image.devicePixelRatio(), look.dark
        for underlay in underlays:
            dots = self._dots(underlay, camera, ratio, dark)
            if dots is None:
                continue
            onto = placed(underlay, camera)
            for band in _bands(image, onto.mapRect(QRectF(*_rect(dots.part)))):
                painter = QPainter(image)
                painter.setClipRect(band)
                painter.setOpacity(look.theme.underlay * underlay.strength)
                painter.setCompositionMode(_mode(dark=dark, over=dots.turned_over))
                painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
                painter.setTransform(onto, combine=True)
                picture = dots.for_dots(underlay.mm_per_pixel * camera.zoom * ratio)
                _draw(painter, dots.part, picture)
                painter.end()
                yield

    def _dots(self, underlay: Underlay, camera: Camera, ratio: float, dark: bool) -> Dots | None:
        """Return the best dots there are for a look; ask for better ones."""
        held = self._held.setdefault(_key(underlay, dark), _Held(underlay.data))
        if held.whole is None:
            self._ask_whole(held, underlay, dark=dark)
            return None
        fine = min(underlay.mm_per_pixel * camera.zoom * ratio, _SHARPEST)
        if underlay.kind != "pdf" or fine <= held.whole.finest * _SOFT:
            return held.whole
        seen = seen_part(underlay, camera)
        if seen is None:
            return held.whole
        part = held.part
        if part and part.finest >= fine / _SOFT and _covers(part.part, seen):
            return part
        if (seen[2] - seen[0]) * (seen[3] - seen[1]) * fine * fine <= _MOST:
            self._ask_part(held, underlay, seen, fine)
        return held.whole

    def _ask_whole(self, held: _Held, underlay: Underlay, *, dark: bool) -> None:
        """Have the dots of a whole underlay made, once."""
        if not held.asked:
            held.asked = True
            self._begin(held, Work(lambda _: (held, dots_of(underlay, dark=dark))))

    def _ask_part(self, held: _Held, underlay: Underlay, seen: Part, fine: float) -> None:
        """Have a part of a page rendered sharply; a part that was asked for before is given up."""
        if held.work:
            held.work.stop()
        over = bool(held.whole and held.whole.turned_over)
        self._begin(held, Work(lambda _: (held, dots_of_part(underlay, seen, fine, over=over))))

    def _begin(self, held: _Held, work: Work) -> None:
        held.work = work
        work.done.connect(self._take)
        work.failed.connect(self.failed)
        work.start()

    def _take(self, made: tuple[_Held, Dots]) -> None:
        held, dots = made
        if held.whole is None:
            held.whole = dots
        else:
            held.part = dots
        self.ready.emit()


def placed(underlay: Underlay, camera: Camera) -> QTransform:
    """Return the way from pixels of an underlay, counted up from its lower left, to the view."""
    transform = camera.transform(underlay.at)
    transform.rotate(underlay.angle)
    transform.scale(underlay.mm_per_pixel, underlay.mm_per_pixel)
    return transform


def seen_part(underlay: Underlay, camera: Camera) -> Part | None:
    """Return the part of an underlay that is in view, None where there is nothing of it."""
    back, invertible = placed(underlay, camera).inverted()
    view = QRectF(0, 0, camera.size.width(), camera.size.height())
    wide, high = underlay.size
    box = back.mapRect(view).intersected(QRectF(0, 0, wide, high))
    if not invertible or box.isEmpty():
        return None
    return (box.left(), box.top(), box.right(), box.bottom())


def _key(underlay: Underlay, dark: bool) -> _Key:
    return (id(underlay.data), underlay.page, dark)


def _covers(part: Part, seen: Part) -> bool:
    slack = 1e-6 + 0.002 * (seen[2] - seen[0])
    return (
        part[0] <= seen[0] + slack
        and part[1] <= seen[1] + slack
        and part[2] >= seen[2] - slack
        and part[3] >= seen[3] - slack
    )


def _rect(part: Part) -> tuple[float, float, float, float]:
    left, bottom, right, top = part
    return (left, bottom, right - left, top - bottom)


def _draw(painter: QPainter, part: Part, picture: QImage) -> None:
    """Paint a picture the right way up: its rows run down, the underlay's pixels up."""
    left, bottom, wide, high = _rect(part)
    painter.translate(left, bottom + high)
    painter.scale(1.0, -1.0)
    painter.drawImage(QRectF(0, 0, wide, high), picture, QRectF(picture.rect()))


def _bands(image: QImage, box: QRectF) -> Iterator[QRect]:
    """Yield the strips of an image that a box reaches into."""
    ratio = image.devicePixelRatio()
    wide, high = round(image.width() / ratio), round(image.height() / ratio)
    step = -(-high // _BANDS)
    for top in range(0, high, step):
        band = QRect(0, top, wide, step)
        if box.intersects(QRectF(band)):
            yield band


def _mode(*, dark: bool, over: bool) -> QPainter.CompositionMode:
    """Return how a picture meets the paper: white leaves it as it is by day, black by night."""
    if not dark:
        return QPainter.CompositionMode.CompositionMode_Multiply
    modes = QPainter.CompositionMode
    return modes.CompositionMode_Screen if over else modes.CompositionMode_SourceOver
