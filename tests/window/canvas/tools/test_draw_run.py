"""Drawing a sheet by mouse and keys."""

import pytest
from PySide6.QtCore import Qt

from enclosure_app.model.edits import add_piece
from enclosure_app.model.place import Area, Line
from enclosure_app.window.main_window import MainWindow


def drawn(window: MainWindow):  # noqa: ANN201
    return window.document.project.sections[0].pieces


def test_a_sheet_is_drawn_from_click_to_click(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("tool_sheet")
    places = [(200.0, 200.0), (200.0, 900.0), (700.0, 1200.0)]
    for place in places:
        hand.click(place)
    hand.press(Qt.Key.Key_Return)
    (piece,) = drawn(sheet)
    assert piece.product == "self-adhered-sheet"
    assert isinstance(piece.shape, Line)
    assert piece.shape.points == tuple(hand.at(place) for place in places)
    assert sheet.document.undo_stack.undoText().startswith("Draw Self-adhered sheet")


@pytest.mark.parametrize(
    ("typed", "end"),
    [
        ("600", (800.0, 200.0)),
        ("600 at 90", (200.0, 800.0)),
        ("2' at 90", (200.0, 809.6)),
        ("0.5 m", (700.0, 200.0)),
        ("at 0", None),
    ],
)
def test_a_length_that_is_typed_is_kept_to_the_hair(
    sheet: MainWindow,
    hand,  # noqa: ANN001
    typed: str,
    end: tuple[float, float] | None,
) -> None:
    sheet.do("tool_sheet")
    hand.click((200.0, 200.0))
    start = hand.at((200.0, 200.0))
    hand._qtbot.mouseMove(hand.canvas, hand.dot((1000.0, 200.0)))  # noqa: SLF001
    hand.keys(typed)
    hand.press(Qt.Key.Key_Return)
    hand.press(Qt.Key.Key_Return)
    (piece,) = drawn(sheet)
    there = piece.shape.points[1]
    if end is None:
        assert there[1] == pytest.approx(start[1])
    else:
        moved = (end[0] - 200.0 + start[0], end[1] - 200.0 + start[1])
        assert there == pytest.approx(moved)
    assert sheet.toolbox.name == "sheet"


def test_what_cannot_be_read_is_told_and_the_run_goes_on(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("tool_sheet")
    hand.click((200.0, 200.0))
    hand.keys("1/0")
    hand.press(Qt.Key.Key_Return)
    assert "is no length" in sheet.messages.words.text()
    hand.click((200.0, 900.0))
    hand.press(Qt.Key.Key_Return)
    assert len(drawn(sheet)[0].shape.points) == 2


def test_backspace_takes_the_last_point_back_and_escape_all(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("tool_sheet")
    for place in ((200.0, 200.0), (200.0, 900.0), (900.0, 900.0)):
        hand.click(place)
    hand.press(Qt.Key.Key_Backspace)
    hand.press(Qt.Key.Key_Return)
    assert len(drawn(sheet)[0].shape.points) == 2
    hand.click((300.0, 200.0))
    hand.press(Qt.Key.Key_Escape)
    hand.press(Qt.Key.Key_Return)
    assert len(drawn(sheet)) == 1


def test_shift_keeps_to_fifteen_degrees(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("tool_sheet")
    hand.click((200.0, 200.0))
    hand.click((900.0, 230.0), Qt.KeyboardModifier.ShiftModifier)
    hand.press(Qt.Key.Key_Return)
    a, b = drawn(sheet)[0].shape.points
    assert b[1] == pytest.approx(a[1])


def test_ends_are_caught(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.canvas.catching = True
    sheet.do("tool_sheet")
    for place in ((200.0, 200.0), (200.0, 900.0)):
        hand.click(place)
    hand.press(Qt.Key.Key_Return)
    end = drawn(sheet)[0].shape.points[1]
    sheet.checking.check_now()
    hand.click((203.0, 903.0))
    hand.click((900.0, 1400.0))
    hand.press(Qt.Key.Key_Return)
    assert drawn(sheet)[1].shape.points[0] == end


def test_without_a_product_it_says_what_is_missing(window: MainWindow, hand) -> None:  # noqa: ANN001
    window.filing.new_sheet()
    window.place.product = "no-such"
    window.do("tool_sheet")
    hand.click((200.0, 200.0))
    assert "Choose a product" in window.messages.words.text()


@pytest.mark.parametrize(
    ("product", "width"),
    [("flashing-tape", 0.7), ("sill-gasket", 6.0), ("sealant", 8.0), ("felt", 0.0)],
)
def test_tapes_and_beads_are_drawn_as_thick_as_they_are(
    sheet: MainWindow,
    hand,  # noqa: ANN001
    product: str,
    width: float,
) -> None:
    sheet.place.aid(bead=8.0)
    sheet.lines.choose(product)
    sheet.do("tool_sheet")
    hand.click((200.0, 200.0))
    hand.click((200.0, 300.0))
    hand.press(Qt.Key.Key_Return)
    (piece,) = drawn(sheet)
    assert (piece.product, piece.shape.width) == (product, width)


def test_a_distance_typed_before_the_first_point_is_how_far_off_boards_sheets_go(
    sheet: MainWindow,
    hand,  # noqa: ANN001
) -> None:
    board = Area(((700.0, 200.0), (712.0, 200.0), (712.0, 1500.0), (700.0, 1500.0)))
    sheet.document.apply("Draw", add_piece(sheet.document.project, 0, "plywood", board))
    sheet.canvas.catching = True
    sheet.do("tool_sheet")
    hand.keys("5")
    hand.press(Qt.Key.Key_Return)
    hand.click((690.0, 210.0))
    hand.click((690.0, 1490.0))
    hand.press(Qt.Key.Key_Return)
    assert list(drawn(sheet)[1].shape.points) == [
        pytest.approx((695.0, 200.0)),
        pytest.approx((695.0, 1500.0)),
    ]


def test_angles_are_kept_without_shift_once_that_is_switched_on(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("keep_angles")
    sheet.do("tool_sheet")
    hand.click((200.0, 200.0))
    hand.click((900.0, 230.0))
    hand.click((930.0, 900.0), Qt.KeyboardModifier.ShiftModifier)
    hand.press(Qt.Key.Key_Return)
    a, b, c = drawn(sheet)[0].shape.points
    assert b[1] == pytest.approx(a[1])
    assert c == pytest.approx(hand.at((930.0, 900.0)))  # Shift does the opposite


def test_the_next_stretch_is_kept_square_to_the_last(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("tool_sheet")
    hand.click((200.0, 200.0))
    hand.keys("700 at 22")
    hand.press(Qt.Key.Key_Return)
    bx, by = drawn_to(sheet)
    hand.click((bx - 300.0, by + 745.0), Qt.KeyboardModifier.ShiftModifier)
    hand.press(Qt.Key.Key_Return)
    a, b, c = drawn(sheet)[0].shape.points
    assert (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1]) == pytest.approx(
        0, abs=1e-6
    )


def drawn_to(window: MainWindow) -> tuple[float, float]:
    anchor = window.canvas.tool.anchor
    assert anchor is not None
    return anchor
