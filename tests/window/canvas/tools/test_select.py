"""Picking, moving and deleting by mouse and keys."""

from collections.abc import Callable
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QMenu

from enclosure_app.model.edits import add_piece, remove_pieces
from enclosure_app.model.place import Area, Line
from enclosure_app.model.section import Stroke
from enclosure_app.window.main_window import MainWindow

Opened = Callable[..., MainWindow]


@pytest.fixture
def two(sheet: MainWindow) -> MainWindow:
    """Return a sheet with two upright runs."""
    project = sheet.document.project
    for x in (400.0, 900.0):
        project = add_piece(project, 0, "felt", Line(((x, 300.0), (x, 1500.0))))
    sheet.document.apply("Draw", project)
    return sheet


def test_a_click_picks_and_shift_picks_more(two: MainWindow, hand) -> None:  # noqa: ANN001
    hand.click((400.0, 800.0))
    assert two.place.picked == {"drawn-1"}
    hand.click((900.0, 800.0), Qt.KeyboardModifier.ShiftModifier)
    assert two.place.picked == {"drawn-1", "drawn-2"}
    hand.click((1500.0, 800.0))
    assert two.place.picked == frozenset()


def test_a_drag_moves_what_is_picked_in_one_step(two: MainWindow, hand) -> None:  # noqa: ANN001
    before = two.document.project
    hand.drag((400.0, 800.0), (450.0, 800.0), (500.0, 900.0), (600.0, 800.0))
    by = hand.at((600.0, 800.0))[0] - hand.at((400.0, 800.0))[0]
    assert two.document.project.sections[0].by_name["drawn-1"].shape.points[0] == pytest.approx(
        (400.0 + by, 300.0)
    )
    two.do("undo")
    assert two.document.project is before


def test_a_box_picks_what_lies_in_it_as_a_whole(two: MainWindow, hand) -> None:  # noqa: ANN001
    hand.drag((300.0, 1700.0), (400.0, 1000.0), (700.0, 100.0))
    assert two.place.picked == {"drawn-1"}
    hand.drag((1000.0, 1000.0), (500.0, 900.0), (300.0, 800.0))
    assert two.place.picked == frozenset()


def test_with_ctrl_a_box_picks_all_it_touches(two: MainWindow, hand) -> None:  # noqa: ANN001
    ctrl = Qt.KeyboardModifier.ControlModifier
    hand.drag((300.0, 1000.0), (600.0, 900.0), (1000.0, 800.0), keys=ctrl)
    assert two.place.picked == {"drawn-1", "drawn-2"}


def test_delete_takes_away_what_is_picked(two: MainWindow, hand) -> None:  # noqa: ANN001
    hand.click((900.0, 800.0))
    hand.press(Qt.Key.Key_Delete)
    assert list(two.document.project.sections[0].by_name) == ["drawn-1"]


def test_a_line_of_the_office_is_picked_and_given_a_product(opened: Opened, hand) -> None:  # noqa: ANN001
    window = opened()
    stroke = window.place.section.strokes[0]
    (ax, ay), (bx, by) = stroke.points[0], stroke.points[-1]
    window.canvas.go_to(((ax + bx) / 2, (ay + by) / 2), 60.0)
    window.place.pick((), (stroke.handle,))
    window.lines.choose("felt")
    window.do("give_product")
    piece = window.place.section.by_name[stroke.handle]
    assert (piece.product, piece.shape) == ("felt", Line(stroke.points))
    assert stroke not in window.place.section.strokes


@pytest.fixture
def lines(sheet: MainWindow) -> MainWindow:
    """Return a sheet with three lines of an office across a board."""
    project = add_piece(
        sheet.document.project,
        0,
        "osb",
        Area(((300.0, 300.0), (1700.0, 300.0), (1700.0, 1700.0), (300.0, 1700.0))),
    )
    strokes = tuple(
        Stroke(((x, 500.0), (x, 1500.0)), "A", handle)
        for x, handle in ((600.0, "1"), (900.0, "2"), (1200.0, "3"))
    )
    section = replace(project.sections[0], strokes=strokes)
    sheet.document.open(replace(project, sections=(section,)))
    return sheet


def test_a_line_is_meant_before_the_board_that_it_lies_on(lines: MainWindow, hand) -> None:  # noqa: ANN001
    hand.click((600.0, 800.0))
    assert (lines.place.picked, lines.place.picked_lines) == (frozenset(), {"1"})
    hand.click((750.0, 800.0))
    assert (lines.place.picked, lines.place.picked_lines) == ({"drawn-1"}, frozenset())


def test_shift_picks_more_lines_and_lets_go_of_one(lines: MainWindow, hand) -> None:  # noqa: ANN001
    shift = Qt.KeyboardModifier.ShiftModifier
    hand.click((600.0, 800.0))
    hand.click((900.0, 800.0), shift)
    assert lines.place.picked_lines == {"1", "2"}
    hand.click((600.0, 800.0), shift)
    assert lines.place.picked_lines == {"2"}


def test_a_box_that_holds_no_sheet_picks_the_lines_in_it_and_gives_them_at_once(
    lines: MainWindow,
    hand,  # noqa: ANN001
) -> None:
    lines.document.apply("Delete", remove_pieces(lines.document.project, 0, ["drawn-1"]))
    hand.drag((500.0, 1600.0), (700.0, 1000.0), (1000.0, 400.0))
    assert lines.place.picked_lines == {"1", "2"}
    lines.lines.choose("felt")
    hand.keys("g")
    assert {piece.name for piece in lines.place.section.pieces} == {"1", "2"}
    lines.do("undo")
    assert len(lines.place.section.strokes) == 3


def test_an_end_that_is_dragged_lands_on_another_end(two: MainWindow, hand) -> None:  # noqa: ANN001
    two.canvas.catching = True
    two.checking.check_now()
    hand.drag((402.0, 1502.0), (500.0, 1000.0), (897.0, 304.0))
    shape = two.document.project.sections[0].by_name["drawn-1"].shape
    assert shape.points == ((900.0, -900.0), (900.0, 300.0))


def test_ctrl_drags_a_copy(two: MainWindow, hand, qtbot) -> None:  # noqa: ANN001
    ctrl = Qt.KeyboardModifier.ControlModifier
    left = Qt.MouseButton.LeftButton
    qtbot.mousePress(two.canvas, left, ctrl, hand.dot((400.0, 800.0)))
    for x in (500.0, 600.0):
        hand.move((x, 800.0), ctrl)
    qtbot.mouseRelease(two.canvas, left, ctrl, hand.dot((600.0, 800.0)))
    names = list(two.document.project.sections[0].by_name)
    assert names == ["drawn-1", "drawn-2", "copy-1"]
    assert two.document.undo_stack.undoText() == "Copy"
    two.do("undo")
    assert list(two.document.project.sections[0].by_name) == names[:2]


def test_escape_takes_a_drag_back(two: MainWindow, hand, qtbot) -> None:  # noqa: ANN001
    before, steps = two.document.project, two.document.undo_stack.count()
    qtbot.mousePress(two.canvas, Qt.MouseButton.LeftButton, pos=hand.dot((400.0, 800.0)))
    hand.move((600.0, 900.0))
    assert two.document.project is not before
    hand.press(Qt.Key.Key_Escape)
    assert two.document.project is before
    assert two.document.undo_stack.count() == steps


def test_shift_drags_straight_across(two: MainWindow, hand, qtbot) -> None:  # noqa: ANN001
    shift = Qt.KeyboardModifier.ShiftModifier
    qtbot.mousePress(two.canvas, Qt.MouseButton.LeftButton, pos=hand.dot((400.0, 1500.0)))
    hand.move((600.0, 1515.0), shift)
    hand.move((700.0, 1520.0), shift)
    shape = two.document.project.sections[0].by_name["drawn-1"].shape
    assert shape.points[0][1] == pytest.approx(300.0)
    assert shape.points[0][0] == pytest.approx(700.0, abs=8.0)


def test_a_double_click_goes_on_with_its_points(two: MainWindow, hand) -> None:  # noqa: ANN001
    hand.click((400.0, 800.0))
    hand.double((400.0, 800.0))
    assert two.toolbox.name == "points"
    hand.drag((400.0, 1500.0), (500.0, 1500.0), (600.0, 1400.0))
    assert two.document.project.sections[0].by_name["drawn-1"].shape.points[1] == pytest.approx(
        hand.at((600.0, 1400.0))
    )


def test_a_menu_is_about_the_piece_under_the_mouse(two: MainWindow, hand, qtbot) -> None:  # noqa: ANN001
    two.place.pick(("drawn-1",))
    qtbot.mouseClick(two.canvas, Qt.MouseButton.RightButton, pos=hand.dot((900.0, 800.0)))
    assert two.place.picked == {"drawn-2"}
    menu = QApplication.activePopupWidget()
    assert isinstance(menu, QMenu)
    assert two.actions_by_name["delete"] in menu.actions()
    menu.close()
