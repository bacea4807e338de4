"""An office's drawing, plotted as a PDF by Qt and laid under an empty window: nothing is lost on the way.

Qt's own PDF writer knows nothing of what reads it here, so that lines, words and places are checked
against the drawing they were plotted from.
"""

from itertools import pairwise
from math import dist
from pathlib import Path

import pytest
from PySide6.QtCore import QMarginsF, QPointF, QSizeF
from PySide6.QtGui import QFont, QPageSize, QPainter, QPdfWriter, QPen, QPolygonF
from pytestqt.qtbot import QtBot

from enclosure_app.drawing.placement import Placement, box_around
from enclosure_app.files.projects import Wish, read_project
from enclosure_app.model import edits
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Points
from enclosure_app.model.section import Section
from enclosure_app.planning.notes.reading import proposals
from enclosure_app.window.main_window import MainWindow

SCALE = 20.0
WIDE, HIGH = 1189.0, 841.0  # mm: ISO A0
DOTS = 1200 / 25.4


@pytest.fixture(scope="module")
def drawn(office_drawings: Path) -> Section:
    path = office_drawings / "sections" / "wall_details_inches.dxf"
    return read_project(path, Wish(units=Units.IN)).sections[0]


def lines(section: Section) -> list[Points]:
    return [stroke.points for stroke in section.strokes]


def plotted(section: Section, path: Path) -> None:
    """Plot lines and notes of a section, its lower left corner in that of the paper."""
    box = box_around(point for run in lines(section) for point in run)
    placement = Placement(SCALE, (box.left, box.bottom))
    writer = QPdfWriter(str(path))
    writer.setPageSize(QPageSize(QSizeF(WIDE, HIGH), QPageSize.Unit.Millimeter))
    writer.setPageMargins(QMarginsF())
    writer.setResolution(1200)
    painter = QPainter(writer)
    painter.setPen(QPen(painter.pen().color(), 0.25 * DOTS))

    def dot(place: tuple[float, float]) -> QPointF:
        x, y = placement.point(place)
        return QPointF(x * DOTS, (HIGH - y) * DOTS)

    for run in lines(section):
        painter.drawPolyline(QPolygonF([dot(point) for point in run]))
    font = QFont()
    for text in section.texts:
        font.setPixelSize(max(int(text.height / SCALE * DOTS / 0.72), 8))
        painter.setFont(font)
        painter.drawText(dot(text.at), text.text.splitlines()[0])
    painter.end()


def length(runs: list[Points]) -> float:
    return sum(dist(a, b) for run in runs for a, b in pairwise(run))


def test_lines_and_notes_come_back_at_their_places_and_are_read(
    window: MainWindow, qtbot: QtBot, tmp_path: Path, drawn: Section
) -> None:
    path = tmp_path / "details.pdf"
    plotted(drawn, path)
    window.open_files([path])
    qtbot.waitUntil(lambda: len(window.document.project.underlays) == 1, timeout=20_000)
    project = edits.set_paper_scale(window.document.project, 0, SCALE)
    (section,) = project.sections

    box = box_around(point for run in lines(drawn) for point in run)
    assert length(lines(section)) == pytest.approx(length(lines(drawn)), rel=2e-3)
    there = box_around(point for run in lines(section) for point in run)
    assert (there.width, there.height) == pytest.approx((box.width, box.height), abs=1.0)

    said = sorted(" ".join(text.text.splitlines()[0].split()) for text in drawn.texts)
    assert sorted(" ".join(text.text.split()) for text in section.texts) == said
    first = min(drawn.texts, key=lambda text: (-text.at[1], text.at[0]))
    same = min(section.texts, key=lambda text: (-text.at[1], text.at[0]))
    at = (first.at[0] - box.left, first.at[1] - box.bottom)
    assert same.at == pytest.approx(at, abs=SCALE * 0.1)

    # what the notes say of the lines is found as well as in the drawing itself, nearly
    assert len(proposals(section)) >= 0.85 * len(proposals(drawn))
