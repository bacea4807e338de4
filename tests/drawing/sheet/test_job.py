"""Papers and borders."""

import pytest

from enclosure_app.drawing.sheet.job import PAPERS, border, paper_size
from enclosure_app.errors import EnclosureError


def test_papers_have_their_standard_sizes() -> None:
    """ISO 216 and ASME Y14.1, landscape; an inch is 25.4 mm."""
    assert paper_size("A3") == (420, 297)
    assert paper_size("A4") == (297, 210)
    assert paper_size("ANSI B") == pytest.approx((17 * 25.4, 11 * 25.4))
    assert paper_size("ANSI D") == pytest.approx((34 * 25.4, 22 * 25.4))


def test_a_paper_may_be_written_either_way() -> None:
    assert paper_size("ansi-b") == paper_size("ANSI B") == (431.8, 279.4)


def test_an_unknown_paper_is_refused() -> None:
    with pytest.raises(EnclosureError, match="“A9” is not known"):
        paper_size("A9")


def test_the_left_border_leaves_room_for_filing() -> None:
    """ISO 5457: 20 mm on the left and 10 mm elsewhere; less on A4."""
    frame = border(PAPERS["A3"])
    assert (frame.left, frame.bottom, 420 - frame.right, 297 - frame.top) == (20, 10, 10, 10)
    small = border(PAPERS["A4"])
    assert small.left > 297 - small.right > 0
