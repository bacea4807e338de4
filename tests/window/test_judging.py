"""What is judged again after a change, and what keeps its result."""

from collections.abc import Callable
from dataclasses import replace

from pytestqt.qtbot import QtBot

from enclosure_app.model.edits import add_section, remove_pieces
from enclosure_app.window.judging import judge
from enclosure_app.window.main_window import MainWindow

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


def test_an_empty_section_is_not_judged(opened: Opened) -> None:
    window = opened()
    project = window.document.project
    empty = replace(project.sections[0], name="empty", pieces=())
    result = judge(add_section(project, empty), window.checking.limits).results[1]
    assert result.layers == {}
    assert result.findings == ()
