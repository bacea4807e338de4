"""Both places of a finding side by side."""

import pytest
from pytestqt.qtbot import QtBot

from enclosure_app.planning.revision import Fate
from enclosure_app.window.canvas.ink.look import Look
from enclosure_app.window.revising.comparison import Comparison
from enclosure_app.window.revising.laying import Laid, laid_over
from enclosure_app.window.revising.rows import rows_of
from tests.planning.revision.walls import line, project, wall
from tests.window.revising.walls_laid import decided, laid


@pytest.fixture
def comparison(qtbot: QtBot) -> Comparison:
    shown = Comparison()
    qtbot.addWidget(shown)
    shown.resize(900, 600)
    shown.show()
    return shown


def show(comparison: Comparison, of: Laid, fate: Fate, answer: str | None = None) -> None:
    comparison.show_laid(of, Look())
    comparison.show_row(next(row for row in rows_of(of) if row.match.fate is fate), answer)


def test_what_is_not_sure_stands_beside_what_it_may_be(comparison: Comparison) -> None:
    shown = laid()
    show(comparison, shown, Fate.NOT_SURE)
    match, _ = shown.revision.of(Fate.NOT_SURE)
    assert match.old is not None
    assert comparison.before.told.text().startswith(
        f"{match.old.message}\nTo be mended · Ida\nMeasured 30 mm"
    )
    assert comparison.now.told.text().startswith(f"3 · {match.asked[0].message}\nMeasured 60 mm")
    assert comparison.asking.isVisible()
    show(comparison, shown, Fate.NOT_SURE, "")
    assert comparison.now.told.text() == "It is not found in the revised drawing any more."


def test_what_is_still_there_is_not_asked_about(comparison: Comparison) -> None:
    show(comparison, laid(), Fate.STILL_THERE)
    assert not comparison.asking.isVisible()
    assert comparison.before.title.text() == "Before · Wall"
    assert comparison.now.title.text() == "Revised · Wall"


def test_what_is_gone_and_what_is_new_say_so(comparison: Comparison) -> None:
    tape = line("40", (-1.0, 750.0), (-1.0, 900.0), product="seam-tape")
    mended = laid_over(decided(), project(wall(tape)))
    show(comparison, mended, Fate.GONE)
    assert comparison.now.told.text() == "It is not found in the revised drawing any more."
    back = laid_over(mended.revision.project, project(wall()))
    show(comparison, back, Fate.NEW)
    assert comparison.before.told.text() == "It was not found in the earlier drawing."


def test_a_section_that_is_not_found_again_has_no_picture(comparison: Comparison) -> None:
    show(comparison, laid_over(decided(), project()), Fate.NOT_SURE)
    assert comparison.now.told.text() == "The section was not surely found again."
    assert not comparison.now.place.isVisible()
