"""What is usual for sheets."""

from enclosure_app.drawing.sheet.job import PAPERS
from enclosure_app.drawing.sheet.setup import usual_paper
from enclosure_app.model.drawing import Units


def test_the_usual_paper_is_one_that_there_is() -> None:
    assert usual_paper(Units.FT) == "ANSI B"
    assert {usual_paper(units) for units in Units} <= set(PAPERS)
