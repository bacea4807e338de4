"""The pages of an order are the cover, where it is wanted, and then the sheets in their order."""

from dataclasses import replace

import pytest

from enclosure_app.drawing.marks import Label
from enclosure_app.drawing.sheet.job import SheetJob
from enclosure_app.drawing.sheet.sheet_set import Paper, compose_set
from enclosure_app.drawing.theme import load_theme
from enclosure_app.errors import EnclosureError
from tests.drawing import eave

THEME = load_theme()
DRAWINGS = (eave.drawing(), eave.drawing(file="slip.dxf"))


def words(paper: Paper) -> list[str]:
    return [mark.text for mark in paper.marks if isinstance(mark, Label)]


def test_the_cover_comes_first_and_sheets_say_which_they_are() -> None:
    papers = list(compose_set(DRAWINGS, SheetJob(cover=True), THEME).papers(THEME))
    assert len(papers) == 3
    assert "What was signed" in words(papers[0])
    assert ["1 of 2" in words(papers[1]), "2 of 2" in words(papers[2])] == [True, True]


def test_without_a_cover_there_are_only_sheets() -> None:
    composed = compose_set(DRAWINGS, SheetJob(), THEME)
    assert composed.covers == ()
    assert len(list(composed.papers(THEME))) == 2


def test_where_nothing_is_drawn_there_is_no_cover_either() -> None:
    empty = replace(DRAWINGS[0], sections=())
    with pytest.raises(EnclosureError, match="no section to draw"):
        compose_set((empty,), SheetJob(cover=True), THEME)
