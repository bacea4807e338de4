"""Pages are painted by Qt, each run of marks of the same overlays apart."""

import io

import pypdf
import pytest
from PySide6.QtGui import QGuiApplication

from enclosure_app.drawing.marks import Label, Mark, Overlay, Stroke, tagged
from enclosure_app.drawing.tags import Role, Tag
from enclosure_app.drawing.theme import Pen
from enclosure_app.progress import Progress, StoppedError, listening
from enclosure_app.reports.pdf.pages import PaintedPage, Run, ensure_application, in_runs, painted

AIR, WATER = (Overlay.AIR,), (Overlay.WATER,)


def line(*overlays: Overlay) -> Mark:
    return Stroke(((1.0, 1.0), (2.0, 2.0)), Pen("black", 0.25), overlays=overlays)


def word(text: str, *overlays: Overlay) -> Mark:
    return Label(text, (10.0, 10.0), 3.5, "black", overlays=overlays)


def test_marks_keep_their_order_and_are_parted_where_their_overlays_change() -> None:
    marks = (line(), line(*AIR), line(*AIR), line(*WATER), line(*AIR, *WATER), line())
    runs = list(in_runs(marks))
    assert [run.overlays for run, _ in runs] == [(), AIR, WATER, (*AIR, *WATER), ()]
    assert tuple(mark for _, run in runs for mark in run) == marks


def test_a_page_without_marks_is_one_empty_run() -> None:
    assert list(in_runs(())) == [(Run(), ())]


def test_marks_are_parted_where_their_tag_changes() -> None:
    title, words = Tag(Role.TITLE, "a"), Tag(Role.WORDS, "b")
    marks = [
        *tagged(title, [word("one"), word("two")]), *tagged(words, [word("three")]), word("none")
    ]  # fmt: skip
    runs = [(run.tag, len(those)) for run, those in in_runs(marks)]
    assert runs == [(title, 2), (words, 1), (None, 1)]


def test_every_run_has_its_page_of_the_size_of_its_sheet(qapp: object) -> None:
    first = PaintedPage(420, 297, (word("ground"), line(*AIR), word("sheet", *AIR)))
    painting = painted([first, PaintedPage(297, 210, (word("other", *WATER),))])
    assert painting.runs == ((Run(), Run(AIR)), (Run(WATER),))
    pages = pypdf.PdfReader(io.BytesIO(painting.data)).pages
    assert [p.extract_text().strip() for p in pages] == ["ground", "sheet", "other"]
    sizes = [(float(p.mediabox.width), float(p.mediabox.height)) for p in pages]
    assert sizes[0] == sizes[1] == pytest.approx((420 / 25.4 * 72, 297 / 25.4 * 72), abs=0.6)
    assert sizes[2] == pytest.approx((297 / 25.4 * 72, 210 / 25.4 * 72), abs=0.6)


@pytest.mark.parametrize("allowed", [0, 1])
def test_painting_stops_when_it_is_wanted_no_more(qapp: object, allowed: int) -> None:
    progress, told = Progress(), []

    def hear(share: float) -> None:
        told.append(share)
        if len(told) > allowed:
            progress.stop()
        progress.tell(share)

    with listening(hear), pytest.raises(StoppedError):
        painted([PaintedPage(420, 297, (word("page"),))] * 3)


def test_the_application_that_runs_is_kept(qapp: QGuiApplication) -> None:
    assert ensure_application() is QGuiApplication.instance()
