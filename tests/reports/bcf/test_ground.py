"""What is drawn once for several pictures: which go together, and that nothing near is left out."""

import pytest

from enclosure_app.drawing.placement import Box, Placement
from enclosure_app.drawing.section.details import trimmed, window_of
from enclosure_app.drawing.section.section_marks import View, section_marks
from enclosure_app.drawing.theme import load_theme
from enclosure_app.model.drawing import Units
from enclosure_app.reports.bcf.ground import Ground, together
from tests.drawing import eave

RESULT = eave.result()
VIEW = View(Placement(5.0), Units.MM, load_theme(), detail=True)


def square(x: float, y: float) -> Box:
    return Box(x, y, x + 150, y + 150)


@pytest.mark.parametrize(
    ("places", "groups"),
    [
        ([], []),
        ([(0, 0)], [[0]]),
        ([(0, 0), (10, 20), (0, 300)], [[0, 1, 2]]),
        ([(0, 0), (2000, 2000), (2010, 2000)], [[0], [1, 2]]),
        ([(0, 400 * n) for n in range(20)], [list(range(20))]),
    ],
)
def test_places_near_to_each_other_are_drawn_together(
    places: list[tuple[float, float]], groups: list[list[int]]
) -> None:
    assert [list(each) for each in together([square(x, y) for x, y in places])] == groups


def test_around_a_place_is_all_that_is_drawn_there_and_only_its_own_glyph() -> None:
    finding = RESULT.findings[0]
    x, y = VIEW.placement.point(finding.at)
    box = square(x - 75, y - 75)
    ground = Ground.of(RESULT, VIEW, [box, square(x, y + 100)])
    seen = [*ground.around(box), *ground.glyph(finding)]
    assert len(ground.around(box)) < len(ground.marks)
    sources = {mark.source for mark in seen if hasattr(mark, "source")}
    alone = section_marks(trimmed(RESULT, window_of(VIEW.placement, box)), VIEW)
    keys = {each.key for each in RESULT.findings}
    drawn = {m.source for m in alone if hasattr(m, "source") and m.source not in keys}
    assert finding.key in sources
    assert not sources & (keys - {finding.key})
    assert drawn - sources <= {p.name for p in RESULT.section.pieces}  # those beyond the box
