"""Drawing a board by mouse and keys."""

import pytest
from PySide6.QtCore import Qt

from enclosure_app.model.place import Area
from enclosure_app.window.main_window import MainWindow


@pytest.fixture
def board(sheet: MainWindow) -> MainWindow:
    sheet.lines.choose("plywood")
    sheet.do("tool_area")
    return sheet


def drawn(window: MainWindow):  # noqa: ANN201
    return window.document.project.sections[0].pieces


def test_it_is_closed_by_a_double_click(board: MainWindow, hand) -> None:  # noqa: ANN001
    corners = [(200.0, 200.0), (230.0, 200.0), (230.0, 900.0), (200.0, 900.0)]
    for place in corners:
        hand.click(place)
    hand.double(corners[-1])
    (piece,) = drawn(board)
    assert piece.shape == Area(tuple(hand.at(place) for place in corners))


def test_it_is_closed_by_a_click_on_its_first_corner(board: MainWindow, hand) -> None:  # noqa: ANN001
    corners = [(200.0, 200.0), (700.0, 200.0), (700.0, 900.0)]
    for place in (*corners, (206.0, 206.0)):
        hand.click(place)
    (piece,) = drawn(board)
    assert piece.shape == Area(tuple(hand.at(place) for place in corners))
    assert board.canvas.tool.points == []


@pytest.mark.parametrize(
    ("mouse", "faces"), [((100.0, 500.0), (188.0, 200.0)), ((900.0, 500.0), (200.0, 212.0))]
)
def test_two_corners_make_one_as_thick_as_its_product_on_the_side_of_the_mouse(
    board: MainWindow,
    hand,  # noqa: ANN001
    mouse: tuple[float, float],
    faces: tuple[float, float],
) -> None:
    thick = board.document.project.sections[0].products["plywood"].thickness_mm
    for text in ("200; 200", "200; 1400"):
        hand.keys(text)
        hand.press(Qt.Key.Key_Return)
    hand.move(mouse)
    assert "thick, on the side of the mouse" in board.views.hint.text()
    hand.press(Qt.Key.Key_Return)
    (piece,) = drawn(board)
    xs = sorted({round(x, 6) for x, _ in piece.shape.outer})
    assert len(xs) == 2
    assert xs[1] - xs[0] == pytest.approx(thick)
    assert (xs[0] < 200.0) is (faces[0] < 200.0)
    assert {y for _, y in piece.shape.outer} == {200.0, 1400.0}


def test_boards_touch_boards(board: MainWindow, hand) -> None:  # noqa: ANN001
    for text in ("200; 200", "600; 200", "600; 900", "200; 900", ""):
        hand.keys(text)
        hand.press(Qt.Key.Key_Return)
    board.canvas.catching = True
    hand.click((610.0, 205.0))
    assert board.canvas.tool.points == [(600.0, 200.0)]


def test_an_outline_that_crosses_itself_is_told_and_can_be_mended(
    board: MainWindow,
    hand,  # noqa: ANN001
) -> None:
    for place in ((200.0, 200.0), (700.0, 900.0), (700.0, 200.0), (200.0, 900.0)):
        hand.click(place)
    hand.press(Qt.Key.Key_Return)
    assert drawn(board) == ()
    assert "must not cross itself" in board.messages.words.text()
    hand.press(Qt.Key.Key_Backspace)
    hand.press(Qt.Key.Key_Return)
    (piece,) = drawn(board)
    assert len(piece.shape.outer) == 3


def test_two_corners_of_what_has_no_thickness_wait_for_a_third(board: MainWindow, hand) -> None:  # noqa: ANN001
    board.lines.choose("soil")
    hand.click((200.0, 200.0))
    hand.click((200.0, 900.0))
    hand.press(Qt.Key.Key_Return)
    assert "No thickness is known" in board.messages.words.text()
    hand.click((700.0, 900.0))
    hand.press(Qt.Key.Key_Return)
    assert len(drawn(board)) == 1
