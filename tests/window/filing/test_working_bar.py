"""The bar that says what takes long: soon enough, in words, and with a way out."""

from collections.abc import Callable, Iterator
from threading import Event

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from enclosure_app.progress import Progress
from enclosure_app.window.apart.working import Job, Lane, Working
from enclosure_app.window.filing.working_bar import SOON, WorkingBar


@pytest.fixture
def working() -> Iterator[Working]:
    made = Working()
    yield made
    made.close()


@pytest.fixture
def bar(working: Working, qtbot: QtBot) -> Iterator[WorkingBar]:
    """Return the bar in a window that has something else to type in."""
    window = QWidget()
    column = QVBoxLayout(window)
    made = WorkingBar(working, window)
    column.addWidget(made)
    column.addWidget(QLineEdit(window))
    qtbot.addWidget(window)
    window.show()
    qtbot.waitExposed(window)
    yield made  # noqa: PT022  the window would be gone before the test


@pytest.fixture
def lasting(working: Working) -> Iterator[Callable[..., list[str]]]:
    """Return a function that begins work which lasts; it gives a list of what became of it."""
    go = Event()

    def begin(words: str, share: float | None = None) -> list[str]:
        came: list[str] = []

        def work(progress: Progress) -> None:
            if share is not None:
                progress.tell(share)
            while not go.wait(0.005):
                progress.go_on()

        def done(_: object) -> None:
            came.append("done")

        stopped: Callable[[], None] = lambda: came.append("stopped")  # noqa: E731
        working.begin(Job(Lane.READING, words, work, then=done, stopped=stopped))
        return came

    begin.go = go  # type: ignore[attr-defined]
    yield begin
    go.set()


def test_what_is_done_soon_is_not_told(
    bar: WorkingBar, lasting: Callable[..., list[str]], qtbot: QtBot
) -> None:
    came = lasting("Reading ridge.dxf")
    lasting.go.set()  # type: ignore[attr-defined]
    qtbot.waitUntil(lambda: came == ["done"])
    qtbot.wait(SOON + 50)
    assert not bar.isVisible()


def test_it_says_what_is_done_and_how_far_it_is(
    bar: WorkingBar, lasting: Callable[..., list[str]], qtbot: QtBot
) -> None:
    came = lasting("Reading house.dxf", 0.43)
    qtbot.waitUntil(bar.isVisible)
    assert bar.words.text() == "Reading house.dxf… 43 %"
    assert (bar.share.maximum(), bar.share.value()) == (100, 43)
    lasting.go.set()  # type: ignore[attr-defined]
    qtbot.waitUntil(lambda: came == ["done"])
    assert not bar.isVisible()


def test_cancel_ends_it(bar: WorkingBar, lasting: Callable[..., list[str]], qtbot: QtBot) -> None:
    came = lasting("Reading house.dxf")
    qtbot.waitUntil(bar.isVisible)
    assert bar.words.text() == "Reading house.dxf…"
    qtbot.mouseClick(bar.cancel, Qt.MouseButton.LeftButton)
    assert came == ["stopped"]
    assert not bar.isVisible()


def test_escape_ends_it_wherever_the_keyboard_is(
    bar: WorkingBar, lasting: Callable[..., list[str]], qtbot: QtBot
) -> None:
    came = lasting("Reading house.dxf")
    qtbot.waitUntil(bar.isVisible)
    field = bar.window().findChild(QLineEdit)
    assert field is not None
    bar.window().activateWindow()
    field.setFocus()
    qtbot.keyClick(field, Qt.Key.Key_Escape)
    qtbot.waitUntil(lambda: came == ["stopped"])


def test_a_check_is_told_with_how_far_it_is_and_can_be_stopped(
    bar: WorkingBar, qtbot: QtBot
) -> None:
    progress = Progress()
    bar.tell_check("Checking the section", progress)
    qtbot.waitUntil(bar.isVisible)
    assert bar.words.text() == "Checking the section…"
    progress.tell(0.4)
    qtbot.waitUntil(lambda: bar.words.text() == "Checking the section… 40 %")
    with qtbot.waitSignal(bar.check_stopped):
        qtbot.mouseClick(bar.cancel, Qt.MouseButton.LeftButton)
    assert bar.cancel.text() == "Stop"
    bar.tell_check("")
    assert not bar.isVisible()


def test_escape_stops_a_check_only_where_nothing_else_wants_it(
    bar: WorkingBar, qtbot: QtBot
) -> None:
    bar.tell_check("Checking the section", Progress())
    qtbot.waitUntil(bar.isVisible)
    with qtbot.waitSignal(bar.check_stopped):
        qtbot.keyClick(bar.window(), Qt.Key.Key_Escape)
    bar.tell_check("")
    with qtbot.assertNotEmitted(bar.check_stopped):
        qtbot.keyClick(bar.window(), Qt.Key.Key_Escape)
