"""A picture is moved and turned by pairs of places, with real mouse and keys."""

from io import BytesIO

import pytest
from PIL import Image
from PySide6.QtCore import Qt

from enclosure_app.model import edits
from enclosure_app.model.underlay import Underlay
from enclosure_app.window.main_window import MainWindow


@pytest.fixture
def page(sheet: MainWindow) -> MainWindow:
    """Return a window on an empty sheet with a picture of 400 by 400 mm in its corner."""
    held = BytesIO()
    Image.new("L", (400, 400), 220).save(held, "PNG")
    name = sheet.document.project.sections[0].name
    project = edits.add_mark(sheet.document.project, 0, edits.Side.INSIDE, (1500.0, 1500.0))
    under = Underlay("scan.png", "png", held.getvalue(), size=(400.0, 400.0), section=name)
    sheet.document.apply("", edits.add_underlay(project, under))
    sheet.checking.check_now()
    sheet.canvas.fit()
    return sheet


def under(window: MainWindow) -> Underlay:
    return window.document.project.underlays[0]


def near(window: MainWindow, place: tuple[float, float]) -> object:
    return pytest.approx(place, abs=2.0 / window.canvas.camera.zoom)  # mm: two dots


def test_two_clicks_move_it(page: MainWindow, hand) -> None:  # noqa: ANN001
    page.do("tool_lay")
    hand.click((100.0, 100.0))
    hand.click((600.0, 900.0))
    assert under(page).at == near(page, (500.0, 800.0))
    assert page.toolbox.name == "lay"
    page.do("undo")
    assert under(page).at == (0.0, 0.0)


def test_a_drag_moves_it(page: MainWindow, hand) -> None:  # noqa: ANN001
    page.do("tool_lay")
    hand.drag((100.0, 100.0), (300.0, 500.0), (600.0, 900.0))
    assert under(page).at == near(page, (500.0, 800.0))


def test_a_second_pair_turns_it_about_the_first_and_all_undoes_as_one_step(
    page: MainWindow,
    hand,  # noqa: ANN001
) -> None:
    page.do("tool_lay")
    hand.click((100.0, 100.0))
    hand.click((600.0, 900.0))
    hand.click((800.0, 900.0))
    hand.click((600.0, 1200.0))
    assert under(page).angle == pytest.approx(90.0, abs=0.5)
    assert under(page).mm_per_pixel == pytest.approx(1.0)
    assert not under(page).to_scale
    # the place that was 100, 100 of the picture lies where it was put
    assert under(page).at == near(page, (700.0, 800.0))
    assert page.toolbox.name == "select"
    page.do("undo")
    assert (under(page).at, under(page).angle) == ((0.0, 0.0), 0.0)


def test_with_shift_two_pairs_bring_it_to_scale(page: MainWindow, hand) -> None:  # noqa: ANN001
    page.do("tool_lay")
    hand.click((0.0, 0.0))
    hand.click((600.0, 600.0))
    hand.click((1000.0, 600.0))
    hand.click((1400.0, 600.0), Qt.KeyboardModifier.ShiftModifier)
    assert under(page).to_scale
    assert under(page).mm_per_pixel == pytest.approx(2.0, rel=0.02)


def test_escape_leaves_it_as_it_lies(page: MainWindow, hand) -> None:  # noqa: ANN001
    page.do("tool_lay")
    hand.click((100.0, 100.0))
    hand.press(Qt.Key.Key_Escape)
    assert "Click a place on the picture, then" in page.views.hint.text()
    hand.click((100.0, 100.0))
    hand.click((600.0, 900.0))
    assert "Click a second place" in page.views.hint.text()
    hand.press(Qt.Key.Key_Escape)
    assert under(page).at == near(page, (500.0, 800.0))
    assert "Click a place on the picture, then" in page.views.hint.text()


def test_the_edge_is_shown_before_it_is_set_down(page: MainWindow, hand, qtbot) -> None:  # noqa: ANN001
    page.do("tool_lay")
    hand.click((200.0, 200.0))
    qtbot.mouseMove(page.canvas, hand.dot((1000.0, 900.0)))
    shown = page.canvas.grab().toImage()
    top = page.canvas.camera.seen((1000.0, 1100.0)).toPoint()
    around = {
        shown.pixelColor(top.x() + dx, top.y() + dy).name() for dx in range(9) for dy in (-1, 0, 1)
    }
    assert any(name not in ("#ffffff",) for name in around)


def test_a_locked_or_missing_picture_is_said(page: MainWindow, hand) -> None:  # noqa: ANN001
    page.document.apply("", edits.show_underlay(page.document.project, 0, locked=True))
    page.do("tool_lay")
    hand.click((100.0, 100.0))
    assert "lies under the drawing and is not locked" in page.messages.words.text()
    assert "no picture under the drawing that could be moved" in page.views.hint.text()
