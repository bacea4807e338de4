"""A part that hangs from the mouse."""

from enclosure_app.files.maps.catalogue import load_products
from enclosure_app.planning.parts import part
from enclosure_app.window.canvas.tools.place_part import PlacePart
from enclosure_app.window.main_window import MainWindow


def test_a_part_is_seen_at_the_mouse_and_a_click_says_where(
    sheet: MainWindow,
    hand,  # noqa: ANN001
    qtbot,  # noqa: ANN001
) -> None:
    sheet.toolbox.take("part")
    tool = sheet.canvas.tool
    assert isinstance(tool, PlacePart)
    assert "Choose a part" in tool.hint
    tool.hold(part("ridge", load_products()))
    hand.move((800.0, 900.0))
    assert tool.preview is not None
    assert len(tool.preview.come) == len(part("ridge", load_products()).pieces)
    with qtbot.waitSignal(tool.put) as heard:
        hand.click((800.0, 900.0))
    assert heard.args == [hand.at((800.0, 900.0))]
