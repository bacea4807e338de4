"""Pictures under the drawing: at their place, pale, quick to pan, sharp when looked at closely."""

from dataclasses import replace
from io import BytesIO
from statistics import median
from time import perf_counter

import pytest
from PIL import Image
from PySide6.QtCore import QObject, QPointF, QSizeF
from PySide6.QtGui import QColor, QImage
from pytestqt.qtbot import QtBot

from enclosure_app.model import edits
from enclosure_app.model.drawing import Units
from enclosure_app.model.place import Point
from enclosure_app.model.project import Project
from enclosure_app.model.section import Section, Text
from enclosure_app.model.underlay import Underlay
from enclosure_app.window.canvas.camera import Camera
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.canvas.underlay.layer import (
    UnderlayLayer,
    lying_under,
    placed,
    seen_part,
    without_texts_of,
)
from enclosure_app.window.judging import unjudged
from enclosure_app.window.main_window import MainWindow
from tests.made_pdf import made_pdf

PAPER, NIGHT = Look(), Look(dark=True)
RED_CORNER = "1 0 0 rg 0 0 100 100 re f"


def page(content: str = RED_CORNER, **more: object) -> Underlay:
    return Underlay("a.pdf", "pdf", made_pdf(content), size=(420.0, 595.0), **more)  # type: ignore[arg-type]


def black(**more: object) -> Underlay:
    held = BytesIO()
    Image.new("L", (100, 50), 0).save(held, "PNG")
    return Underlay("a.png", "png", held.getvalue(), size=(100.0, 50.0), **more)  # type: ignore[arg-type]


def painted(
    qtbot: QtBot, underlays: tuple[Underlay, ...], camera: Camera, look: Look = PAPER
) -> QImage:
    """Return the picture once nothing better is to come."""
    parent = QObject()
    layer = UnderlayLayer(parent)
    image = QImage(camera.size.toSize(), QImage.Format.Format_RGB32)
    for _ in range(3):
        image.fill(QColor(look.theme.paper))
        list(layer.paint(image, camera, underlays, look))
        qtbot.waitUntil(lambda: layer.at_rest, timeout=5000)
    return image


def at(image: QImage, camera: Camera, place: Point) -> tuple[int, int, int]:
    dot = camera.seen(place).toPoint()
    colour = QColor(image.pixel(dot))
    return (colour.red(), colour.green(), colour.blue())


CAMERA = Camera((50.0, 50.0), 2.0, QSizeF(400, 300))


def test_a_picture_lies_where_it_should_as_pale_as_the_theme_has_it(qtbot: QtBot) -> None:
    image = painted(qtbot, (black(at=(10.0, 20.0)),), CAMERA)
    share = PAPER.theme.underlay
    assert at(image, CAMERA, (60, 45)) == pytest.approx((255 * (1 - share),) * 3, abs=2)
    for outside in ((5, 45), (115, 45), (60, 15), (60, 75)):
        assert at(image, CAMERA, outside) == (255, 255, 255)


def test_half_the_strength_is_half_as_dark(qtbot: QtBot) -> None:
    image = painted(qtbot, (black(strength=0.5),), CAMERA)
    assert at(image, CAMERA, (50, 25)) == pytest.approx(
        (255 * (1 - PAPER.theme.underlay / 2),) * 3, abs=2
    )


def test_a_turned_and_scaled_picture_covers_its_outline(qtbot: QtBot) -> None:
    under = black(at=(60.0, 20.0), angle=90.0, mm_per_pixel=0.5)
    image = painted(qtbot, (under,), CAMERA)
    assert under.outline[2] == pytest.approx((35, 70))
    assert at(image, CAMERA, (38, 66))[0] < 200
    assert at(image, CAMERA, (58, 22))[0] < 200
    assert at(image, CAMERA, (62, 22)) == (255, 255, 255)


def test_a_page_is_the_right_way_up(qtbot: QtBot) -> None:
    camera = Camera((210.0, 297.0), 0.5, QSizeF(400, 400))
    image = painted(qtbot, (page(),), camera)
    assert at(image, camera, (50, 50))[1] < 200
    assert at(image, camera, (50, 550)) == (255, 255, 255)


def test_by_night_white_paper_is_as_dark_as_the_sheet(qtbot: QtBot) -> None:
    camera = Camera((210.0, 297.0), 0.5, QSizeF(400, 400))
    image = painted(qtbot, (page("0 g 0 0 100 100 re f"),), camera, NIGHT)
    paper = QColor(NIGHT.theme.paper)
    assert at(image, camera, (300, 500)) == (paper.red(), paper.green(), paper.blue())
    assert at(image, camera, (50, 50))[0] > 130


def test_a_page_looked_at_closely_is_rendered_anew(qtbot: QtBot) -> None:
    """A line of a fifth of a point is one clean edge at 40 dots for a point, and mush at four."""
    camera = Camera((100.0, 50.0), 36.0, QSizeF(400, 300))
    image = painted(qtbot, (page("0 g 100 0 100 100 re f"),), camera)
    row = [QColor(image.pixel(x, 150)).red() for x in range(190, 211)]
    assert len([dot for dot in row if 140 < dot < 250]) <= 2


def test_what_is_hidden_or_lies_under_another_section_is_not_shown() -> None:
    frame = ((0.0, 0.0), (9.0, 0.0), (9.0, 9.0))
    sections = (Section("Eave", frame, (), {}), Section("Rake", frame, (), {}))
    unsized = replace(black(), size=(0.0, 0.0))
    under = (page(section="Eave"), black(), page(section="Rake"), black(shown=False), unsized)
    project = Project("House", Units.MM, sections, underlays=under)
    assert lying_under(project, sections[0]) == under[:2]
    assert lying_under(project, None) == ()


def test_notes_of_a_page_that_is_seen_are_not_written_twice() -> None:
    texts = (Text("OSB", (0, 0), handle="page-1:3"), Text("ours", (0, 0), handle="2F"))
    result = unjudged(Section("Eave", (), (), {}, texts=texts))
    assert without_texts_of((), result) is result
    assert without_texts_of((page(key="page-1"),), result).section.texts == texts[1:]


def test_the_part_in_view_is_told_in_pixels_of_the_picture() -> None:
    camera = Camera((60.0, 45.0), 10.0, QSizeF(200, 100))
    part = seen_part(black(at=(10.0, 20.0), mm_per_pixel=2.0), camera)
    assert part == pytest.approx((20.0, 10.0, 30.0, 15.0))
    assert seen_part(black(at=(1000.0, 20.0)), camera) is None


def test_pixels_come_to_the_view_as_their_outline_does() -> None:
    under = black(at=(10.0, 20.0), angle=30.0, mm_per_pixel=0.7)
    onto = placed(under, CAMERA)
    for corner, pixel in zip(under.outline, ((0, 0), (100, 0), (100, 50), (0, 50)), strict=True):
        seen = onto.map(QPointF(*pixel))
        assert (seen.x(), seen.y()) == pytest.approx(CAMERA.seen(corner).toTuple())


def test_dots_of_what_is_gone_are_let_go(qtbot: QtBot) -> None:
    parent = QObject()
    layer = UnderlayLayer(parent)
    under = (black(),)
    image = QImage(CAMERA.size.toSize(), QImage.Format.Format_RGB32)
    with qtbot.waitSignal(layer.ready):
        list(layer.paint(image, CAMERA, under, PAPER))
    assert layer.holds(under, dark=False)
    layer.forget_others(())
    assert not layer.holds(under, dark=False)


def test_damage_is_said_once(qtbot: QtBot) -> None:
    parent = QObject()
    layer = UnderlayLayer(parent)
    broken = replace(black(), data=b"nothing")
    image = QImage(CAMERA.size.toSize(), QImage.Format.Format_RGB32)
    with qtbot.waitSignal(layer.failed) as heard:
        list(layer.paint(image, CAMERA, (broken,), PAPER))
    assert "is damaged" in heard.args[0]
    with qtbot.assertNotEmitted(layer.failed, wait=50):
        list(layer.paint(image, CAMERA, (broken,), PAPER))


def put(window: MainWindow, qtbot: QtBot) -> None:
    name = window.document.project.sections[0].name
    with qtbot.waitSignal(window.canvas.below.ready):
        under = page(mm_per_pixel=4.0, section=name)
        window.document.apply("", edits.add_underlay(window.document.project, under))
        window.canvas.fit()
    window.canvas.finish_painting()


def pan(window: MainWindow) -> float:
    """Return how long a frame takes while the paper is moved, median, s."""
    times = []
    for _ in range(60):
        start = perf_counter()
        window.canvas.look_from(window.canvas.camera.panned(QPointF(1, 1)))
        window.canvas.repaint()
        times.append(perf_counter() - start)
    return median(times)


def test_the_canvas_shows_it_where_it_lies(sheet: MainWindow, qtbot: QtBot) -> None:
    put(sheet, qtbot)
    there = sheet.canvas.grab().toImage()
    spot = sheet.canvas.camera.seen((200.0, 200.0)).toPoint()
    assert QColor(there.pixel(spot)).green() < 200


def test_panning_over_it_takes_no_longer_than_over_an_empty_sheet(
    sheet: MainWindow, qtbot: QtBot
) -> None:
    sheet.canvas.finish_painting()
    bare = pan(sheet)
    put(sheet, qtbot)
    assert pan(sheet) < 4 * bare


def test_hiding_it_shows_at_once(sheet: MainWindow, qtbot: QtBot) -> None:
    put(sheet, qtbot)
    sheet.document.apply("", edits.show_underlay(sheet.document.project, 0, shown=False))
    sheet.canvas.finish_painting()
    spot = sheet.canvas.camera.seen((200.0, 200.0)).toPoint()
    assert QColor(sheet.canvas.grab().toImage().pixel(spot)).green() == 255
    sheet.do("undo")
    sheet.canvas.finish_painting()
    assert QColor(sheet.canvas.grab().toImage().pixel(spot)).green() < 200
