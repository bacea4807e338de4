"""Paints pages of marks with Qt's own PDF writer, each run of marks of the same overlays apart."""

import os
import sys
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby
from operator import attrgetter
from typing import NamedTuple

from PySide6.QtCore import QBuffer, QIODevice, QMarginsF, QSizeF
from PySide6.QtGui import QGuiApplication, QPageLayout, QPageSize, QPainter, QPdfWriter

from enclosure_app.drawing.marks import Mark, Overlays
from enclosure_app.drawing.tags import Tag
from enclosure_app.language import say
from enclosure_app.progress import StoppedError, gone_through
from enclosure_app.reports.pdf.notes import Note, PageLink
from enclosure_app.reports.pdf.painter import MarkPainter

_RESOLUTION = 1200  # dots to the inch: weights and places are true to about 0.02 mm
_DOTS = _RESOLUTION / 25.4


@dataclass(frozen=True, slots=True)
class PaintedPage:
    """One page: its size in mm, all its marks in painting order, and what is put over them."""

    width: float
    height: float
    marks: tuple[Mark, ...]
    notes: tuple[Note, ...] = ()
    links: tuple[PageLink, ...] = ()


class Run(NamedTuple):
    """What marks have in common that follow each other: the overlays they lie on, and their tag."""

    overlays: Overlays = ()
    tag: Tag | None = None


@dataclass(frozen=True, slots=True)
class Painting:
    """A PDF in which every run of marks has a page of its own, and what the runs are.

    `runs` has one tuple for each page that was asked for: its runs, in order.
    """

    data: bytes
    runs: tuple[tuple[Run, ...], ...]


def painted(pages: Sequence[PaintedPage]) -> Painting:
    """Return `pages` painted; a page without marks has one empty run.

    Qt cannot say in a PDF which layer something belongs to, nor what it is. So each run of marks
    that lie on the same overlays and are one thing becomes a page, and whoever puts these together
    again says it of the whole run.

    Raises:
        OSError: there is no room for it.
        StoppedError: it is wanted no more.
    """
    ensure_application()
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(_RESOLUTION)
    painter = QPainter()
    told = gone_through(pages, 0.0, 1.0, each=1)
    try:
        runs = tuple(tuple(_paint(writer, painter, page)) for page in told)
    except StoppedError:
        if painter.isActive():
            painter.end()  # it must not paint on what is gone
        raise
    if not painter.end():
        raise OSError(0, say("the disk may be full"))
    return Painting(bytes(buffer.data().data()), runs)


def _paint(writer: QPdfWriter, painter: QPainter, page: PaintedPage) -> Iterator[Run]:
    """Paint the runs of a page, and yield what each of them is."""
    for run, marks in in_runs(page.marks):
        _turn_to(writer, painter, page)
        MarkPainter(painter, _DOTS, page.height).paint(marks)
        yield run


def in_runs(marks: Iterable[Mark]) -> Iterator[tuple[Run, tuple[Mark, ...]]]:
    """Yield runs of marks that follow each other on the same overlays with the same tag.

    There is one empty run where there are no marks.
    """
    empty = True
    for (overlays, tag), run in groupby(marks, attrgetter("overlays", "tag")):
        empty = False
        yield Run(overlays, tag), tuple(run)
    if empty:
        yield Run(), ()


def _turn_to(writer: QPdfWriter, painter: QPainter, page: PaintedPage) -> None:
    """Start a page of the right size without margins; the marks keep their own."""
    size = QPageSize(
        QSizeF(page.width, page.height),
        QPageSize.Unit.Millimeter,
        "",
        QPageSize.SizeMatchPolicy.ExactMatch,
    )
    layout = QPageLayout(size, QPageLayout.Orientation.Portrait, QMarginsF())
    writer.setPageLayout(layout)
    started = writer.newPage() if painter.isActive() else painter.begin(writer)
    if not started:
        raise OSError(0, say("no page could be started"))


def ensure_application() -> QGuiApplication:
    """Return the running Qt application, or start one without windows, for which no screen is needed."""
    running = QGuiApplication.instance()
    if isinstance(running, QGuiApplication):
        return running
    if not _has_display():
        os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    return QGuiApplication(sys.argv[:1])


def _has_display() -> bool:
    if sys.platform in ("win32", "darwin"):
        return True
    return bool(os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY"))
