"""How the paper is divided."""

from itertools import combinations

import pytest

from enclosure_app.drawing.ribbon.band import HEIGHT
from enclosure_app.drawing.section.flags import LANE
from enclosure_app.drawing.sheet.job import PAPERS, paper_size
from enclosure_app.drawing.sheet.layout import areas


@pytest.mark.parametrize("paper", PAPERS)
def test_the_boxes_of_a_sheet_do_not_overlap(paper: str) -> None:
    place = areas(paper_size(paper), 2)
    boxes = (place.drawing.inset(-LANE), place.heading, place.foot, *place.ribbons, place.column)
    for a, b in combinations(boxes, 2):
        across = min(a.right, b.right) - max(a.left, b.left)
        tall = min(a.top, b.top) - max(a.bottom, b.bottom)
        assert across <= 1e-6 or tall <= 1e-6


@pytest.mark.parametrize("paper", PAPERS)
def test_the_drawing_has_the_paper(paper: str) -> None:
    """The drawing with its lanes is larger than column and ribbons together."""
    place = areas(paper_size(paper), 2)
    rest = place.column.width * place.column.height
    rest += sum(box.width * box.height for box in place.ribbons)
    lanes = place.drawing.inset(-LANE)
    assert lanes.width * lanes.height > rest * 0.9


def test_without_ribbons_the_drawing_is_taller() -> None:
    size = paper_size("A3")
    assert areas(size, 0).drawing.height == pytest.approx(
        areas(size, 2).drawing.height + 2 * HEIGHT
    )
