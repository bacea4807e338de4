"""Ready-made parts on their way into the drawing."""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model.edits import add_piece
from enclosure_app.model.place import Area, Line
from enclosure_app.model.report import Continuity
from enclosure_app.window.main_window import MainWindow


def typed(qtbot: QtBot, window: MainWindow, name: str, text: str) -> None:
    field = window.views.sizes.fields[name]
    field.selectAll()
    qtbot.keyClicks(field, text)
    qtbot.keyClick(field, Qt.Key.Key_Return)


def pitch(window: MainWindow, at: int = -1) -> float:
    piece = window.document.project.sections[at].by_name["underlayment-1"].shape
    assert isinstance(piece, Line)
    (ax, ay), (bx, by) = piece.points[0], piece.points[-1]
    return (by - ay) / (bx - ax)


def test_a_part_is_there_at_once_and_changes_with_its_sizes(
    window: MainWindow, qtbot: QtBot
) -> None:
    window.parts.begin("eave")
    assert pitch(window) == pytest.approx(0.5)
    typed(qtbot, window, "pitch", "9 in 12")
    assert pitch(window) == pytest.approx(0.75)
    typed(qtbot, window, "overhang", "500")
    window.checking.check_now()
    assert {layer.continuity for layer in window.result.layers.values()} == {Continuity.CONTINUOUS}
    assert window.findings.model.rows == ()


def test_a_size_that_cannot_be_is_told_and_the_last_one_stays(
    window: MainWindow, qtbot: QtBot
) -> None:
    window.parts.begin("eave")
    before = window.document.project
    typed(qtbot, window, "pitch", "80°")
    assert window.views.sizes.wrong.text().startswith("Pitch of the roof is 80.0°: choose")
    assert window.document.project is before


def test_all_of_it_undoes_as_one_step(sheet: MainWindow, qtbot: QtBot) -> None:
    before = sheet.document.project
    sheet.parts.begin("parapet")
    typed(qtbot, sheet, "insulation", "200")
    assert sheet.document.undo_stack.undoText() == "Add Parapet"
    assert [s.name for s in sheet.document.project.sections] == ["New section", "Parapet"]
    sheet.do("undo")
    assert sheet.document.project is before
    assert sheet.views.sizes.isHidden()


def test_it_is_put_into_the_section_in_view_where_a_click_says(
    sheet: MainWindow,
    qtbot: QtBot,
    hand,  # noqa: ANN001
) -> None:
    sheet.document.apply(
        "Draw", add_piece(sheet.document.project, 0, "felt", Line(((0.0, 0.0), (0.0, 500.0))))
    )
    steps = sheet.document.undo_stack.count()
    sheet.parts.begin("wall-base")
    button = sheet.views.sizes.buttons.itemAt(1).widget()
    assert "New section" in button.text()
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert len(sheet.document.project.sections) == 1
    assert sheet.place.index == 0
    hand.move((900.0, 900.0))
    assert sheet.canvas.tool.preview is not None
    hand.click((900.0, 900.0))
    (section,) = sheet.document.project.sections
    concrete = section.by_name["concrete-1-1"].shape
    assert isinstance(concrete, Area)
    assert max(y for _, y in concrete.outer) == pytest.approx(900.0, abs=8.0)
    assert sheet.document.undo_stack.count() == steps + 1


def test_sizes_still_change_what_was_put_in(sheet: MainWindow, qtbot: QtBot, hand) -> None:  # noqa: ANN001
    sheet.parts.begin("wall-base")
    sheet.parts.put_into()
    hand.click((900.0, 900.0))
    typed(qtbot, sheet, "insulation", "240")
    (section,) = sheet.document.project.sections
    widths = [
        max(x for x, _ in piece.shape.outer) - min(x for x, _ in piece.shape.outer)
        for piece in section.pieces
        if isinstance(piece.shape, Area)
    ]
    assert 240.0 in [pytest.approx(width, abs=0.01) for width in widths]
    sheet.do("undo")
    assert sheet.document.project.sections[0].pieces == ()


def test_the_outside_goes_to_the_other_side(window: MainWindow, qtbot: QtBot) -> None:
    window.parts.begin("eave")
    (section,) = window.document.project.sections
    button = window.views.sizes.buttons.itemAt(0).widget()
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    (turned,) = window.document.project.sections
    assert turned.outside[0][0] == -section.outside[0][0]


def test_escape_gives_the_placing_up(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    before = sheet.document.project
    sheet.parts.begin("wall-base")
    sheet.parts.put_into()
    hand.press(Qt.Key.Key_Escape)
    assert sheet.document.project is before
    assert sheet.toolbox.name == "select"
    assert sheet.views.sizes.isHidden()
