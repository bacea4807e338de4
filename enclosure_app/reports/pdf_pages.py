"""Paints pages of marks into a PDF file with Qt's own writer."""

import os
import sys
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QMarginsF, QSizeF
from PySide6.QtGui import QGuiApplication, QPageLayout, QPageSize, QPainter, QPdfWriter

from enclosure_app.drawing.marks import Mark
from enclosure_app.language import say
from enclosure_app.progress import StoppedError, gone_through
from enclosure_app.reports.pdf_painter import MarkPainter

_RESOLUTION = 1200  # dots to the inch: weights and places are true to about 0.02 mm
_DOTS = _RESOLUTION / 25.4
_CREATOR = "Enclosure continuity check"


@dataclass(frozen=True, slots=True)
class PaintedPage:
    """One page: its size in mm and all its marks in painting order."""

    width: float
    height: float
    marks: tuple[Mark, ...]


def paint_pages(path: Path, pages: Sequence[PaintedPage], title: str, author: str) -> None:
    """Write `pages` as a PDF to `path`.

    Raises:
        OSError: the file cannot be written.
    """
    with path.open("ab"):  # says why, where Qt only says that it cannot
        pass
    ensure_application()
    writer = QPdfWriter(str(path))
    writer.setResolution(_RESOLUTION)
    writer.setTitle(title)
    writer.setCreator(_CREATOR)
    if hasattr(writer, "setAuthor"):  # from Qt 6.9
        writer.setAuthor(author)
    painter = QPainter()
    try:
        for number, page in enumerate(gone_through(pages, 0.0, 1.0, each=1)):
            _turn_to(writer, painter, page, first=number == 0)
            MarkPainter(painter, _DOTS, page.height).paint(page.marks)
    except StoppedError:
        if painter.isActive():
            painter.end()  # it must not paint on a file that is gone
        raise
    if not painter.end():
        raise OSError(0, say("the disk may be full"))


def _turn_to(writer: QPdfWriter, painter: QPainter, page: PaintedPage, *, first: bool) -> None:
    """Start a page of the right size without margins; the marks keep their own."""
    size = QPageSize(
        QSizeF(page.width, page.height),
        QPageSize.Unit.Millimeter,
        "",
        QPageSize.SizeMatchPolicy.ExactMatch,
    )
    layout = QPageLayout(size, QPageLayout.Orientation.Portrait, QMarginsF())
    writer.setPageLayout(layout)
    started = painter.begin(writer) if first else writer.newPage()
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
