"""A page with very many lines is moved in a thread, and the window goes on meanwhile."""

from dataclasses import replace
from functools import partial

import pytest
from pytestqt.qtbot import QtBot

from enclosure_app.errors import EnclosureError
from enclosure_app.model import edits
from enclosure_app.model.edits import PageLines
from enclosure_app.model.section import Stroke
from enclosure_app.model.underlay import Underlay
from enclosure_app.window.canvas.made_ready import made_of
from enclosure_app.window.canvas.picture.linework import Linework
from enclosure_app.window.canvas.underlay.page_moving import MANY, edit_apart, is_large
from enclosure_app.window.main_window import MainWindow


def laid(window: MainWindow, lines: int) -> MainWindow:
    project = window.document.project
    strokes = [Stroke(((n % 90.0, n // 90.0), (n % 90.0 + 1.0, n // 90.0))) for n in range(lines)]
    under = Underlay("page.pdf", "pdf", b"x", (90.0, 90.0), section=project.sections[0].name)
    after = edits.add_underlay(project, replace(under, shown=False), PageLines(strokes))
    window.document.apply("Put", after)
    return window


def move(window: MainWindow, told: list[str], by: tuple[float, float] = (50.0, 0.0)) -> None:
    moved = partial(edits.move_underlay, index=0, by=by)
    edit_apart(window.place, "Move", moved, lambda: told.append("moved"))


def first(window: MainWindow) -> tuple[float, float]:
    return window.document.project.sections[0].strokes[0].points[0]


def test_a_few_lines_are_moved_at_once(sheet: MainWindow) -> None:
    window, told = laid(sheet, 20), []
    assert not is_large(window.place.section)
    at = first(window)
    move(window, told)
    assert told == ["moved"]
    assert first(window) == pytest.approx((at[0] + 50.0, at[1]))


def test_very_many_are_moved_later_and_are_ready_to_be_painted(
    sheet: MainWindow, qtbot: QtBot
) -> None:
    window, told = laid(sheet, MANY), []
    before, at = window.document.project, first(window)
    move(window, told)
    assert window.document.project is before, "the window did not wait"
    qtbot.waitUntil(lambda: told == ["moved"], timeout=20_000)
    assert first(window) == pytest.approx((at[0] + 50.0, at[1]))
    assert window.document.undo_stack.undoText() == "Move"
    strokes = window.document.project.sections[0].strokes
    assert made_of(strokes, Linework) is made_of(strokes, Linework)


def test_what_was_drawn_meanwhile_is_not_lost(sheet: MainWindow, qtbot: QtBot) -> None:
    window, told = laid(sheet, MANY), []
    move(window, told)
    other = edits.add_mark(window.document.project, 0, edits.Side.INSIDE, (500.0, 500.0))
    window.document.apply("Mark", other)
    qtbot.waitUntil(lambda: told == ["moved"], timeout=20_000)
    section = window.document.project.sections[0]
    assert len(section.inside) == 1
    assert window.document.undo_stack.count() == 3


@pytest.mark.parametrize("lines", [20, MANY])
def test_what_cannot_be_done_is_told(sheet: MainWindow, qtbot: QtBot, lines: int) -> None:
    window, told = laid(sheet, lines), []

    def refuse(_: object) -> None:
        raise EnclosureError("It is locked.")

    edit_apart(window.place, "Move", refuse, lambda: told.append("moved"))
    qtbot.waitUntil(lambda: window.messages.words.text() == "It is locked.", timeout=20_000)
    assert told == []


def test_what_was_open_before_is_not_touched(sheet: MainWindow, qtbot: QtBot) -> None:
    window, told = laid(sheet, MANY), []
    move(window, told)
    window.filing.new_sheet()
    qtbot.wait(600)
    assert told == []
    assert window.document.project.underlays == ()
