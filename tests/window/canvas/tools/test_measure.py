"""Measuring from place to place."""

from PySide6.QtCore import Qt

from enclosure_app.window.main_window import MainWindow


def test_the_length_across_and_up_and_the_angle_are_told(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    before = sheet.document.project
    sheet.do("tool_measure")
    for text in ("200; 500", "500; 900"):
        hand.keys(text)
        hand.press(Qt.Key.Key_Return)
    told = sheet.views.hint.text()
    assert told == "500 mm   across 300 mm   up 400 mm   ∠ 53.1°"
    assert sheet.document.project is before


def test_a_third_click_measures_anew_and_escape_forgets(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("tool_measure")
    for place in ((200.0, 500.0), (1200.0, 500.0), (300.0, 300.0)):
        hand.click(place)
    hand.move((300.0, 700.0))
    assert "∠ 90.0°" in sheet.views.hint.text()
    hand.press(Qt.Key.Key_Escape)
    assert sheet.views.hint.text() == "Click the place to measure from."
    assert sheet.toolbox.name == "measure"
