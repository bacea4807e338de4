"""A picture is brought to scale by two clicks and a typed length, with real mouse and keys."""

from io import BytesIO
from math import dist

import pytest
from PIL import Image
from PySide6.QtCore import Qt

from enclosure_app.model import edits
from enclosure_app.model.place import Line
from enclosure_app.model.section import Stroke
from enclosure_app.model.underlay import Underlay
from enclosure_app.window.main_window import MainWindow

LINES = edits.PageLines((Stroke(((100.0, 100.0), (100.0, 300.0))),))


@pytest.fixture
def page(sheet: MainWindow) -> MainWindow:
    """Return a window on a picture of 400 by 400 mm with one line, 200 mm long, on it."""
    held = BytesIO()
    Image.new("L", (400, 400), 220).save(held, "PNG")
    name = sheet.document.project.sections[0].name
    under = Underlay(
        "scan.png", "png", held.getvalue(), size=(400.0, 400.0), paper_mm=1.0, section=name
    )
    sheet.document.apply("", edits.add_underlay(sheet.document.project, under, LINES))
    sheet.checking.check_now()
    sheet.canvas.fit()
    return sheet


def under(window: MainWindow) -> Underlay:
    return window.document.project.underlays[0]


def stroke(window: MainWindow):  # noqa: ANN201
    return window.document.project.sections[0].strokes[0].points


def scale(window: MainWindow, hand, typed: str, *places: tuple[float, float]) -> None:  # noqa: ANN001
    window.do("tool_scale")
    for place in places:
        hand.click(place)
    hand.keys(typed)
    hand.press(Qt.Key.Key_Return)


ENDS = ((100.0, 100.0), (100.0, 300.0))


def test_two_clicks_and_a_length_scale_the_picture_and_its_lines(page: MainWindow, hand) -> None:  # noqa: ANN001
    page.canvas.catching = True
    scale(page, hand, "2400", *ENDS)
    assert under(page).to_scale
    assert under(page).mm_per_pixel == pytest.approx(12.0)
    assert dist(*stroke(page)) == pytest.approx(2400.0)
    assert stroke(page)[0] == (100.0, 100.0)  # the end was caught, to the hair
    assert page.document.project.sections[0].frame[0] == under(page).at
    assert page.toolbox.name == "select"
    assert page.canvas.camera.zoom < 1  # all of it is in view again
    page.do("undo")
    assert not under(page).to_scale
    assert dist(*stroke(page)) == pytest.approx(200.0)


@pytest.mark.parametrize(
    ("typed", "mm"), [("8'", 2438.4), ("3' 4 1/2\"", 1028.7), ("2.4 m", 2400)]
)
def test_lengths_are_typed_as_builders_do(page: MainWindow, hand, typed: str, mm: float) -> None:  # noqa: ANN001
    page.canvas.catching = True
    scale(page, hand, typed, *ENDS)
    assert dist(*stroke(page)) == pytest.approx(mm)


@pytest.mark.parametrize("ends", [ENDS, ENDS[::-1]])
def test_a_direction_lays_the_line_level_whichever_end_was_clicked_first(
    page: MainWindow,
    hand,  # noqa: ANN001
    ends: tuple[tuple[float, float], tuple[float, float]],
) -> None:
    page.canvas.catching = True
    scale(page, hand, "2400 at 80", *ends)
    (ax, ay), (bx, by) = stroke(page)
    assert dist((ax, ay), (bx, by)) == pytest.approx(2400.0)
    assert by - ay == pytest.approx(2400.0 * 0.984808)  # sine of 80 degrees
    assert under(page).angle == pytest.approx(-10.0)


def test_what_is_no_length_is_told_and_the_places_stay(page: MainWindow, hand) -> None:  # noqa: ANN001
    scale(page, hand, "5..2", *ENDS)
    assert "is no length" in page.messages.words.text()
    assert not under(page).to_scale
    hand.keys("500")
    assert "500" in page.views.hint.text()
    hand.press(Qt.Key.Key_Return)
    assert under(page).to_scale


def test_an_angle_alone_is_no_scale(page: MainWindow, hand) -> None:  # noqa: ANN001
    page.do("tool_scale")
    for place in ENDS:
        hand.click(place)
    hand.keys("@ 0")
    hand.press(Qt.Key.Key_Return)
    assert not under(page).to_scale


def test_steps_are_taken_back_one_by_one(page: MainWindow, hand) -> None:  # noqa: ANN001
    page.do("tool_scale")
    for place in ENDS:
        hand.click(place)
    hand.keys("50")
    hand.press(Qt.Key.Key_Backspace)
    hand.press(Qt.Key.Key_Escape)
    assert "Type how far apart" in page.views.hint.text()
    hand.press(Qt.Key.Key_Backspace)
    assert "Click the other end" in page.views.hint.text()
    hand.press(Qt.Key.Key_Escape)
    assert "Click one end" in page.views.hint.text()


def test_a_locked_picture_stays(page: MainWindow, hand) -> None:  # noqa: ANN001
    page.document.apply("", edits.show_underlay(page.document.project, 0, locked=True))
    page.do("tool_scale")
    hand.click(ENDS[0])
    assert "put one under the drawing, or unlock it" in page.messages.words.text()


def test_what_was_drawn_by_hand_is_offered_to_go_along(page: MainWindow, hand, qtbot) -> None:  # noqa: ANN001
    project = edits.add_piece(page.document.project, 0, page.place.product, Line(ENDS))
    page.document.apply("", project)
    scale(page, hand, "2400", *ENDS)
    piece = page.document.project.sections[0].pieces[0]
    assert dist(*piece.shape.points) == pytest.approx(200.0)
    assert "has kept its size" in page.messages.words.text()
    button = page.messages.answers.itemAt(0).widget()
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    piece = page.document.project.sections[0].pieces[0]
    assert dist(*piece.shape.points) == pytest.approx(2400.0, rel=0.02)
    page.do("undo")
    page.do("undo")
    assert page.document.project is project


def test_it_shows_what_is_typed_beside_the_line(page: MainWindow, hand) -> None:  # noqa: ANN001
    page.do("tool_scale")
    before = page.canvas.grab().toImage()
    for place in ENDS:
        hand.click(place)
    hand.keys("120")
    after = page.canvas.grab().toImage()
    middle = page.canvas.camera.seen((100.0, 200.0)).toPoint()
    assert before.pixel(middle) != after.pixel(middle)


def test_a_picture_without_any_is_said(sheet: MainWindow, hand) -> None:  # noqa: ANN001
    sheet.do("tool_scale")
    assert "There is no picture" in sheet.views.hint.text()
    hand.click((100.0, 100.0))
    assert "No picture here" in sheet.messages.words.text()
