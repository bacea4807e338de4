"""What is laid over what, what became of all that was said, and what the person may know better."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from enclosure_app.planning.revision import TakenPlace
from enclosure_app.window.revising.head import Head, sum_words
from enclosure_app.window.revising.laying import Laid, laid_over
from enclosure_app.window.revising.rows import rows_of
from tests.planning.revision.walls import project, wall
from tests.window.revising.test_laying import several
from tests.window.revising.walls_laid import WIDER, decided, laid


@pytest.fixture
def head(qtbot: QtBot) -> Head:
    shown = Head()
    qtbot.addWidget(shown)
    shown.resize(900, 200)
    shown.show()
    return shown


def show(head: Head, of: Laid) -> None:
    head.show_laid(of, rows_of(of))


def test_one_sentence_tells_what_became_of_all_that_was_said() -> None:
    assert sum_words(rows_of(laid())) == "Places that people spoke of: 1. Only you can say: 1"
    same = laid_over(decided(), replace(project(wall()), source="b.dxf"))
    assert sum_words(rows_of(same)).endswith("Still there: 1")
    assert sum_words((), 2) == "Places that people spoke of: 2. Only you can say: 2"
    assert sum_words(()) == "Nothing was said of what it takes the place of."


def test_one_of_several_drawings_says_whose_place_it_takes(head: Head, qtbot: QtBot) -> None:
    done = laid_over(several(), replace(project(wall(WIDER)), source="/office/wall-B.dxf"))
    show(head, done)
    assert head.told.text().startswith("wall-B.dxf over wall.dxf.")
    assert head.others.text() == "Stays as it is, with all that was said of it: eave.dxf."
    assert head.place.isVisible()
    assert head.place.currentData() == "wall.dxf"
    with qtbot.waitSignal(head.place_chosen) as chosen:
        qtbot.keyClick(head.place, Qt.Key.Key_Down)
    assert chosen.args == ["eave.dxf"]


def test_where_nobody_can_be_sure_nothing_is_chosen(head: Head) -> None:
    done = laid_over(several(), replace(project(wall(WIDER)), source="/office/wall-B.dxf"))
    show(head, replace(done, place=TakenPlace("", sure=False)))
    assert head.place.currentIndex() == -1


def test_what_was_not_found_again_may_stay(head: Head, qtbot: QtBot) -> None:
    show(head, laid_over(decided(), replace(project(), source="b.dxf")))
    assert head.missing.text().startswith("Not surely found again: Wall.")
    assert not head.place.isVisible()
    with qtbot.waitSignal(head.stay_wanted):
        qtbot.mouseClick(head.stay, Qt.MouseButton.LeftButton)
