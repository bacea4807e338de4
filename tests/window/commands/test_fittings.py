"""What the menus work on is what the window shows."""

from enclosure_app.window.main_window import MainWindow


def test_the_parts_are_those_of_the_window_itself(window: MainWindow) -> None:
    fittings = window.commands.looking._fittings  # noqa: SLF001  it is what is tried
    assert fittings.window is window
    assert fittings.document is window.document
    assert fittings.canvas is window.canvas is window.views.canvas
    assert fittings.findings is window.findings
    fittings.show_ground("night")
    assert window.settings.ground == "night"
    fittings.show_ground("day")
