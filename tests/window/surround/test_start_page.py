"""The first page: every way to begin is one click, and a small screen can scroll to it."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QMenu, QPushButton, QScrollArea
from pytestqt.qtbot import QtBot

from enclosure_app.resources import sample
from enclosure_app.window.surround.start_page import SAMPLES, StartPage


@pytest.fixture
def page(qtbot: QtBot) -> Iterator[StartPage]:
    parts = QMenu()
    shown = StartPage(parts)
    qtbot.addWidget(shown)
    shown.show()
    yield shown
    parts.deleteLater()


def button(page: StartPage, text: str) -> QPushButton:
    return next(b for b in page.findChildren(QPushButton) if text in b.text())


@pytest.mark.parametrize(("file", "layers", "told"), SAMPLES, ids=[row[0] for row in SAMPLES])
def test_a_sample_is_one_click_away(
    page: StartPage, qtbot: QtBot, file: str, layers: str, told: str
) -> None:
    assert sample(file).is_file()
    assert sample(layers).is_file()
    with qtbot.waitSignal(page.sample) as asked:
        qtbot.mouseClick(button(page, told), Qt.MouseButton.LeftButton)
    assert asked.args == [file, layers]


@pytest.mark.parametrize(
    ("text", "action"), [("Open a drawing", "open_file"), ("Sketch on an", "new_sheet")]
)
def test_a_way_to_begin_is_one_click_away(
    page: StartPage, qtbot: QtBot, text: str, action: str
) -> None:
    with qtbot.waitSignal(page.wanted) as asked:
        qtbot.mouseClick(button(page, text), Qt.MouseButton.LeftButton)
    assert asked.args == [action]


def test_what_was_open_lately_is_listed_and_opened(
    page: StartPage, qtbot: QtBot, tmp_path: Path
) -> None:
    paths = [str(tmp_path / f"{name}.dxf") for name in "abcdefg"]
    page.show_recent(paths)
    page.show_recent(paths)
    links = [b for b in page.findChildren(QPushButton) if b.text().endswith(str(tmp_path))]
    assert len({b.text() for b in links}) == 5
    with qtbot.waitSignal(page.recent) as asked:
        qtbot.mouseClick(button(page, "a.dxf"), Qt.MouseButton.LeftButton)
    assert asked.args == [paths[0]]


def test_a_small_screen_scrolls_to_every_way(page: StartPage, qtbot: QtBot) -> None:
    page.resize(480, 300)
    assert page.minimumSizeHint().height() < 300
    (scrolled,) = page.findChildren(QScrollArea)
    last = button(page, SAMPLES[-1][2])
    scrolled.ensureWidgetVisible(last)
    assert (
        scrolled.viewport()
        .rect()
        .intersects(last.rect().translated(last.mapTo(scrolled.viewport(), last.rect().topLeft())))
    )
