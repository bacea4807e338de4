"""Marking the sides, the frame, and measuring."""

import pytest

from enclosure_app.window.main_window import MainWindow


def test_a_click_marks_a_side_and_a_click_on_the_mark_takes_it_away(
    sheet: MainWindow,
    hand,  # noqa: ANN001
) -> None:
    sheet.do("tool_outside")
    hand.click((300.0, 700.0))
    section = sheet.document.project.sections[0]
    assert section.outside == (hand.at((300.0, 700.0)),)
    assert sheet.toolbox.name == "select"
    sheet.do("tool_outside")
    hand.click((300.0, 700.0))
    assert sheet.document.project.sections[0].outside == ()


def test_inside_is_marked_as_inside(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("tool_inside")
    hand.click((1300.0, 700.0))
    section = sheet.document.project.sections[0]
    assert (section.inside, section.outside) == ((hand.at((1300.0, 700.0)),), ())


def test_a_drag_sets_the_frame(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("tool_frame")
    hand.drag((300.0, 1500.0), (600.0, 900.0), (1500.0, 400.0))
    (left, bottom), _, (right, top), _ = sheet.document.project.sections[0].frame
    assert (left, top) == pytest.approx(hand.at((300.0, 1500.0)))
    assert (right, bottom) == pytest.approx(hand.at((1500.0, 400.0)))


def test_measuring_says_the_length_and_changes_nothing(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    before = sheet.document.project
    sheet.do("tool_measure")
    hand.click((200.0, 500.0))
    hand.click((1200.0, 500.0))
    assert "across" in sheet.views.hint.text()
    assert "∠ 0.0°" in sheet.views.hint.text()
    assert sheet.document.project is before
