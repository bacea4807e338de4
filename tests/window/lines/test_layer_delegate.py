"""A layer in the list: two lines, nothing over the edge however long its name."""

from dataclasses import replace

import pytest
from PySide6.QtGui import QColor, QImage
from PySide6.QtWidgets import QListView
from pytestqt.qtbot import QtBot

from enclosure_app.drawing.theme import load_theme
from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.model.drawing import Units
from enclosure_app.model.layer import LayerRow
from enclosure_app.model.product import Control
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section, Stroke
from enclosure_app.window.lines.layer_delegate import LayerDelegate
from enclosure_app.window.lines.layers_model import LayersModel

LONG = "BUILDING-SECTION-1$0$A-WALL-EXTERIOR-WEATHER-RESISTIVE-BARRIER-NEW-PHASE-2-REV-C"
FRAME = ((0.0, 0.0), (100.0, 0.0), (100.0, 100.0))


def view(qtbot: QtBot, *names: str, meant: str = "self-adhered-sheet") -> QListView:
    strokes = tuple(Stroke(((0, 0), (1, 1)), name, name) for name in names)
    section = Section("s", FRAME, (), load_products(), strokes=strokes)
    project = Project("", Units.MM, (section,))
    rows = tuple(LayerRow(name.replace("[", "[[]"), product=meant) for name in names)
    made = QListView()
    model = LayersModel(made)
    model.show(replace(project, layers=rows))
    made.setModel(model)
    made.setItemDelegate(LayerDelegate(made))
    made.resize(260, 200)
    qtbot.addWidget(made)
    made.show()
    return made


def picture(shown: QListView) -> QImage:
    return shown.viewport().grab().toImage().convertToFormat(QImage.Format.Format_RGB32)


def row(shown: QListView, at: int) -> list[list[QColor]]:
    image, box = picture(shown), shown.visualRect(shown.model().index(at, 0))
    return [
        [image.pixelColor(x, y) for x in range(image.width())]
        for y in range(box.top(), box.bottom())
    ]


def test_what_a_layer_controls_is_shown_in_hue(qtbot: QtBot) -> None:
    pixels = {colour.name() for line in row(view(qtbot, "A-MEMB"), 0) for colour in line}
    theme = load_theme()
    for control in (Control.WATER, Control.AIR, Control.VAPOUR):
        assert QColor(theme.control(control).colour).name() in pixels
    assert QColor(theme.control(Control.HEAT).colour).name() not in pixels


@pytest.mark.parametrize("name", ["A", LONG, LONG * 4])
def test_a_name_leaves_the_margin_and_the_count_free(qtbot: QtBot, name: str) -> None:
    shown = view(qtbot, name)
    assert shown.visualRect(shown.model().index(0, 0)).width() <= shown.viewport().width()
    ground = row(shown, 0)[0][130].name()
    edge = [line[-8:] for line in row(shown, 0)]
    assert {colour.name() for line in edge for colour in line} == {ground}


def test_rows_are_as_high_as_two_lines_of_text(qtbot: QtBot) -> None:
    shown = view(qtbot, "A", LONG)
    heights = {shown.visualRect(shown.model().index(at, 0)).height() for at in (0, 1)}
    (height,) = heights
    assert height >= 2 * shown.fontMetrics().height()


def test_a_chosen_row_is_marked_by_a_bar_too(qtbot: QtBot) -> None:
    shown = view(qtbot, "A", "B")
    before = [line[:3] for line in row(shown, 0)]
    shown.setCurrentIndex(shown.model().index(0, 0))
    after = [line[:3] for line in row(shown, 0)]
    assert before != after
