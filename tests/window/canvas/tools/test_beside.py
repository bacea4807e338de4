"""A sheet beside a board, a sheet, or a line of the office."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt

from enclosure_app.model.place import Line
from enclosure_app.model.section import Stroke
from enclosure_app.window.main_window import MainWindow

SHIFT = Qt.KeyboardModifier.ShiftModifier


def drawn(window: MainWindow):  # noqa: ANN201
    piece = window.document.project.sections[0].pieces[-1]
    assert piece.product == "self-adhered-sheet"
    return piece.shape


@pytest.mark.parametrize(("mouse", "x"), [(1394.0, 1397.0), (1420.0, 1415.0)])
def test_the_face_under_the_mouse_is_followed_on_its_side(
    crossed: MainWindow,
    hand,  # noqa: ANN001
    mouse: float,
    x: float,
) -> None:
    crossed.do("tool_beside")
    hand.move((mouse, 700.0))
    assert crossed.canvas.tool.told == "3 mm"
    hand.click((mouse, 700.0))
    assert {round(px, 6) for px, _ in drawn(crossed).points} == {x}
    assert {y for _, y in drawn(crossed).points} == {300.0, 1500.0}
    assert crossed.document.undo_stack.undoText().startswith("Draw Self-adhered")


def test_another_distance_is_typed_and_holds_for_sheets_too(crossed: MainWindow, hand) -> None:  # noqa: ANN001
    crossed.do("tool_beside")
    hand.move((1394.0, 700.0))
    hand.keys('1/4"')
    hand.press(Qt.Key.Key_Return)
    hand.click((1394.0, 700.0))
    assert drawn(crossed).points[0][0] == pytest.approx(1400.0 - 6.35)
    assert crossed.place.aids.beside == pytest.approx(6.35)


def test_shift_goes_all_round_a_board(crossed: MainWindow, hand) -> None:  # noqa: ANN001
    crossed.do("tool_beside")
    hand.click((1394.0, 700.0), SHIFT)
    line = drawn(crossed)
    assert isinstance(line, Line)
    assert line.closed
    assert min(x for x, _ in line.points) == pytest.approx(1397.0)
    assert max(y for _, y in line.points) == pytest.approx(1503.0)


def test_a_line_of_the_office_is_followed_as_a_whole(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    stroke = Stroke(((400.0, 300.0), (400.0, 900.0), (1000.0, 900.0)), "A", "1")
    project = sheet.document.project
    section = replace(project.sections[0], strokes=(stroke,))
    sheet.document.open(replace(project, sections=(section,)))
    sheet.do("tool_beside")
    hand.click((393.0, 600.0))
    points = drawn(sheet).points
    assert list(points) == [
        pytest.approx((397.0, 300.0)),
        pytest.approx((397.0, 903.0)),
        pytest.approx((1000.0, 903.0)),
    ]


def test_without_a_product_it_says_what_is_missing(crossed: MainWindow, hand) -> None:  # noqa: ANN001
    crossed.place.product = "no-such"
    crossed.do("tool_beside")
    hand.move((1394.0, 700.0))
    assert "Choose a product" in crossed.views.hint.text()
    hand.click((1394.0, 700.0))
    assert "Choose a product" in crossed.messages.words.text()
