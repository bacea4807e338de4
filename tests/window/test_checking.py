"""Checking again after each change."""

from collections.abc import Callable
from dataclasses import replace

import pytest
from pytestqt.qtbot import QtBot

from enclosure_app.model.edits import add_section, remove_pieces
from enclosure_app.resources import sample
from enclosure_app.window import checking
from enclosure_app.window.apart.orders import Order, read_order
from enclosure_app.window.checking import judge
from enclosure_app.window.main_window import MainWindow
from enclosure_app.window.settings import Settings

Opened = Callable[..., MainWindow]


def test_a_section_that_did_not_change_keeps_its_result(opened: Opened, qtbot: QtBot) -> None:
    window = opened("four-sections-faulty.dxf")
    before = tuple(window.checking.results)
    project = window.document.project
    name = project.sections[2].pieces[0].name
    with qtbot.waitSignal(window.checking.checked):
        window.document.apply("Delete", remove_pieces(project, 2, [name]))
    after = tuple(window.checking.results)
    assert [a is b for a, b in zip(after, before, strict=True)] == [True, True, False, True]
    assert after[2].section is window.document.project.sections[2]


def test_what_is_kept_is_what_a_full_check_says(opened: Opened, qtbot: QtBot) -> None:
    window = opened("four-sections-faulty.dxf")
    project = window.document.project
    name = project.sections[1].pieces[1].name
    with qtbot.waitSignal(window.checking.checked):
        window.document.apply("Delete", remove_pieces(project, 1, [name]))
    whole = judge(window.document.project, window.checking.limits)
    assert [r.findings for r in window.checking.results] == [r.findings for r in whole.results]


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


def test_an_empty_section_is_not_judged(opened: Opened) -> None:
    window = opened()
    project = window.document.project
    empty = replace(project.sections[0], name="empty", pieces=())
    result = judge(add_section(project, empty), window.checking.limits).results[1]
    assert result.layers == {}
    assert result.findings == ()


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
