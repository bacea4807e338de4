"""The list of what became of everything: filtered, answered, laid over or left."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.model.said.carried import Subject
from enclosure_app.planning.revision import Fate
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.revising.laying import About, laid_over
from enclosure_app.window.revising.revised import Revised
from tests.planning.revision.walls import GAP, project, wall
from tests.window.revising.walls_laid import decided, laid

LEFT = Qt.MouseButton.LeftButton
SUBJECT = About(Subject("", "Wall", GAP))


@pytest.fixture
def revised(qtbot: QtBot) -> Revised:
    shown = Revised()
    qtbot.addWidget(shown)
    shown.show_laid(laid(), Look(), "")
    shown.show()
    return shown


def test_it_says_what_is_laid_over_what_and_how_many_became_of_what(revised: Revised) -> None:
    assert revised.head.told.text().startswith("wall-B.dxf over wall.dxf.")
    assert revised.filters.fates[Fate.NOT_SURE].text() == "2 not sure"
    assert revised.bar.lacking.text().startswith("Left open: 1.")
    assert not revised.head.missing.isVisible()
    assert revised.row is not None
    assert revised.row.abouts == (SUBJECT,)
    assert revised.list.count() == len(revised.rows)


def test_a_filter_leaves_out_what_one_does_not_want_to_see(revised: Revised, qtbot: QtBot) -> None:
    qtbot.mouseClick(revised.filters.fates[Fate.NOT_SURE], LEFT)
    assert revised.list.count() == len(revised.rows) - 2
    assert revised.row is not None
    assert revised.row.match.fate is not Fate.NOT_SURE
    qtbot.keyClick(revised.filters.fates[Fate.NOT_SURE], Qt.Key.Key_Space)
    assert revised.list.count() == len(revised.rows)


def test_the_list_is_walked_with_the_keys(revised: Revised, qtbot: QtBot) -> None:
    qtbot.keyClick(revised.list, Qt.Key.Key_Down)
    assert revised.row is revised.rows[1]
    assert revised.comparison.asking.isVisible()  # of the water layer it may be said, too
    qtbot.keyClick(revised.list, Qt.Key.Key_Down)
    assert revised.row is revised.rows[2]
    assert not revised.comparison.asking.isVisible()


def test_what_a_person_says_needs_their_name(revised: Revised, qtbot: QtBot) -> None:
    assert not revised.bar.who.isVisible()
    gone = revised.comparison.asking.buttons[1]
    qtbot.mouseClick(gone, LEFT, pos=gone.rect().center())
    assert revised.said == {SUBJECT: ("Wall", "")}
    assert "You say: it is gone" in revised.list.currentItem().text()
    assert not revised.bar.take.isEnabled()
    qtbot.keyClicks(revised.bar.who, "Jon")
    with qtbot.waitSignal(revised.taken) as taken:
        qtbot.mouseClick(revised.bar.take, LEFT)
    assert taken.args == [{SUBJECT: ("Wall", "")}, "Jon"]


def test_what_was_said_can_be_left_open_again(revised: Revised, qtbot: QtBot) -> None:
    first = revised.comparison.asking.buttons[0]
    qtbot.mouseClick(first, LEFT, pos=first.rect().center())
    assert revised.said[SUBJECT][1]
    last = revised.comparison.asking.buttons[-1]
    qtbot.mouseClick(last, LEFT, pos=last.rect().center())
    assert revised.said == {}
    assert revised.bar.take.isEnabled()


def test_what_was_answered_stays_where_it_is_compared_again(
    revised: Revised, qtbot: QtBot
) -> None:
    first = revised.comparison.asking.buttons[0]
    qtbot.mouseClick(first, LEFT, pos=first.rect().center())
    said = revised.said
    revised.show_laid(laid(), Look(), "Jon")
    assert revised.said == said != {}
    assert "You say: it is found again" in revised.list.item(0).text()
    same = laid_over(decided(), replace(project(wall()), source="wall-C.dxf"))
    revised.show_laid(same, Look(), "Jon")
    assert revised.said == {}
