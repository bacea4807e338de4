"""Checking again after each change."""

from collections import deque
from collections.abc import Callable, Iterator
from dataclasses import replace
from itertools import count
from threading import Event, Thread
from time import perf_counter, sleep

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.errors import EnclosureError
from enclosure_app.files.projects import limits_of
from enclosure_app.model.edits import move_pieces, remove_pieces
from enclosure_app.progress import Progress, StoppedError, go_on, listening
from enclosure_app.resources import sample
from enclosure_app.window import checking
from enclosure_app.window.apart.orders import Order, read_order
from enclosure_app.window.judging import judge
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.settings import Settings
from tests.benchmarks.walls import wall_of_sheets

Opened = Callable[..., MainWindow]


def test_a_slow_check_runs_beside_the_window_and_an_outdated_one_is_dropped(
    opened: Opened, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = opened()
    monkeypatch.setattr(checking, "SLOW", -1.0)
    project = window.document.project
    names = [piece.name for piece in project.sections[0].pieces if piece.product == "plywood"]
    working = []
    window.checking.working.connect(working.append)
    window.document.apply("Delete", remove_pieces(project, 0, names[:1]))
    window.checking.check_now()
    window.document.undo_stack.undo()
    qtbot.waitUntil(lambda: window.checking.current, timeout=5000)
    assert window.checking.results[0].section is project.sections[0]
    assert working[0] is True


def test_a_rule_book_that_there_is_none_of_is_told(opened: Opened, qtbot: QtBot) -> None:
    window = opened()
    with qtbot.waitSignal(window.checking.failed) as told:
        window.document.apply("Book", replace(window.document.project, book="no-such-book"))
    assert "no-such-book" in told.args[0]
    assert window.messages.isVisible()


def test_what_is_much_is_seen_before_it_is_judged_and_the_window_goes_on(
    settings: Settings, qtbot: QtBot
) -> None:
    """What was open before is not shown any more, nor waited for."""
    window = MainWindow(settings)
    qtbot.addWidget(window)
    window.show()
    project = read_order(
        Order((sample("four-sections-faulty.dxf"),), layers=sample("layers-second-office.toml"))
    )
    ridge = read_order(Order((sample("ridge.dxf"),)))
    window.document.open(ridge)
    window.showing.begin()
    assert sum(len(section.pieces) for section in project.sections) > checking.MANY
    window.document.open(project)
    window.showing.begin()
    assert not window.checking.current
    assert window.result is not None
    assert window.result.section is project.sections[0]
    assert window.result.findings == ()
    qtbot.waitUntil(lambda: window.checking.current, timeout=20_000)
    assert window.result.findings != ()
    window.close()


def test_what_a_check_finds_after_the_window_closed_is_told_to_nobody(
    opened: Opened, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = opened()
    monkeypatch.setattr(checking, "SLOW", -1.0)
    project = window.document.project
    window.document.apply(
        "Delete", remove_pieces(project, 0, [project.sections[0].pieces[0].name])
    )
    window.checking.check_now()
    told = []
    window.checking.checked.connect(lambda: told.append("checked"))
    window.checking.working.connect(told.append)
    window.checking.close()
    qtbot.wait(50)  # what was on its way has come by then
    assert told == []


def without_first(window: MainWindow) -> None:
    project = window.document.project
    name = project.sections[0].pieces[0].name
    window.document.apply("Delete", remove_pieces(project, 0, [name]))


@pytest.fixture
def window_at_work(
    opened: Opened, monkeypatch: pytest.MonkeyPatch
) -> Iterator[tuple[MainWindow, list[float]]]:
    """Return a window of which a check goes on until it is stopped, and when each was given up."""
    window, ended, given_up = opened(), Event(), []

    def judged(*_: object) -> checking.Checked:
        try:
            while not ended.wait(0.005):
                go_on()
        except StoppedError:
            given_up.append(perf_counter())
            raise
        raise EnclosureError("The test is over.")

    monkeypatch.setattr(checking, "SLOW", -1.0)
    monkeypatch.setattr(checking, "judge", judged)
    without_first(window)
    window.checking.check_now()
    yield window, given_up
    ended.set()


def test_a_check_that_an_edit_makes_useless_is_given_up_at_once(
    window_at_work: tuple[MainWindow, list[float]], qtbot: QtBot
) -> None:
    window, given_up = window_at_work
    without_first(window)
    edited = perf_counter()
    qtbot.waitUntil(lambda: bool(given_up))
    assert given_up[0] - edited < 0.2


def test_a_check_from_which_the_next_is_found_soon_goes_on(
    window_at_work: tuple[MainWindow, list[float]], qtbot: QtBot
) -> None:
    window, given_up = window_at_work
    under_way = window.checking.progress
    project = window.document.project
    name = project.sections[0].pieces[0].name
    window.document.apply("Move", move_pieces(project, 0, [name], (1.0, 0.0)))
    window.checking.check_now()
    assert window.checking.progress is under_way
    assert given_up == []


def test_what_is_opened_gives_up_the_check_of_what_was_open(
    window_at_work: tuple[MainWindow, list[float]], qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    window, given_up = window_at_work
    monkeypatch.setattr(checking, "judge", judge)
    window.document.open(window.document.project)
    window.checking.check_now()
    qtbot.waitUntil(lambda: bool(given_up))


def test_a_person_stops_a_check_and_what_was_found_before_stays_and_is_told_so(
    window_at_work: tuple[MainWindow, list[float]], qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    window, given_up = window_at_work
    before = tuple(window.checking.results)
    qtbot.waitUntil(window.views.working.isVisible)
    qtbot.mouseClick(window.views.working.cancel, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: bool(given_up))
    assert window.checking.given_up
    assert tuple(window.checking.results) == before
    assert not window.views.working.isVisible()
    assert "before its last change" in window.views.steps.words.text()
    window.place.turn_to(0)
    assert "before its last change" in window.views.steps.words.text()
    monkeypatch.setattr(checking, "judge", judge)
    with qtbot.waitSignal(window.checking.checked):
        qtbot.mouseClick(window.views.steps.button, Qt.MouseButton.LeftButton)
    assert window.checking.current
    assert "stopped" not in window.views.steps.words.text()


def test_a_real_check_that_is_stopped_ends_soon(opened: Opened, qtbot: QtBot) -> None:
    """Of a wall of 500 sheets with a gap, which takes some tenths of a second."""
    project = replace(opened().document.project, sections=(wall_of_sheets(500, gap=True),))
    progress, ended = Progress(), []

    def stop_soon() -> None:
        sleep(0.05)
        progress.stop()
        ended.append(perf_counter())

    stopper = Thread(target=stop_soon)
    stopper.start()
    limits = limits_of(project)
    with pytest.raises(StoppedError), listening(progress.tell):
        deque((judge(project, limits) for _ in count()), 0)
    assert perf_counter() - ended[0] < 0.2
    stopper.join()


def test_what_wants_results_of_the_drawing_as_it_is_waits_for_its_check(
    opened: Opened, qtbot: QtBot
) -> None:
    window, found = opened(), []
    window.checking.once_current(lambda: found.append(window.document.project))
    assert found == [window.document.project]  # it is checked already
    without_first(window)
    window.checking.once_current(lambda: found.append(window.checking.results[0].section))
    qtbot.waitUntil(lambda: len(found) > 1)
    assert found[1] is window.document.project.sections[0]


def test_it_waits_for_a_slow_check_and_is_dropped_where_a_person_stops_it(
    window_at_work: tuple[MainWindow, list[float]], qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    window, given_up = window_at_work
    found = []
    window.checking.once_current(lambda: found.append("stopped"))
    window.checking.stop()
    qtbot.waitUntil(lambda: bool(given_up))
    monkeypatch.setattr(checking, "judge", judge)
    window.checking.once_current(lambda: found.append(window.checking.results[0].section))
    qtbot.waitUntil(lambda: bool(found))
    assert found == [window.document.project.sections[0]]


def test_what_was_wanted_of_another_drawing_is_not_done(
    window_at_work: tuple[MainWindow, list[float]], qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    window, _ = window_at_work
    found = []
    window.checking.once_current(lambda: found.append("of the drawing before"))
    monkeypatch.setattr(checking, "judge", judge)
    window.document.open(window.document.project)
    qtbot.waitUntil(lambda: window.checking.current)
    assert found == []
