"""Changes that are seen before they are done."""

from enclosure_app.window.main_window import MainWindow


def test_nothing_changes_while_the_mouse_only_passes(crossed: MainWindow, hand) -> None:  # noqa: ANN001
    before = crossed.document.project
    crossed.do("tool_cut")
    hand.move((400.0, 1000.0))
    assert crossed.canvas.tool.preview is not None
    hand.move((600.0, 1000.0))
    assert crossed.canvas.tool.preview is None
    assert crossed.document.project is before


def test_a_click_does_what_is_true_then_and_not_what_was_shown(
    crossed: MainWindow,
    hand,  # noqa: ANN001
    section,  # noqa: ANN001
) -> None:
    crossed.do("tool_cut")
    hand.move((400.0, 1000.0))
    crossed.do("undo")
    assert section().pieces == ()
    hand.click((400.0, 1000.0))
    assert section().pieces == ()
    assert crossed.canvas.tool.preview is None
