"""Marking the sides."""

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


def test_a_mark_is_dragged_in_one_step(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("tool_outside")
    hand.click((300.0, 700.0))
    steps = sheet.document.undo_stack.count()
    sheet.do("tool_outside")
    hand.drag((300.0, 700.0), (400.0, 800.0), (600.0, 1200.0))
    assert sheet.document.project.sections[0].outside == (hand.at((600.0, 1200.0)),)
    assert sheet.document.undo_stack.count() == steps + 1
    assert sheet.document.undo_stack.undoText() == "Move the mark"


def test_a_mark_is_typed(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("tool_inside")
    hand.keys("1500; 0.7 m")
    hand.keys("\r")
    assert sheet.document.project.sections[0].inside == ((1500.0, 700.0),)
