"""What the menus work on is what the window shows."""

from enclosure_app.window.main_window import MainWindow


def test_the_parts_are_those_of_the_window_itself(window: MainWindow) -> None:
    parts = window.commands.looking._parts  # noqa: SLF001  it is what is tried
    assert parts.window is window
    assert parts.document is window.document
    assert parts.canvas is window.canvas is window.views.canvas
    assert parts.findings is window.findings
    parts.show_ground("night")
    assert window.settings.ground == "night"
    parts.show_ground("day")
